// SPDX-License-Identifier: GPL-3.0-or-later
// What the numbers say, as claims: each with its seconds, its interval, its evidence, where to look, and what to try
// next; ranked by what it is worth times how surely it is there.  The words follow the interval: "is" outside chance at
// 95 %, "is probably" at four in five, else "cannot be told".
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/comparison/comparison.h"
#include "core/comparison/own_reserve.h"
#include "core/comparison/repeatability.h"
#include "core/findings/headline.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::findings {

enum class Certainty { is, is_probably, cannot_be_told };

[[nodiscard]] std::string_view words(Certainty certainty); // "is", "is probably", "cannot be told"

// low..high: 95 % interval; both infinite where no error is known, which is then as good as told.
[[nodiscard]] Certainty certainty_of(double value, double low, double high);
// Chance that the sign is right, 0.5..1, for a normal spread with that 95 % interval.
[[nodiscard]] double chance_of_sign(double value, double low, double high);

enum class About {
    segment,
    cornering_as_driven,
    cornering,
    aero,
    straights,
    tyre_grip,
    downforce,
    drag,
    power,
    mass,
    driver_and_rest
};

struct Finding {
    About about = About::segment;
    Favours favours = Favours::neither;
    Certainty certainty = Certainty::cannot_be_told;
    double seconds = 0.0; // positive favours A
    std::optional<double> low;
    std::optional<double> high;
    std::string claim;    // one sentence
    std::string evidence; // the figures behind it
    std::string try_next; // may be empty
    std::string worth;    // "A 0.44 ±0.03"
    // Where the Compare page shows it: the segment, or the one where the cause is worth most.
    std::optional<std::size_t> segment;
    double start_m = 0.0;
    double end_m = 0.0;
    double rank = 0.0; // seconds × chance of the sign
    // The sum that is known better and goes before it (core/causes/telling_order.h).
    std::optional<About> behind;
};

// Whom "try next" may speak to, and how far: one entry a segment, or empty where the laps are not there.
struct Advice {
    std::optional<causes::Side> my_car; // absent: both are spoken to, as A and B
    std::vector<comparison::OwnReserve> reserve_a;
    std::vector<comparison::OwnReserve> reserve_b;
};

// All findings, the best first.  `explanation` may be null: then only what the laps themselves show.  repeatability:
// one a segment, or empty.
[[nodiscard]] std::vector<Finding> findings(const comparison::Comparison& comparison,
                                            const std::vector<comparison::Repeatability>& repeatability,
                                            const causes::Explanation* explanation, base::UnitSystem units,
                                            const Advice& advice = {});

// The sentence on top of the Causes page: no more than the intervals support.
[[nodiscard]] std::string causes_sentence(const causes::Explanation& explanation);

} // namespace lapwright::findings
