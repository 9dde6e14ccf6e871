// SPDX-License-Identifier: GPL-3.0-or-later
// From what is known of both cars and drivers to the causes of the gap.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/causes/explanation.h"
#include "core/comparison/comparison.h"
#include "core/lap/lap.h"

#include <cstdint>
#include <vector>

namespace lapwright::causes {

// One side of the question.
struct KnownSide {
    car::CarFigures figures;
    std::vector<lap::LapTrace> clean_laps; // the line that the driver takes; at least one
    std::vector<double> segment_s;         // of the compared lap, one a segment
};

struct ExplainOptions {
    bool same_car = false; // both sides have the same figures, draw by draw
    double step_m = 4.0;
    unsigned threads = 2;
    std::uint64_t seed = 1;
};

// comparison: of the compared laps, with the same segments.  Both sides' figures have equally many draws.
// Errors: cancelled.
[[nodiscard]] base::Result<Explanation> explain(const KnownSide& a, const KnownSide& b,
                                                const comparison::Comparison& comparison,
                                                const ExplainOptions& options = {},
                                                const base::Progress& progress = {});

// The car whose figures with a bit of `mask` set (bit i: all_causes[i]) are B's, the others A's; brakes and traction
// belong to A's driver and car.
[[nodiscard]] car::SimulatedCar mixture(const car::SimulatedCar& a, const car::SimulatedCar& b, unsigned mask);

// Shapley's values per segment (outer index) of all 32 mixtures with one driver's use.
[[nodiscard]] std::vector<std::array<double, cause_count>> causes_by_segment(const car::SimulatedCar& a,
                                                                             const car::SimulatedCar& b,
                                                                             const car::Course& course,
                                                                             const car::DriverUse& use);

} // namespace lapwright::causes
