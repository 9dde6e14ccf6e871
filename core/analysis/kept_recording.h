// SPDX-License-Identifier: GPL-3.0-or-later
// A session as the book has it: its recording, and what it makes.
#pragma once

#include "core/analysis/run.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/recording/recording.h"

#include <memory>

namespace lapwright::analysis {

// The names and the date that the book has for a session are the session's.
void take_over(recording::Recording& recording, const book::SessionDetails& details);

// Its samples as they were imported, under the names and the date that the book has now.
[[nodiscard]] base::Result<recording::Recording> kept_recording(book::Book& book, book::SessionId id);

// The session that they make, with what a person says of its laps and the file that it came from.
[[nodiscard]] base::Result<std::shared_ptr<const Session>>
kept_session(book::Book& book, book::SessionId id, const SessionOptions& options, const base::Progress& progress = {});

} // namespace lapwright::analysis
