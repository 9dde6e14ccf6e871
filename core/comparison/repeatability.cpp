// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/repeatability.h"

#include "core/base/check.h"
#include "core/math/statistics.h"
#include "core/math/two_samples.h"

#include <algorithm>

namespace lapwright::comparison {
namespace {

std::vector<double> times_of_segment(const std::vector<std::vector<double>>& laps, std::size_t segment) {
    std::vector<double> times;
    times.reserve(laps.size());
    for (const auto& boundaries : laps)
        times.push_back(boundaries[segment + 1] - boundaries[segment]);
    return times;
}

} // namespace

std::vector<Repeatability> repeatability(const std::vector<std::vector<double>>& laps_a,
                                         const std::vector<std::vector<double>>& laps_b, std::size_t segments) {
    for (const auto* laps : {&laps_a, &laps_b})
        for (const auto& lap : *laps)
            base::check(lap.size() == segments + 1, "a lap has one boundary time too few");
    std::vector<Repeatability> all(segments);
    for (std::size_t i = 0; i < segments; ++i) {
        Repeatability& r = all[i];
        r.times_a_s = times_of_segment(laps_a, i);
        r.times_b_s = times_of_segment(laps_b, i);
        if (const auto difference = math::welch(r.times_a_s, r.times_b_s)) {
            r.mean_difference_s = difference->difference;
            r.low_s = difference->interval.low;
            r.high_s = difference->interval.high;
        }
        if (const auto ranks = math::mann_whitney(r.times_a_s, r.times_b_s)) r.chance_a_wins = ranks->chance_x_less;
    }
    return all;
}

IdealLap ideal_lap(const std::vector<std::vector<double>>& laps) {
    IdealLap ideal;
    if (laps.size() < 2 || laps.front().size() < 2) return ideal;
    const double greatest = math::expected_max_of_normals(laps.size());
    double sum_of_least = 0.0;
    double noise_only = 0.0;
    for (std::size_t i = 0; i + 1 < laps.front().size(); ++i) {
        const std::vector<double> times = times_of_segment(laps, i);
        sum_of_least += std::ranges::min(times);
        noise_only += greatest * math::standard_deviation(times);
    }
    std::vector<double> whole;
    for (const auto& lap : laps)
        whole.push_back(lap.back() - lap.front());
    ideal.time_s = sum_of_least;
    ideal.best_lap_s = std::ranges::min(whole);
    ideal.noise_only_gain_s = noise_only;
    ideal.mean_lap_s = math::mean(whole);
    return ideal;
}

} // namespace lapwright::comparison
