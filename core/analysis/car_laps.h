// SPDX-License-Identifier: GPL-3.0-or-later
// Laps of one car gathered for what they tell of it: with every recorded channel, the air of the day, and the hills
// where altitude was recorded all the way.
#pragma once

#include "core/analysis/analysis.h"
#include "core/car/car_figures.h"
#include "core/car/setup_sheet.h"
#include "core/track/track.h"

#include <vector>

namespace lapwright::analysis {

class CarLaps {
  public:
    // trace: of that session's motion, from start_s of its clock on.
    void take(const Session& session, const motion::MotionEstimate& motion, const lap::LapTrace& trace, double start_s);

    [[nodiscard]] const std::vector<lap::LapTrace>& laps() const { return laps_; }

    // Weather comes from the setup sheet, else from the recording, else from the altitude.
    [[nodiscard]] car::CarData data(const Session& session, const car::SetupSheet& setup,
                                    const std::vector<track::Segment>& segments, double length_sd) const;

  private:
    std::vector<lap::LapTrace> laps_;
    std::vector<std::vector<double>> altitudes_; // of those laps that have them all the way
};

} // namespace lapwright::analysis
