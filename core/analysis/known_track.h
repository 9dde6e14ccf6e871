// SPDX-License-Identifier: GPL-3.0-or-later
// Which of the tracks that are known already did a session drive?
#pragma once

#include "core/analysis/analysis.h"
#include "core/book/tracks.h"
#include "core/motion/motion_estimate.h"
#include "core/recording/recording.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace lapwright::analysis {

// The one whose gate makes laps of the session, as long as the record says (within 5 %, where it says so); of several
// the one that the file names, else the one with the nearest length.  Without positions the one that the file names.
[[nodiscard]] std::optional<track::TrackRecord> driven_track(const std::vector<track::TrackRecord>& known,
                                                             const recording::Recording& recording,
                                                             const motion::MotionEstimate& motion);

// The record in the motion's frame.
[[nodiscard]] track::Gate gate_of(const track::TrackRecord& record, const motion::MotionEstimate& motion);

// The record that all of the sessions were found to drive.
[[nodiscard]] std::optional<track::TrackRecord> known_to_all(std::span<const std::shared_ptr<const Session>> sessions);

// The track's line with its frame, as the book keeps it; nothing where no session has positions on the earth.
[[nodiscard]] std::optional<book::KeptLine> line_to_keep(const track::Track& track,
                                                         std::span<const std::shared_ptr<const Session>> sessions);

} // namespace lapwright::analysis
