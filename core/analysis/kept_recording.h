// SPDX-License-Identifier: GPL-3.0-or-later
// A session's recording as the book has it.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/recording/recording.h"

namespace lapwright::analysis {

// The names and the date that the book has for a session are the session's.
void take_over(recording::Recording& recording, const book::SessionDetails& details);

// Its samples as they were imported, under the names and the date that the book has now.
[[nodiscard]] base::Result<recording::Recording> kept_recording(book::Book& book, book::SessionId id);

} // namespace lapwright::analysis
