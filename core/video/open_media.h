// SPDX-License-Identifier: GPL-3.0-or-later
// Opens a video file with the decoder, which is a module of its own: its libraries bring a hundred others and cost 40
// ms, so that they are loaded when the first video is, and a program without them runs as well.
#pragma once

#include "core/video/media_file.h"

#include <memory>
#include <string>

namespace lapwright::video {

// Error file_not_readable, in one sentence: no video, no picture in it, cut off, too large, no decoder installed.
[[nodiscard]] base::Result<std::unique_ptr<MediaFile>> open_media(const std::string& path);

[[nodiscard]] bool decoder_is_installed();

// What the module holds, a variable of the name `module_entry`.
using OpenMedia = base::Result<std::unique_ptr<MediaFile>> (*)(const std::string& path);
inline constexpr const char* module_entry = "lapwright_open_media";
inline constexpr const char* module_stem = "lapwright-video";

} // namespace lapwright::video
