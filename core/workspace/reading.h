// SPDX-License-Identifier: GPL-3.0-or-later
// How a session is read, out of its file or out of the book: the rule of both front ends.  Its columns are taken as the
// first recipe for its shape says; a setup sheet that lies beside the file names its driver and car; laps are timed by
// the track that was given, else by the one of the book's tracks that was driven; laps that a person set aside or
// counted as the book has it are so from the beginning.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/car/setup_sheet.h"
#include "core/import/formats/preview.h"
#include "core/import/formats/recipe_folder.h"
#include "core/track/track_record.h"
#include "core/workspace/session_key.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::workspace {

struct ReadingOptions {
    std::string book_file = {}; // empty: there is no book
    std::optional<track::TrackRecord> track = {};
    std::vector<import::KeptRecipe> recipes = {};
    // In the place of the one that lies beside the file.  One there that cannot be read is left out.
    std::optional<car::SetupSheet> setup = {};
    std::string words_folder = {}; // where the person's own vocabulary.txt lies beside the recipes; empty: nowhere
};

// Opens the book for itself: on any thread.  A session out of it bears the names that the book has for it.
[[nodiscard]] base::Result<SessionPointer> read_session(const Origin& origin, const ReadingOptions& options,
                                                        const base::Progress& progress = {});

// What the program takes the columns of a file for, with the person's own words; `options` as the preview has them.
[[nodiscard]] base::Result<import::Preview> preview_session(const std::string& path, import::Options options,
                                                            const ReadingOptions& reading);

} // namespace lapwright::workspace
