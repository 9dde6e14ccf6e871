// SPDX-License-Identifier: GPL-3.0-or-later
// Where the car was and how it moved, as one smooth function of time, with an ensemble that carries the uncertainty.
// Motion ends here: nothing behind it knows which sensors there were.
//
// Frame: east-north of a LocalFrame, metres; time: seconds of the recording.  Lateral is positive to the left.
#pragma once

#include "core/motion/local_frame.h"
#include "core/recording/recording.h"

#include <cmath>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::motion {

struct Vec2 {
    double east = 0.0;
    double north = 0.0;
};

// The state at one moment.
struct Moment {
    double time_s = 0.0;
    Vec2 position_m;
    Vec2 velocity_mps;
    Vec2 acceleration_mps2;

    [[nodiscard]] double speed_mps() const {
        return std::sqrt(velocity_mps.east * velocity_mps.east + velocity_mps.north * velocity_mps.north);
    }
    [[nodiscard]] double longitudinal_mps2() const; // along the velocity
    [[nodiscard]] double lateral_mps2() const;      // to the left of the velocity
};

// What a path is between its stamps.
enum class Between {
    quintic, // smooth motion: position, velocity and acceleration follow from each other
    linear,  // each on its own: places that were found otherwise than by the speeds (a session without positions)
};

// One path through time.  All vectors are as long as `time_s`, which is strictly increasing, has at least two entries,
// and may be shared between paths.
struct Path {
    std::shared_ptr<const std::vector<double>> time_s;
    std::vector<Vec2> position_m;
    std::vector<Vec2> velocity_mps;
    std::vector<Vec2> acceleration_mps2;
    Between between = Between::quintic;

    [[nodiscard]] std::size_t size() const { return position_m.size(); }
    [[nodiscard]] double start_s() const { return time_s->front(); }
    [[nodiscard]] double end_s() const { return time_s->back(); }

    // Between stamps the position is the quintic that matches position, velocity and acceleration at both ends (its
    // derivatives are the velocity and acceleration), or all three are linear, as `between` says.  Outside the stamps
    // time is clamped to the ends.
    [[nodiscard]] Moment at(double time_s) const;
    // As at(), when the caller knows that stamps[index] <= time_s <= stamps[index + 1].
    [[nodiscard]] Moment at(double time_s, std::size_t index) const;
    // Index of the last stamp <= time_s, at most size() - 2.
    [[nodiscard]] std::size_t index_before(double time_s) const;
    // The same, walking on from an index whose stamp is not behind time_s: for moments that come in order.
    [[nodiscard]] std::size_t index_before(double time_s, std::size_t from) const;
};

// By how much a draw lies off the best path at one of its stamps.  Of a few metres single precision keeps a
// micrometre, in a quarter of a Moment's room.
struct Departure {
    float east_m = 0.0F;
    float north_m = 0.0F;
    float east_mps = 0.0F;
    float north_mps = 0.0F;
    float east_mps2 = 0.0F;
    float north_mps2 = 0.0F;
};

// The departures of some draws, stamp by stamp, in the order of Departure: a row of its first figure, a column each
// draw, and so on.  By far the largest part of a motion, so that it is written once and shared.
struct Departures {
    static constexpr std::size_t figures = 6;
    std::size_t columns = 0;
    std::unique_ptr<float[]> values;

    // Not filled.
    Departures(std::size_t stamps, std::size_t draws)
        : columns(draws), values(std::make_unique_for_overwrite<float[]>(stamps * figures * draws)) {}
    [[nodiscard]] float* at(std::size_t stamp) const { return values.get() + stamp * figures * columns; }
};

// What a map is shifted by: linear between its moments, which increase, and constant outside; nothing without any.
struct Drift {
    std::vector<double> time_s;
    std::vector<Vec2> shift_m;
};

struct Draw {
    std::shared_ptr<const Departures> departures;
    std::size_t column = 0;
    Drift drift; // to be taken off

    // Before the drift is taken off.
    [[nodiscard]] Departure operator[](std::size_t stamp) const {
        const float* own = departures->at(stamp) + column;
        const std::size_t next = departures->columns;
        return {own[0], own[next], own[2 * next], own[3 * next], own[4 * next], own[5 * next]};
    }
};

// A stretch of time in which nothing was measured and the path is bridged.
struct Bridge {
    double from_s = 0.0;
    double to_s = 0.0;
};

// What the estimator learned of the sensors; absent where it could not be told.
struct SensorReport {
    std::string name;                // "position", "speed", "wheel speed" …
    std::optional<double> noise_sd;  // SI
    std::optional<double> latency_s; // positive: the sensor is late against the positions
    std::optional<double> scale;     // reading = scale * truth
    std::optional<double> bias;      // SI
    std::size_t samples = 0;
    std::size_t rejected = 0;
};

enum class PositionSource { satellites, local_metres, dead_reckoning };

struct MotionEstimate {
    LocalFrame frame;
    PositionSource source = PositionSource::satellites;
    Path best;
    // From the posterior; empty when the estimator cannot tell its uncertainty (plain interpolation), never made up.
    std::vector<Draw> draws;
    std::vector<Bridge> bridges;
    std::vector<SensorReport> sensors;
    // Height above the ellipsoid (or the file's zero) where it was recorded, on its own stamps.
    std::vector<double> altitude_time_s;
    std::vector<double> altitude_m;
    std::vector<recording::Warning> warnings; // measurements that were not used, and why
};

[[nodiscard]] Draw departures(const Path& draw, const Path& best); // of the same stamps
void take_off(Path& path, const Drift& drift); // off its places, and how fast it changes off its speeds
// A draw as a path.
[[nodiscard]] Path drawn_path(const MotionEstimate& motion, std::size_t draw);
// Each draw between two moments, with a stamp at or before the first and one behind the last where there are such.
[[nodiscard]] std::vector<Path> drawn_paths(const MotionEstimate& motion, double from_s, double to_s);

} // namespace lapwright::motion
