// SPDX-License-Identifier: GPL-3.0-or-later
// The driven line as a lateral offset n (left positive, m) over the unwrapped station S, C2 everywhere: a periodic
// line of least curvature within +-half width, the driver's habit, a slow lap-to-lap wander, and the pit lane.
#pragma once

#include <cstdint>

#include "tests/truth/driver.h"
#include "tests/truth/spline.h"
#include "tests/truth/track_shape.h"

namespace truth {

/// Where the car comes from and goes to: offsets fade over `merge_m`.
struct PitLane {
    double start_m = 150.0; // unwrapped station of the session's first and last point
    double end_m = 0.0;
    double offset_m = 14.0;
    double merge_m = 260.0;
};

class DrivenLine {
  public:
    DrivenLine(const TrackShape& track, const DriverTruth& driver, const PitLane& pit, std::uint64_t seed);

    [[nodiscard]] SplineValue offset(double unwrapped_m) const;

    /// Path length per metre of station, its rate, and the path's curvature, all exact.
    struct Geometry {
        SplineValue offset;
        TrackBend bend;
        double stretch = 1.0;   // d path / ds
        double drift_rad = 0.0; // path heading minus centre-line heading
        double curvature_per_m = 0.0;
    };
    [[nodiscard]] Geometry geometry(const TrackShape& track, double unwrapped_m) const;

  private:
    UniformSpline line_;
    UniformSpline wander_;
};

} // namespace truth
