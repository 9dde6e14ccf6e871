// SPDX-License-Identifier: GPL-3.0-or-later
// A lap's frames as small JPEG pictures, so that wherever the cursor jumps to, its frame is there without winding and
// decoding.  A lap of 90 s at 30 frames a second takes some 80 MB.
#pragma once

#include <cstddef>
#include <map>
#include <string>

namespace lapwright::video {

// Shown from time_s until until_s (infinite for the last frame).
struct KeptFrame {
    double time_s = 0.0;
    double until_s = 0.0;
    std::string jpeg; // the bytes of a file
};

class KeptFrames {
  public:
    explicit KeptFrames(std::size_t most_bytes) : most_bytes_(most_bytes) {}

    // The frame that is shown at time_s; null where it is not here.  Valid until the next call that changes something.
    [[nodiscard]] const KeptFrame* find(double time_s) const;
    // Room is made by those further from around_s.  False: there is none, and it is not kept.
    [[nodiscard]] bool put(KeptFrame frame, double around_s);
    void clear();

  private:
    std::size_t most_bytes_;
    std::size_t bytes_ = 0;
    std::map<double, KeptFrame> frames_; // by time_s
};

} // namespace lapwright::video
