// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/book_session.h"

#include "core/analysis/kept_recording.h"
#include "core/analysis/run.h"
#include "core/book/tracks.h"

#include <filesystem>
#include <utility>

namespace lapwright::bridge {
namespace {

std::vector<track::TrackRecord> tracks_of(book::Book& book) {
    auto tracks = book::tracks(book);
    return tracks.ok() ? std::move(tracks).value() : std::vector<track::TrackRecord>();
}

} // namespace

SessionPointer named(const SessionPointer& session, const book::SessionDetails& details) {
    const recording::Recording& before = *session->recording;
    const auto other = [](const std::string& name, const std::string& now) { return !name.empty() && name != now; };
    // A track that the file does not name was found by the gate, and is known to the session already.
    const bool other_track = !before.track.empty() && other(details.track, before.track);
    if (!other(details.driver, before.driver) && !other(details.car, before.car) && !other_track &&
        details.start_unix_s == before.start_unix_s)
        return session;
    auto recording = std::make_shared<recording::Recording>(before);
    analysis::take_over(*recording, details);
    auto renamed = std::make_shared<analysis::Session>(*session);
    renamed->recording = std::move(recording);
    return renamed;
}

base::Result<SessionPointer> session_from_book(const std::string& book_file, book::SessionId id,
                                               const std::optional<track::TrackRecord>& track,
                                               const base::Progress& progress) {
    if (book_file.empty())
        return base::Error{base::ErrorCode::book_not_usable,
                           {},
                           "this session is in the book, and the window has none",
                           "start it with the book, or open the session's file"};
    auto opened = book::Book::open(book_file);
    if (!opened.ok()) return opened.error();
    book::Book book = std::move(opened).value();
    if (!base::go_on(progress, "reading from the book", 0.05)) return base::cancelled();
    auto recording = analysis::kept_recording(book, id);
    if (!recording.ok()) return recording.error();
    analysis::SessionOptions options;
    options.track = track;
    if (!track) options.known_tracks = tracks_of(book);
    return analysis::understand(std::move(recording).value(), options, progress);
}

std::vector<track::TrackRecord> tracks_of_book(const std::string& book_file) {
    if (book_file.empty() || !std::filesystem::exists(book_file)) return {};
    auto opened = book::Book::open(book_file);
    if (!opened.ok()) return {}; // the keeper says so
    book::Book book = std::move(opened).value();
    return tracks_of(book);
}

} // namespace lapwright::bridge
