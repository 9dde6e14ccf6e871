// SPDX-License-Identifier: GPL-3.0-or-later
// One video file as the decoder sees it: its frames in the order in which they are shown, and its sound.
//
// Time is seconds of presentation from the container's own start, so that pictures and sound share one zero; edit lists
// and reordered frames are already accounted for.  A frame is shown from its time stamp until that of the next one.
// A file is used by one thread at a time.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::video {

// Asked between two packets: false means that nobody wants the answer any more; the call ends with
// ErrorCode::cancelled.
using GoOn = std::function<bool()>;

struct Facts {
    int width = 0; // as shown: turned upright, pixels square
    int height = 0;
    int turned_deg = 0;    // clockwise, 0, 90, 180 or 270: how the stored picture was turned
    double rate_hz = 0.0;  // mean; 0 where the file does not say
    double length_s = 0.0; // as the file says; 0 where it does not
    std::string codec;     // "h264"
    bool sound = false;
    std::optional<double> created_unix_s; // as the camera's clock had it, often in local time
};

// Upright, red, green, blue, one byte each, rows without padding.
struct Picture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgb;
};

// The largest picture wanted; its shape is kept, and it is never enlarged.
struct PictureLimits {
    int width = 640;
    int height = 360;
    friend bool operator==(const PictureLimits&, const PictureLimits&) = default;
};

// Paper is looked at closely: some 1.5 bits a pixel; a glance takes half of that.
enum class JpegFor { paper, a_glance };

struct FrameTime {
    double time_s = 0.0;
    double until_s = 0.0; // the next frame's time; infinite for the last one
};

// One value a sample, -1..1; the first is at start_s.
struct Sound {
    double start_s = 0.0;
    double rate_hz = 0.0;
    std::vector<float> samples;
};

class MediaFile {
  public:
    MediaFile() = default;
    MediaFile(const MediaFile&) = delete;
    MediaFile& operator=(const MediaFile&) = delete;
    virtual ~MediaFile() = default;

    [[nodiscard]] virtual const Facts& facts() const = 0;

    // The next frame will be the first that can be decoded whole from the last point of entry that the file knows at or
    // before time_s.  That frame may be later than time_s: then seek further back.
    [[nodiscard]] virtual base::Result<void> seek(double time_s) = 0;
    // That point, roughly (by the order of decoding); nothing where the file has no index.
    [[nodiscard]] virtual std::optional<double> entry_before(double time_s) const = 0;
    // In the order of presentation, times strictly increasing; nothing behind the last one.
    // Once called off, it goes on when it is called again.
    [[nodiscard]] virtual base::Result<std::optional<FrameTime>> next_frame(const GoOn& go_on) = 0;
    // Frames before time_s may be left out from here on, where no other frame is made of them: what is wanted comes
    // later.  Ends with the next seek().
    virtual void hurry_to(double time_s) = 0;
    // Whether frames may have been left out right behind the one that next_frame() gave last: it lies before that time.
    [[nodiscard]] virtual bool left_out_since() const = 0;
    // Of the frame that next_frame() gave last.
    [[nodiscard]] virtual base::Result<Picture> picture(PictureLimits limits) = 0;

    // Any picture as the bytes of a JPEG file, and back within limits.
    [[nodiscard]] virtual base::Result<std::string> jpeg(const Picture& picture, JpegFor purpose) const = 0;
    [[nodiscard]] virtual base::Result<Picture> from_jpeg(const std::string& bytes, PictureLimits limits) const = 0;

    // From from_s (>= 0) to to_s or the end, mixed to one channel; silence where stamps leave a gap.  Empty without
    // sound.
    [[nodiscard]] virtual base::Result<Sound> sound(double from_s, double to_s, double rate_hz, const GoOn& go_on) = 0;
};

} // namespace lapwright::video
