// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video_decoder/jpeg.h"

#include "core/video_decoder/ffmpeg_pointers.h"

#include <array>

namespace lapwright::video_decoder {
namespace {

constexpr int quality = 3; // of the library's 1 (best) to 31: some 1.5 bits a pixel
constexpr AVPixelFormat coded_as = AV_PIX_FMT_YUVJ420P;

Pointer<AVCodecContext> encoder_for(const video::Picture& picture) {
    const AVCodec* const codec = avcodec_find_encoder(AV_CODEC_ID_MJPEG);
    Pointer<AVCodecContext> encoder(codec == nullptr ? nullptr : avcodec_alloc_context3(codec));
    if (!encoder) return {};
    encoder->width = picture.width;
    encoder->height = picture.height;
    encoder->pix_fmt = coded_as;
    encoder->color_range = AVCOL_RANGE_JPEG;
    encoder->time_base = {1, 25};
    encoder->flags |= AV_CODEC_FLAG_QSCALE;
    encoder->global_quality = FF_QP2LAMBDA * quality;
    if (avcodec_open2(encoder.get(), codec, nullptr) < 0) return {};
    return encoder;
}

Pointer<AVFrame> as_coded(const video::Picture& picture) {
    Pointer<AVFrame> frame(av_frame_alloc());
    if (!frame) return {};
    frame->width = picture.width;
    frame->height = picture.height;
    frame->format = coded_as;
    frame->quality = FF_QP2LAMBDA * quality;
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

std::optional<std::string> jpeg_of(const video::Picture& picture) {
    const auto encoder = encoder_for(picture);
    const auto frame = as_coded(picture);
    const Pointer<AVPacket> packet(av_packet_alloc());
    if (!encoder || !frame || !packet || avcodec_send_frame(encoder.get(), frame.get()) < 0) return {};
    if (avcodec_receive_packet(encoder.get(), packet.get()) < 0) return {};
    return std::string(reinterpret_cast<const char*>(packet->data), static_cast<std::size_t>(packet->size));
}

} // namespace lapwright::video_decoder
