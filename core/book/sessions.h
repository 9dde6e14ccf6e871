// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions of the book: what people say of them, their laps, and every sample of their channels, which read back bit
// for bit, so that the source file is never needed again.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/lap/lap.h"
#include "core/recording/recording.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::book {

// Reads the file once and never writes.  Error file_not_readable.
[[nodiscard]] base::Result<Source> source_of_file(const std::string& path);

// Driver, car, track and start as the recording has them.
[[nodiscard]] SessionDetails details_of(const recording::Recording& recording);

struct Added {
    SessionId id{};
    bool was_there = false; // the same source: nothing was changed, but for damaged samples
    bool mended = false;    // its damaged samples were written anew
    std::optional<double> removed_unix_s =
        {}; // and it was taken out of the lists then: restore_session() brings it back
};

[[nodiscard]] base::Result<Added> add_session(Book& book, const Source& source, const recording::Recording& recording,
                                              const SessionDetails& details, std::span<const lap::Lap> laps);

// The session that came from this source, removed ones left out.
[[nodiscard]] base::Result<std::optional<SessionId>> find_session(Book& book, const Checksum& source);

// As it was imported, its file's name in the place of its path.  A damaged channel is left out and named in a warning
// "channel_damaged".
[[nodiscard]] base::Result<recording::Recording> read_recording(Book& book, SessionId id);
// The same source read anew, by another recipe for example.
[[nodiscard]] base::Result<void> replace_recording(Book& book, SessionId id, const recording::Recording& recording);

[[nodiscard]] base::Result<SessionDetails> read_details(Book& book, SessionId id);
[[nodiscard]] base::Result<void> change_details(Book& book, SessionId id, const SessionDetails& details);

// For a logger that writes no date, or a wrong one.
[[nodiscard]] base::Result<void> change_start(Book& book, SessionId id, std::optional<double> start_unix_s);

// In their order; as many as were given.
[[nodiscard]] base::Result<std::vector<lap::Lap>> read_laps(Book& book, SessionId id);
[[nodiscard]] base::Result<void> change_laps(Book& book, SessionId id, std::span<const lap::Lap> laps);

// A removed session with its notes and pairings is out of every list, and comes back whole by restore_session.
[[nodiscard]] base::Result<void> remove_session(Book& book, SessionId id);
[[nodiscard]] base::Result<void> restore_session(Book& book, SessionId id);
// Removed sessions are gone for good, and the file gives their room back; how many there were.
[[nodiscard]] base::Result<int> forget_removed(Book& book);

// Sessions that were taken out of the lists and can be brought back.
struct RemovedSession {
    SessionId id{};
    std::string file_name;
    std::string driver;
    std::string car;
    std::string track;
    std::optional<double> start_unix_s;
    double removed_unix_s = 0.0;
};

[[nodiscard]] base::Result<std::vector<RemovedSession>> removed_sessions(Book& book); // the last removed first

} // namespace lapwright::book
