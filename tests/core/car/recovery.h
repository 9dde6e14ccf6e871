// SPDX-License-Identifier: GPL-3.0-or-later
// For tests that find known cars again: a driver who uses each corner differently, the clean laps of a simulated
// session as car figures want them, and how often the truth lies inside the intervals.
#pragma once

#include "core/car/car_figures.h"
#include "core/car/known_car.h"

#include <cstdio>

namespace lapwright::test {

struct Coverage {
    const char* name;
    int inside = 0;
    int count = 0;
    double half_width = 0.0; // mean, relative
    double bias = 0.0;

    void add(const car::CarFigure& figure, double truth) {
        ++count;
        inside += figure.low <= truth && truth <= figure.high ? 1 : 0;
        half_width += (figure.half_width() / truth - half_width) / count;
        bias += (figure.value / truth - 1.0 - bias) / count;
    }
    [[nodiscard]] double share() const { return static_cast<double>(inside) / count; }
    void print(const char* car) const {
        std::printf("%s %-15s inside %d of %d, half width %.1f %%, bias %+.1f %%\n", car, name, inside, count,
                    100.0 * half_width, 100.0 * bias);
    }
};

inline truth::DriverTruth uneven_driver(std::uint64_t seed, double fast_corner) {
    truth::DriverTruth driver;
    driver.style_seed = 100 + seed;
    driver.corner_factor = {1.0, fast_corner, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0};
    return driver;
}

inline truth::Session known_session(const truth::TrackShape& shape, const truth::CarTruth& car,
                                    const truth::DriverTruth& driver, std::uint64_t seed, int laps = 8) {
    truth::SessionPlan plan;
    plan.flying_laps = laps;
    plan.air_density = 1.2;
    return truth::drive_session(shape, car, driver, plan, 1000 + seed);
}

inline car::CarData known_data(const truth::Session& session, const KnownNoise& noise, std::uint64_t seed) {
    car::CarData data;
    data.laps = known_traces(session, noise, 2000 + seed);
    data.segments = true_segments(session.track());
    data.air = {1.2, 0.006, "known"};
    data.mass = car::Mass{session.car().mass_kg, 5.0};
    return data;
}

inline car::CarData known_data(const truth::TrackShape& shape, const truth::CarTruth& car,
                               const truth::DriverTruth& driver, const KnownNoise& noise, std::uint64_t seed,
                               int laps = 8) {
    return known_data(known_session(shape, car, driver, seed, laps), noise, seed);
}

} // namespace lapwright::test
