// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/full_throttle.h"

#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

constexpr double slowest_share = 0.45; // of the fastest speed: below, traction may be the limit
// Where throttle and engine speed were recorded: lower gears show more of the engine, and a driver who is held back by
// the tyres seldom has the foot full down.
constexpr double known_slowest_share = 0.35;
constexpr double max_lateral_mps2 = 3.0; // takes less than 3 % of the grip from a tyre that gives 1.2 g
constexpr double settle_s = 0.35;
constexpr double shift_settle_s = 0.45;
constexpr double open_share = 0.95; // of the throttle channel's own top
// Without a throttle channel, of the upper envelope of acceleration; and less by so much is full push still, against a
// wind and uphill.
constexpr double like_the_best = 0.75;
constexpr double wind_and_hill_mps2 = 0.6;
constexpr double usual_drag_per_kg = 4.3e-4; // 1/m: 0.9 m² on 1250 kg
constexpr double begun_share = 0.96;         // of the median power of a run
constexpr double min_power_share = 0.75;     // of the best power of all: less is not the engine's all
constexpr std::size_t speed_bins = 24;
constexpr std::size_t shift_bins = 2; // as many on either side as a shift touches
constexpr double thin_m = 2.9;

double top_of(const std::vector<lap::LapTrace>& laps, recording::Meaning meaning) {
    std::vector<double> all;
    for (const lap::LapTrace& lap : laps)
        if (const auto* channel = lap.find(meaning))
            for (const double x : channel->values)
                if (!std::isnan(x)) all.push_back(x);
    return all.empty() ? std::nan("") : math::quantile(all, 0.98);
}

// Mean over the laps at each grid point, so that noise is not picked as push.
struct MeanLap {
    std::vector<double> speed_mps;
    std::vector<double> longitudinal_mps2;
    std::vector<double> lateral_mps2;
};

MeanLap mean_lap(const CarData& data) {
    const std::size_t points = data.laps.front().size();
    MeanLap mean{std::vector<double>(points, 0.0), std::vector<double>(points, 0.0), std::vector<double>(points, 0.0)};
    const double share = 1.0 / static_cast<double>(data.laps.size());
    for (const lap::LapTrace& lap : data.laps)
        for (std::size_t i = 0; i < points; ++i) {
            mean.speed_mps[i] += share * lap.speed_mps[i];
            mean.longitudinal_mps2[i] += share * lap.longitudinal_mps2[i];
            mean.lateral_mps2[i] += share * lap.lateral_mps2[i];
        }
    return mean;
}

// Where the path points at each grid point, from its start on: lateral acceleration over speed is how fast it turns.  A
// lap turns by whole turns; what is left is an error of the sensor that grows with time.
std::vector<double> courses(const MeanLap& mean, const lap::LapTrace& grid) {
    std::vector<double> course(grid.size(), 0.0);
    for (std::size_t i = 1; i < grid.size(); ++i) {
        const double speed = std::max(2.0, 0.5 * (mean.speed_mps[i - 1] + mean.speed_mps[i]));
        const double lateral = 0.5 * (mean.lateral_mps2[i - 1] + mean.lateral_mps2[i]);
        course[i] = course[i - 1] + lateral / (speed * speed) * (grid.distance_m[i] - grid.distance_m[i - 1]);
    }
    const double left = std::remainder(course.back(), 2.0 * base::pi);
    for (std::size_t i = 0; i < grid.size(); ++i)
        course[i] -= left * grid.time_s[i] / grid.time_s.back();
    return course;
}

// What the wheels give, W/kg, with a drag that is usual.
double power_per_kg(double speed_mps, double acceleration_mps2) {
    return speed_mps * (acceleration_mps2 + usual_drag_per_kg * speed_mps * speed_mps);
}

std::size_t bin_of(double speed_mps, double fastest) {
    const double place = std::max(0.0, speed_mps) / (1.05 * fastest) * static_cast<double>(speed_bins);
    return std::min(speed_bins - 1, static_cast<std::size_t>(place));
}

// Upper envelope of acceleration on straights by speed: 90 % quantile of each bin.  A gear is always left at the same
// speed, so that a bin may hold shifts alone: the power of its neighbours stands in for more.
std::vector<double> best_by_speed(const MeanLap& mean, double fastest) {
    std::vector<std::vector<double>> bins(speed_bins);
    for (std::size_t i = 0; i < mean.speed_mps.size(); ++i) {
        if (std::abs(mean.lateral_mps2[i]) > max_lateral_mps2 || mean.longitudinal_mps2[i] < 0.0) continue;
        bins[bin_of(mean.speed_mps[i], fastest)].push_back(mean.longitudinal_mps2[i]);
    }
    const auto middle_mps = [&](std::size_t bin) {
        return (static_cast<double>(bin) + 0.5) * 1.05 * fastest / static_cast<double>(speed_bins);
    };
    std::vector<double> power(speed_bins, 0.0);
    for (std::size_t b = 0; b < speed_bins; ++b)
        if (!bins[b].empty()) power[b] = power_per_kg(middle_mps(b), math::quantile(bins[b], 0.9));
    std::vector<double> best(speed_bins, 0.0);
    for (std::size_t b = 0; b < speed_bins; ++b) {
        if (bins[b].empty()) continue;
        const std::size_t from = b - std::min(b, shift_bins);
        const std::size_t to = std::min(speed_bins, b + shift_bins + 1);
        const double most = *std::max_element(power.begin() + static_cast<std::ptrdiff_t>(from),
                                              power.begin() + static_cast<std::ptrdiff_t>(to));
        best[b] = most / middle_mps(b) - usual_drag_per_kg * std::pow(middle_mps(b), 2);
    }
    return best;
}

// Moments of a shift in one lap, from gear or from the ratio of engine speed to speed.
std::vector<double> shift_times(const lap::LapTrace& lap) {
    std::vector<double> times;
    if (const auto* gear = lap.find(recording::Meaning::gear)) {
        for (std::size_t i = 1; i < lap.size(); ++i)
            if (gear->values[i] != gear->values[i - 1] && !std::isnan(gear->values[i] + gear->values[i - 1]))
                times.push_back(lap.time_s[i]);
        return times;
    }
    const auto* engine = lap.find(recording::Meaning::engine_speed);
    if (engine == nullptr) return times;
    std::size_t before = 0;
    for (std::size_t i = 1; i < lap.size(); ++i) {
        while (lap.time_s[i] - lap.time_s[before] > 0.3)
            ++before;
        const double then = engine->values[before] / std::max(1.0, lap.speed_mps[before]);
        const double now = engine->values[i] / std::max(1.0, lap.speed_mps[i]);
        if (now < 0.93 * then || now > 1.07 * then) times.push_back(0.5 * (lap.time_s[i] + lap.time_s[before]));
    }
    return times;
}

bool near_any(const std::vector<double>& sorted, double t, double reach) {
    const auto at = std::ranges::lower_bound(sorted, t - reach);
    return at != sorted.end() && *at <= t + reach;
}

// Whether each grid point shows full push in the mean of the laps, as far as motion tells.
std::vector<bool> pushing(const MeanLap& mean, double fastest) {
    const std::vector<double> best = best_by_speed(mean, fastest);
    std::vector<bool> is(mean.speed_mps.size());
    for (std::size_t i = 0; i < is.size(); ++i) {
        const double most = best[bin_of(mean.speed_mps[i], fastest)];
        is[i] = mean.longitudinal_mps2[i] >= most - std::max((1.0 - like_the_best) * most, wind_and_hill_mps2);
    }
    return is;
}

std::vector<double> mean_power(const MeanLap& mean) {
    std::vector<double> power(mean.speed_mps.size());
    for (std::size_t i = 0; i < power.size(); ++i)
        power[i] = power_per_kg(mean.speed_mps[i], mean.longitudinal_mps2[i]);
    return power;
}

// Out of a corner the tyres or the foot hold the engine back for a while, and power rises: a run of samples begins
// where it has reached what the run gives.
void drop_beginnings(std::vector<bool>& good, const std::vector<double>& power) {
    std::vector<double> all;
    for (std::size_t i = 0; i < good.size(); ++i)
        if (good[i]) all.push_back(power[i]);
    if (all.empty()) return;
    const double least = min_power_share * math::quantile(all, 0.9);
    for (std::size_t i = 0; i < good.size();) {
        std::size_t end = i;
        while (end < good.size() && good[end])
            ++end;
        if (end > i) {
            const double reached =
                begun_share * math::median(std::vector<double>(power.begin() + static_cast<std::ptrdiff_t>(i),
                                                               power.begin() + static_cast<std::ptrdiff_t>(end)));
            for (; i < end && power[i] < std::max(least, reached); ++i)
                good[i] = false;
        }
        i = end + 1;
    }
}

// Whether each sample of a lap is a candidate on its own.
std::vector<bool> candidates(const lap::LapTrace& lap, const MeanLap& mean, const std::vector<bool>& pushing,
                             double fastest, double throttle_top) {
    const auto* throttle = lap.find(recording::Meaning::throttle);
    const bool with_throttle = throttle != nullptr && !std::isnan(throttle_top);
    const bool known = with_throttle && lap.find(recording::Meaning::engine_speed) != nullptr;
    const double slowest = (known ? known_slowest_share : slowest_share) * fastest;
    std::vector<bool> good(lap.size(), false);
    for (std::size_t i = 0; i < lap.size(); ++i) {
        if (mean.speed_mps[i] < slowest || std::abs(mean.lateral_mps2[i]) > max_lateral_mps2 ||
            mean.longitudinal_mps2[i] < -0.5)
            continue;
        good[i] = with_throttle ? throttle->values[i] >= open_share * throttle_top : pushing[i];
    }
    drop_beginnings(good, mean_power(mean));
    return good;
}

} // namespace

std::size_t segment_at(const std::vector<track::Segment>& segments, double distance_m) {
    std::size_t k = 0;
    while (k + 1 < segments.size() && distance_m >= segments[k].end_m)
        ++k;
    return k;
}

double fastest_speed_mps(const CarData& data) {
    std::vector<double> speeds;
    for (const lap::LapTrace& lap : data.laps)
        speeds.insert(speeds.end(), lap.speed_mps.begin(), lap.speed_mps.end());
    return math::quantile(speeds, 0.995);
}

std::vector<ThrottleSample> full_throttle_samples(const CarData& data) {
    std::vector<ThrottleSample> samples;
    const double fastest = fastest_speed_mps(data);
    const double throttle_top = top_of(data.laps, recording::Meaning::throttle);
    const MeanLap mean = mean_lap(data);
    const std::vector<bool> push = pushing(mean, fastest);
    const std::vector<double> course = courses(mean, data.laps.front());
    for (std::size_t l = 0; l < data.laps.size(); ++l) {
        const lap::LapTrace& lap = data.laps[l];
        const std::vector<bool> good = candidates(lap, mean, push, fastest, throttle_top);
        std::vector<double> bad_times;
        for (std::size_t i = 0; i < lap.size(); ++i)
            if (!good[i]) bad_times.push_back(lap.time_s[i]);
        std::vector<double> shifts = shift_times(lap);
        std::ranges::sort(shifts);
        const auto* engine = lap.find(recording::Meaning::engine_speed);
        double next_m = 0.0;
        for (std::size_t i = 0; i < lap.size(); ++i) {
            const double t = lap.time_s[i];
            if (!good[i] || lap.distance_m[i] < next_m) continue;
            if (near_any(bad_times, t, settle_s) || near_any(shifts, t, shift_settle_s)) continue;
            next_m = lap.distance_m[i] + thin_m;
            samples.push_back({l, segment_at(data.segments, lap.distance_m[i]), lap.distance_m[i], lap.speed_mps[i],
                               lap.longitudinal_mps2[i], data.slope.empty() ? 0.0 : data.slope[i],
                               engine == nullptr ? std::nan("") : engine->values[i], course[i]});
        }
    }
    return samples;
}

} // namespace lapwright::car
