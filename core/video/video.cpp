// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/video.h"

#include "core/base/check.h"
#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/video/open_media.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <string_view>
#include <system_error>
#include <utility>

namespace lapwright::video {

using base::said;

std::size_t Video::part_at(double time_s) const {
    const auto later = std::ranges::upper_bound(parts, time_s, {}, &Part::start_s);
    return later == parts.begin() ? 0 : static_cast<std::size_t>(later - parts.begin()) - 1;
}

bool is_named_as_video(const std::string& path) {
    static constexpr std::string_view endings[] = {".mp4", ".mov", ".m4v", ".mkv", ".avi", ".ts", ".mts", ".mpg"};
    const std::string ending = base::lower_case(std::filesystem::path(path).extension().string());
    return std::ranges::find(endings, ending) != std::end(endings);
}

std::string video_beside(const std::string& recording) {
    namespace fs = std::filesystem;
    const fs::path own(recording);
    std::error_code problem;
    std::vector<std::string> found;
    if (!own.has_parent_path()) return {};
    for (fs::directory_iterator entry(own.parent_path(), problem); !problem && entry != fs::directory_iterator();
         entry.increment(problem)) {
        const fs::path& path = entry->path();
        if (path.stem() == own.stem() && path != own && is_named_as_video(path.string()) &&
            fs::is_regular_file(path, problem))
            found.push_back(path.string());
    }
    return found.empty() ? std::string() : *std::ranges::min_element(found);
}

base::Result<Video> join(std::vector<Part> parts) {
    base::check(!parts.empty(), "a video has a file");
    Video video{std::move(parts), {}};
    video.facts = video.parts.front().file->facts();
    video.facts.length_s = 0.0;
    for (Part& part : video.parts) {
        const Facts& facts = part.file->facts();
        if (&part != &video.parts.back() && !(facts.length_s > 0.0))
            return base::Error{base::ErrorCode::file_not_readable,
                               {part.path, {}, ""},
                               said("the video does not say how long it is, so that nothing can be joined to it"),
                               said("give it alone")};
        part.start_s = video.facts.length_s;
        video.facts.length_s += facts.length_s;
        video.facts.sound = video.facts.sound && facts.sound;
    }
    return video;
}

base::Result<Video> open_video(const std::vector<std::string>& paths) {
    std::vector<Part> parts;
    for (const std::string& path : paths) {
        auto file = open_media(path);
        if (!file) return file.error();
        parts.push_back({path, std::move(file).value(), 0.0});
    }
    return join(std::move(parts));
}

base::Result<Sound> sound(Video& video, double from_s, double to_s, double rate_hz, const GoOn& go_on) {
    Sound all{from_s, rate_hz, {}};
    for (std::size_t i = video.part_at(from_s); i < video.parts.size() && video.parts[i].start_s < to_s; ++i) {
        const Part& part = video.parts[i];
        const bool last = i + 1 == video.parts.size();
        const double end_s = last ? to_s : std::min(to_s, video.parts[i + 1].start_s);
        const double begin_s = std::max(from_s, part.start_s);
        auto piece = part.file->sound(begin_s - part.start_s, end_s - part.start_s, rate_hz, go_on);
        if (!piece) return piece.error();
        all.samples.resize(static_cast<std::size_t>(std::round((begin_s - from_s) * rate_hz)), 0.0F);
        all.samples.insert(all.samples.end(), piece->samples.begin(), piece->samples.end());
    }
    return all;
}

} // namespace lapwright::video
