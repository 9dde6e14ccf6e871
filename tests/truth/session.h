// SPDX-License-Identifier: GPL-3.0-or-later
// The truth of a driven session as a function of time. Frame and signs as in track_shape.h:
// x east, y north, course counter-clockwise from east in `heading_rad`, clockwise from
// north in `course_rad`; a_lat and yaw_rate positive to the left, a_long positive forwards.
// Speed is horizontal. S is the unwrapped station: flying lap k starts at k * length.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "tests/truth/car.h"
#include "tests/truth/driven_line.h"
#include "tests/truth/driver.h"
#include "tests/truth/speed_profile.h"
#include "tests/truth/track_shape.h"

namespace truth {

struct TruthSample {
    double time_s = 0.0;
    double unwrapped_m = 0.0;
    double station_m = 0.0; // on the centre line, [0, length)
    double offset_m = 0.0;  // left positive
    double x_m = 0.0;
    double y_m = 0.0;
    double height_m = 0.0;
    double slope = 0.0; // d height / d path
    double speed_mps = 0.0;
    double heading_rad = 0.0;
    double course_rad = 0.0; // [0, 2 pi)
    double a_long_mps2 = 0.0;
    double a_lat_mps2 = 0.0;
    double yaw_rate_radps = 0.0;
    double path_curvature_per_m = 0.0;
    double throttle = 0.0;
    double brake = 0.0;
    int gear = 1;
    double engine_rpm = 0.0;
    int lap = 0;
};

enum class LapKind { out, flying, traffic, mistake, in };

struct LapTruth {
    int number = 0; // 0 is the out lap
    LapKind kind = LapKind::flying;
    double start_s = 0.0; // crossing of the gate (out lap: start of the session)
    double end_s = 0.0;
    [[nodiscard]] double time_s() const { return end_s - start_s; }
};

class Session {
  public:
    Session(std::shared_ptr<const TrackShape> track, CarTruth car, double air_density, DrivenLine line,
            double grid_origin_m, double grid_step_m, const SpeedProfile& profile, std::vector<LapTruth> laps,
            double standing_s = 0.0);

    [[nodiscard]] const TrackShape& track() const { return *track_; }
    [[nodiscard]] const CarTruth& car() const { return car_; }
    [[nodiscard]] double air_density() const { return air_density_; }
    [[nodiscard]] const std::vector<LapTruth>& laps() const { return laps_; }
    [[nodiscard]] double duration_s() const { return times_.back(); }

    /// Before the car rolls it stands where it starts: speed, accelerations, yaw rate, pedals are 0.
    [[nodiscard]] TruthSample at_time(double time_s) const;
    [[nodiscard]] TruthSample at_unwrapped(double unwrapped_m) const;

    /// Time since the lap's start when the car passes a station (0..length) of a lap that starts at the gate.
    [[nodiscard]] double lap_clock_s(int lap, double station_m) const;
    [[nodiscard]] double speed_mps(int lap, double station_m) const;
    [[nodiscard]] const LapTruth& lap(int number) const { return laps_[static_cast<std::size_t>(number)]; }
    /// Number of the quickest clean flying lap.
    [[nodiscard]] int fastest_lap() const;

    /// Evenly spaced samples from 0 to the end.
    [[nodiscard]] std::vector<TruthSample> dense(double rate_hz) const;

    [[nodiscard]] double time_at_unwrapped(double unwrapped_m) const;

  private:
    struct Motion {
        DrivenLine::Geometry geometry;
        SplineValue energy;
        double station_rate_mps = 0.0;
    };
    [[nodiscard]] Motion motion(double unwrapped_m) const;
    // Time between two stations of one grid step.
    [[nodiscard]] double elapsed(std::size_t step, double from_m, double to_m) const;
    [[nodiscard]] double smooth_elapsed(double from_m, double to_m) const;
    void find_breaks();
    [[nodiscard]] TruthSample sample(double time_s, double unwrapped_m) const;
    [[nodiscard]] TruthSample standing(double time_s) const;

    std::shared_ptr<const TrackShape> track_;
    CarTruth car_;
    double air_density_;
    DrivenLine line_;
    UniformSpline energy_;
    UniformSpline throttle_;
    UniformSpline brake_;
    std::vector<int> gears_;
    std::vector<double> breaks_; // per grid step: the track's piece that ends inside it; NaN: none
    std::vector<double> times_;  // at the grid points
    std::vector<LapTruth> laps_;
};

} // namespace truth
