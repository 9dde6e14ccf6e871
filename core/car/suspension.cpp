// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/suspension.h"

#include "core/base/translation.h"
#include "core/car/full_throttle.h"
#include "core/math/distributions.h"
#include "core/math/statistics.h"

#include <Eigen/QR>

#include <array>
#include <cmath>

namespace lapwright::car {
namespace {

using base::said;
using recording::Meaning;

constexpr double slowest_mps = 10.0;
constexpr double max_lateral_mps2 = 2.0;
constexpr double settle_s = 0.3; // the body follows the pedals so late
constexpr std::size_t fewest_straights = 3;
constexpr std::size_t fewest_samples = 200;
constexpr double sure = 3.0; // standard errors
// Load that goes from axle to axle per acceleration and mass: height of the centre of gravity over the wheelbase, less
// what links carry (common practice, no source).
constexpr double min_transfer = 0.02;
constexpr double max_transfer = 0.6;
constexpr double usual_transfer = 0.16;

enum Column { drive, brake, squared, columns };

struct Sample {
    std::size_t lap = 0;
    std::size_t straight = 0;
    std::array<double, columns> x{};
    double front_m = 0.0; // both wheels together
    double rear_m = 0.0;
};

// Travel of both wheels of an axle at each grid point; one channel stands for its neighbour, because straights load
// both alike.  Empty where neither was recorded.
std::vector<double> axle_travel(const lap::LapTrace& lap, Meaning left, Meaning right) {
    const lap::TraceChannel* l = lap.find(left);
    const lap::TraceChannel* r = lap.find(right);
    if (l == nullptr && r == nullptr) return {};
    const std::vector<double>& one = (l != nullptr ? l : r)->values;
    const std::vector<double>& other = (r != nullptr ? r : l)->values;
    std::vector<double> sum(one.size());
    for (std::size_t i = 0; i < sum.size(); ++i)
        sum[i] = one[i] + other[i];
    return sum;
}

bool is_straight_around(const lap::LapTrace& lap, std::size_t i) {
    const auto calm = [&](std::size_t j) { return std::abs(lap.lateral_mps2[j]) < max_lateral_mps2; };
    for (std::size_t j = i; lap.time_s[i] - lap.time_s[j] < settle_s; --j) {
        if (!calm(j)) return false;
        if (j == 0) break;
    }
    return calm(i);
}

std::vector<Sample> samples_of(const CarData& data) {
    std::vector<Sample> samples;
    for (std::size_t l = 0; l < data.laps.size(); ++l) {
        const lap::LapTrace& lap = data.laps[l];
        const auto front = axle_travel(lap, Meaning::suspension_front_left, Meaning::suspension_front_right);
        const auto rear = axle_travel(lap, Meaning::suspension_rear_left, Meaning::suspension_rear_right);
        if (front.empty() || rear.empty()) continue;
        for (std::size_t i = 0; i < lap.size(); ++i) {
            const double v = lap.speed_mps[i];
            if (v < slowest_mps || !is_straight_around(lap, i) || !std::isfinite(front[i] + rear[i])) continue;
            const double a = lap.longitudinal_mps2[i];
            samples.push_back({l,
                               segment_at(data.segments, lap.distance_m[i]),
                               {std::max(a, 0.0), std::min(a, 0.0), v * v},
                               front[i],
                               rear[i]});
        }
    }
    return samples;
}

struct Fit {
    Eigen::Vector3d coefficients;
    Eigen::Vector3d sd;
};

// An offset a lap, taken out as the lap's mean; errors clustered by straight, with the quantile of as few as they are.
Fit fit(const std::vector<Sample>& samples, std::size_t laps, std::size_t segments, auto load) {
    const auto n = static_cast<Eigen::Index>(samples.size());
    Eigen::MatrixXd x(n, static_cast<Eigen::Index>(columns));
    Eigen::VectorXd y(n);
    std::vector<Eigen::Vector4d> mean(laps, Eigen::Vector4d::Zero());
    std::vector<double> count(laps, 0.0);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Sample& s = samples[static_cast<std::size_t>(i)];
        x.row(i) << s.x[drive], s.x[brake], s.x[squared];
        y[i] = load(s);
        mean[s.lap] += Eigen::Vector4d(x(i, 0), x(i, 1), x(i, 2), y[i]);
        count[s.lap] += 1.0;
    }
    for (Eigen::Index i = 0; i < n; ++i) {
        const std::size_t lap = samples[static_cast<std::size_t>(i)].lap;
        x.row(i) -= mean[lap].head<3>().transpose() / count[lap];
        y[i] -= mean[lap][3] / count[lap];
    }
    const Eigen::Matrix3d inverse = (x.transpose() * x).completeOrthogonalDecomposition().pseudoInverse();
    const Eigen::Vector3d b = inverse * (x.transpose() * y);
    const Eigen::VectorXd residuals = y - x * b;
    std::vector<Eigen::Vector3d> scores(segments, Eigen::Vector3d::Zero());
    std::vector<bool> seen(segments, false);
    for (Eigen::Index i = 0; i < n; ++i) {
        const std::size_t straight = samples[static_cast<std::size_t>(i)].straight;
        scores[straight] += x.row(i).transpose() * residuals[i];
        seen[straight] = true;
    }
    Eigen::Matrix3d middle = Eigen::Matrix3d::Zero();
    for (const Eigen::Vector3d& score : scores)
        middle += score * score.transpose();
    const double clusters = static_cast<double>(std::ranges::count(seen, true));
    const double few = math::student_t_quantile(0.975, clusters - 1.0) / math::normal_quantile(0.975);
    const Eigen::Matrix3d covariance = inverse * middle * inverse * clusters / (clusters - 1.0);
    return {b, few * covariance.diagonal().cwiseSqrt()};
}

std::size_t straights_in(const std::vector<Sample>& samples, std::size_t segments) {
    std::vector<bool> seen(segments, false);
    for (const Sample& s : samples)
        seen[s.straight] = true;
    return static_cast<std::size_t>(std::ranges::count(seen, true));
}

SuspensionDownforce tells_nothing(std::string why) {
    return {0.0, 0.0, std::move(why)};
}

bool too_few(const std::vector<Sample>& samples, const CarData& data) {
    return samples.size() < fewest_samples || straights_in(samples, data.segments.size()) < fewest_straights;
}

// Which way an axle's travel counts: braking is negative, so what it presses in has a negative slope when travel counts
// as compression.
struct Senses {
    double front = 1.0;
    double rear = 1.0;
};

std::optional<Senses> senses(const Fit& front, const Fit& rear) {
    const auto unsure = [](const Fit& f) { return std::abs(f.coefficients[brake]) < sure * f.sd[brake]; };
    if (unsure(front) || unsure(rear)) return std::nullopt;
    return Senses{front.coefficients[brake] < 0.0 ? 1.0 : -1.0, rear.coefficients[brake] > 0.0 ? 1.0 : -1.0};
}

} // namespace

std::optional<UntoldTravel> springs_would_tell(const CarData& data) {
    const std::vector<Sample> samples = samples_of(data);
    if (samples.empty() || too_few(samples, data)) return std::nullopt;
    const auto fitted = [&](auto load) { return fit(samples, data.laps.size(), data.segments.size(), load); };
    const Fit front = fitted([](const Sample& s) { return s.front_m; });
    const Fit rear = fitted([](const Sample& s) { return s.rear_m; });
    const auto sense = senses(front, rear);
    if (!sense) return std::nullopt;
    const Fit load = fitted([&](const Sample& s) { return sense->front * s.front_m + sense->rear * s.rear_m; });
    const Eigen::Vector3d& b = load.coefficients;
    const double moved = 0.5 * (std::abs(front.coefficients[brake]) + std::abs(rear.coefficients[brake]));
    const double per_kg = usual_transfer / moved;
    return UntoldTravel{per_kg * b[squared], per_kg * load.sd[squared]};
}

std::optional<SuspensionDownforce> suspension_downforce(const CarData& data) {
    const std::vector<Sample> samples = samples_of(data);
    if (samples.empty()) return std::nullopt;
    if (!data.springs || !data.mass)
        return tells_nothing(
            said("suspension travel was recorded: with mass and spring rates in the setup sheet it would "
                 "tell the downforce"));
    if (too_few(samples, data))
        return tells_nothing(said("suspension travel was recorded on too few straights to tell the downforce"));
    const auto fitted = [&](auto load) { return fit(samples, data.laps.size(), data.segments.size(), load); };
    const Fit front = fitted([](const Sample& s) { return s.front_m; });
    const Fit rear = fitted([](const Sample& s) { return s.rear_m; });
    const auto sense = senses(front, rear);
    if (!sense)
        return tells_nothing(
            said("suspension travel does not follow the braking: it cannot be told which way it counts"));
    const double kf = data.springs->front_n_per_m * sense->front;
    const double kr = data.springs->rear_n_per_m * sense->rear;
    const double moved = std::max(std::abs(kf * front.coefficients[brake]), std::abs(kr * rear.coefficients[brake]));
    const double share = moved / data.mass->value_kg;
    if (share < min_transfer || share > max_transfer)
        return tells_nothing(
            said("the spring rates do not fit what braking does to the suspension: check their units"));
    const Fit load = fitted([&](const Sample& s) { return kf * s.front_m + kr * s.rear_m; });
    const double s = load.coefficients[squared];
    return SuspensionDownforce{
        s, std::hypot(load.sd[squared], s * std::hypot(data.springs->relative_sd, attitude_sd)), {}};
}

} // namespace lapwright::car
