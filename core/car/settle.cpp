// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/settle.h"

#include <cmath>

namespace lapwright::car {
namespace {

constexpr double half_width_s = 0.2;

std::vector<double> averaged(const std::vector<double>& values, const std::vector<double>& time_s) {
    std::vector<double> result(values.size());
    std::size_t first = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        while (time_s[i] - time_s[first] >= half_width_s)
            ++first;
        double sum = 0.0;
        double weights = 0.0;
        for (std::size_t j = first; j < values.size() && time_s[j] - time_s[i] < half_width_s; ++j) {
            // Grid points stand for the time between their neighbours: dense in slow corners, sparse on straights.
            const double before = j > 0 ? time_s[j - 1] : time_s[j];
            const double behind = j + 1 < values.size() ? time_s[j + 1] : time_s[j];
            const double weight = (1.0 - std::abs(time_s[j] - time_s[i]) / half_width_s) * (behind - before);
            sum += weight * values[j];
            weights += weight;
        }
        result[i] = weights > 0.0 ? sum / weights : values[i];
    }
    return result;
}

// Twicing (Tukey 1977): what a second averaging takes off is added, so that a peak keeps its height.
std::vector<double> averaged_twice(const std::vector<double>& values, const std::vector<double>& time_s) {
    std::vector<double> once = averaged(values, time_s);
    const std::vector<double> twice = averaged(once, time_s);
    for (std::size_t i = 0; i < once.size(); ++i)
        once[i] += once[i] - twice[i];
    return once;
}

} // namespace

lap::LapTrace settled(lap::LapTrace lap) {
    lap.longitudinal_mps2 = averaged_twice(lap.longitudinal_mps2, lap.time_s);
    lap.lateral_mps2 = averaged_twice(lap.lateral_mps2, lap.time_s);
    return lap;
}

} // namespace lapwright::car
