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

namespace lapwright::bridge {

// Opens the book for itself: on any thread.
[[nodiscard]] base::Result<SessionPointer> session_from_book(const std::string& book_file, book::SessionId id,
                                                             const std::optional<track::TrackRecord>& track,
                                                             const base::Progress& progress);

} // namespace lapwright::bridge
