// SPDX-License-Identifier: GPL-3.0-or-later
// What may be called a setup trial: sessions of one car, one driver and one track, driven one after the other.
#pragma once

#include "core/base/result.h"
#include "core/car/setup_sheet.h"
#include "core/recording/recording.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

struct PlannedRun {
    const recording::Recording* recording = nullptr;
    std::string title; // in sentences
    bool changed = false;
    car::SetupSheet setup = {}; // says nothing where none is known
};

// Refused where these sessions are no trial: another car, driver or track in one of them, the same session twice, two
// that were driven at one time.  Names count where both have them, whatever their capitals and outer spaces.
[[nodiscard]] base::Result<void> check_trial(const std::vector<PlannedRun>& runs);

// Places of the runs in the order in which they were driven, by their start times; nothing where one has none.
[[nodiscard]] std::optional<std::vector<std::size_t>> driven_order(const std::vector<PlannedRun>& runs);

// "the setup sheets show no change: …" where a run with the change and one without have the same sheet, or one that
// belongs together differs; empty where the sheets say what was changed, or say nothing.
[[nodiscard]] std::string change_not_shown(const std::vector<PlannedRun>& runs);

} // namespace lapwright::analysis
