// SPDX-License-Identifier: GPL-3.0-or-later
// FFmpeg's things (libavformat, libavcodec, libswscale, libswresample 5.1) owned as unique_ptr.  Its headers stand in
// no other header of the program.
#pragma once

extern "C" {
#include <libavcodec/avcodec.h>
#include <libavformat/avformat.h>
#include <libswresample/swresample.h>
#include <libswscale/swscale.h>
}

#include <memory>

namespace lapwright::video_decoder {

struct Free {
    void operator()(AVFormatContext* it) const { avformat_close_input(&it); }
    void operator()(AVCodecContext* it) const { avcodec_free_context(&it); }
    void operator()(AVPacket* it) const { av_packet_free(&it); }
    void operator()(AVFrame* it) const { av_frame_free(&it); }
    void operator()(SwsContext* it) const { sws_freeContext(it); }
    void operator()(SwrContext* it) const { swr_free(&it); }
};
template <typename T>
using Pointer = std::unique_ptr<T, Free>;

} // namespace lapwright::video_decoder
