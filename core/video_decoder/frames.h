// SPDX-License-Identifier: GPL-3.0-or-later
// The frames of one video stream in the order of presentation, from a point of entry on.
//
// One frame is decoded ahead, because a frame is shown until the next one begins.  Frames whose stamps do not increase
// are left out: what is shown already stays until a later one.  Behind a point of entry those are left out that come
// before it in presentation: they need pictures of the group before (leading pictures, ITU-T H.265, 3.78).
#pragma once

#include "core/video/media_file.h"
#include "core/video_decoder/container.h"

#include <optional>

namespace lapwright::video_decoder {

class Frames {
  public:
    Frames(AVFormatContext& container, const AVStream& stream, Pointer<AVCodecContext> decoder);

    [[nodiscard]] base::Result<void> seek(double time_s);
    // Once called off, it goes on there when it is called again.
    [[nodiscard]] base::Result<std::optional<video::FrameTime>> next(const video::GoOn& go_on);
    [[nodiscard]] std::optional<double> entry_before(double time_s) const;
    void hurry_to(double time_s) { hurry_to_s_ = time_s; }
    [[nodiscard]] bool left_out_since() const { return hurried_ && shown_time_ && *shown_time_ < *hurry_to_s_; }
    // The frame that next() gave last; null before.
    [[nodiscard]] const AVFrame* shown() const { return shown_time_ ? shown_.get() : nullptr; }

  private:
    enum class Step { frame, end, cancelled };

    [[nodiscard]] Step decode_next(const video::GoOn& go_on);        // any frame, into next_
    [[nodiscard]] Step decode_presentable(const video::GoOn& go_on); // one that may be shown, into next_ and next_time_
    void feed();
    void send();
    void start_over();

    AVFormatContext& container_;
    const AVStream& stream_;
    Pointer<AVCodecContext> decoder_;
    Pointer<AVPacket> packet_;
    Pointer<AVFrame> shown_;
    Pointer<AVFrame> next_;
    std::optional<double> shown_time_;
    std::optional<double> next_time_;
    std::optional<double> last_time_;   // of the frames decoded since the last seek
    std::optional<std::int64_t> entry_; // stamp of the packet at which decoding began
    std::optional<double> hurry_to_s_;  // frames before may be left out
    bool hurried_ = false;              // some were
    bool from_start_ = true;            // then the first packet is an entry, whatever it says
    int refused_ = 0;                   // packets in a row that could not be read
    bool drained_ = false;
    bool called_off_ = false; // shown_ is the frame, the one ahead is not decoded yet
};

} // namespace lapwright::video_decoder
