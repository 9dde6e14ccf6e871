// SPDX-License-Identifier: GPL-3.0-or-later
// Cars, drivers and recordings drawn from a seed: club cars of every kind, from good receivers down to speed and course
// derived from positions, few laps, no pedals.  All are invented.
#pragma once

#include "core/car/recovery.h"

#include <vector>

namespace lapwright::test {

inline double between(truth::Random& random, double least, double most) {
    return least + (most - least) * random.uniform();
}

inline truth::CarTruth drawn_car(truth::Random& random) {
    truth::CarTruth car;
    car.mass_kg = between(random, 700.0, 1700.0);
    car.mu = between(random, 1.0, 1.6);
    car.load_exponent = between(random, 0.75, 1.0);
    car.downforce_area_m2 = between(random, -0.2, 4.0);
    car.drag_area_m2 = between(random, 0.55, 1.4);
    car.power_w = car.mass_kg * between(random, 90.0, 280.0);
    car.traction_share = between(random, 0.5, 0.75);
    return car;
}

// poor 0: what a good receiver gives; 1: about the worst that anybody keeps.
inline KnownNoise drawn_noise(truth::Random& random, double poor) {
    KnownNoise noise;
    noise.rate_hz = random.uniform() < poor ? between(random, 5.0, 10.0) : 25.0;
    noise.speed_sd_mps = 0.04 + poor * between(random, 0.0, 0.5);
    noise.course_sd_rad = 0.0026 + poor * between(random, 0.0, 0.02);
    noise.pedals = random.uniform() > 0.5 + 0.5 * poor;
    return noise;
}

struct DrawnRecording {
    truth::CarTruth car;
    truth::Session session;
    car::CarData data;
};

inline DrawnRecording drawn_recording(std::uint64_t seed, double poor) {
    truth::Random random(seed, 77);
    const truth::CarTruth car = drawn_car(random);
    const truth::TrackShape shape = random.uniform() < 0.7
                                        ? truth::ternbank()
                                        : truth::stadium(between(random, 120.0, 500.0), between(random, 20.0, 90.0));
    truth::DriverTruth driver = uneven_driver(seed, between(random, 0.9, 1.0));
    driver.line_half_width_m = 1.5;
    truth::SessionPlan plan;
    plan.pit_lane = false;
    plan.flying_laps = 1 + static_cast<int>(8.0 * random.uniform());
    plan.air_density = 1.2;
    truth::Session session = truth::drive_session(shape, car, driver, plan, seed);
    car::CarData data = known_data(session, drawn_noise(random, poor), seed);
    return {car, std::move(session), std::move(data)};
}

} // namespace lapwright::test
