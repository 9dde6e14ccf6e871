// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/explain.h"

#include "core/base/parallel.h"
#include "core/car/slope.h"
#include "core/causes/explain.h"
#include "core/comparison/compare_laps.h"
#include "core/lap/trace_lap.h"
#include "core/math/statistics.h"
#include "core/motion/estimate_motion.h"

#include <algorithm>
#include <array>
#include <optional>

namespace lapwright::analysis {
namespace {

using base::Result;
using recording::Meaning;

// Median of a weather channel, where the logger had one.
std::optional<double> recorded(const recording::Recording& recording, Meaning meaning) {
    const recording::Channel* channel = recording.find(meaning);
    if (channel == nullptr || channel->values.empty()) return std::nullopt;
    return math::median(channel->values);
}

car::AirDensity air_of(const Side& side, const car::SetupSheet& setup) {
    car::AirConditions conditions = setup.conditions;
    const recording::Recording& recording = *side.session->recording;
    if (!conditions.temperature_k) conditions.temperature_k = recorded(recording, Meaning::air_temperature);
    if (!conditions.pressure_pa) conditions.pressure_pa = recorded(recording, Meaning::air_pressure);
    if (!conditions.humidity) conditions.humidity = recorded(recording, Meaning::humidity);
    const std::vector<double>& altitude = side.session->motion->altitude_m;
    if (!conditions.altitude_m && !altitude.empty()) conditions.altitude_m = math::median(altitude);
    return car::air_density(conditions);
}

// Altitude of one lap at its grid points, linear between its stamps; empty where it was not recorded all the way.
std::vector<double> altitude_of(const motion::MotionEstimate& motion, const lap::LapTrace& trace, double start_s) {
    const std::vector<double>& stamps = motion.altitude_time_s;
    if (stamps.size() < 2 || stamps.front() > start_s || stamps.back() < start_s + trace.lap_time_s()) return {};
    std::vector<double> values;
    values.reserve(trace.size());
    std::size_t k = 0;
    for (const double t_lap : trace.time_s) {
        const double t = start_s + t_lap;
        while (k + 2 < stamps.size() && stamps[k + 1] <= t)
            ++k;
        const double u = (t - stamps[k]) / (stamps[k + 1] - stamps[k]);
        values.push_back(motion.altitude_m[k] + u * (motion.altitude_m[k + 1] - motion.altitude_m[k]));
    }
    return values;
}

struct Learned {
    std::vector<lap::LapTrace> laps;
    car::CarFigures figures;
};

Result<Learned> learn(const Side& side, const Pairing& pairing, const car::SetupSheet& setup,
                      const CausesOptions& options) {
    Learned learned;
    std::vector<std::vector<double>> altitudes;
    const recording::Recording& recording = *side.session->recording;
    const auto take = [&](const lap::LapTrace& trace, const lap::Lap& lap) {
        learned.laps.push_back(lap::with_channels(trace, lap.start_s, recording));
        auto altitude = altitude_of(*side.session->motion, trace, lap.start_s);
        if (!altitude.empty()) altitudes.push_back(std::move(altitude));
    };
    for (std::size_t i = 0; i < side.clean_traces.size(); ++i)
        take(side.clean_traces[i], side.clean_laps[i]);
    if (learned.laps.empty()) take(side.trace.best, side.lap);
    car::CarData data;
    data.laps = learned.laps;
    data.segments = pairing.track.segments;
    data.length_sd = pairing.length_sd;
    data.air = air_of(side, setup);
    data.mass = setup.mass;
    data.springs = setup.springs;
    data.known = setup.known;
    if (altitudes.size() == learned.laps.size()) data.slope = car::slope_of(altitudes, learned.laps.front().distance_m);
    auto figures = car::car_figures(data, {options.draws, motion::own_seed(recording, options.seed)});
    if (!figures) {
        base::Error error = figures.error();
        error.place.file = recording.source_file;
        return error;
    }
    learned.figures = std::move(figures).value();
    return learned;
}

} // namespace

Result<std::shared_ptr<const causes::Explanation>> explain(const Pairing& pairing, const CausesOptions& options,
                                                           const base::Progress& progress) {
    if (!base::go_on(progress, "learning what the cars can do", 0.0)) return base::cancelled();
    // Two laps of one session are of one car: what is not known of it is not known alike on both sides.
    const bool same_car = pairing.a.session == pairing.b.session;
    const car::SetupSheet& setup_b = same_car ? options.setup_a : options.setup_b;
    std::array<std::optional<Result<Learned>>, 2> learned;
    base::parallel_for(2, std::max(1U, options.threads), [&](std::size_t i) {
        learned[i] =
            i == 0 ? learn(pairing.a, pairing, options.setup_a, options) : learn(pairing.b, pairing, setup_b, options);
    });
    for (const auto& one : learned)
        if (!*one) return one->error();
    const auto& segments = pairing.track.segments;
    Learned learned_a = std::move(*learned[0]).value();
    Learned learned_b = std::move(*learned[1]).value();
    const causes::KnownSide side_a{std::move(learned_a.figures), std::move(learned_a.laps),
                                   comparison::segment_times(pairing.a.trace.best, segments)};
    const causes::KnownSide side_b{std::move(learned_b.figures), std::move(learned_b.laps),
                                   comparison::segment_times(pairing.b.trace.best, segments)};
    causes::ExplainOptions how;
    how.seed = options.seed;
    how.same_car = same_car;
    how.threads = options.threads;
    auto explanation = causes::explain(side_a, side_b, pairing.comparison, how, progress);
    if (!explanation) return explanation.error();
    return std::make_shared<const causes::Explanation>(std::move(explanation).value());
}

} // namespace lapwright::analysis
