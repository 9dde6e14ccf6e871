// SPDX-License-Identifier: GPL-3.0-or-later
// A session as the book has it: its recording, and what it makes.
#pragma once

#include "core/analysis/run.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/lap/judged_by_hand.h"
#include "core/recording/recording.h"

#include <memory>
#include <vector>

namespace lapwright::analysis {

// The names and the date that the book has for a session are the session's.
void take_over(recording::Recording& recording, const book::SessionDetails& details);

// Its samples as they were imported, under the names and the date that the book has now.
[[nodiscard]] base::Result<recording::Recording> kept_recording(book::Book& book, book::SessionId id);

// What the book has of a session; and the session that it makes, which asks the book for nothing more.
struct KeptRecording {
    recording::Recording recording;
    book::Source source;
    std::vector<lap::JudgedByHand> words; // of a person, about its laps
};
[[nodiscard]] base::Result<KeptRecording> read_kept(book::Book& book, book::SessionId id);
[[nodiscard]] base::Result<std::shared_ptr<const Session>>
understand_kept(KeptRecording kept, const SessionOptions& options, const base::Progress& progress = {});

// Both: the session, with what a person says of its laps and the file that it came from.
[[nodiscard]] base::Result<std::shared_ptr<const Session>>
kept_session(book::Book& book, book::SessionId id, const SessionOptions& options, const base::Progress& progress = {});

} // namespace lapwright::analysis
