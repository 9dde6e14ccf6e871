// SPDX-License-Identifier: GPL-3.0-or-later
// Steps that the run of one session and of a pairing share.
#pragma once

#include "core/lap/lap.h"
#include "core/motion/motion_estimate.h"
#include "core/track/build_line.h"
#include "core/track/track.h"

#include <vector>

namespace lapwright::analysis {

// Clean or not, judged on the line; laps that are not flying keep their kind.
[[nodiscard]] std::vector<lap::Lap> judged_laps(std::vector<lap::Lap> laps, const motion::MotionEstimate& motion,
                                                const track::ReferenceLine& line);

// The flying laps that a reference line may be made of, at most eight: within 7 % of the middle lap, which comes first.
[[nodiscard]] std::vector<track::Stretch> likely_laps(const std::vector<lap::Lap>& laps,
                                                      const motion::MotionEstimate& motion);

// The fastest clean lap, else the fastest flying one, else null.
[[nodiscard]] const lap::Lap* fastest_of(const std::vector<lap::Lap>& laps);

// The gate at station 0, square to the line.
[[nodiscard]] track::Gate square_gate(const track::ReferenceLine& line, double half_width_m);

} // namespace lapwright::analysis
