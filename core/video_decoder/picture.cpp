// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video_decoder/picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace lapwright::video_decoder {

namespace {

constexpr std::size_t channels = 3;

bool lies(int turned_deg) {
    return turned_deg == 90 || turned_deg == 270;
}

video::Picture turned(const video::Picture& stored, int turned_deg) {
    if (turned_deg == 0) return stored;
    const int width = lies(turned_deg) ? stored.height : stored.width;
    const int height = lies(turned_deg) ? stored.width : stored.height;
    video::Picture upright{width, height, std::vector<std::uint8_t>(stored.rgb.size())};
    for (int y = 0; y < stored.height; ++y)
        for (int x = 0; x < stored.width; ++x) {
            const int to_x = turned_deg == 90 ? width - 1 - y : (turned_deg == 180 ? width - 1 - x : y);
            const int to_y = turned_deg == 90 ? x : (turned_deg == 180 ? height - 1 - y : height - 1 - x);
            const auto from = static_cast<std::size_t>(y * stored.width + x) * channels;
            const auto to = static_cast<std::size_t>(to_y * width + to_x) * channels;
            std::copy_n(stored.rgb.begin() + static_cast<std::ptrdiff_t>(from), channels,
                        upright.rgb.begin() + static_cast<std::ptrdiff_t>(to));
        }
    return upright;
}

} // namespace

Size upright_size(Size stored, AVRational pixel_aspect, int turned_deg) {
    constexpr double widest = 4.0; // a pixel's aspect beyond this is a mistake of the file
    double aspect = pixel_aspect.num > 0 && pixel_aspect.den > 0 ? av_q2d(pixel_aspect) : 1.0;
    if (!(aspect > 1.0 / widest && aspect < widest)) aspect = 1.0;
    stored.width = std::max(1, static_cast<int>(std::lround(stored.width * aspect)));
    if (lies(turned_deg)) std::swap(stored.width, stored.height);
    return stored;
}

Size within(Size size, video::PictureLimits limits) {
    const double share = std::min(
        {1.0, static_cast<double>(limits.width) / size.width, static_cast<double>(limits.height) / size.height});
    return {std::max(1, static_cast<int>(std::lround(size.width * share))),
            std::max(1, static_cast<int>(std::lround(size.height * share)))};
}

std::optional<video::Picture> Painter::paint(const AVFrame& frame, AVRational pixel_aspect, int turned_deg,
                                             video::PictureLimits limits) {
    Size size = within(upright_size({frame.width, frame.height}, pixel_aspect, turned_deg), limits);
    if (lies(turned_deg)) std::swap(size.width, size.height);
    scaler_.reset(sws_getCachedContext(scaler_.release(), frame.width, frame.height,
                                       static_cast<AVPixelFormat>(frame.format), size.width, size.height,
                                       AV_PIX_FMT_RGB24, SWS_BILINEAR, nullptr, nullptr, nullptr));
    if (!scaler_) return {};
    // The library writes rows in blocks: it gets room for a row more than there is.
    const auto row = static_cast<std::size_t>(size.width) * channels;
    video::Picture picture{size.width, size.height,
                           std::vector<std::uint8_t>(row * static_cast<std::size_t>(size.height + 1))};
    const std::array<std::uint8_t*, 4> planes{picture.rgb.data(), nullptr, nullptr, nullptr};
    const std::array<int, 4> strides{static_cast<int>(row), 0, 0, 0};
    if (sws_scale(scaler_.get(), frame.data, frame.linesize, 0, frame.height, planes.data(), strides.data()) <= 0)
        return {};
    picture.rgb.resize(row * static_cast<std::size_t>(size.height));
    return turned(picture, turned_deg);
}

} // namespace lapwright::video_decoder
