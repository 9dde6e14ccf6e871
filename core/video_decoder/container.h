// SPDX-License-Identifier: GPL-3.0-or-later
// A container opened for reading one of its streams: the packets of that stream alone, and the decoder for them.
#pragma once

#include "core/base/result.h"
#include "core/video_decoder/ffmpeg_pointers.h"

#include <chrono>
#include <memory>
#include <optional>
#include <string>

namespace lapwright::video_decoder {

using Deadline = std::optional<std::chrono::steady_clock::time_point>;

struct Container {
    std::unique_ptr<Deadline> opening_ends; // the library asks for it as long as the file is open
    Pointer<AVFormatContext> context;
};

// The container of a local file.  Error file_not_readable in a sentence.
[[nodiscard]] base::Result<Container> open_container(const std::string& path);

// The decoder of a stream, with bounds on what it may take.
[[nodiscard]] base::Result<Pointer<AVCodecContext>> open_decoder(const AVStream& stream, const std::string& path);

// Presentation time that is zero for pictures and sound, in AV_TIME_BASE.
[[nodiscard]] std::int64_t zero_of(const AVFormatContext& container);
// A stamp of the stream in seconds from that zero.
[[nodiscard]] double seconds(const AVFormatContext& container, const AVStream& stream, std::int64_t stamp);

[[nodiscard]] base::Error unreadable(const std::string& path, std::string what, std::string remedy);

} // namespace lapwright::video_decoder
