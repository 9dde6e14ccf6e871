// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a video that is shown at a time: exactly that one, however the file is coded.  It winds to the last
// point of entry before the time and decodes up to it; what lies around is decoded afterwards, while nobody waits.
// Where that takes long, the pictures that are passed on the way are shown meanwhile.  A whole lap is kept as small
// pictures, once it was read ahead.  One thread decodes; another may ask what is known.
#pragma once

#include "core/video/frame_cache.h"
#include "core/video/kept_frames.h"
#include "core/video/video.h"

#include <chrono>
#include <functional>
#include <optional>

namespace lapwright::video {

class FrameReader {
  public:
    struct Options {
        PictureLimits limits = {};
        std::size_t cache_bytes = 64U << 20U;  // of pictures; the decoder has its own besides
        std::size_t kept_bytes = 96U << 20U;   // of small pictures:
        PictureLimits kept_limits = {};        // as large as they are wanted, at most that
        std::chrono::milliseconds moment{120}; // sooner than that a person sees no wait
    };
    FrameReader(Video video, Options options);

    [[nodiscard]] const Facts& facts() const { return video_.facts; }
    // The last frame that begins at or before time_s; before all the first, behind all the last.  The error is
    // file_not_readable where no frame can be decoded, or cancelled.  Meanwhile `passed` is given the frame itself,
    // small, where it is kept; else, where it takes longer than a moment, earlier ones, of which nobody knows how long
    // they stand: their until_s is their time_s.
    using Passed = std::function<void(const Frame&)>;
    [[nodiscard]] base::Result<Frame> at(double time_s, const GoOn& go_on = {}, const Passed& passed = {});
    // Nothing before the first and behind the last.
    [[nodiscard]] base::Result<std::optional<Frame>> before(const Frame& frame, const GoOn& go_on = {});
    [[nodiscard]] base::Result<std::optional<Frame>> after(const Frame& frame, const GoOn& go_on = {});
    // Decodes what is shown from before_s before to after_s behind, as far as there is room, so that it is here when it
    // is asked for.  Where it ends early, by `go_on` or by an error, nothing is lost.
    void fill(double time_s, double before_s, double after_s, const GoOn& go_on);
    // Decodes what is shown from from_s to to_s and keeps it small, from around_s on first; ends as fill() does.
    void read_ahead(double from_s, double to_s, double around_s, const GoOn& go_on);
    // The frame that is shown then, if it has been decoded; of any thread, without waiting.
    [[nodiscard]] std::optional<Frame> known(double time_s) const { return cache_.find(time_s); }
    // Pictures of another size from here on.
    void fit(PictureLimits limits);
    // The bytes of a JPEG file.
    [[nodiscard]] base::Result<std::string> jpeg(const Frame& frame) const {
        return video_.parts.front().file->jpeg(*frame.picture, JpegFor::paper);
    }

  private:
    // What a call is given.
    struct Asked {
        double around_s = 0.0;
        const GoOn& go_on;
        const Passed& passed;
        double kept_before_s = 0.0; // the frames on the way that are so near to it are kept
        std::chrono::steady_clock::time_point since = std::chrono::steady_clock::now(); // the last one that was passed
    };
    [[nodiscard]] base::Result<void> go_to(std::size_t part, double local_s, Asked asked);
    enum class Pace { hurried, every_frame };
    [[nodiscard]] base::Result<void> wind(std::size_t part, double local_s, Pace pace, const Asked& asked);
    [[nodiscard]] base::Result<void> run_to(double local_s, Asked& asked);
    [[nodiscard]] base::Result<void> pass(Asked& asked);
    [[nodiscard]] base::Result<bool> step(const GoOn& go_on); // false at the part's end
    [[nodiscard]] bool bring(double time_s, double around_s, const GoOn& go_on);
    [[nodiscard]] bool read_on(double from_s, double to_s, double around_s, const GoOn& go_on);
    [[nodiscard]] bool keep_small(const Frame& frame, double around_s);
    [[nodiscard]] bool keep_decoded_small(double around_s);
    [[nodiscard]] PictureLimits kept_size() const;
    [[nodiscard]] std::optional<Frame> kept(double time_s) const;
    [[nodiscard]] bool large() const; // pictures are wanted larger than they are kept
    [[nodiscard]] bool fill_from(double from_s, double to_s, double around_s, const GoOn& go_on);
    [[nodiscard]] double kept_before(std::size_t part, double local_s) const;
    [[nodiscard]] bool runs_on_to(std::size_t part, double local_s) const;
    [[nodiscard]] base::Result<void> keep(double around_s);
    [[nodiscard]] base::Result<Frame> decoded_frame(PictureLimits limits);

    Video video_;
    Options options_;
    FrameCache cache_;
    KeptFrames kept_;
    std::size_t part_ = 0;
    std::optional<FrameTime> decoded_; // of that part, in its own time
};

} // namespace lapwright::video
