// SPDX-License-Identifier: GPL-3.0-or-later
// The state-space model of a car that is seen by satellites, wheels and accelerometers.
//
// State, per axis (east 0..3, north 4..7): position p, velocity v, acceleration a driven by white jerk of spectral
// density q (m²/s⁵), and the receiver's position error b, first-order Gauss-Markov with standard deviation σ and
// correlation time τ.  With accelerometers or wheels also: 8, 9 biases of the longitudinal and lateral accelerometer
// (random walks).
// Observations are linear about a heading t (unit vector, n to its left) and a speed s of an earlier pass:
//   position = p + b;  speed·cos δ = t·v;  speed·sin δ = n·v (δ: course minus heading);
//   longitudinal = t·a + bias;  lateral = n·a + bias;  wheel speed = scale · t·v.
#pragma once

#include "core/math/gaussian_draws.h"
#include "core/math/gaussian_smoother.h"
#include "core/motion/motion_estimate.h"

#include <array>
#include <limits>
#include <span>
#include <vector>

namespace lapwright::motion {

enum Sensor : int { by_position, by_speed, by_course, by_longitudinal, by_lateral, by_wheel, by_standstill, sensors };

inline constexpr double absent = std::numeric_limits<double>::quiet_NaN();

// A moment at which something was measured; what was not is NaN.
struct Node {
    double time_s = 0.0;
    bool starts_afresh = false; // nothing joins it to the node before
    Vec2 position_m{absent, absent};
    double speed_mps = absent;
    double course_rad = absent;
    double longitudinal_mps2 = absent;
    double lateral_mps2 = absent;
    double wheel_speed_mps = absent;
    bool slips = false; // the speed is that of wheels which do not roll
};

// Where the model is linearised at a node, and how restless the car is there.
struct Situation {
    Vec2 heading{1.0, 0.0};
    double speed_mps = 0.0;
    double jerk = 20.0;          // spectral density q of the step that leads to the node
    double bias_jump_sd_m = 0.0; // the receiver changed its mind on the way here
};

// Standard deviations.  The defaults are the priors, taken where the data say little; they are ours, between the
// figures of data sheets and of published field tests (Gløersen et al. 2018; Angrisano et al. 2013).
struct NoiseLevels {
    // m, m/s, rad, m/s², m/s², m/s, m/s; the last is what a speed of nothing is worth as two components.
    std::array<double, sensors> sd{0.05, 0.05, 0.006, 0.4, 0.4, 0.3, 0.1};
    double bias_sd_m = 0.7;
    double bias_correlation_s = 120.0; // not estimated: a session says too little of it
    double accelerometer_walk = 0.05;  // m/s² per √s
    double jerk = 20.0;                // typical q
    double wheel_scale = 1.0;          // reading = scale * truth
};

template <int state_size>
struct MotionTransition {
    static constexpr int size = state_size;
    static constexpr bool has_aids = state_size > 8;
    static_assert(size == 8 || size == 10);

    double step_s = 0.0;
    double jerk = 0.0;
    double bias_decay = 1.0;
    double bias_variance = 0.0;
    double walk_variance = 0.0; // of the accelerometers' biases over the step

    template <typename State>
    void forward(State& x) const {
        using Number = typename State::Scalar;
        const auto step = static_cast<Number>(step_s);
        for (const int axis : {0, 4}) {
            x.row(axis) += step * x.row(axis + 1) + (Number(0.5) * step * step) * x.row(axis + 2);
            x.row(axis + 1) += step * x.row(axis + 2);
            x.row(axis + 3) *= static_cast<Number>(bias_decay);
        }
    }

    template <typename State>
    void backward(State& x) const {
        using Number = typename State::Scalar;
        const auto step = static_cast<Number>(step_s);
        for (const int axis : {0, 4}) {
            x.row(axis + 2) += step * x.row(axis + 1) + (Number(0.5) * step * step) * x.row(axis);
            x.row(axis + 1) += step * x.row(axis);
            x.row(axis + 3) *= static_cast<Number>(bias_decay);
        }
    }

    // Covariance of (p, v, a) per unit of q over the step.
    [[nodiscard]] Eigen::Matrix3d unit_noise() const {
        const double t = step_s;
        const double t2 = t * t;
        Eigen::Matrix3d noise;
        noise << t2 * t2 * t / 20.0, t2 * t2 / 8.0, t2 * t / 6.0, //
            t2 * t2 / 8.0, t2 * t / 3.0, t2 / 2.0,                //
            t2 * t / 6.0, t2 / 2.0, t;
        return noise;
    }

    template <typename Covariance>
    void add_noise(Covariance& p) const {
        const Eigen::Matrix3d noise = jerk * unit_noise();
        for (const int axis : {0, 4}) {
            p.template block<3, 3>(axis, axis) += noise;
            p(axis + 3, axis + 3) += bias_variance;
        }
        if constexpr (has_aids) {
            p(8, 8) += walk_variance;
            p(9, 9) += walk_variance;
        }
    }

    // Jerk integrated once, twice, three times: its first three Legendre coefficients over the step.
    template <int columns>
    [[nodiscard]] math::Batch<size, columns> noise(math::NormalBatch<columns>& normals) const {
        static const auto to_velocity = static_cast<float>(0.5 / std::sqrt(3.0));
        static const auto to_position = static_cast<float>(0.25 / std::sqrt(3.0));
        static const auto own_position = static_cast<float>(1.0 / std::sqrt(720.0));
        math::Batch<size, columns> w = normals.template next<size>();
        const auto step = static_cast<float>(step_s);
        const auto scale = static_cast<float>(std::sqrt(jerk * step_s));
        for (const int axis : {0, 4}) {
            const math::Batch<1, columns> z0 = scale * w.row(axis + 2);
            const math::Batch<1, columns> z1 = scale * w.row(axis + 1);
            w.row(axis) = step * step * (z0 / 6.0F + to_position * z1 + (own_position * scale) * w.row(axis));
            w.row(axis + 1) = step * (0.5F * z0 + to_velocity * z1);
            w.row(axis + 2) = z0;
            w.row(axis + 3) *= static_cast<float>(std::sqrt(bias_variance));
        }
        if constexpr (has_aids) {
            w.row(8) *= static_cast<float>(std::sqrt(walk_variance));
            w.row(9) *= static_cast<float>(std::sqrt(walk_variance));
        }
        return w;
    }
};

// What may be used of the nodes.
struct Use {
    bool velocity = true; // speed and course
    bool aids = true;     // accelerometers and wheels; needs state_size 10
};

// Of nodes first … end - 1.  Node 0, and every node that starts afresh, begins from a wide prior about its
// surroundings.
template <int state_size>
[[nodiscard]] math::StateSpace<MotionTransition<state_size>>
motion_model(std::span<const Node> nodes, std::span<const Situation> situations, const NoiseLevels& levels, Use use,
             std::size_t first, std::size_t end);
// Of all nodes.
template <int state_size>
[[nodiscard]] math::StateSpace<MotionTransition<state_size>>
motion_model(std::span<const Node> nodes, std::span<const Situation> situations, const NoiseLevels& levels, Use use) {
    return motion_model<state_size>(nodes, situations, levels, use, 0, nodes.size());
}

} // namespace lapwright::motion
