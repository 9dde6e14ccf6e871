// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/present_pairing.h"

#include <algorithm>
#include <utility>

namespace lapwright::workspace {

void PresentPairing::read(const std::vector<Origin>& origins, const Plan& plan) {
    awaited_.insert(awaited_.end(), origins.begin(), origins.end());
    plan_ = plan;
    failed_ = false;
}

void PresentPairing::came(const Origin& origin) {
    if (const auto found = std::ranges::find(awaited_, origin); found != awaited_.end()) awaited_.erase(found);
}

bool PresentPairing::fulfil(OpenSessions& sessions) {
    const Plan plan = std::exchange(plan_, {});
    for (const Side side : {Side::a, Side::b}) {
        const auto& wanted = plan.laps[side == Side::a ? 0 : 1];
        const OpenSessions::Entry* entry = wanted ? sessions.find(wanted->origin) : nullptr;
        if (!entry) continue;
        if (wanted->lap)
            sessions.pick(side, {entry->key, *wanted->lap});
        else
            sessions.pick_fastest(side, entry->key);
    }
    sessions.pick_defaults();
    return plan.compare && sessions.picks().complete();
}

void PresentPairing::compare(const Picks& picks) {
    wanted_ = picks;
    comparing_ = true;
    failed_ = false;
}

void PresentPairing::take(const ComparedPointer& compared, OpenSessions& sessions) {
    if (sessions.picks() == wanted_) {
        sessions.take_fastest(compared->pairing->a.lap.number, compared->pairing->b.lap.number);
        wanted_ = sessions.picks();
    }
    comparing_ = false;
    shown_ = wanted_;
    laps_ = two_laps(*shown_.a, *shown_.b);
    compared_ = compared;
    forget_explanation();
}

void PresentPairing::refuse() {
    comparing_ = false;
    failed_ = true;
}

void PresentPairing::outdate(const SessionKey& key) {
    if (shown_.have(key)) shown_ = {};
}

bool PresentPairing::want_explanation() {
    if (!compared_ || explanation_ || explaining_) return false;
    explaining_ = true;
    failed_ = false;
    return true;
}

bool PresentPairing::take(const ExplanationPointer& explanation) {
    if (!std::exchange(explaining_, false)) return false;
    explanation_ = explanation;
    return true;
}

bool PresentPairing::refuse_explanation() {
    if (!std::exchange(explaining_, false)) return false;
    failed_ = true;
    return true;
}

void PresentPairing::forget_explanation() {
    explanation_.reset();
    explaining_ = false;
}

bool PresentPairing::call_off() {
    awaited_.clear();
    plan_ = {};
    comparing_ = false;
    return std::exchange(explaining_, false);
}

PresentPairing::State PresentPairing::state() const {
    if (!awaited_.empty() && plan_.compare) return State::reading;
    if (comparing_) return State::comparing;
    if (failed_) return State::failed;
    if (explanation_) return State::explained;
    if (explaining_) return State::explaining;
    return compared_ ? State::compared : State::nothing_chosen;
}

} // namespace lapwright::workspace
