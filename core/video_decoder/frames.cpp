// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video_decoder/frames.h"

#include "core/base/progress.h"
#include "core/base/translation.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lapwright::video_decoder {

using base::said;
using base::word;

namespace {

constexpr double largest_stamp = 9e18; // of 64 bits

// A stream without an index is wound back by its bytes; elsewhere that would miss the head.
bool to_first_packet(AVFormatContext& container, const AVStream& stream) {
    const bool indexed = (container.iformat->flags & AVFMT_TS_DISCONT) == 0;
    const std::int64_t first = stream.start_time == AV_NOPTS_VALUE ? 0 : stream.start_time;
    return (indexed && av_seek_frame(&container, stream.index, first, AVSEEK_FLAG_BACKWARD) >= 0) ||
           av_seek_frame(&container, -1, 0, AVSEEK_FLAG_BYTE) >= 0;
}

} // namespace

Frames::Frames(AVFormatContext& container, const AVStream& stream, Pointer<AVCodecContext> decoder)
    : container_(container), stream_(stream), decoder_(std::move(decoder)), packet_(av_packet_alloc()),
      shown_(av_frame_alloc()), next_(av_frame_alloc()) {}

void Frames::start_over() {
    avcodec_flush_buffers(decoder_.get());
    shown_time_.reset();
    next_time_.reset();
    last_time_.reset();
    entry_.reset();
    hurry_to_s_.reset();
    hurried_ = false;
    drained_ = false;
    refused_ = 0;
    called_off_ = false;
}

base::Result<void> Frames::seek(double time_s) {
    const double stamp = (time_s + static_cast<double>(zero_of(container_)) / AV_TIME_BASE) / av_q2d(stream_.time_base);
    const double first = stream_.start_time == AV_NOPTS_VALUE ? 0.0 : static_cast<double>(stream_.start_time);
    from_start_ = !(stamp > first);
    start_over();
    if (!from_start_ &&
        av_seek_frame(&container_, stream_.index, static_cast<std::int64_t>(std::min(stamp, largest_stamp)),
                      AVSEEK_FLAG_BACKWARD) >= 0)
        return {};
    from_start_ = true;
    if (to_first_packet(container_, stream_)) return {};
    return unreadable(container_.url == nullptr ? "" : container_.url, word("the video cannot be wound back"),
                      word("convert it to MP4"));
}

// Pictures of which no other is made are left out on the way (AVDISCARD_NONREF), so that long groups take half the
// time.
void Frames::send() {
    const double time_s = packet_->pts == AV_NOPTS_VALUE ? std::numeric_limits<double>::infinity()
                                                         : seconds(container_, stream_, packet_->pts);
    const bool hurries = hurry_to_s_ && time_s < *hurry_to_s_;
    decoder_->skip_frame = hurries ? AVDISCARD_NONREF : AVDISCARD_DEFAULT;
    hurried_ = hurried_ || hurries;
    avcodec_send_packet(decoder_.get(), packet_.get()); // a damaged one is passed over
}

// The next packet of the stream into the decoder; at the end what it still holds is asked for.
void Frames::feed() {
    const int read = av_read_frame(&container_, packet_.get());
    constexpr int most_refused = 100; // a damaged stretch is passed over
    refused_ = read < 0 ? refused_ + 1 : 0;
    if (read < 0 && read != AVERROR_EOF && refused_ < most_refused) return;
    if (read < 0) {
        avcodec_send_packet(decoder_.get(), nullptr);
        drained_ = true;
        return;
    }
    if (packet_->stream_index == stream_.index) {
        const bool usable = entry_ || from_start_ || (packet_->flags & AV_PKT_FLAG_KEY) != 0;
        if (usable && !entry_) entry_ = from_start_ ? std::numeric_limits<std::int64_t>::min() : packet_->pts;
        if (usable) send();
    }
    av_packet_unref(packet_.get());
}

Frames::Step Frames::decode_next(const video::GoOn& go_on) {
    for (;;) {
        const int received = avcodec_receive_frame(decoder_.get(), next_.get());
        if (received >= 0) return Step::frame;
        if (received == AVERROR_EOF || drained_) return Step::end;
        if (go_on && !go_on()) return Step::cancelled;
        feed();
    }
}

Frames::Step Frames::decode_presentable(const video::GoOn& go_on) {
    for (;;) {
        const Step step = decode_next(go_on);
        if (step != Step::frame) return step;
        const std::int64_t stamp = next_->best_effort_timestamp;
        if (stamp == AV_NOPTS_VALUE || (entry_ && stamp < *entry_)) continue;
        const double time_s = seconds(container_, stream_, stamp);
        if (last_time_ && time_s <= *last_time_) continue;
        last_time_ = time_s;
        next_time_ = time_s;
        return Step::frame;
    }
}

base::Result<std::optional<video::FrameTime>> Frames::next(const video::GoOn& go_on) {
    if (!called_off_) {
        const Step first = next_time_ ? Step::frame : decode_presentable(go_on);
        if (first == Step::cancelled) return base::cancelled();
        if (first == Step::end) return std::optional<video::FrameTime>();
        std::swap(shown_, next_);
        shown_time_ = std::exchange(next_time_, std::nullopt);
    }
    called_off_ = decode_presentable(go_on) == Step::cancelled;
    if (called_off_) return base::cancelled();
    return std::optional(video::FrameTime{*shown_time_, next_time_.value_or(std::numeric_limits<double>::infinity())});
}

std::optional<double> Frames::entry_before(double time_s) const {
    const double stamp = (time_s + static_cast<double>(zero_of(container_)) / AV_TIME_BASE) / av_q2d(stream_.time_base);
    if (!(std::abs(stamp) < largest_stamp)) return {};
    // The library's own function does not change the stream, though it asks for one that may be changed.
    const AVIndexEntry* const entry = avformat_index_get_entry_from_timestamp(
        container_.streams[stream_.index], static_cast<std::int64_t>(stamp), AVSEEK_FLAG_BACKWARD);
    if (entry == nullptr) return {};
    return seconds(container_, stream_, entry->timestamp);
}

} // namespace lapwright::video_decoder
