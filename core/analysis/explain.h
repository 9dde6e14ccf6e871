// SPDX-License-Identifier: GPL-3.0-or-later
// Pairing and setup sheets -> what the data say of both cars, and the causes of the gap.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/car/setup_sheet.h"
#include "core/causes/explanation.h"

#include <cstdint>
#include <memory>

namespace lapwright::analysis {

struct CausesOptions {
    car::SetupSheet setup_a; // empty where there is none
    car::SetupSheet setup_b;
    std::size_t draws = 200;
    std::uint64_t seed = 1;
    unsigned threads = 2;
};

// Clean laps of both sessions teach the cars (the compared lap alone where none is clean); weather comes from the setup
// sheet, else from the recording, else from the altitude.  Error cannot_be_computed when a session shows no stretch at
// full throttle; cancelled.  Two laps of one session are of one car, whose setup is A's.
[[nodiscard]] base::Result<std::shared_ptr<const causes::Explanation>>
explain(const Pairing& pairing, const CausesOptions& options = {}, const base::Progress& progress = {});

} // namespace lapwright::analysis
