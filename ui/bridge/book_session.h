// SPDX-License-Identifier: GPL-3.0-or-later
// A session out of the book: its samples as they were imported, understood as a file's would be.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/book/entries.h"
#include "core/track/track_record.h"
#include "ui/bridge/worker.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::bridge {

// Both open the book for themselves: on any thread.  A session bears the names that the book has for it.
[[nodiscard]] base::Result<SessionPointer> session_from_book(const std::string& book_file, book::SessionId id,
                                                             const std::optional<track::TrackRecord>& track,
                                                             const base::Progress& progress);

// The same session with the names and the date that the book has for it; itself where they are no others.
[[nodiscard]] SessionPointer named(const SessionPointer& session, const book::SessionDetails& details);

// The tracks with a gate; none where there is no book or it cannot be read.
[[nodiscard]] std::vector<track::TrackRecord> tracks_of_book(const std::string& book_file);

} // namespace lapwright::bridge
