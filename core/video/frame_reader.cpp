// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/frame_reader.h"

#include "core/base/check.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lapwright::video {
namespace {

constexpr double moment_s = 1e-6; // shorter than any frame
constexpr double before_all_s = -1e9;

base::Error without_frames(const std::string& path) {
    return {base::ErrorCode::file_not_readable,
            {path, {}, ""},
            "the video holds no frame that can be decoded",
            "copy it from the camera again"};
}

// Of its own size, that a picture within the limits has.
double share_within(PictureLimits limits, const Facts& facts) {
    return std::min({1.0, static_cast<double>(limits.width) / std::max(facts.width, 1),
                     static_cast<double>(limits.height) / std::max(facts.height, 1)});
}

} // namespace

FrameReader::FrameReader(Video video, Options options)
    : video_(std::move(video)), options_(options), cache_(options.cache_bytes), kept_(options.kept_bytes) {}

// Whether decoding on from here reaches the time sooner than winding does.
bool FrameReader::runs_on_to(std::size_t part, double local_s) const {
    constexpr double run_s = 2.0; // without an index
    if (part != part_ || !decoded_ || local_s < decoded_->time_s) return false;
    if (local_s < decoded_->until_s) return true;
    const auto entry = video_.parts[part].file->entry_before(local_s);
    return entry ? *entry <= decoded_->until_s : local_s - decoded_->time_s < run_s;
}

void FrameReader::fit(PictureLimits limits) {
    if (limits == options_.limits) return;
    const double was_kept = share_within(kept_size(), facts());
    options_.limits = limits;
    cache_.clear();
    if (share_within(kept_size(), facts()) > was_kept) kept_.clear();
}

base::Result<Frame> FrameReader::decoded_frame(PictureLimits limits) {
    const double start_s = video_.parts[part_].start_s;
    const bool last_part = part_ + 1 == video_.parts.size();
    const double part_ends_s = last_part ? std::numeric_limits<double>::infinity() : video_.parts[part_ + 1].start_s;
    const double until_s = std::min(start_s + decoded_->until_s, part_ends_s);
    auto picture = video_.parts[part_].file->picture(limits);
    if (!picture) return picture.error();
    return Frame{start_s + decoded_->time_s, until_s, std::make_shared<const Picture>(std::move(picture).value())};
}

// The picture of the decoded frame into the cache.
base::Result<void> FrameReader::keep(double around_s) {
    if (cache_.find(video_.parts[part_].start_s + decoded_->time_s)) return {};
    const auto frame = decoded_frame(options_.limits);
    if (!frame) return frame.error();
    cache_.put(*frame, around_s);
    return {};
}

// On the way; not into the cache, since frames behind it may have been left out.
base::Result<void> FrameReader::pass(Asked& asked) {
    if (!asked.passed || std::chrono::steady_clock::now() - asked.since < options_.moment) return {};
    const auto frame = decoded_frame(options_.limits);
    if (!frame) return frame.error();
    asked.passed({frame->time_s, frame->time_s, frame->picture});
    asked.since = std::chrono::steady_clock::now();
    return {};
}

base::Result<bool> FrameReader::step(const GoOn& go_on) {
    const auto next = video_.parts[part_].file->next_frame(go_on);
    if (!next) return next.error();
    if (!*next) return false;
    decoded_ = **next;
    return true;
}

// Where the point of entry is far, what lies just before is decoded on the way, which costs less than a second time.
double FrameReader::kept_before(std::size_t part, double local_s) const {
    constexpr double far_s = 1.2;
    constexpr double near_s = 0.5;
    const auto entry = video_.parts[part].file->entry_before(local_s);
    return entry && local_s - *entry > far_s ? near_s : 0.0;
}

// To a frame at or before the time, or to the first of the part.  A point of entry may lie behind the time, since files
// list the order of decoding: then further back.
base::Result<void> FrameReader::wind(std::size_t part, double local_s, Pace pace, const Asked& asked) {
    constexpr double longest_s = 0.12; // that a frame stands; where it is longer, that is noticed
    const double margin_s = std::max(asked.kept_before_s, longest_s);
    MediaFile& file = *video_.parts[part].file;
    part_ = part;
    for (double back_s = 0.0;; back_s = 2.0 * back_s + 1.0) {
        const bool from_start = back_s > local_s;
        decoded_.reset();
        if (const auto wound = file.seek(from_start ? before_all_s : local_s - back_s); !wound) return wound.error();
        if (pace == Pace::hurried) file.hurry_to(local_s - margin_s);
        const auto found = step(asked.go_on);
        if (!found) return found.error();
        if (decoded_ && (from_start || decoded_->time_s <= local_s)) return {};
        if (from_start) return without_frames(video_.parts[part].path);
    }
}

base::Result<void> FrameReader::run_to(double local_s, Asked& asked) {
    while (local_s >= decoded_->until_s) {
        if (local_s - decoded_->time_s < asked.kept_before_s && !video_.parts[part_].file->left_out_since())
            if (const auto kept = keep(asked.around_s); !kept) return kept.error();
        if (const auto passed = pass(asked); !passed) return passed.error();
        const auto found = step(asked.go_on);
        if (!found) return found.error();
        if (!*found) break; // the next one could not be decoded after all
    }
    return {};
}

base::Result<void> FrameReader::go_to(std::size_t part, double local_s, Asked asked) {
    if (!runs_on_to(part, local_s))
        if (const auto wound = wind(part, local_s, Pace::hurried, asked); !wound) return wound.error();
    if (const auto there = run_to(local_s, asked); !there) return there.error();
    if (video_.parts[part].file->left_out_since()) { // a frame that stands for long: none may be left out
        if (const auto wound = wind(part, local_s, Pace::every_frame, asked); !wound) return wound.error();
        if (const auto there = run_to(local_s, asked); !there) return there.error();
    }
    return keep(asked.around_s);
}

base::Result<Frame> FrameReader::at(double time_s, const GoOn& go_on, const Passed& passed) {
    base::check(!std::isnan(time_s), "a frame is asked for at a time");
    if (const auto known = cache_.find(time_s)) return *known;
    const auto small = kept(time_s);
    if (small && !large()) {
        cache_.put(*small, time_s);
        return *small;
    }
    if (small && passed) passed(*small);
    const Passed nobody;
    const std::size_t part = video_.part_at(time_s);
    const double start_s = video_.parts[part].start_s;
    if (const auto there = go_to(part, time_s - start_s,
                                 {time_s, go_on, small ? nobody : passed, kept_before(part, time_s - start_s)});
        !there)
        return there.error();
    const auto found = cache_.find(std::max(time_s, start_s + decoded_->time_s));
    if (!found) return without_frames(video_.parts[part].path);
    return *found;
}

base::Result<std::optional<Frame>> FrameReader::before(const Frame& frame, const GoOn& go_on) {
    const auto found = at(frame.time_s - moment_s, go_on);
    if (!found) return found.error();
    return found->time_s < frame.time_s ? std::optional(*found) : std::nullopt;
}

base::Result<std::optional<Frame>> FrameReader::after(const Frame& frame, const GoOn& go_on) {
    if (!std::isfinite(frame.until_s)) return std::optional<Frame>();
    const auto found = at(frame.until_s + moment_s, go_on);
    if (!found) return found.error();
    return found->time_s > frame.time_s ? std::optional(*found) : std::nullopt;
}

// Into the cache.
bool FrameReader::bring(double time_s, double around_s, const GoOn& go_on) {
    const auto small = large() ? std::nullopt : kept(time_s);
    if (small) {
        cache_.put(*small, around_s);
        return true;
    }
    const Passed nobody;
    const std::size_t part = video_.part_at(time_s);
    return go_to(part, time_s - video_.parts[part].start_s, {around_s, go_on, nobody}).ok();
}

// False where it was called off, or cannot be read.
bool FrameReader::fill_from(double from_s, double to_s, double around_s, const GoOn& go_on) {
    for (double time_s = from_s; time_s < to_s;) {
        if (go_on && !go_on()) return false;
        if (!cache_.find(time_s) && !bring(time_s, around_s, go_on)) return false;
        const auto known = cache_.find(time_s);
        if (!known || !(known->until_s > time_s)) return false;
        time_s = known->until_s + moment_s;
    }
    return true;
}

// Onwards first: the decoder stands there.
void FrameReader::fill(double time_s, double before_s, double after_s, const GoOn& go_on) {
    const auto shown = cache_.find(time_s);
    if (!shown) return;
    // Half the room to either side, reckoned by this frame's picture and length.
    const double frame_s = std::isfinite(shown->until_s) ? shown->until_s - shown->time_s : 1.0;
    const auto room = static_cast<double>(options_.cache_bytes / std::max<std::size_t>(shown->picture->rgb.size(), 1));
    const double most_s = std::max(0.0, (0.5 * room - 2.0) * frame_s);
    const double from_s = std::max(0.0, shown->time_s - std::min(before_s, most_s));
    if (fill_from(shown->time_s, shown->time_s + std::min(after_s, most_s), time_s, go_on) && from_s < shown->time_s)
        static_cast<void>(fill_from(from_s, shown->time_s, time_s, go_on));
}

bool FrameReader::large() const {
    return share_within(options_.limits, facts()) > share_within(options_.kept_limits, facts());
}

std::optional<Frame> FrameReader::kept(double time_s) const {
    const KeptFrame* const small = kept_.find(time_s);
    if (small == nullptr) return {};
    auto picture = video_.parts.front().file->from_jpeg(small->jpeg, options_.limits);
    if (!picture) return {};
    return Frame{small->time_s, small->until_s, std::make_shared<const Picture>(std::move(picture).value())};
}

PictureLimits FrameReader::kept_size() const {
    return {std::min(options_.limits.width, options_.kept_limits.width),
            std::min(options_.limits.height, options_.kept_limits.height)};
}

// False: there is no room, or it cannot be made.
bool FrameReader::keep_small(const Frame& frame, double around_s) {
    auto jpeg = video_.parts.front().file->jpeg(*frame.picture, JpegFor::a_glance);
    return jpeg && kept_.put({frame.time_s, frame.until_s, std::move(jpeg).value()}, around_s);
}

bool FrameReader::keep_decoded_small(double around_s) {
    if (kept_.find(video_.parts[part_].start_s + decoded_->time_s) != nullptr) return true;
    const auto frame = decoded_frame(kept_size());
    return frame && keep_small(*frame, around_s);
}

// False where it was called off, cannot be read, or has no room.
bool FrameReader::read_on(double from_s, double to_s, double around_s, const GoOn& go_on) {
    const Passed nobody;
    for (double time_s = from_s; time_s < to_s;) {
        if (go_on && !go_on()) return false;
        if (const KeptFrame* const known = kept_.find(time_s); known != nullptr) {
            time_s = known->until_s + moment_s;
            continue;
        }
        if (const auto decoded = large() ? std::nullopt : cache_.find(time_s)) {
            if (!keep_small(*decoded, around_s)) return false;
            time_s = decoded->until_s + moment_s;
            continue;
        }
        const std::size_t part = video_.part_at(time_s);
        const double local_s = time_s - video_.parts[part].start_s;
        const Asked asked{around_s, go_on, nobody};
        const bool runs_on = runs_on_to(part, local_s) && !video_.parts[part].file->left_out_since();
        if (!runs_on && !wind(part, local_s, Pace::every_frame, asked)) return false;
        while (local_s >= decoded_->until_s) {
            if (!keep_decoded_small(around_s)) return false;
            const auto found = step(go_on);
            if (!found || !*found) return false;
        }
        if (!keep_decoded_small(around_s)) return false;
        time_s = std::max(time_s, video_.parts[part].start_s + decoded_->until_s) + moment_s;
    }
    return true;
}

void FrameReader::read_ahead(double from_s, double to_s, double around_s, const GoOn& go_on) {
    const double first_s = std::max(from_s, 0.0);
    const double here_s = std::clamp(around_s, first_s, std::max(first_s, to_s));
    if (read_on(here_s, to_s, around_s, go_on)) static_cast<void>(read_on(first_s, here_s, around_s, go_on));
}

} // namespace lapwright::video
