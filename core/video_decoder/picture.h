// SPDX-License-Identifier: GPL-3.0-or-later
// A decoded frame as an upright picture of the size that is wanted.
#pragma once

#include "core/video/media_file.h"
#include "core/video_decoder/ffmpeg_pointers.h"

#include <optional>

namespace lapwright::video_decoder {

struct Size {
    int width = 0;
    int height = 0;
};

// The stored picture's size with square pixels, upright.
[[nodiscard]] Size upright_size(Size stored, AVRational pixel_aspect, int turned_deg);
// The same shape within the limits, at least one pixel, never larger than it is.
[[nodiscard]] Size within(Size size, video::PictureLimits limits);

class Painter {
  public:
    // turned_deg: clockwise, a multiple of 90.  Nothing where the frame cannot be converted.
    [[nodiscard]] std::optional<video::Picture> paint(const AVFrame& frame, AVRational pixel_aspect, int turned_deg,
                                                      video::PictureLimits limits);

  private:
    Pointer<SwsContext> scaler_; // kept from frame to frame
};

} // namespace lapwright::video_decoder
