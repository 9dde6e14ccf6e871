// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/session_names.h"

#include "core/base/plain_text.h"

#include <algorithm>
#include <utility>

namespace lapwright::workspace {

SessionNames names_of(const analysis::Session& session) {
    const recording::Recording& recording = *session.recording;
    SessionNames names{recording.driver, recording.car, recording.track, recording.start_unix_s, session.conditions};
    if (names.track.empty() && session.known_track) names.track = session.known_track->name;
    return names;
}

SessionNames plain(const SessionNames& names) {
    return {base::plain_name(names.driver), base::plain_name(names.car), base::plain_name(names.track),
            names.start_unix_s, base::plain_name(names.conditions)};
}

bool same_reading(const analysis::Session& one, const analysis::Session& other) {
    return one.motion == other.motion && one.laps.size() == other.laps.size() &&
           std::ranges::equal(one.recording->channels, other.recording->channels,
                              [](const recording::Channel& a, const recording::Channel& b) {
                                  return a.time_s == b.time_s && a.meaning == b.meaning;
                              });
}

SessionPointer with_names(const SessionPointer& session, const SessionNames& names) {
    const SessionNames before = names_of(*session);
    if (names == before) return session;
    auto recording = std::make_shared<recording::Recording>(*session->recording);
    recording->driver = names.driver;
    recording->car = names.car;
    // The name that its gate tells is not the file's.
    if (names.track != before.track) recording->track = names.track;
    recording->start_unix_s = names.start_unix_s;
    auto renamed = std::make_shared<analysis::Session>(*session);
    renamed->recording = std::move(recording);
    renamed->conditions = names.conditions;
    return renamed;
}

SessionPointer named(const SessionPointer& session, const book::SessionDetails& details) {
    SessionNames names = names_of(*session);
    const auto take = [](std::string& name, const std::string& kept) {
        if (!kept.empty()) name = kept;
    };
    take(names.driver, details.driver);
    take(names.car, details.car);
    take(names.track, details.track);
    take(names.conditions, details.conditions);
    names.start_unix_s = details.start_unix_s;
    return with_names(session, names);
}

} // namespace lapwright::workspace
