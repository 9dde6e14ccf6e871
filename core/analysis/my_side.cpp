// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/my_side.h"

#include "core/base/plain_text.h"

namespace lapwright::analysis {
namespace {

// 0: not mine.  Another car is another car, whoever drives it.
int likeness(const car::Names& mine, const car::Names& side) {
    if (base::same_name(mine.driver, side.driver) && base::same_name(mine.car, side.car)) return 4;
    const bool driver = !mine.driver.empty() && base::same_name(mine.driver, side.driver);
    if (mine.car.empty() || side.car.empty()) return driver ? 1 : 0;
    return base::same_name(mine.car, side.car) ? 2 : 0;
}

} // namespace

car::Names names_to_keep(const Session& session) {
    const recording::Recording& recording = *session.recording;
    if (recording.driver.empty() && recording.car.empty()) return {"", session.title()};
    return {recording.driver, recording.car};
}

MySides my_sides(const std::optional<car::Names>& mine, const Pairing& pairing) {
    if (!mine || !pairing.a.session || !pairing.b.session) return {};
    const int a = likeness(*mine, names_to_keep(*pairing.a.session));
    const int b = likeness(*mine, names_to_keep(*pairing.b.session));
    return {a > 0 && a >= b, b > 0 && b >= a};
}

std::optional<causes::Side> spoken_to(const MySides& mine) {
    if (mine.a == mine.b) return std::nullopt;
    return mine.a ? causes::Side::a : causes::Side::b;
}

} // namespace lapwright::analysis
