// SPDX-License-Identifier: GPL-3.0-or-later
// The sound of a file as samples of one channel, each at its time of presentation.
#pragma once

#include "core/video/media_file.h"

#include <string>

namespace lapwright::video_decoder {

// Reads the file by itself, beside whoever reads its pictures.
[[nodiscard]] base::Result<video::Sound> read_sound(const std::string& path, double from_s, double to_s, double rate_hz,
                                                    const video::GoOn& go_on);

} // namespace lapwright::video_decoder
