// SPDX-License-Identifier: GPL-3.0-or-later
// The last pass over the whole session, joined from end to end: best path, draws, and what each sensor was worth.
#pragma once

#include "core/base/progress.h"
#include "core/motion/motion_model.h"
#include "core/motion/refine.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace lapwright::motion {

struct SensorCount {
    std::size_t samples = 0;
    std::size_t rejected = 0;
};

struct Ensemble {
    Path best;
    std::vector<Draw> draws;
    std::array<SensorCount, sensors> counts{};
    Vec2 accelerometer_bias_mps2; // longitudinal, lateral; mean over the session
};

struct EnsembleOptions {
    Use use;
    double gate = 6.0;
    unsigned draws = 32;
    std::uint64_t seed = 1;
    unsigned threads = 0;
};

// Nothing when it was cancelled.
[[nodiscard]] std::optional<Ensemble> ensemble(const Estimation& estimation, const EnsembleOptions& options,
                                               const base::Progress& progress);

} // namespace lapwright::motion
