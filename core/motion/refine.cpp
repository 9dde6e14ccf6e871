// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/refine.h"

#include "core/base/parallel.h"
#include "core/base/translation.h"

#include <algorithm>
#include <cmath>
#include <mutex>
#include <numeric>
#include <optional>

namespace lapwright::motion {
namespace {

using base::said;

constexpr std::size_t piece_nodes = 1500;
constexpr double margin_s = 2.0;
// Beyond this many robust standard deviations a smoothed noise says nothing of the noise's level.
constexpr double outlier_sds = 4.0;
// Pseudo-observations at the prior.
constexpr double sensor_prior_weight = 20.0;
constexpr double walk_prior_weight = 10.0;
constexpr double jerk_prior_weight = 2.0;
// Time constant of the two-sided exponential window: as short as
// the driver is quick, but wide enough to hold so much evidence.
constexpr double shortest_jerk_window_s = 0.35;
constexpr double longest_jerk_window_s = 2.0;
constexpr double jerk_window_worth = 16.0;
constexpr double min_jerk = 0.01;
constexpr double max_jerk = 1e5;
// Finer than the resolution of usual files (1e-7 degrees, 0.01 km/h, 0.01 degrees) no noise is believed.
constexpr std::array<double, sensors> min_sd{0.01, 0.01, 3e-4, 0.1, 0.1, 0.03, 0.1};

// A variance's evidence: Σ θ û² and Σ θ d.
struct Evidence {
    double seen = 0.0;
    double worth = 0.0;

    void add(const Evidence& other) {
        seen += other.seen;
        worth += other.worth;
    }
    [[nodiscard]] double factor(double prior_over_now, double prior_weight) const {
        return (seen + prior_weight * prior_over_now) / (worth + prior_weight);
    }
};

// What the gate did to the position of a node.
enum class Seen : std::uint8_t { nothing, accepted, rejected };

struct PieceResult {
    std::array<std::vector<Evidence>, sensors> samples; // each accepted observation
    Evidence bias;
    Evidence walk;
};

struct Range {
    std::size_t first = 0; // with the margins
    std::size_t core_first = 0;
    std::size_t core_end = 0;
    std::size_t end = 0;
};

std::vector<Range> pieces(const std::vector<Node>& nodes) {
    std::vector<Range> result;
    const std::size_t count = std::max<std::size_t>(1, nodes.size() / piece_nodes);
    for (std::size_t i = 0; i < count; ++i) {
        Range range;
        range.core_first = nodes.size() * i / count;
        range.core_end = nodes.size() * (i + 1) / count;
        range.first = range.core_first;
        while (range.first > 0 && nodes[range.core_first].time_s - nodes[range.first - 1].time_s < margin_s)
            --range.first;
        range.end = range.core_end;
        while (range.end < nodes.size() && nodes[range.end].time_s - nodes[range.core_end - 1].time_s < margin_s)
            ++range.end;
        result.push_back(range);
    }
    return result;
}

// Collects what one piece says, on the way back.
template <int state_size>
struct Collector {
    using Model = math::StateSpace<MotionTransition<state_size>>;
    const Model& model;
    const math::Filtered<MotionTransition<state_size>>& filtered;
    const Range& range;
    Path& path;
    std::vector<Evidence>& jerk;
    std::vector<Seen>& seen_position;
    PieceResult& result;
    std::size_t core_first_observation;
    std::size_t core_end_observation;

    void observation(std::size_t j, double u, double d) {
        if (j < core_first_observation || j >= core_end_observation) return;
        const math::Observation& seen = model.observations[j];
        result.samples[static_cast<std::size_t>(seen.sensor)].push_back({seen.variance * u * u, seen.variance * d});
    }

    void step(std::size_t k, const typename Model::Vector& r, const typename Model::Matrix& n) {
        const std::size_t at = range.first + k;
        if (at < range.core_first || at >= range.core_end) return;
        const typename Model::Vector x = filtered.mean[k] + filtered.covariance[k].lazyProduct(r);
        path.position_m[at] = {x[0], x[4]};
        path.velocity_mps[at] = {x[1], x[5]};
        path.acceleration_mps2[at] = {x[2], x[6]};
        jerk[at] = {};
        seen_position[at] = position_of(k);
        if (model.steps[k].prior >= 0) return;
        const MotionTransition<state_size>& moved = model.steps[k].transition;
        const Eigen::Matrix3d unit = moved.unit_noise();
        for (const int axis : {0, 4}) {
            const Eigen::Vector3d ra = r.template segment<3>(axis);
            jerk[at].seen += moved.jerk * ra.dot(unit * ra);
            jerk[at].worth += moved.jerk * n.template block<3, 3>(axis, axis).cwiseProduct(unit).sum();
            result.bias.add(
                {moved.bias_variance * r[axis + 3] * r[axis + 3], moved.bias_variance * n(axis + 3, axis + 3)});
        }
        if constexpr (state_size > 8)
            for (const int i : {8, 9})
                result.walk.add({moved.walk_variance * r[i] * r[i], moved.walk_variance * n(i, i)});
    }

    [[nodiscard]] Seen position_of(std::size_t k) const {
        Seen seen = Seen::nothing;
        for (std::size_t j = model.steps[k].first_observation; j < model.observations_end(k); ++j) {
            if (model.observations[j].sensor != by_position) continue;
            if (filtered.accepted[j] == 0) return Seen::rejected;
            seen = Seen::accepted;
        }
        return seen;
    }
};

template <int state_size>
PieceResult smooth_piece(Estimation& estimation, const Range& range, const Pass& pass, std::vector<Evidence>& jerk,
                         std::vector<Seen>& seen_position) {
    const std::span nodes = std::span(estimation.nodes).subspan(range.first, range.end - range.first);
    const std::span situations = std::span(estimation.situations).subspan(range.first, range.end - range.first);
    const auto model = motion_model<state_size>(nodes, situations, estimation.levels, pass.use);
    const auto filtered = math::Filter<MotionTransition<state_size>>::run(model, pass.gate);
    PieceResult result;
    const std::size_t first = model.steps[range.core_first - range.first].first_observation;
    const std::size_t end = model.observations_end(range.core_end - 1 - range.first);
    math::walk_back<true>(
        model, filtered,
        Collector<state_size>{model, filtered, range, estimation.path, jerk, seen_position, result, first, end});
    return result;
}

// The evidence of a sensor's samples without outliers: those within some robust standard deviations.
Evidence robust_sum(const std::vector<Evidence>& samples) {
    if (samples.empty()) return {};
    std::vector<double> ratios(samples.size());
    std::ranges::transform(samples, ratios.begin(), [](const Evidence& e) { return e.seen / e.worth; });
    const auto middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
    std::ranges::nth_element(ratios, middle);
    constexpr double median_of_square = 0.454936; // of a standard normal
    const double limit = outlier_sds * outlier_sds * *middle / median_of_square;
    Evidence sum;
    for (const Evidence& sample : samples)
        if (sample.seen <= limit * sample.worth) sum.add(sample);
    return sum;
}

void learn_sensors(Estimation& estimation, const std::vector<PieceResult>& results) {
    const NoiseLevels prior;
    for (std::size_t sensor = 0; sensor < sensors; ++sensor) {
        if (sensor == by_standstill) continue;
        std::vector<Evidence> samples;
        for (const PieceResult& result : results)
            samples.insert(samples.end(), result.samples[sensor].begin(), result.samples[sensor].end());
        if (samples.empty()) continue;
        const Evidence sum = robust_sum(samples);
        double& sd = estimation.levels.sd[sensor];
        const double prior_over_now = std::pow(prior.sd[sensor] / sd, 2);
        sd = std::max(min_sd[sensor], sd * std::sqrt(sum.factor(prior_over_now, sensor_prior_weight)));
        estimation.samples_worth[sensor] = sum.worth;
    }
}

// The position's slow error shows only against velocities;
// without them it would be mistaken for the car's own movement.
void learn_walks(Estimation& estimation, const std::vector<PieceResult>& results, bool knows_velocity) {
    const NoiseLevels prior;
    Evidence bias;
    Evidence walk;
    for (const PieceResult& result : results) {
        bias.add(result.bias);
        walk.add(result.walk);
    }
    NoiseLevels& levels = estimation.levels;
    constexpr double min_bias_sd_m = 0.01;
    if (knows_velocity)
        levels.bias_sd_m =
            std::max(min_bias_sd_m,
                     levels.bias_sd_m *
                         std::sqrt(bias.factor(std::pow(prior.bias_sd_m / levels.bias_sd_m, 2), walk_prior_weight)));
    levels.accelerometer_walk *=
        std::sqrt(walk.factor(std::pow(prior.accelerometer_walk / levels.accelerometer_walk, 2), walk_prior_weight));
}

// Two-sided exponential window over time.
void spread(std::vector<Evidence>& values, const std::vector<Node>& nodes, double window_s) {
    std::vector<Evidence> behind = values;
    std::vector<double> shares(values.size(), 0.0);
    for (std::size_t i = 1; i < values.size(); ++i) {
        if (!nodes[i].starts_afresh) shares[i] = std::exp(-(nodes[i].time_s - nodes[i - 1].time_s) / window_s);
        behind[i].add({shares[i] * behind[i - 1].seen, shares[i] * behind[i - 1].worth});
    }
    Evidence ahead;
    for (std::size_t i = values.size(); i-- > 0;) {
        const Evidence own = values[i];
        values[i] = behind[i];
        values[i].add(ahead);
        ahead = {shares[i] * (ahead.seen + own.seen), shares[i] * (ahead.worth + own.worth)};
    }
}

void learn_jerk(Estimation& estimation, std::vector<Evidence> evidence) {
    std::vector<Situation>& situations = estimation.situations;
    Evidence whole;
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        evidence[i].seen *= situations[i].jerk; // Σ θ (θ û²): the estimate times its worth
        whole.add(evidence[i]);
    }
    const double duration_s = estimation.nodes.back().time_s - estimation.nodes.front().time_s;
    const double window_s = std::clamp(0.5 * jerk_window_worth * duration_s / std::max(whole.worth, 1.0),
                                       shortest_jerk_window_s, longest_jerk_window_s);
    spread(evidence, estimation.nodes, window_s);
    const double typical = estimation.levels.jerk;
    double sum_log = 0.0;
    double weight = 0.0;
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        const double jerk = (evidence[i].seen + jerk_prior_weight * typical) / (evidence[i].worth + jerk_prior_weight);
        situations[i].jerk = std::clamp(jerk, min_jerk, max_jerk);
        sum_log += evidence[i].worth * std::log(situations[i].jerk);
        weight += evidence[i].worth;
    }
    if (weight > 0.0) estimation.levels.jerk = std::exp(sum_log / weight);
}

// Positions that the gate refuses for longer than an outlier lasts tell of a receiver that has changed its mind (other
// satellites, a corrected fix): its error may jump where that begins, and the positions are believed again.
void allow_jumps(Estimation& estimation, const std::vector<Seen>& seen_position) {
    constexpr double longest_outlier_s = 1.0;
    constexpr double jump_sd_m = 5.0;
    std::optional<std::size_t> begin;
    for (std::size_t i = 0; i < seen_position.size(); ++i) {
        if (seen_position[i] == Seen::accepted) begin.reset();
        if (seen_position[i] != Seen::rejected) continue;
        if (!begin) begin = i;
        if (estimation.nodes[i].time_s - estimation.nodes[*begin].time_s > longest_outlier_s)
            estimation.situations[*begin].bias_jump_sd_m = jump_sd_m;
    }
}

void learn_noise(Estimation& estimation, const std::vector<PieceResult>& results) {
    estimation.levels_before = estimation.levels;
    learn_sensors(estimation, results);
    learn_walks(estimation, results, estimation.samples_worth[by_speed] > 0.0);
    const double worth = std::accumulate(estimation.samples_worth.begin(), estimation.samples_worth.end(), 0.0);
    estimation.noise = {restless_sensors(estimation).empty() ? base::FitStatus::converged
                                                             : base::FitStatus::not_converged,
                        estimation.noise.rounds + 1, static_cast<std::size_t>(worth)};
}

} // namespace

std::vector<Sensor> restless_sensors(const Estimation& estimation) {
    std::vector<Sensor> restless;
    for (int sensor = 0; sensor < sensors; ++sensor) {
        const auto s = static_cast<std::size_t>(sensor);
        const double moved = std::abs(std::log(estimation.levels.sd[s] / estimation.levels_before.sd[s]));
        if (estimation.samples_worth[s] > 0.0 && moved > std::log(settled_noise))
            restless.push_back(static_cast<Sensor>(sensor));
    }
    return restless;
}

void linearise(Estimation& estimation) {
    constexpr double slowest_mps = 1.0;
    Vec2 heading{1.0, 0.0};
    for (std::size_t i = 0; i < estimation.nodes.size(); ++i) {
        const Vec2& v = estimation.path.velocity_mps[i];
        const double speed = std::sqrt(v.east * v.east + v.north * v.north);
        if (speed > slowest_mps) heading = {v.east / speed, v.north / speed};
        estimation.situations[i].heading = heading;
        estimation.situations[i].speed_mps = speed;
    }
}

bool refine(Estimation& estimation, const Pass& pass, const base::Progress& progress, double part_done) {
    const std::vector<Range> ranges = pieces(estimation.nodes);
    std::vector<PieceResult> results(ranges.size());
    std::vector<Evidence> jerk(estimation.nodes.size());
    std::vector<Seen> seen_position(estimation.nodes.size(), Seen::nothing);
    Path& path = estimation.path;
    path.position_m.resize(estimation.nodes.size());
    path.velocity_mps.resize(estimation.nodes.size());
    path.acceleration_mps2.resize(estimation.nodes.size());
    std::mutex asking;
    const auto go_on = [&] {
        const std::scoped_lock lock(asking);
        return base::go_on(progress, said("learning the noise"), part_done);
    };
    if (!go_on()) return false;
    const bool done = base::parallel_for(ranges.size(), pass.threads, [&](std::size_t i, std::size_t) {
        results[i] = pass.use.aids ? smooth_piece<10>(estimation, ranges[i], pass, jerk, seen_position)
                                   : smooth_piece<8>(estimation, ranges[i], pass, jerk, seen_position);
        return go_on();
    });
    if (!done) return false;
    if (pass.learn_levels) learn_noise(estimation, results);
    if (!pass.learn_car) return true;
    learn_jerk(estimation, std::move(jerk));
    allow_jumps(estimation, seen_position);
    linearise(estimation);
    return true;
}

} // namespace lapwright::motion
