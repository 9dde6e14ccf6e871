// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/chosen_lap.h"

#include "core/analysis/stages.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <utility>

namespace lapwright::analysis {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;

// Seconds that two laps share.
double shared_s(const lap::Lap& a, const lap::Lap& b) {
    return std::min(a.end_s, b.end_s) - std::max(a.start_s, b.start_s);
}

// Of the flying laps the one whose middle lies in the lap of the session's own count, else the one that shares most.
const lap::Lap* counterpart(const std::vector<lap::Lap>& laps, const lap::Lap& own) {
    const auto closeness = [&](const lap::Lap& lap) { return std::pair(holds_middle(own, lap), shared_s(lap, own)); };
    const lap::Lap* best = nullptr;
    for (const lap::Lap& lap : laps) {
        if (lap.kind != lap::LapKind::flying || shared_s(lap, own) <= 0.0) continue;
        if (!best || closeness(lap) > closeness(*best)) best = &lap;
    }
    return best;
}

base::Error no_lap(const Placed& side, ErrorCode code, const std::string& what, const std::string& remedy) {
    return {code, {side.session->recording->source_file, {}, {}}, what, remedy};
}

// The flying lap of that number in the session's own count: with another timing line the same drive is counted
// otherwise, and people ask for the number that they were shown.
Result<lap::Lap> numbered_lap(const Placed& side, int number) {
    const lap::Lap* asked = side.session->lap(number);
    const lap::Lap* best = asked && asked->kind == lap::LapKind::flying ? counterpart(side.laps, *asked) : nullptr;
    if (!best)
        return no_lap(side, ErrorCode::lap_not_found,
                      said("there is no flying lap with the number %1", {base::integer_text(number)}),
                      said("lapwright laps lists them"));
    lap::Lap found = *best;
    found.number = number;
    return found;
}

} // namespace

bool holds_middle(const lap::Lap& own, const lap::Lap& lap) {
    const double middle_s = 0.5 * (lap.start_s + lap.end_s);
    return own.start_s <= middle_s && middle_s < own.end_s;
}

int own_number(const Session& session, const lap::Lap& lap) {
    const auto own = std::ranges::find_if(session.laps, [&](const lap::Lap& one) { return holds_middle(one, lap); });
    return own == session.laps.end() ? lap.number : own->number;
}

Result<lap::Lap> chosen_lap(const Placed& side, std::optional<int> number) {
    if (number) return numbered_lap(side, *number);
    const lap::Lap* fastest = fastest_of(side.laps);
    if (!fastest)
        return no_lap(side, ErrorCode::no_laps, said("there is no flying lap in it"), said("choose another session"));
    lap::Lap found = *fastest;
    found.number = own_number(*side.session, found);
    return found;
}

} // namespace lapwright::analysis
