// SPDX-License-Identifier: GPL-3.0-or-later
// The files that one camera wrote one behind the other, as one video: time runs on from the first to the last.
#pragma once

#include "core/video/media_file.h"

#include <memory>
#include <string>
#include <vector>

namespace lapwright::video {

struct Part {
    std::string path;
    std::unique_ptr<MediaFile> file;
    double start_s = 0.0; // in the time of the video
};

struct Video {
    std::vector<Part> parts; // at least one, in order
    Facts facts;             // of the first, but length and sound are of all

    // The part that shows time_s: the first before all, the last behind all.
    [[nodiscard]] std::size_t part_at(double time_s) const;
};

// By its ending, as cameras and editors name them (common practice, no source); what is inside shows when it is opened.
[[nodiscard]] bool is_named_as_video(const std::string& path);

// The video of the recording's own name in its folder ("outing.csv", "outing.mp4"); empty: there is none.
[[nodiscard]] std::string video_beside(const std::string& recording);

// Error file_not_readable.  A part that others follow must say how long it is.
[[nodiscard]] base::Result<Video> open_video(const std::vector<std::string>& paths);
[[nodiscard]] base::Result<Video> join(std::vector<Part> parts); // at least one; their starts are set here

// See MediaFile::sound().
[[nodiscard]] base::Result<Sound> sound(Video& video, double from_s, double to_s, double rate_hz, const GoOn& go_on);

} // namespace lapwright::video
