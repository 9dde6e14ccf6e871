// SPDX-License-Identifier: GPL-3.0-or-later
// How the distant picture moves sideways, between frames a seventh of a second apart: phase correlation (Kuglin and
// Hines 1975, Proc. IEEE Conf. on Cybernetics and Society, 163), row by row, each frequency counted by how far the rows
// agree on it.  The picture is cut into bands, of which one lies at the horizon: above it there is sky, below it the
// road, whose edges stand still in a bend.  What always stands still (pillars, a mirror) is its mean over time, which
// is taken out.
#pragma once

#include "core/video/video.h"

#include <array>
#include <memory>
#include <vector>

namespace lapwright::video {

// At the middle between two such frames, in widths of the picture a second: positive to the right, as when the car
// turns to the left.
inline constexpr std::size_t flow_bands = 6;

struct Flow {
    std::vector<double> time_s;                        // strictly increasing
    std::array<std::vector<double>, flow_bands> rates; // as many in each band, from the top

    [[nodiscard]] double length_s() const { return time_s.empty() ? 0.0 : time_s.back() - time_s.front(); }
};

class FlowMeter {
  public:
    FlowMeter();
    ~FlowMeter();
    FlowMeter(const FlowMeter&) = delete;
    FlowMeter& operator=(const FlowMeter&) = delete;

    // Frames in their order, all of one size.
    void add(const Picture& picture, double time_s);
    [[nodiscard]] const Flow& flow() const { return flow_; }

  private:
    class Views;

    std::unique_ptr<Views> views_;
    Flow flow_;
};

// Of the frames from from_s to to_s.  Error: the video cannot be read, or cancelled.
[[nodiscard]] base::Result<Flow> picture_flow(Video& video, double from_s, double to_s, const GoOn& go_on);

} // namespace lapwright::video
