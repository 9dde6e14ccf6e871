// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/kept_frames.h"

#include <cmath>
#include <iterator>
#include <utility>

namespace lapwright::video {

const KeptFrame* KeptFrames::find(double time_s) const {
    const auto later = frames_.upper_bound(time_s);
    if (later == frames_.begin()) return nullptr;
    const KeptFrame& frame = std::prev(later)->second;
    return time_s < frame.until_s ? &frame : nullptr;
}

bool KeptFrames::put(KeptFrame frame, double around_s) {
    if (frames_.contains(frame.time_s)) return true;
    const double away_s = std::abs(frame.time_s - around_s);
    while (bytes_ + frame.jpeg.size() > most_bytes_) {
        if (frames_.empty()) return false;
        const auto first = frames_.begin();
        const auto last = std::prev(frames_.end());
        const bool first_goes = around_s - first->first > last->first - around_s;
        const auto furthest = first_goes ? first : last;
        if (!(std::abs(furthest->first - around_s) > away_s)) return false;
        bytes_ -= furthest->second.jpeg.size();
        frames_.erase(furthest);
    }
    bytes_ += frame.jpeg.size();
    const double time_s = frame.time_s;
    frames_.emplace(time_s, std::move(frame));
    return true;
}

void KeptFrames::clear() {
    frames_.clear();
    bytes_ = 0;
}

} // namespace lapwright::video
