// SPDX-License-Identifier: GPL-3.0-or-later
// What a person says of a session: who drove what, where, when and in what conditions.  A file may know some of it, all
// of it or nothing; what is said here counts for this session alone.
#pragma once

#include "core/workspace/session_key.h"

#include <optional>
#include <string>

namespace lapwright::workspace {

// Empty or absent: not known.
struct SessionNames {
    std::string driver = {};
    std::string car = {};
    std::string track = {};
    std::optional<double> start_unix_s = {};
    std::string conditions = {};

    bool operator==(const SessionNames&) const = default;
};

// The track's name is the one that the file or the book has, else the one of the track that was found by its gate.
[[nodiscard]] SessionNames names_of(const analysis::Session& session);

// On one line each, without blanks around them, as the book would keep them.
[[nodiscard]] SessionNames plain(const SessionNames& names);

// One reading of a file, whatever its names: the samples are the same ones in memory.
[[nodiscard]] bool same_reading(const analysis::Session& one, const analysis::Session& other);

// The same session with exactly these; itself where they are no others.
[[nodiscard]] SessionPointer with_names(const SessionPointer& session, const SessionNames& names);

// The same session with the names, the date and the conditions that the book has for it; what the book does not know
// stays.
[[nodiscard]] SessionPointer named(const SessionPointer& session, const book::SessionDetails& details);

} // namespace lapwright::workspace
