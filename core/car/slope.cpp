// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/slope.h"

#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <cmath>

namespace lapwright::car {
namespace {

constexpr double shortest_wave_m = 400.0;
constexpr std::size_t fewest_laps = 3;
constexpr double stands_out = 3.0;
constexpr double min_amplitude_m = 0.15;

// Cosine and sine amplitude of one wave in one lap, the straight drift from the lap's start to its end taken out.
struct Wave {
    double cosine = 0.0;
    double sine = 0.0;
};

Wave wave_of(const std::vector<double>& altitude, std::span<const double> distance, double cycles) {
    const double length = distance.back();
    const double rise = altitude.back() - altitude.front();
    Wave wave;
    for (std::size_t i = 0; i + 1 < distance.size(); ++i) {
        const double part = distance[i] / length;
        const double width = 2.0 * (distance[i + 1] - distance[i]) / length;
        const double height = altitude[i] - rise * part;
        wave.cosine += width * height * std::cos(2.0 * base::pi * cycles * part);
        wave.sine += width * height * std::sin(2.0 * base::pi * cycles * part);
    }
    return wave;
}

} // namespace

std::vector<double> slope_of(const std::vector<std::vector<double>>& altitudes, std::span<const double> distance_m) {
    std::vector<double> slope;
    if (altitudes.size() < fewest_laps || distance_m.size() < 10) return slope;
    const double length = distance_m.back();
    for (double cycles = 1.0; cycles <= length / shortest_wave_m; cycles += 1.0) {
        std::vector<double> cosines;
        std::vector<double> sines;
        for (const auto& altitude : altitudes) {
            const Wave wave = wave_of(altitude, distance_m, cycles);
            cosines.push_back(wave.cosine);
            sines.push_back(wave.sine);
        }
        const double c = math::mean(cosines);
        const double s = math::mean(sines);
        const double error = std::hypot(math::standard_deviation(cosines), math::standard_deviation(sines)) /
                             std::sqrt(static_cast<double>(altitudes.size()));
        const double amplitude = std::hypot(c, s);
        if (amplitude < min_amplitude_m || amplitude < stands_out * error) continue;
        slope.resize(distance_m.size(), 0.0);
        const double number = 2.0 * base::pi * cycles / length;
        for (std::size_t i = 0; i < slope.size(); ++i)
            slope[i] += number * (s * std::cos(number * distance_m[i]) - c * std::sin(number * distance_m[i]));
    }
    return slope;
}

} // namespace lapwright::car
