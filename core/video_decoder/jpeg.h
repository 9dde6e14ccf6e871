// SPDX-License-Identifier: GPL-3.0-or-later
// A picture as a JPEG file (ITU-T T.81, baseline, three quarters of the colour left out: 4:2:0), and back.
#pragma once

#include "core/video/media_file.h"

#include <optional>
#include <string>

namespace lapwright::video_decoder {

// Its bytes; nothing where the library cannot make it.
[[nodiscard]] std::optional<std::string> jpeg_of(const video::Picture& picture, video::JpegFor purpose);

// Nothing where these are no such bytes.
[[nodiscard]] std::optional<video::Picture> picture_of_jpeg(const std::string& bytes, video::PictureLimits limits);

} // namespace lapwright::video_decoder
