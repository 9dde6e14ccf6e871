// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/edited_track.h"

#include "core/base/plain_text.h"

#include <algorithm>
#include <utility>

namespace lapwright::workspace {
namespace {

using base::Result;

Result<EditedTrack> named_record(Result<track::TrackRecord> record, bool other_gate) {
    if (!record) return record.error();
    EditedTrack edited{std::move(record).value(), other_gate};
    if (edited.record.name.empty()) edited.record.name = unnamed_track;
    return edited;
}

} // namespace

Result<EditedTrack> edited(const track::Track& track, const SegmentEdit& edit) {
    auto segments = edit(track.segments);
    if (!segments) return segments.error();
    track::Track changed = track;
    changed.segments = std::move(segments).value();
    return named_record(track::record_of(changed), false);
}

Result<EditedTrack> with_gate_at(const track::Track& track, double place_m) {
    return named_record(track::record_with_gate_at(track, place_m), true);
}

SessionPointer on_track(const SessionPointer& session, const std::optional<track::TrackRecord>& record) {
    auto moved = std::make_shared<analysis::Session>(*session);
    moved->known_track = record;
    return moved;
}

std::vector<SessionPointer> on_track(const OpenSessions& sessions, const track::TrackRecord& record,
                                     const std::vector<SessionKey>& compared) {
    std::vector<SessionPointer> moved;
    for (const OpenSessions::Entry& entry : sessions.entries()) {
        const auto& known = entry.session->known_track;
        const bool drives_it = (known && base::same_name(known->name, record.name)) ||
                               std::ranges::find(compared, entry.key) != compared.end();
        if (drives_it) moved.push_back(on_track(entry.session, record));
    }
    return moved;
}

} // namespace lapwright::workspace
