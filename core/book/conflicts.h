// SPDX-License-Identifier: GPL-3.0-or-later
// Where people said different things of the same field in two books, each without knowing of the other's: all values
// are kept, the latest is in use, and a person settles it by taking one of them.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/database.h"

#include <string>
#include <vector>

namespace lapwright::book {

struct SaidValue {
    std::string key;   // names the value in every book: eight hexadecimal digits
    std::string value; // as it is kept: a name, words, a moment (UTC seconds since 1970), a setup sheet or a track
                       // record in JSON; empty: nothing
    double said_unix_s = 0.0; // 0: by the session's file
    bool in_use = false;
};

struct Conflict {
    std::string about; // the session's file, the track's name, or "a note"
    std::string
        field; // "driver", "car", "track", "start", "conditions", "setup", "record" (of a track), "text" (of a note)
    std::vector<SaidValue> values; // two or more, the one in use first
};

// By subject and field; removed sessions and notes are left out.
[[nodiscard]] base::Result<std::vector<Conflict>> conflicts(Book& book);

// This value is the field's from now on, for every book that is united with this one.  Error book_not_usable where no
// conflict has a value of this key.
[[nodiscard]] base::Result<void> settle_conflict(Book& book, const std::string& key);

// Within a look or an edit of the caller.
struct ConflictRow {
    std::string subject;
    std::string field;
    std::string about;
};
[[nodiscard]] std::vector<ConflictRow> conflict_rows(Database& database);

} // namespace lapwright::book
