// SPDX-License-Identifier: GPL-3.0-or-later
// How SQLite is to open a book that may lie where nothing can be written: a file without write permission, a folder
// that is read-only, a write-protected medium.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>

namespace lapwright::book {

struct FileAccess {
    std::string name; // for SQLite: a path, or a URI
    bool writes = true;
    // Read without any lock, because none can be taken: nobody may write meanwhile (see FileState).
    bool without_locks = false;
};

// SQLite reads a book with a log only where it can keep its shared memory beside it (sqlite.org/wal.html, "Read-Only
// Databases").  A book that was closed has no log and is read without locks; one whose last edits are in a log that
// cannot be read here is an error book_not_usable that says so.  `read_only`: as if nothing could be written.
[[nodiscard]] base::Result<FileAccess> access_to(const std::string& path, bool read_only);

// A file's name as SQLite takes it: one that looks like a URI stays a name.
[[nodiscard]] std::string sqlite_name(const std::string& path);

// What tells that a file was written meanwhile.
struct FileState {
    bool has_log = false;
    std::int64_t size = 0;
    std::int64_t changed_ns = 0;

    bool operator==(const FileState&) const = default;
};
[[nodiscard]] FileState state_of(const std::string& path);

} // namespace lapwright::book
