// SPDX-License-Identifier: GPL-3.0-or-later
// Which figures of an explanation may be shown.  Every cause, sum, share and sensitivity passes here once, before
// anybody sees it: it has to lie inside its own interval, come of fits that settled and of figures that the data know,
// be no greater than physics allows for the two cars, and the simulated cars have to take the measured times.  What
// does not is untold, with the reason, in tables, JSON, page and sheet alike.
//
// Bounds: the time in a corner goes with (grip times load)^−1/2, that at full throttle with (mass / power)^1/3 and with
// drag^1/3 at most (dimensional analysis of v²/R = μ N/m and of P = D v³).
#pragma once

#include "core/causes/explanation.h"

namespace lapwright::causes {

void withhold_what_cannot_be_told(Explanation& explanation);

// For CarModel::untold.
[[nodiscard]] std::array<std::string, cause_count> why_not_what_if(const Explanation& explanation, Side side);

// The most that a cause can be worth between two such cars over `time_s`, taking both figures at the far ends of their
// intervals; infinite where an end is not above zero, so that no ratio can be had.
[[nodiscard]] double max_possible_s(const car::CarFigures& a, const car::CarFigures& b, Cause cause, double time_s);

} // namespace lapwright::causes
