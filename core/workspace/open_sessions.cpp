// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/open_sessions.h"

#include "core/analysis/with_words.h"

#include <algorithm>
#include <utility>

namespace lapwright::workspace {
namespace {

bool is_file(const Origin& origin) {
    return std::holds_alternative<std::string>(origin);
}

void read_from(OpenSessions::Entry& entry, const Origin& origin) {
    std::erase(entry.origins, origin);
    const bool anew_from_it = entry.origins.empty() || is_file(origin) || !is_file(entry.origins.front());
    entry.origins.insert(anew_from_it ? entry.origins.begin() : entry.origins.end(), origin);
}

} // namespace

bool OpenSessions::Entry::came_from(const Origin& origin) const {
    return std::ranges::find(origins, origin) != origins.end();
}

void OpenSessions::expect(const std::vector<Origin>& origins) {
    for (const Origin& origin : origins)
        if (std::ranges::find(order_, origin) == order_.end()) order_.push_back(origin);
}

void OpenSessions::add(const Origin& origin, SessionPointer session) {
    expect({origin});
    const SessionKey key = key_of(*session);
    auto place = std::ranges::find(entries_, key, &Entry::key);
    if (place == entries_.end())
        place = std::ranges::find_if(entries_, [&](const Entry& entry) { return entry.origin() == origin; });
    if (place == entries_.end()) {
        entries_.push_back({key, {origin}, std::move(session)});
    } else {
        for (auto* pick : {&picks_.a, &picks_.b})
            if (*pick && (*pick)->session == place->key) (*pick)->session = key;
        for (LapPick& pick : further_)
            if (pick.session == place->key) pick.session = key;
        read_from(*place, origin);
        if (place->key == key && !place->session->by_hand.empty())
            session = analysis::with_words(session, place->session->by_hand);
        place->key = key;
        place->session = std::move(session);
    }
    for (Entry& entry : entries_)
        if (entry.key != key) std::erase(entry.origins, origin);
    std::erase_if(entries_, [](const Entry& entry) { return entry.origins.empty(); });
    stand_as_expected();
    drop_lost_picks();
}

void OpenSessions::stand_as_expected() {
    std::ranges::stable_sort(entries_, {}, [this](const Entry& entry) {
        return std::ranges::find_if(order_, [&](const Origin& origin) { return entry.came_from(origin); });
    });
}

void OpenSessions::rename(const SessionKey& key, SessionPointer session) {
    const auto place = std::ranges::find(entries_, key, &Entry::key);
    if (place != entries_.end()) place->session = std::move(session);
}

void OpenSessions::judge(const SessionKey& key, const std::vector<lap::JudgedByHand>& words) {
    const auto place = std::ranges::find(entries_, key, &Entry::key);
    if (place == entries_.end()) return;
    place->session = analysis::with_words(place->session, words);
    const lap::Lap* fastest = place->session->fastest();
    for (auto* pick : {&picks_.a, &picks_.b})
        if (*pick && (*pick)->session == key && (*pick)->fastest && fastest) (*pick)->lap = fastest->number;
}

void OpenSessions::remove(SessionKey key) {
    std::erase_if(entries_, [&](const Entry& entry) { return entry.key == key; });
    drop_lost_picks();
}

const OpenSessions::Entry* OpenSessions::find(const SessionKey& key) const {
    const auto place = std::ranges::find(entries_, key, &Entry::key);
    return place == entries_.end() ? nullptr : &*place;
}

const OpenSessions::Entry* OpenSessions::find(const Origin& origin) const {
    const auto place = std::ranges::find_if(entries_, [&](const Entry& entry) { return entry.came_from(origin); });
    return place == entries_.end() ? nullptr : &*place;
}

SessionPointer OpenSessions::session(const SessionKey& key) const {
    const Entry* entry = find(key);
    return entry ? entry->session : nullptr;
}

std::vector<OpenSessions::Entry> OpenSessions::as_driven() const {
    auto entries = entries_;
    const auto start = [](const Entry& entry) { return entry.session->recording->start_unix_s; };
    if (std::ranges::all_of(entries, [&](const Entry& entry) { return start(entry).has_value(); }))
        std::ranges::stable_sort(entries, {}, [&](const Entry& entry) { return *start(entry); });
    return entries;
}

void OpenSessions::pick(Side side, const LapPick& pick) {
    if (!exists(pick)) return;
    auto& chosen = side == Side::a ? picks_.a : picks_.b;
    auto& other = side == Side::a ? picks_.b : picks_.a;
    // The lap that the other side holds changes sides.
    if (other == pick) other = chosen;
    chosen = pick;
}

void OpenSessions::pick_fastest(Side side, const SessionKey& key) {
    const SessionPointer open = session(key);
    const lap::Lap* fastest = open ? open->fastest() : nullptr;
    if (fastest) pick(side, {key, fastest->number, true});
}

void OpenSessions::swap() {
    std::swap(picks_.a, picks_.b);
}

void OpenSessions::put_picks(const Picks& picks) {
    picks_ = picks;
    drop_lost_picks();
}

void OpenSessions::put_further(std::vector<LapPick> laps) {
    further_ = std::move(laps);
    drop_lost_picks();
}

std::optional<std::vector<LapPick>> OpenSessions::further_turned(const LapPick& lap) const {
    std::vector<LapPick> turned = further_;
    if (std::erase(turned, lap) > 0) return turned;
    if (turned.size() >= most_further || !exists(lap)) return std::nullopt;
    turned.push_back(lap);
    return turned;
}

void OpenSessions::take_fastest(int lap_a, int lap_b) {
    const auto take = [this](std::optional<LapPick>& pick, int lap) {
        if (pick && pick->fastest && exists({pick->session, lap})) pick->lap = lap;
    };
    take(picks_.a, lap_a);
    take(picks_.b, lap_b);
}

void OpenSessions::pick_defaults() {
    const auto fill = [this](std::optional<LapPick>& side, const std::optional<LapPick>& other) {
        for (const Entry& entry : entries_) {
            if (side || (other && other->session == entry.key)) continue;
            if (const lap::Lap* fastest = entry.session->fastest()) side = LapPick{entry.key, fastest->number, true};
        }
    };
    fill(picks_.a, picks_.b);
    fill(picks_.b, picks_.a);
}

bool OpenSessions::exists(const LapPick& pick) const {
    const SessionPointer open = session(pick.session);
    return open && open->lap(pick.lap) != nullptr;
}

void OpenSessions::drop_lost_picks() {
    for (auto* pick : {&picks_.a, &picks_.b})
        if (*pick && !exists(**pick)) pick->reset();
    std::erase_if(further_, [this](const LapPick& pick) { return !exists(pick); });
}

} // namespace lapwright::workspace
