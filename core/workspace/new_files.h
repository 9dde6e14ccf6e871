// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings that lie in folders and that nobody has opened yet: in the folder of the last time, on a card that was
// just put in.  Files are looked into, for reading alone, and told by their first part, not by their names; what cannot
// be read is passed over without a word.  Paths are UTF-8.
#pragma once

#include "core/base/progress.h"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::workspace {

struct SearchedFolder {
    std::string path;
    int depth = 0;                               // of the folders within it that are searched too
    std::optional<double> not_older_unix_s = {}; // files that were changed before are not new
};

struct NewFile {
    std::string path;
    std::uint64_t size_bytes = 0;
    double changed_unix_s = 0.0;

    bool operator==(const NewFile&) const = default;
};

// The name without its folder, and the size: what a book tells of a session's file.
using KnownFile = std::pair<std::string, std::uint64_t>;

// Whether its first part reads as a recording: time, and a speed or positions.
[[nodiscard]] bool looks_like_recording(const std::string& path);

// The newest first, at most `most`, each once, without those that are known.  Of a great folder a part is searched.
[[nodiscard]] std::vector<NewFile> new_recordings(const std::vector<SearchedFolder>& folders,
                                                  const std::set<KnownFile>& known, std::size_t most,
                                                  const base::Progress& progress = {});

} // namespace lapwright::workspace
