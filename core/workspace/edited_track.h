// SPDX-License-Identifier: GPL-3.0-or-later
// The track of two compared laps as a person edits it, and the sessions that drive the edited one from then on.
#pragma once

#include "core/base/result.h"
#include "core/track/edit_segments.h"
#include "core/workspace/open_sessions.h"

#include <functional>
#include <string>
#include <vector>

namespace lapwright::workspace {

struct EditedTrack {
    track::TrackRecord record;
    bool other_gate = false; // laps are timed anew
};

using SegmentEdit = std::function<base::Result<track::Segments>(track::Segments)>;

// Error: the edit is refused, or the track has no place on the earth.  Without a name the track gets one that says so.
[[nodiscard]] base::Result<EditedTrack> edited(const track::Track& track, const SegmentEdit& edit);
[[nodiscard]] base::Result<EditedTrack> with_gate_at(const track::Track& track, double place_m);

// "Unnamed track", which is to be renamed on a session's card.
inline constexpr const char* unnamed_track = "Unnamed track";

// Those of the open sessions that are known to drive this track, and the two that were compared, with the record in
// the place of the one that they had.  Where the gate is another their laps are to be found anew.
[[nodiscard]] std::vector<SessionPointer> on_track(const OpenSessions& sessions, const track::TrackRecord& record,
                                                   const std::vector<SessionKey>& compared);

// The same session on that track.
[[nodiscard]] SessionPointer on_track(const SessionPointer& session, const std::optional<track::TrackRecord>& record);

} // namespace lapwright::workspace
