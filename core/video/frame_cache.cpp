// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/frame_cache.h"

#include <iterator>

namespace lapwright::video {
namespace {

std::size_t size_of(const Frame& frame) {
    return frame.picture->rgb.size();
}

} // namespace

std::optional<Frame> FrameCache::find(double time_s) const {
    const std::lock_guard alone(*mutex_);
    const auto later = frames_.upper_bound(time_s);
    if (later == frames_.begin()) return {};
    const Frame& frame = std::prev(later)->second;
    return time_s < frame.until_s ? std::optional(frame) : std::nullopt;
}

void FrameCache::put(const Frame& frame, double around_s) {
    const std::lock_guard alone(*mutex_);
    const auto [place, added] = frames_.try_emplace(frame.time_s, frame);
    if (!added) return;
    bytes_ += size_of(frame);
    while (bytes_ > most_bytes_ && frames_.size() > 1) {
        const auto first = frames_.begin();
        const auto last = std::prev(frames_.end());
        const bool first_goes = last == place || (first != place && around_s - first->first > last->first - around_s);
        const auto going = first_goes ? first : last;
        bytes_ -= size_of(going->second);
        frames_.erase(going);
    }
}

void FrameCache::clear() {
    const std::lock_guard alone(*mutex_);
    frames_.clear();
    bytes_ = 0;
}

std::size_t FrameCache::bytes() const {
    const std::lock_guard alone(*mutex_);
    return bytes_;
}

} // namespace lapwright::video
