// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures that were decoded around the cursor, within a bound of memory.  Whoever shows them looks here while another
// thread decodes.
#pragma once

#include "core/video/media_file.h"

#include <cstddef>
#include <map>
#include <memory>
#include <mutex>
#include <optional>

namespace lapwright::video {

// Shown from time_s until until_s (infinite for the last frame).
struct Frame {
    double time_s = 0.0;
    double until_s = 0.0;
    std::shared_ptr<const Picture> picture;
};

class FrameCache {
  public:
    explicit FrameCache(std::size_t most_bytes) : most_bytes_(most_bytes) {}

    // The frame that is shown at time_s, if it is here.
    [[nodiscard]] std::optional<Frame> find(double time_s) const;
    // Room is made by those furthest from around_s; the one that is put stays.
    void put(const Frame& frame, double around_s);
    void clear();
    [[nodiscard]] std::size_t bytes() const;

  private:
    std::unique_ptr<std::mutex> mutex_ = std::make_unique<std::mutex>(); // a cache may be moved
    std::size_t most_bytes_;
    std::size_t bytes_ = 0;
    std::map<double, Frame> frames_; // by time_s
};

} // namespace lapwright::video
