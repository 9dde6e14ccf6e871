// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a video that is shown at a time: exactly that one, however the file is coded.  It winds to the last
// point of entry before the time and decodes up to it; pictures on the way are kept for the steps that follow.
#pragma once

#include "core/video/frame_cache.h"
#include "core/video/video.h"

#include <optional>

namespace lapwright::video {

class FrameReader {
  public:
    struct Options {
        PictureLimits limits = {};
        std::size_t cache_bytes = 96U << 20U; // of pictures; the decoder has its own besides
        double kept_before_s = 2.0;           // pictures on the way to a time are kept from here on
    };
    FrameReader(Video video, Options options);

    [[nodiscard]] const Facts& facts() const { return video_.facts; }
    // The last frame that begins at or before time_s; before all the first, behind all the last.  The error is
    // file_not_readable where no frame can be decoded, or cancelled.
    [[nodiscard]] base::Result<Frame> at(double time_s, const GoOn& go_on = {});
    // Nothing before the first and behind the last.
    [[nodiscard]] base::Result<std::optional<Frame>> before(const Frame& frame, const GoOn& go_on = {});
    [[nodiscard]] base::Result<std::optional<Frame>> after(const Frame& frame, const GoOn& go_on = {});

  private:
    [[nodiscard]] base::Result<void> go_to(std::size_t part, double local_s, const GoOn& go_on);
    [[nodiscard]] base::Result<void> wind(std::size_t part, double local_s, const GoOn& go_on);
    [[nodiscard]] base::Result<bool> step(double wanted_s, const GoOn& go_on); // false at the part's end
    [[nodiscard]] bool runs_on_to(std::size_t part, double local_s) const;
    [[nodiscard]] base::Result<void> keep(double wanted_s);

    Video video_;
    Options options_;
    FrameCache cache_;
    std::size_t part_ = 0;
    std::optional<FrameTime> decoded_; // of that part, in its own time
};

} // namespace lapwright::video
