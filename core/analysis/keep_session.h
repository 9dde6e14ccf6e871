// SPDX-License-Identifier: GPL-3.0-or-later
// How a session comes into the book: the rule of window and command line.  What a person says of it now takes the place
// of what the book has; what merely lies there or was found (setup sheet beside the file, names in it, track by its
// gate) fills what is missing; laps are as they are timed now; who opens a removed one wants it in the book again.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/sessions.h"
#include "core/car/setup_sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

struct SessionToKeep {
    const Session* session = nullptr;
    std::string known_track = {}; // by its gate
    car::SetupSheet setup = {};   // beside the file
    std::optional<std::string> said_track = {};
    std::optional<car::SetupSheet> said_setup = {};
    std::string said_conditions = {}; // empty: nothing
    bool read_anew = false;           // its columns mean something else now: other samples
};

struct KeptInBook {
    book::Added added;
    std::vector<std::string> renewed; // of a session that was there: "track", "setup", "conditions" as they were said
};

// The session of that file.
[[nodiscard]] base::Result<KeptInBook> keep_session(book::Book& book, const book::Source& source,
                                                    const SessionToKeep& wanted);
// One that is in the book already; what was renewed.
[[nodiscard]] base::Result<std::vector<std::string>> renew_session(book::Book& book, book::SessionId id,
                                                                   const SessionToKeep& wanted);

// A sheet that a person gave to the session: where it names driver or car, so does the session from now on.
void put_setup(book::SessionDetails& details, const car::SetupSheet& sheet);

} // namespace lapwright::analysis
