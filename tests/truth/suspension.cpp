// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/truth/suspension.h"

#include <cmath>

namespace truth {
namespace {

// Waves of three lengths, of the place alone; standard deviation 1.
double bumps(const double station_m, const int wheel) {
    const double phase = 1.7 * wheel;
    return std::sqrt(2.0 / 3.0) * (std::sin(station_m / 1.9 + phase) + std::sin(station_m / 5.3 + 2.0 * phase) +
                                   std::sin(station_m / 17.0 + 3.0 * phase));
}

double between(Random& random, const double low, const double high) {
    return low + (high - low) * random.uniform();
}

// As likely in each octave.
double between_log(Random& random, const double low, const double high) {
    return low * std::pow(high / low, random.uniform());
}

} // namespace

SuspensionTruth draw_suspension(Random& random) {
    SuspensionTruth s;
    s.front_n_per_m = between_log(random, 25e3, 200e3);
    s.rear_n_per_m = between_log(random, 25e3, 200e3);
    s.front_of_weight = between(random, 0.42, 0.62);
    s.front_of_downforce = between(random, 0.3, 0.6);
    s.attitude_factor = 1.0 + 0.08 * random.normal();
    s.height_over_wheelbase = between(random, 0.15, 0.23);
    s.anti_dive = between(random, 0.0, 0.4);
    s.anti_squat = between(random, 0.0, 0.6);
    s.bump_sd_m = between(random, 0.0005, 0.004);
    s.noise_sd_m = between_log(random, 0.0001, 0.001);
    s.front_sign = random.uniform() < 0.5 ? 1.0 : -1.0;
    s.rear_sign = random.uniform() < 0.5 ? 1.0 : -1.0;
    return s;
}

std::array<double, 4> suspension_travel_m(const SuspensionTruth& suspension, const CarTruth& car,
                                          const double air_density, const TruthSample& sample) {
    const double v = sample.speed_mps;
    const double weight = car.mass_kg * kGravity_mps2;
    const double downforce = suspension.attitude_factor * 0.5 * air_density * car.downforce_area_m2 * v * v;
    const double carried = sample.a_long_mps2 < 0.0 ? suspension.anti_dive : suspension.anti_squat;
    const double to_rear = car.mass_kg * sample.a_long_mps2 * suspension.height_over_wheelbase * (1.0 - carried);
    const double to_right = car.mass_kg * sample.a_lat_mps2 * suspension.height_over_track;
    std::array<double, 4> travel{};
    for (int wheel = front_left; wheel <= rear_right; ++wheel) {
        const bool front = wheel == front_left || wheel == front_right;
        const bool right = wheel == front_right || wheel == rear_right;
        const double weight_share = front ? suspension.front_of_weight : 1.0 - suspension.front_of_weight;
        const double aero_share = front ? suspension.front_of_downforce : 1.0 - suspension.front_of_downforce;
        const double axle = weight * weight_share + downforce * aero_share + (front ? -to_rear : to_rear);
        const double load = 0.5 * axle + 0.5 * weight_share * (right ? to_right : -to_right);
        const double rate = front ? suspension.front_n_per_m : suspension.rear_n_per_m;
        const double pressed = load / rate + suspension.bump_sd_m * bumps(sample.station_m, wheel);
        travel[static_cast<std::size_t>(wheel)] =
            (front ? suspension.front_sign : suspension.rear_sign) * pressed + suspension.zero_m;
    }
    return travel;
}

} // namespace truth
