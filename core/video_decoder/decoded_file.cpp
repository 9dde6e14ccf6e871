// SPDX-License-Identifier: GPL-3.0-or-later
// The module's entry: a MediaFile on FFmpeg's libraries.
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/video/open_media.h"
#include "core/video_decoder/container.h"
#include "core/video_decoder/frames.h"
#include "core/video_decoder/jpeg.h"
#include "core/video_decoder/picture.h"
#include "core/video_decoder/sound.h"

extern "C" {
#include <libavutil/display.h>
#include <libavutil/parseutils.h>
}

#include <cmath>

namespace lapwright::video_decoder {

using base::said;
using base::word;

namespace {

constexpr int full_turn = 360;
constexpr int quarter = 90;

// Clockwise, to the nearest quarter.
int turned_deg(const AVStream& stream) {
    const auto* const matrix =
        reinterpret_cast<const std::int32_t*>(av_stream_get_side_data(&stream, AV_PKT_DATA_DISPLAYMATRIX, nullptr));
    const double left = matrix == nullptr ? 0.0 : av_display_rotation_get(matrix);
    if (!std::isfinite(left)) return 0;
    const int quarters = static_cast<int>(std::lround(-left / quarter));
    return (((quarters * quarter) % full_turn) + full_turn) % full_turn;
}

std::optional<double> created(const AVFormatContext& file) {
    const AVDictionaryEntry* const entry = av_dict_get(file.metadata, "creation_time", nullptr, 0);
    std::int64_t micros = 0;
    if (entry == nullptr || av_parse_time(&micros, entry->value, 0) < 0) return {};
    constexpr double per_second = 1e6;
    constexpr double cameras_began_s = 946684800.0; // the year 2000: before it a clock was not set
    const double unix_s = static_cast<double>(micros) / per_second;
    return unix_s > cameras_began_s ? std::optional(unix_s) : std::nullopt;
}

double length_s(const AVFormatContext& file, const AVStream& stream) {
    if (stream.duration != AV_NOPTS_VALUE && stream.duration > 0)
        return static_cast<double>(stream.duration) * av_q2d(stream.time_base);
    return file.duration > 0 ? static_cast<double>(file.duration) / AV_TIME_BASE : 0.0;
}

video::Facts facts_of(AVFormatContext& file, const AVStream& stream) {
    video::Facts facts;
    facts.turned_deg = turned_deg(stream);
    const Size size = upright_size({stream.codecpar->width, stream.codecpar->height},
                                   stream.codecpar->sample_aspect_ratio, facts.turned_deg);
    facts.width = size.width;
    facts.height = size.height;
    facts.rate_hz = stream.avg_frame_rate.den > 0 ? av_q2d(stream.avg_frame_rate) : 0.0;
    facts.length_s = length_s(file, stream);
    facts.codec = avcodec_get_name(stream.codecpar->codec_id);
    facts.sound = av_find_best_stream(&file, AVMEDIA_TYPE_AUDIO, -1, -1, nullptr, 0) >= 0;
    facts.created_unix_s = created(file);
    return facts;
}

class DecodedFile : public video::MediaFile {
  public:
    DecodedFile(std::string path, Container container, const AVStream& stream, Pointer<AVCodecContext> decoder)
        : path_(std::move(path)), container_(std::move(container)), stream_(stream),
          facts_(facts_of(*container_.context, stream)), frames_(*container_.context, stream, std::move(decoder)) {}

    const video::Facts& facts() const override { return facts_; }
    base::Result<void> seek(double time_s) override {
        if (const auto done = frames_.seek(time_s); !done)
            return unreadable(path_, done.error().what, done.error().remedy);
        return {};
    }
    base::Result<std::optional<video::FrameTime>> next_frame(const video::GoOn& go_on) override {
        return frames_.next(go_on);
    }
    void hurry_to(double time_s) override { frames_.hurry_to(time_s); }
    bool left_out_since() const override { return frames_.left_out_since(); }
    std::optional<double> entry_before(double time_s) const override { return frames_.entry_before(time_s); }
    base::Result<video::Picture> picture(video::PictureLimits limits) override {
        if (frames_.shown() != nullptr)
            if (auto painted =
                    painter_.paint(*frames_.shown(), stream_.codecpar->sample_aspect_ratio, facts_.turned_deg, limits))
                return std::move(*painted);
        return unreadable(path_, word("a picture of the video cannot be converted"),
                          word("convert the video to H.264"));
    }
    base::Result<std::string> jpeg(const video::Picture& picture, video::JpegFor purpose) const override {
        if (auto bytes = jpeg_of(picture, purpose)) return std::move(*bytes);
        return unreadable(path_, word("a picture of the video cannot be made a still"), word("leave the stills out"));
    }
    base::Result<video::Picture> from_jpeg(const std::string& bytes, video::PictureLimits limits) const override {
        if (auto picture = picture_of_jpeg(bytes, limits)) return std::move(*picture);
        return unreadable(path_, word("a still of the video cannot be read"), word("leave the stills out"));
    }
    base::Result<video::Sound> sound(double from_s, double to_s, double rate_hz, const video::GoOn& go_on) override {
        return read_sound(path_, from_s, to_s, rate_hz, go_on);
    }

  private:
    std::string path_;
    Container container_;
    const AVStream& stream_;
    video::Facts facts_;
    Frames frames_;
    Painter painter_;
};

base::Result<std::unique_ptr<video::MediaFile>> open(const std::string& path) {
    auto container = open_container(path);
    if (!container) return container.error();
    AVFormatContext& file = *container->context;
    const int index = av_find_best_stream(&file, AVMEDIA_TYPE_VIDEO, -1, -1, nullptr, 0);
    if (index < 0 || (file.streams[index]->disposition & AV_DISPOSITION_ATTACHED_PIC) != 0)
        return unreadable(path, word("there is no picture in this file"), word("give the video, not its sound alone"));
    const AVStream& stream = *file.streams[index];
    if (stream.codecpar->width <= 0 || stream.codecpar->height <= 0)
        return unreadable(path, word("the video holds no frame that can be decoded"),
                          word("copy it from the camera again"));
    auto decoder = open_decoder(stream, path);
    if (!decoder) return decoder.error();
    for (unsigned other = 0; other < file.nb_streams; ++other)
        if (static_cast<int>(other) != index) file.streams[other]->discard = AVDISCARD_ALL;
    return std::unique_ptr<video::MediaFile>(
        std::make_unique<DecodedFile>(path, std::move(container).value(), stream, std::move(decoder).value()));
}

} // namespace
} // namespace lapwright::video_decoder

extern "C" const lapwright::video::OpenMedia lapwright_open_media = lapwright::video_decoder::open;
