// SPDX-License-Identifier: GPL-3.0-or-later
// A session's video: where its files lie, by what they are known again, and how it stands to the recording.  The video
// itself stays where it is.  Books that are merged know every place where a file of that content was seen, each on its
// machine; what was said last of a session's video counts.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

struct VideoFile {
    std::string path;
    std::uint64_t size_bytes = 0;
    Checksum ends{};                       // of head and tail, 64 KiB each: a video is too long to be read whole
    std::vector<std::string> also_at = {}; // as video_of() knows: other places of a file of that content

    bool operator==(const VideoFile&) const = default;
};

// recording time = video time + offset_s + drift·(video time − around_s); the interval is the 95 % one.
struct KeptStep {
    double offset_s = 0.0;
    double offset_low_s = 0.0;
    double offset_high_s = 0.0;
    double drift = 0.0;
    double around_s = 0.0;
    std::string method;

    bool operator==(const KeptStep&) const = default;
};

struct KeptVideo {
    std::vector<VideoFile> files; // in their order, at least one
    std::optional<KeptStep> step;

    bool operator==(const KeptVideo&) const = default;
};

// Error file_not_readable.
[[nodiscard]] base::Result<VideoFile> video_file(const std::string& path);

// Nothing: the session has none, or is not in the book.
[[nodiscard]] base::Result<std::optional<KeptVideo>> video_of(Book& book, const Checksum& session);
// Nothing takes it away.  A session that is not in the book is left out.
[[nodiscard]] base::Result<void> put_video(Book& book, const Checksum& session, const std::optional<KeptVideo>& video);

// Where each file lies now: at its path, else at another place where it was seen, else in one of the folders under its
// name, else there under another name with the same size and ends.  Error file_not_readable names the first that is
// nowhere.
[[nodiscard]] base::Result<std::vector<std::string>> locate(const KeptVideo& video,
                                                            const std::vector<std::string>& folders);

} // namespace lapwright::book
