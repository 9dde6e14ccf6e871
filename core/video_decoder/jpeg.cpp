// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video_decoder/jpeg.h"

#include "core/video_decoder/ffmpeg_pointers.h"
#include "core/video_decoder/picture.h"

#include <algorithm>
#include <array>

namespace lapwright::video_decoder {
namespace {

// Of the library's 1 (best) to 31.
constexpr int quality(video::JpegFor purpose) {
    return purpose == video::JpegFor::paper ? 3 : 7;
}
constexpr AVPixelFormat coded_as = AV_PIX_FMT_YUVJ420P;

Pointer<AVCodecContext> encoder_for(const video::Picture& picture, int global_quality) {
    const AVCodec* const codec = avcodec_find_encoder(AV_CODEC_ID_MJPEG);
    Pointer<AVCodecContext> encoder(codec == nullptr ? nullptr : avcodec_alloc_context3(codec));
    if (!encoder) return {};
    encoder->width = picture.width;
    encoder->height = picture.height;
    encoder->pix_fmt = coded_as;
    encoder->color_range = AVCOL_RANGE_JPEG;
    encoder->time_base = {1, 25};
    encoder->flags |= AV_CODEC_FLAG_QSCALE;
    encoder->global_quality = global_quality;
    if (avcodec_open2(encoder.get(), codec, nullptr) < 0) return {};
    return encoder;
}

Pointer<AVFrame> as_coded(const video::Picture& picture, int global_quality) {
    Pointer<AVFrame> frame(av_frame_alloc());
    if (!frame) return {};
    frame->width = picture.width;
    frame->height = picture.height;
    frame->format = coded_as;
    frame->quality = global_quality;
    const Pointer<SwsContext> scaler(sws_getContext(picture.width, picture.height, AV_PIX_FMT_RGB24, picture.width,
                                                    picture.height, coded_as, SWS_BILINEAR, nullptr, nullptr, nullptr));
    if (!scaler || av_frame_get_buffer(frame.get(), 0) < 0) return {};
    const std::array<const std::uint8_t*, 4> planes{picture.rgb.data(), nullptr, nullptr, nullptr};
    const std::array<int, 4> strides{3 * picture.width, 0, 0, 0};
    if (sws_scale(scaler.get(), planes.data(), strides.data(), 0, picture.height, frame->data, frame->linesize) <= 0)
        return {};
    return frame;
}

} // namespace

std::optional<std::string> jpeg_of(const video::Picture& picture, video::JpegFor purpose) {
    const int global_quality = FF_QP2LAMBDA * quality(purpose);
    const auto encoder = encoder_for(picture, global_quality);
    const auto frame = as_coded(picture, global_quality);
    const Pointer<AVPacket> packet(av_packet_alloc());
    if (!encoder || !frame || !packet || avcodec_send_frame(encoder.get(), frame.get()) < 0) return {};
    if (avcodec_receive_packet(encoder.get(), packet.get()) < 0) return {};
    return std::string(reinterpret_cast<const char*>(packet->data), static_cast<std::size_t>(packet->size));
}

std::optional<video::Picture> picture_of_jpeg(const std::string& bytes, video::PictureLimits limits) {
    const AVCodec* const codec = avcodec_find_decoder(AV_CODEC_ID_MJPEG);
    const Pointer<AVCodecContext> decoder(codec == nullptr ? nullptr : avcodec_alloc_context3(codec));
    const Pointer<AVPacket> packet(av_packet_alloc());
    const Pointer<AVFrame> frame(av_frame_alloc());
    constexpr std::size_t most_bytes = 1U << 28U;
    if (!decoder || !packet || !frame || bytes.size() > most_bytes) return {};
    if (avcodec_open2(decoder.get(), codec, nullptr) < 0) return {};
    if (av_new_packet(packet.get(), static_cast<int>(bytes.size())) < 0) return {};
    std::ranges::copy(bytes, packet->data);
    if (avcodec_send_packet(decoder.get(), packet.get()) < 0) return {};
    if (avcodec_receive_frame(decoder.get(), frame.get()) < 0) return {};
    return Painter().paint(*frame, {1, 1}, 0, limits);
}

} // namespace lapwright::video_decoder
