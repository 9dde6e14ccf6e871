// SPDX-License-Identifier: GPL-3.0-or-later
// The order of passes: positions alone (they need no heading) give headings and each sensor's latency; then velocities
// come in, then accelerometers and wheels, while noise levels settle; the last pass makes the ensemble.
#include "core/motion/smooth_motion.h"

#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/motion/dead_reckoning.h"
#include "core/motion/ensemble.h"
#include "core/motion/latency.h"
#include "core/motion/nodes.h"
#include "core/motion/position_noise.h"
#include "core/motion/refine.h"
#include "core/motion/sensor_scale.h"
#include "core/motion/wheel_slip.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace lapwright::motion {
namespace {

using base::said;

constexpr double open_gate = 1e9;
constexpr double wide_gate = 8.0;
constexpr double last_gate = 6.0;
constexpr double moving_mps = 5.0;
constexpr int max_more_passes = 3; // for noise that has not settled
constexpr std::array<const char*, sensors> sensor_names{base::word("position"),
                                                        base::word("speed"),
                                                        base::word("course"),
                                                        base::word("longitudinal acceleration"),
                                                        base::word("lateral acceleration"),
                                                        base::word("wheel speed"),
                                                        base::word("standstill")};

struct Relations {
    std::optional<Relation> speed;
    std::optional<Relation> course;
    std::optional<Relation> longitudinal;
    std::optional<Relation> lateral;
    std::optional<Relation> wheel;
};

double applied(const std::optional<Relation>& relation) {
    return relation && relation->has_latency() ? relation->latency_s : 0.0;
}

Latencies latencies(const Relations& relations) {
    return {applied(relations.speed), applied(relations.course), applied(relations.longitudinal),
            applied(relations.lateral), applied(relations.wheel)};
}

// A figure of the path at its nodes, NaN where the car is too slow for it to mean much.
template <typename Figure>
std::vector<double> along(const Path& path, const Figure& figure) {
    std::vector<double> values(path.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        const Moment moment{(*path.time_s)[i], path.position_m[i], path.velocity_mps[i], path.acceleration_mps2[i]};
        values[i] = moment.speed_mps() > moving_mps ? figure(moment) : absent;
    }
    return values;
}

std::vector<double> courses(const Path& path) {
    std::vector<double> values =
        along(path, [](const Moment& m) { return std::atan2(m.velocity_mps.east, m.velocity_mps.north); });
    constexpr double turn = 6.283185307179586;
    double last = 0.0;
    for (double& value : values) {
        if (std::isnan(value)) continue;
        value -= turn * std::round((value - last) / turn);
        last = value;
    }
    return values;
}

// Courses that were measured are brought to the same turn as the path's, so that a line can be fitted.
Series on_turn_of(Series course, const Path& path, const std::vector<double>& path_courses) {
    constexpr double turn = 6.283185307179586;
    std::size_t at = 0;
    double near = 0.0;
    for (std::size_t i = 0; i < course.size(); ++i) {
        while (at + 1 < path.size() && (*path.time_s)[at] < course.time_s[i])
            ++at;
        if (!std::isnan(path_courses[at])) near = path_courses[at];
        course.values[i] -= turn * std::round((course.values[i] - near) / turn);
    }
    return course;
}

void stamp(Estimation& estimation) {
    std::vector<double> stamps(estimation.nodes.size());
    std::ranges::transform(estimation.nodes, stamps.begin(), &Node::time_s);
    estimation.path.time_s = std::make_shared<const std::vector<double>>(std::move(stamps));
}

Estimation begin(std::vector<Node> nodes, const NoiseLevels& levels) {
    Estimation estimation;
    estimation.nodes = std::move(nodes);
    estimation.situations.resize(estimation.nodes.size());
    estimation.levels = levels;
    for (Situation& situation : estimation.situations)
        situation.jerk = levels.jerk;
    stamp(estimation);
    return estimation;
}

// The same session at other nodes, linearised about the path that is known.
Estimation continued(const Estimation& from, std::vector<Node> nodes) {
    Estimation estimation = begin(std::move(nodes), from.levels);
    Path& path = estimation.path;
    for (const Node& node : estimation.nodes) {
        const std::size_t before = from.path.index_before(node.time_s);
        const Moment moment = from.path.at(node.time_s, before);
        path.position_m.push_back(moment.position_m);
        path.velocity_mps.push_back(moment.velocity_mps);
        path.acceleration_mps2.push_back(moment.acceleration_mps2);
    }
    linearise(estimation);
    return estimation;
}

class Smoothing {
  public:
    Smoothing(const Measurements& measured, const Options& options, const base::Progress& progress,
              const std::optional<NoiseLevels>& known)
        : measured_(measured), options_(options), progress_(progress), known_(known) {}

    // False: cancelled.
    bool run() {
        if (!(measured_.has_positions() ? run_with_positions() : run_without_positions())) return false;
        for (int more = 0; more < max_more_passes && estimation_.noise.status == base::FitStatus::not_converged; ++more)
            if (!passes(1, {use(), wide_gate, true, true})) return false;
        for (const Sensor sensor : restless_sensors(estimation_)) {
            restless_.emplace_back(sensor_names[sensor]);
            estimation_.levels.sd[sensor] =
                std::max(estimation_.levels.sd[sensor], estimation_.levels_before.sd[sensor]);
        }
        return true;
    }

    base::Result<MotionEstimate> result() const {
        std::optional<Ensemble> drawn =
            ensemble(estimation_, {use(), last_gate, options_.draws, options_.seed, options_.threads}, progress_);
        if (!drawn) return base::cancelled();
        MotionEstimate motion;
        motion.frame = measured_.frame;
        motion.source = measured_.source;
        motion.bridges = bridges();
        motion.sensors = reports(*drawn);
        if (!restless_.empty())
            motion.warnings.push_back({.kind = recording::WarningKind::noise_not_settled, .texts = restless_});
        motion.best = std::move(drawn->best);
        motion.draws = std::move(drawn->draws);
        return motion;
    }

  private:
    bool run_with_positions() {
        std::vector<Node> nodes = position_nodes(measured_);
        const NoiseLevels levels = known_ ? *known_ : levels_of_positions(nodes);
        estimation_ = begin(std::move(nodes), levels);
        if (!passes(2, {{false, false}, open_gate, true, true})) return false;
        if (has_velocity() || has_aids()) relate_velocity();
        if (!go_on()) return false;
        estimation_ = continued(estimation_, all_nodes(measured_, latencies(relations_)));
        // How noisy the velocities are must be known before any
        // can be refused, and refused before the car follows them.
        if (has_velocity() && !passes(1, {{true, false}, open_gate, true, false})) return false;
        if (!passes(1, {{true, false}, wide_gate, true, true})) return false;
        if (!go_on()) return false;
        if (has_aids()) relate_aids();
        return passes(2, {use(), wide_gate, true, true});
    }

    // The course is all that there is to head by.
    bool run_without_positions() {
        estimation_ = begin(all_nodes(measured_, {}), known_.value_or(NoiseLevels{}));
        for (std::size_t i = 0; i < estimation_.nodes.size(); ++i) {
            const Node& node = estimation_.nodes[i];
            Situation& situation = estimation_.situations[i];
            if (i > 0) situation.heading = estimation_.situations[i - 1].heading;
            if (!std::isnan(node.course_rad))
                situation.heading = {std::sin(node.course_rad), std::cos(node.course_rad)};
            if (!std::isnan(node.speed_mps)) situation.speed_mps = node.speed_mps;
        }
        if (!passes(1, {{true, false}, open_gate, true, false})) return false;
        if (!passes(1, {{true, false}, wide_gate, true, true})) return false;
        if (has_aids()) {
            relate_aids();
            mark_slip(estimation_.nodes);
        }
        return passes(2, {use(), wide_gate, true, true});
    }

    [[nodiscard]] bool has_velocity() const { return !measured_.speed.empty() || !measured_.course.empty(); }
    [[nodiscard]] bool has_aids() const {
        return !measured_.longitudinal_mps2.empty() || !measured_.lateral_mps2.empty() ||
               !measured_.wheel_speed.empty();
    }
    [[nodiscard]] Use use() const { return {true, has_aids()}; }

    [[nodiscard]] double part_done() const { return 0.08 * std::min(passes_done_, 6); }
    [[nodiscard]] bool go_on() const { return base::go_on(progress_, said("learning the noise"), part_done()); }

    bool passes(int count, Pass pass) {
        pass.learn_levels = !known_;
        pass.threads = options_.threads;
        for (int i = 0; i < count; ++i) {
            if (!refine(estimation_, pass, progress_, part_done())) return false;
            ++passes_done_;
        }
        return true;
    }

    void relate_velocity() {
        const Path& path = estimation_.path;
        const std::vector<double>& time = *path.time_s;
        const std::vector<double> speeds = along(path, [](const Moment& m) { return m.speed_mps(); });
        const std::vector<double> path_courses = courses(path);
        const Series rolling = without_braking(measured_.wheel_speed);
        base::parallel_for(3, options_.threads, [&](std::size_t i) {
            if (i == 0) relations_.speed = relation(measured_.speed, time, speeds);
            if (i == 1)
                relations_.course = relation(on_turn_of(measured_.course, path, path_courses), time, path_courses);
            if (i == 2) relations_.wheel = relation(rolling, time, speeds);
        });
        if (!relations_.wheel) return;
        const SensorScale wheel = sensor_scale(rolling, applied(relations_.wheel), ways_of(path), math::Intercept::no);
        estimation_.levels.wheel_scale = wheel.scale;
        relations_.wheel->latency_s = applied(relations_.wheel) + wheel.later_s;
    }

    // Accelerations are related to the path that speeds have made sharp; a lateral one that is positive to the right
    // shows by its correlation.
    void relate_aids() {
        Measurements usable = measured_;
        base::parallel_for(2, options_.threads, [&](std::size_t i) {
            if (i == 0)
                longitudinal_scale_ =
                    settle(usable.longitudinal_mps2, relations_.longitudinal,
                           along(estimation_.path, [](const Moment& m) { return m.longitudinal_mps2(); }));
            if (i == 1)
                lateral_scale_ = settle(usable.lateral_mps2, relations_.lateral,
                                        along(estimation_.path, [](const Moment& m) { return m.lateral_mps2(); }));
        });
        if (measured_.has_positions()) usable.wheel_speed = without_braking(usable.wheel_speed);
        add_aids(estimation_.nodes, usable, latencies(relations_));
    }

    // A sensor that does not follow the path is not used; one with the other sign is turned round, and one that reads
    // too much or too little is brought to the path's scale.
    double settle(Series& series, std::optional<Relation>& found, const std::vector<double>& truth) const {
        const std::vector<double>& time = *estimation_.path.time_s;
        found = relation(series, time, truth);
        if (!found) {
            series = {};
            return 1.0;
        }
        const double sign = found->slope < 0.0 ? -1.0 : 1.0;
        for (double& value : series.values)
            value *= sign;
        const double scale = sensor_scale(series, applied(found), sums_of(time, truth), math::Intercept::yes).scale;
        for (double& value : series.values)
            value /= scale;
        return sign * scale;
    }

    [[nodiscard]] std::vector<Bridge> bridges() const {
        constexpr double longest_joined_s = 0.5;
        std::vector<Bridge> result;
        double last = estimation_.nodes.front().time_s;
        for (const Node& node : estimation_.nodes) {
            const bool seen = !std::isnan(node.position_m.east) || !std::isnan(node.speed_mps);
            if (!seen) continue;
            if (node.time_s - last > longest_joined_s || node.starts_afresh) result.push_back({last, node.time_s});
            last = node.time_s;
        }
        return result;
    }

    [[nodiscard]] std::vector<SensorReport> reports(const Ensemble& drawn) const {
        std::vector<SensorReport> result;
        const auto add = [&](Sensor sensor, std::size_t left_out, const std::optional<Relation>& found,
                             std::optional<double> scale, std::optional<double> bias) {
            const SensorCount& count = drawn.counts[sensor];
            if (count.samples == 0) return;
            SensorReport report{std::string(sensor_names[sensor]), estimation_.levels.sd[sensor], {}, scale, bias,
                                count.samples + left_out,          count.rejected + left_out};
            if (found) report.latency_s = found->latency_s;
            result.push_back(report);
        };
        add(by_position, measured_.positions_left_out, {}, {}, {});
        add(by_speed, measured_.speed.left_out, relations_.speed, {}, {});
        add(by_course, measured_.course.left_out, relations_.course, {}, {});
        add(by_longitudinal, 0, relations_.longitudinal, longitudinal_scale_, drawn.accelerometer_bias_mps2.east);
        add(by_lateral, 0, relations_.lateral, lateral_scale_, drawn.accelerometer_bias_mps2.north);
        add(by_wheel, 0, relations_.wheel, estimation_.levels.wheel_scale, {});
        return result;
    }

    const Measurements& measured_;
    const Options& options_;
    const base::Progress& progress_;
    const std::optional<NoiseLevels>& known_;
    Estimation estimation_;
    Relations relations_;
    double longitudinal_scale_ = 1.0;
    double lateral_scale_ = 1.0;
    int passes_done_ = 0;
    std::vector<std::string> restless_; // sensors whose noise did not settle
};

base::Result<MotionEstimate> reckoned(const Measurements& measured, const Options& options,
                                      const base::Progress& progress, const std::optional<NoiseLevels>& known) {
    const Measurements aimed = with_dead_reckoned_course(measured);
    if (all_nodes(aimed, {}).size() < 2) // wheel speed and cornering that never meet, for example
        return base::Error{base::ErrorCode::no_motion,
                           {},
                           said("without positions there is too little speed to follow the car by"),
                           said("export the session with latitude and longitude, or with its speed throughout")};
    Smoothing smoothing(aimed, options, progress, known);
    if (!smoothing.run()) return base::cancelled();
    base::Result<MotionEstimate> result = smoothing.result();
    if (!result) return result.error();
    MotionEstimate motion = std::move(result).value();
    add_scale_errors(motion, options.seed);
    return motion;
}

} // namespace

base::Result<MotionEstimate> smooth_motion(const Measurements& measured, const Options& options,
                                           const base::Progress& progress, const std::optional<NoiseLevels>& known) {
    if (!measured.has_positions() && measured.speed.empty() && measured.wheel_speed.empty())
        return base::Error{base::ErrorCode::no_motion,
                           {},
                           said("neither positions nor a speed were recorded"),
                           said("export the session with latitude and longitude, or with a speed")};
    if (!measured.has_positions()) return reckoned(measured, options, progress, known);
    if (position_nodes(measured).size() < 2)
        return base::Error{base::ErrorCode::no_motion,
                           {},
                           said("all positions lie within a few hundredths of a second"),
                           said("say what the time column is counted in")};
    Smoothing smoothing(measured, options, progress, known);
    if (!smoothing.run()) return base::cancelled();
    return smoothing.result();
}

} // namespace lapwright::motion
