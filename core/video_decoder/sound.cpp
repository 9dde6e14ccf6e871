// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video_decoder/sound.h"

#include "core/base/progress.h"
#include "core/video_decoder/container.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace lapwright::video_decoder {

namespace {

constexpr double patience_s = 0.03;      // stamps of good files wander less (a sound frame lasts 21 ms)
constexpr double longest_gap_s = 3600.0; // a jump beyond it is a mistake of the file

// Samples of any kind in, samples of one channel at one rate out, laid down by their stamps.
class Mixer {
  public:
    Mixer(double from_s, double to_s, double rate_hz) : from_s_(from_s), to_s_(to_s) {
        sound_.start_s = from_s;
        sound_.rate_hz = rate_hz;
    }

    void add(const AVFrame& frame, double time_s) {
        if (!prepare(frame)) return;
        if (!laying_ || std::abs(time_s - expected_s_) > patience_s) jump_to(time_s);
        expected_s_ += static_cast<double>(frame.nb_samples) / frame.sample_rate;
        convert(const_cast<const std::uint8_t**>(frame.extended_data), frame.nb_samples);
    }
    [[nodiscard]] bool full() const { return sound_.samples.size() >= wanted(to_s_); }
    [[nodiscard]] video::Sound finish() {
        flush();
        sound_.samples.resize(std::min(sound_.samples.size(), wanted(to_s_)));
        return std::move(sound_);
    }

  private:
    [[nodiscard]] std::size_t wanted(double time_s) const {
        return static_cast<std::size_t>(std::max(0.0, std::round((time_s - from_s_) * sound_.rate_hz)));
    }

    bool prepare(const AVFrame& frame) {
        if (mixer_ && frame.sample_rate == rate_ && frame.format == format_ && frame.ch_layout.nb_channels == channels_)
            return true;
        flush();
        rate_ = frame.sample_rate;
        format_ = frame.format;
        channels_ = frame.ch_layout.nb_channels;
        AVChannelLayout one{};
        av_channel_layout_default(&one, 1);
        AVChannelLayout given = frame.ch_layout;
        SwrContext* made = nullptr;
        const int set = swr_alloc_set_opts2(&made, &one, AV_SAMPLE_FMT_FLT, static_cast<int>(sound_.rate_hz), &given,
                                            static_cast<AVSampleFormat>(format_), rate_, 0, nullptr);
        mixer_.reset(made);
        laying_ = false;
        if (set < 0 || rate_ <= 0 || swr_init(mixer_.get()) < 0) mixer_.reset();
        return mixer_ != nullptr;
    }

    // What the converter still holds is laid down, then silence up to the stamp, or what is too much is taken back.
    void jump_to(double time_s) {
        if (laying_) {
            flush();
            if (swr_init(mixer_.get()) < 0) return;
        }
        laying_ = true;
        expected_s_ = time_s;
        const double ahead_s = time_s - from_s_;
        to_skip_ = ahead_s < 0.0 ? wanted(from_s_ - ahead_s) : 0;
        if (ahead_s < longest_gap_s + static_cast<double>(sound_.samples.size()) / sound_.rate_hz)
            sound_.samples.resize(std::min(wanted(time_s), wanted(to_s_)), 0.0F);
    }

    void flush() {
        if (mixer_ && laying_) convert(nullptr, 0);
    }

    void convert(const std::uint8_t** data, int count) {
        const int room = std::max(swr_get_out_samples(mixer_.get(), count), 1);
        made_.resize(static_cast<std::size_t>(room));
        std::array<std::uint8_t*, 1> to{reinterpret_cast<std::uint8_t*>(made_.data())};
        const int made = swr_convert(mixer_.get(), to.data(), room, data, count);
        const auto usable = static_cast<std::size_t>(std::max(made, 0));
        const std::size_t skipped = std::min(to_skip_, usable);
        to_skip_ -= skipped;
        sound_.samples.insert(sound_.samples.end(), made_.begin() + static_cast<std::ptrdiff_t>(skipped),
                              made_.begin() + static_cast<std::ptrdiff_t>(usable));
    }

    double from_s_;
    double to_s_;
    video::Sound sound_;
    Pointer<SwrContext> mixer_;
    std::vector<float> made_;
    int rate_ = 0;
    int format_ = 0;
    int channels_ = 0;
    bool laying_ = false;
    double expected_s_ = 0.0;
    std::size_t to_skip_ = 0; // samples before from_s
};

// True at the end of the file.
bool feed(AVFormatContext& container, AVCodecContext& decoder, AVPacket& packet, int stream) {
    if (av_read_frame(&container, &packet) < 0) {
        avcodec_send_packet(&decoder, nullptr);
        return true;
    }
    if (packet.stream_index == stream) avcodec_send_packet(&decoder, &packet); // a damaged one is passed over
    av_packet_unref(&packet);
    return false;
}

} // namespace

base::Result<video::Sound> read_sound(const std::string& path, double from_s, double to_s, double rate_hz,
                                      const video::GoOn& go_on) {
    auto container = open_container(path);
    if (!container) return container.error();
    AVFormatContext& file = *container->context;
    const int index = av_find_best_stream(&file, AVMEDIA_TYPE_AUDIO, -1, -1, nullptr, 0);
    if (index < 0) return video::Sound{from_s, rate_hz, {}};
    const AVStream& stream = *file.streams[index];
    auto decoder = open_decoder(stream, path);
    if (!decoder) return decoder.error();
    for (unsigned other = 0; other < file.nb_streams; ++other)
        if (static_cast<int>(other) != index) file.streams[other]->discard = AVDISCARD_ALL;
    constexpr double lead_s = 0.5; // a decoder needs a few frames to settle
    const double zero_s = static_cast<double>(zero_of(file)) / AV_TIME_BASE;
    if (from_s > lead_s)
        av_seek_frame(&file, index, static_cast<std::int64_t>((from_s - lead_s + zero_s) / av_q2d(stream.time_base)),
                      AVSEEK_FLAG_BACKWARD); // where that fails it is read from the start
    const Pointer<AVPacket> packet(av_packet_alloc());
    const Pointer<AVFrame> frame(av_frame_alloc());
    Mixer mixer(from_s, to_s, rate_hz);
    bool ended = false;
    while (!mixer.full()) {
        const int received = avcodec_receive_frame(decoder->get(), frame.get());
        if (received >= 0) {
            if (frame->best_effort_timestamp != AV_NOPTS_VALUE)
                mixer.add(*frame, seconds(file, stream, frame->best_effort_timestamp));
            continue;
        }
        if (received == AVERROR_EOF || ended) break;
        if (go_on && !go_on()) return base::cancelled();
        ended = feed(file, **decoder, *packet, index);
    }
    return mixer.finish();
}

} // namespace lapwright::video_decoder
