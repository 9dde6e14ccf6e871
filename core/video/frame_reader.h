// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a video that is shown at a time: exactly that one, however the file is coded.  It winds to the last
// point of entry before the time and decodes up to it; what lies around is decoded afterwards, while nobody waits.
#pragma once

#include "core/video/frame_cache.h"
#include "core/video/video.h"

#include <optional>

namespace lapwright::video {

class FrameReader {
  public:
    struct Options {
        PictureLimits limits = {};
        std::size_t cache_bytes = 96U << 20U; // of pictures; the decoder has its own besides
    };
    FrameReader(Video video, Options options);

    [[nodiscard]] const Facts& facts() const { return video_.facts; }
    // The last frame that begins at or before time_s; before all the first, behind all the last.  The error is
    // file_not_readable where no frame can be decoded, or cancelled.
    [[nodiscard]] base::Result<Frame> at(double time_s, const GoOn& go_on = {});
    // Nothing before the first and behind the last.
    [[nodiscard]] base::Result<std::optional<Frame>> before(const Frame& frame, const GoOn& go_on = {});
    [[nodiscard]] base::Result<std::optional<Frame>> after(const Frame& frame, const GoOn& go_on = {});
    // Decodes what is shown from before_s before to after_s behind, as far as there is room, so that it is here when it
    // is asked for.  Where it ends early, by `go_on` or by an error, nothing is lost.
    void fill(double time_s, double before_s, double after_s, const GoOn& go_on);
    [[nodiscard]] bool has(double time_s) const { return cache_.find(time_s).has_value(); }
    // The bytes of a JPEG file.
    [[nodiscard]] base::Result<std::string> jpeg(const Frame& frame) const {
        return video_.parts.front().file->jpeg(*frame.picture);
    }

  private:
    [[nodiscard]] base::Result<void> go_to(std::size_t part, double local_s, double around_s, const GoOn& go_on);
    enum class Pace { hurried, every_frame };
    [[nodiscard]] base::Result<void> wind(std::size_t part, double local_s, Pace pace, const GoOn& go_on);
    [[nodiscard]] base::Result<void> run_to(double local_s, const GoOn& go_on);
    [[nodiscard]] base::Result<bool> step(const GoOn& go_on); // false at the part's end
    [[nodiscard]] bool fill_from(double from_s, double to_s, double around_s, const GoOn& go_on);
    [[nodiscard]] bool runs_on_to(std::size_t part, double local_s) const;
    [[nodiscard]] base::Result<void> keep(double around_s);

    Video video_;
    Options options_;
    FrameCache cache_;
    std::size_t part_ = 0;
    std::optional<FrameTime> decoded_; // of that part, in its own time
};

} // namespace lapwright::video
