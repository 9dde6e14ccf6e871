// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/limit_evidence.h"

#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr double half_window_s = 0.15;
constexpr double nominal_k = 6e-4; // only to find the peak, 1/m
constexpr double braking_mps2 = 3.0;
constexpr double usual_braking_share = 0.92;
constexpr double usual_traction_share = 0.6;
constexpr double engine_is_limit = 0.85; // of its power and more: below, the foot or the tyres hold it back
constexpr double nearly = 0.95;
constexpr double min_traction = 0.3;
constexpr double ramp_in_s = 0.35;
constexpr double ramp_out_s = 0.30;
constexpr double min_spread = 250.0; // m²/s² between the halves of a zone
constexpr double min_error = 0.003;

double sd_of_mean(const std::vector<double>& values) {
    if (values.size() < 2) return 0.02;
    return std::max(min_error, math::standard_deviation(values) / std::sqrt(static_cast<double>(values.size())));
}

// Where the mean of every second lap, from `first` on, corners hardest for its speed.
std::size_t peak_of_mean(const CarData& data, const track::Segment& corner, std::size_t first) {
    std::size_t best = 0;
    double highest = -1.0;
    const lap::LapTrace& grid = data.laps.front();
    for (std::size_t i = 0; i < grid.size(); ++i) {
        if (grid.distance_m[i] < corner.start_m || grid.distance_m[i] > corner.end_m) continue;
        double sum = 0.0;
        for (std::size_t l = first; l < data.laps.size(); l += 2) {
            const lap::LapTrace& lap = data.laps[l];
            sum += std::abs(lap.lateral_mps2[i]) / (1.0 + nominal_k * lap.speed_mps[i] * lap.speed_mps[i] / g);
        }
        if (sum > highest) {
            highest = sum;
            best = i;
        }
    }
    return best;
}

// Means over a quarter of a second on either side of a place in one lap.
struct Window {
    std::size_t lap = 0;
    double speed = 0.0;
    double lateral = 0.0;
    double longitudinal = 0.0;
    double along = 0.0; // what the tyres give along the path
    double throttle = std::nan("");
    double hardest_braking_before = 0.0; // in the four seconds before
    double fall = 0.0;                   // of the lateral acceleration, from this window to one twice as long
};

double along_of(const lap::LapTrace& lap, std::size_t i, const DrivingForceDraw& d) {
    const double v = lap.speed_mps[i];
    return (1.0 + d.rotating_share) * lap.longitudinal_mps2[i] + d.drag_per_kg * v * v + d.rolling_resistance * g;
}

// Mean of the lateral acceleration's magnitude within `half_width_s` of a place in one lap.
double mean_lateral(const lap::LapTrace& lap, std::size_t place, double half_width_s) {
    const double t = lap.time_s[place];
    std::size_t i = place;
    while (i > 0 && t - lap.time_s[i - 1] <= half_width_s)
        --i;
    double sum = 0.0;
    double count = 0.0;
    for (; i < lap.size() && lap.time_s[i] - t <= half_width_s; ++i, count += 1.0)
        sum += std::abs(lap.lateral_mps2[i]);
    return sum / count;
}

// What the tyres give altogether, as lateral acceleration: braking and driving take their parts of the ellipse.
double combined(double lateral, double along) {
    return std::hypot(lateral, along / (along < 0.0 ? usual_braking_share : usual_traction_share));
}

Window window_at(const lap::LapTrace& lap, std::size_t place, const DrivingForceDraw& driving) {
    Window w;
    const auto* throttle = lap.find(recording::Meaning::throttle);
    const double t = lap.time_s[place];
    double count = 0.0;
    double pedal = 0.0;
    std::size_t from = place;
    while (from > 0 && t - lap.time_s[from] < 4.0) {
        --from;
        w.hardest_braking_before = std::max(w.hardest_braking_before, -lap.longitudinal_mps2[from]);
    }
    std::size_t first = place;
    while (first > 0 && t - lap.time_s[first - 1] <= half_window_s)
        --first;
    for (std::size_t i = first; i < lap.size() && lap.time_s[i] - t <= half_window_s; ++i) {
        w.speed += lap.speed_mps[i];
        w.lateral += std::abs(lap.lateral_mps2[i]);
        w.along += along_of(lap, i, driving);
        w.longitudinal += lap.longitudinal_mps2[i];
        if (throttle != nullptr) pedal += throttle->values[i];
        count += 1.0;
    }
    w.speed /= count;
    w.lateral /= count;
    w.along /= count;
    w.longitudinal /= count;
    if (throttle != nullptr) w.throttle = pedal / count;
    return w;
}

double engine_limit(const DrivingForceDraw& d, double v) {
    return (d.power_per_kg / v - d.drag_per_kg * v * v - d.rolling_resistance * g) / (1.0 + d.rotating_share);
}

// One window a lap.  A lap is looked at where the other half of the laps has its peak: where its own noise made the
// peak it would be too high.
std::vector<Window> windows_of(const CarData& data, const track::Segment& segment, const DrivingForceDraw& driving) {
    const std::size_t peaks[2] = {peak_of_mean(data, segment, data.laps.size() > 1 ? 1 : 0),
                                  peak_of_mean(data, segment, 0)};
    std::vector<Window> windows;
    for (std::size_t l = 0; l < data.laps.size(); ++l) {
        const Window w = window_at(data.laps[l], peaks[l % 2], driving);
        if (w.lateral <= 2.0) continue;
        windows.push_back(w);
        windows.back().lap = l;
        windows.back().fall = w.lateral - mean_lateral(data.laps[l], peaks[l % 2], 2.0 * half_window_s);
    }
    return windows;
}

std::optional<LimitCorner> corner_evidence(const CarData& data, const track::Segment& segment,
                                           const DrivingForceDraw& driving) {
    LimitCorner corner;
    corner.corner = segment.name;
    const std::vector<Window> windows = windows_of(data, segment, driving);
    // The mean over laps, because the square of noise along the path would pass for grip.
    double along = 0.0;
    double fall = 0.0;
    for (const Window& w : windows) {
        along += w.along / static_cast<double>(windows.size());
        fall += w.fall / static_cast<double>(windows.size());
    }
    std::vector<double> logs;
    std::vector<double> squares;
    std::vector<double> throttles;
    std::vector<double> pushes;
    std::vector<double> brakings;
    for (const Window& w : windows) {
        const double lateral = combined(w.lateral, along);
        corner.laps.push_back(w.lap);
        corner.lap_speed_mps.push_back(w.speed);
        corner.lap_lateral_mps2.push_back(lateral);
        logs.push_back(std::log(lateral));
        squares.push_back(w.speed * w.speed);
        if (!std::isnan(w.throttle)) throttles.push_back(w.throttle);
        pushes.push_back(w.longitudinal / std::max(0.3, engine_limit(driving, w.speed)));
        brakings.push_back(w.hardest_braking_before);
    }
    if (logs.empty()) return std::nullopt;
    corner.log_lateral = math::mean(logs);
    corner.speed_squared = math::mean(squares);
    corner.error = sd_of_mean(logs);
    corner.fall = std::max(0.0, fall / std::exp(corner.log_lateral));
    const bool open = !throttles.empty() && math::median(throttles) > 0.9;
    const bool pushing = math::median(pushes) > 0.75;
    corner.flat = open || (throttles.empty() && pushing && math::median(brakings) < braking_mps2);
    // The faster the corner, the likelier that nerve sets the limit; a corner that needs no brakes all the more.
    const double speed = std::sqrt(corner.speed_squared);
    corner.chance_below = std::clamp(0.08 + 0.5 * (speed - 35.0) / 25.0, 0.08, 0.6);
    if (math::median(brakings) < braking_mps2) corner.chance_below = std::max(corner.chance_below, 0.5);
    return corner;
}

// One braking event of one lap: samples between the ramps, nearly straight.
struct Event {
    std::size_t corner = 0;
    std::vector<double> squares;
    std::vector<double> logs;
};

std::size_t corner_at_or_after(const std::vector<track::Segment>& segments, double distance_m) {
    std::size_t k = 0;
    while (k + 1 < segments.size() && distance_m >= segments[k].end_m)
        ++k;
    for (std::size_t i = 0; i < segments.size(); ++i) {
        const std::size_t at = (k + i) % segments.size();
        if (segments[at].kind == track::SegmentKind::corner) return at;
    }
    return k;
}

std::vector<Event> braking_events(const CarData& data, const lap::LapTrace& lap, const DrivingForceDraw& d) {
    std::vector<Event> events;
    std::size_t i = 0;
    while (i < lap.size()) {
        if (lap.longitudinal_mps2[i] > -braking_mps2) {
            ++i;
            continue;
        }
        std::size_t end = i;
        while (end < lap.size() && lap.longitudinal_mps2[end] <= -braking_mps2)
            ++end;
        const double from = lap.time_s[i] + ramp_in_s;
        const double to = lap.time_s[end - 1] - ramp_out_s;
        Event event;
        event.corner = corner_at_or_after(data.segments, lap.distance_m[end - 1]);
        for (std::size_t j = i; j < end; ++j) {
            if (lap.time_s[j] < from || lap.time_s[j] > to) continue;
            const double w = lap.speed_mps[j] * lap.speed_mps[j];
            const double slope = data.slope.empty() ? 0.0 : data.slope[j];
            const double tyre = -(1.0 + d.rotating_share) * lap.longitudinal_mps2[j] - d.drag_per_kg * w -
                                (d.rolling_resistance + slope) * g;
            const double lateral = std::abs(lap.lateral_mps2[j]);
            if (!(tyre > 2.0) || lateral > 0.4 * tyre) continue;
            event.squares.push_back(w);
            event.logs.push_back(std::log(std::hypot(tyre, usual_braking_share * lateral)));
        }
        if (event.logs.size() >= 4) events.push_back(std::move(event));
        i = end;
    }
    return events;
}

struct Halves {
    std::vector<double> slow_squares, fast_squares, slow_logs, fast_logs;
};

void add_event(Halves& halves, const Event& event) {
    const auto [least, most] = std::ranges::minmax(event.squares);
    const double middle = 0.5 * (least + most);
    double sums[4] = {};
    double counts[2] = {};
    for (std::size_t i = 0; i < event.logs.size(); ++i) {
        const std::size_t half = event.squares[i] > middle ? 1 : 0;
        sums[half] += event.squares[i];
        sums[2 + half] += event.logs[i];
        counts[half] += 1.0;
    }
    if (counts[0] == 0.0 || counts[1] == 0.0) return;
    halves.slow_squares.push_back(sums[0] / counts[0]);
    halves.fast_squares.push_back(sums[1] / counts[1]);
    halves.slow_logs.push_back(sums[2] / counts[0]);
    halves.fast_logs.push_back(sums[3] / counts[1]);
}

LimitZone zone_of(const Halves& halves, const std::string& corner, const DrivingForce& driving) {
    LimitZone zone;
    zone.corner = corner;
    zone.laps = halves.slow_logs.size();
    zone.slow_speed_squared = math::mean(halves.slow_squares);
    zone.fast_speed_squared = math::mean(halves.fast_squares);
    zone.slow_log = math::mean(halves.slow_logs);
    zone.fast_log = math::mean(halves.fast_logs);
    zone.slow_error = sd_of_mean(halves.slow_logs);
    // Drag that is taken off the faster half carries its own error.
    const double drag_error = driving.drag_sd * zone.fast_speed_squared / std::exp(zone.fast_log);
    zone.fast_error = std::hypot(sd_of_mean(halves.fast_logs), drag_error);
    return zone;
}

} // namespace

LimitEvidence limit_evidence(const CarData& data, const DrivingForce& driving) {
    LimitEvidence evidence;
    for (const track::Segment& segment : data.segments) {
        if (segment.kind != track::SegmentKind::corner) continue;
        if (auto corner = corner_evidence(data, segment, driving.best)) evidence.corners.push_back(std::move(*corner));
    }
    std::map<std::size_t, Halves> zones;
    for (const lap::LapTrace& lap : data.laps)
        for (const Event& event : braking_events(data, lap, driving.best))
            add_event(zones[event.corner], event);
    for (const auto& [corner, halves] : zones) {
        if (halves.slow_logs.size() * 2 < data.laps.size() + 1) continue; // not a habit
        const LimitZone zone = zone_of(halves, data.segments[corner].name, driving);
        if (zone.fast_speed_squared - zone.slow_speed_squared >= min_spread) evidence.zones.push_back(zone);
    }
    return evidence;
}

namespace {

// What is put down on the way out of a corner, as shares of what cornering leaves of the tyres.
struct Drive {
    std::vector<double> all;
    std::vector<double> below_engine; // where the engine could have given more
};

constexpr double top_quantile = 0.9;
constexpr double near_the_top = 0.95;

// What several corners agree on: of those that come near the highest the median, because noise makes the highest alone
// too high.  0 where no corner has `fewest`.
double agreed_top(const std::map<std::size_t, Drive>& drives, std::vector<double> Drive::* shares, std::size_t fewest) {
    std::vector<double> tops;
    for (const auto& [corner, drive] : drives)
        if ((drive.*shares).size() >= fewest) tops.push_back(math::quantile(drive.*shares, top_quantile));
    if (tops.empty()) return 0.0;
    const double least = near_the_top * std::ranges::max(tops);
    std::erase_if(tops, [least](double top) { return top < least; });
    return math::median(tops);
}

} // namespace

std::optional<Traction> traction(const CarData& data, const DrivingForce& driving, double log_limit, double k,
                                 double load_exponent) {
    std::map<std::size_t, Drive> drives;
    const DrivingForceDraw& d = driving.best;
    for (const lap::LapTrace& lap : data.laps)
        for (std::size_t i = 0; i < lap.size(); ++i) {
            const double v = lap.speed_mps[i];
            const double a = lap.longitudinal_mps2[i];
            if (a < 1.0 || v < 5.0) continue;
            const double slope = data.slope.empty() ? 0.0 : data.slope[i];
            const double tyre =
                (1.0 + d.rotating_share) * a + d.drag_per_kg * v * v + (d.rolling_resistance + slope) * g;
            const double limit = std::exp(log_limit + load_exponent * std::log1p(std::max(-0.9, k * v * v / g)));
            const double lateral = std::abs(lap.lateral_mps2[i]);
            if (lateral > 0.8 * limit) continue;
            const double share = tyre / std::sqrt(limit * limit - lateral * lateral);
            Drive& drive = drives[corner_at_or_after(data.segments, lap.distance_m[i])];
            drive.all.push_back(share);
            if (tyre < engine_is_limit * d.power_per_kg / v) drive.below_engine.push_back(share);
        }
    const std::size_t fewest = 4 * data.laps.size();
    const double most = agreed_top(drives, &Drive::all, fewest);
    const double max_below_engine = agreed_top(drives, &Drive::below_engine, fewest);
    if (!(most > 0.0)) return std::nullopt;
    return Traction{std::clamp(std::max(most, max_below_engine), min_traction, 1.0), max_below_engine < nearly * most};
}

} // namespace lapwright::car
