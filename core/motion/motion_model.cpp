// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/motion_model.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace lapwright::motion {
namespace {

// Below this a course says nothing, and below the other the car stands.
constexpr double slowest_course_mps = 2.0;
constexpr double standing_mps = 0.5;
// A course that differs more from the heading than this is taken for an error.
constexpr double cosine_of_widest_course_error = 0.7648; // 0.7 rad

// Departures that are no sign of a fault, whatever the noise levels say of themselves: m, m/s, m/s, m/s², m/s², m/s.
constexpr std::array<float, sensors> harmless{0.3F, 0.3F, 0.5F, 2.0F, 2.0F, 0.5F, 0.5F};

struct Prior {
    double position_sd_m = 100.0;
    double origin_sd_m = 1e-3; // without positions: the path begins at the origin
    double velocity_sd_mps = 60.0;
    double acceleration_sd_mps2 = 8.0;
    double accelerometer_bias_sd_mps2 = 0.5;
};

bool known(double value) {
    return !std::isnan(value);
}

// Collects the observations of one node after the other.
class Observer {
  public:
    Observer(const NoiseLevels& levels, std::vector<math::Observation>& to) : levels_(levels), to_(to) {}

    void position(const Vec2& seen) {
        add(by_position, {0, 3, 0}, {1.0, 1.0, 0.0}, seen.east, 1.0);
        add(by_position, {4, 7, 0}, {1.0, 1.0, 0.0}, seen.north, 1.0);
    }

    void velocity(const Node& node, const Situation& at) {
        const bool has_speed = known(node.speed_mps) && !node.slips;
        if (has_speed && node.speed_mps < standing_mps && at.speed_mps < 2.0 * standing_mps) {
            add(by_standstill, {1, 0, 0}, {1.0, 0.0, 0.0}, 0.0, 1.0);
            add(by_standstill, {5, 0, 0}, {1.0, 0.0, 0.0}, 0.0, 1.0);
            return;
        }
        const double speed = has_speed ? node.speed_mps : at.speed_mps;
        const bool has_course = known(node.course_rad) && speed > slowest_course_mps;
        const Vec2 course = has_course ? Vec2{std::sin(node.course_rad), std::cos(node.course_rad)} : at.heading;
        const double cosine = at.heading.east * course.east + at.heading.north * course.north;
        if (cosine < cosine_of_widest_course_error) return;
        if (has_speed) along(by_speed, at, speed * cosine, 1.0);
        if (has_course)
            across(at, speed * (at.heading.east * course.north - at.heading.north * course.east), speed * speed);
    }

    void aids(const Node& node, const Situation& at) {
        const Vec2& t = at.heading;
        if (at.speed_mps < slowest_course_mps) return;
        if (known(node.longitudinal_mps2))
            add(by_longitudinal, {2, 6, 8}, {t.east, t.north, 1.0}, node.longitudinal_mps2, 1.0);
        if (known(node.lateral_mps2)) add(by_lateral, {2, 6, 9}, {-t.north, t.east, 1.0}, node.lateral_mps2, 1.0);
        if (known(node.wheel_speed_mps) && !known(node.speed_mps))
            add(by_wheel, {1, 5, 0}, {t.east, t.north, 0.0}, node.wheel_speed_mps / levels_.wheel_scale, 1.0);
    }

  private:
    void along(Sensor sensor, const Situation& at, double value, double unit_variance) {
        add(sensor, {1, 5, 0}, {at.heading.east, at.heading.north, 0.0}, value, unit_variance);
    }

    void across(const Situation& at, double value, double unit_variance) {
        add(by_course, {1, 5, 0}, {-at.heading.north, at.heading.east, 0.0}, value, unit_variance);
    }

    void add(Sensor sensor, std::array<std::uint8_t, 3> index, std::array<double, 3> weight, double value,
             double unit_variance) {
        const double sd = levels_.sd[sensor];
        to_.push_back(
            {index, static_cast<std::uint8_t>(sensor), harmless[sensor], weight, value, sd * sd * unit_variance});
    }

    const NoiseLevels& levels_;
    std::vector<math::Observation>& to_;
};

// The first position at or behind a node, else the last before it; nothing where none was measured.
std::optional<Vec2> position_near(std::span<const Node> nodes, std::size_t at) {
    for (std::size_t i = at; i < nodes.size(); ++i)
        if (known(nodes[i].position_m.east)) return nodes[i].position_m;
    for (std::size_t i = at; i-- > 0;)
        if (known(nodes[i].position_m.east)) return nodes[i].position_m;
    return std::nullopt;
}

template <int state_size>
typename math::StateSpace<MotionTransition<state_size>>::Prior prior_near(std::span<const Node> nodes, std::size_t at,
                                                                          const NoiseLevels& levels) {
    const Prior prior;
    typename math::StateSpace<MotionTransition<state_size>>::Prior result;
    const std::optional<Vec2> near = position_near(nodes, at);
    if (near) {
        result.mean[0] = near->east;
        result.mean[4] = near->north;
    }
    for (const int axis : {0, 4})
        result.sd.template segment<4>(axis) << (near ? prior.position_sd_m : prior.origin_sd_m), prior.velocity_sd_mps,
            prior.acceleration_sd_mps2, levels.bias_sd_m;
    if constexpr (state_size > 8) result.sd.template tail<2>().setConstant(prior.accelerometer_bias_sd_mps2);
    return result;
}

template <int state_size>
MotionTransition<state_size> transition(double step_s, const Situation& situation, const NoiseLevels& levels) {
    MotionTransition<state_size> result;
    result.step_s = step_s;
    result.jerk = situation.jerk;
    result.bias_decay = std::exp(-step_s / levels.bias_correlation_s);
    result.bias_variance = levels.bias_sd_m * levels.bias_sd_m * (1.0 - result.bias_decay) * (1.0 + result.bias_decay);
    result.bias_variance += situation.bias_jump_sd_m * situation.bias_jump_sd_m;
    result.walk_variance = levels.accelerometer_walk * levels.accelerometer_walk * step_s;
    return result;
}

} // namespace

template <int state_size>
math::StateSpace<MotionTransition<state_size>>
motion_model(std::span<const Node> nodes, std::span<const Situation> situations, const NoiseLevels& levels, Use use,
             std::size_t first, std::size_t end) {
    math::StateSpace<MotionTransition<state_size>> model;
    model.steps.reserve(end - first);
    model.observations.reserve((end - first) * 6);
    constexpr double longest_refusal_s = 1.5;
    const double duration_s = nodes.empty() ? 0.0 : nodes.back().time_s - nodes.front().time_s;
    model.patience = static_cast<std::size_t>(3.0 + longest_refusal_s * static_cast<double>(nodes.size()) /
                                                        std::max(duration_s, 1.0));
    Observer observer(levels, model.observations);
    for (std::size_t k = first; k < end; ++k) {
        const Node& node = nodes[k];
        const bool afresh = k == 0 || node.starts_afresh;
        const double step_s = afresh ? 0.0 : node.time_s - nodes[k - 1].time_s;
        int prior = -1;
        if (afresh) {
            prior = static_cast<int>(model.priors.size());
            model.priors.push_back(prior_near<state_size>(nodes, k, levels));
        }
        model.steps.push_back(
            {transition<state_size>(step_s, situations[k], levels), model.observations.size(), prior});
        if (known(node.position_m.east)) observer.position(node.position_m);
        if (use.velocity) observer.velocity(node, situations[k]);
        if constexpr (state_size > 8)
            if (use.aids) observer.aids(node, situations[k]);
    }
    return model;
}

template math::StateSpace<MotionTransition<8>> motion_model<8>(std::span<const Node>, std::span<const Situation>,
                                                               const NoiseLevels&, Use, std::size_t, std::size_t);
template math::StateSpace<MotionTransition<10>> motion_model<10>(std::span<const Node>, std::span<const Situation>,
                                                                 const NoiseLevels&, Use, std::size_t, std::size_t);

} // namespace lapwright::motion
