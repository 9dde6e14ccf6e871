// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/figure_changes.h"

#include "core/base/check.h"
#include "core/base/constants.h"
#include "core/base/translation.h"
#include "core/car/fit_car.h"
#include "core/car/full_throttle.h"
#include "core/car/settle.h"
#include "core/math/distributions.h"
#include "core/math/linear_least_squares.h"
#include "core/math/statistics.h"

#include <Eigen/LU>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace lapwright::car {
namespace {

using base::said;

constexpr double g = base::standard_gravity_mps2;
constexpr double grip_prior = 0.02;
constexpr double power_prior = 0.01;
constexpr double wind_prior_mps = 1.0;
constexpr double downforce_prior_m2 = 1.5;
constexpr double drag_prior_m2 = 0.5;
constexpr double min_corner_spread = 0.003;
constexpr double min_straight_spread_mps2 = 0.005;
constexpr double at_limit = 0.5;
constexpr std::size_t fewest_corners = 4;
constexpr std::size_t fewest_stretches = 3;
constexpr std::size_t fits_tried = 50; // draws of load exponent and downforce

// One place in one lap.
struct Reading {
    std::size_t lap = 0;
    double value = 0.0;
};

struct Difference {
    double value = 0.0;
    double sd = 0.0;
};

// With the change less without, a linear drift taken out; nothing where laps do not tell the two apart.
std::optional<Difference> difference(const std::vector<Reading>& readings, const std::vector<DrivenLap>& driven) {
    const auto n = static_cast<Eigen::Index>(readings.size());
    if (n < 4) return std::nullopt;
    Eigen::MatrixXd x(n, 2);
    Eigen::VectorXd y(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const Reading& r = readings[static_cast<std::size_t>(i)];
        x.row(i) << (driven[r.lap].changed ? 1.0 : 0.0), driven[r.lap].order;
        y[i] = r.value;
    }
    const math::LinearFit fit = math::fit_linear(x, y);
    if (fit.status != base::FitStatus::converged || !fit.identified[1] || !(fit.standard_errors[1] > 0.0))
        return std::nullopt;
    return Difference{fit.coefficients[1], fit.standard_errors[1]};
}

struct Places {
    std::vector<Eigen::VectorXd> rows;
    std::vector<Difference> seen;
};

struct Solved {
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariance;
    double quantile = 0.0; // of half a 95 % interval, in standard deviations
};

Solved solved_with(const Places& places, const Eigen::VectorXd& prior_sd, double spread) {
    Eigen::MatrixXd information = prior_sd.cwiseAbs2().cwiseInverse().asDiagonal();
    Eigen::VectorXd right = Eigen::VectorXd::Zero(prior_sd.size());
    for (std::size_t i = 0; i < places.rows.size(); ++i) {
        const double weight = 1.0 / (places.seen[i].sd * places.seen[i].sd + spread * spread);
        information += weight * places.rows[i] * places.rows[i].transpose();
        right += weight * places.seen[i].value * places.rows[i];
    }
    Solved s;
    s.covariance = information.inverse();
    s.mean = s.covariance * right;
    return s;
}

// χ² of the places less what it should be: positive where they disagree more than `spread` lets them.
double excess(const Places& places, const Solved& s, double spread) {
    double chi = 0.0;
    double used = 0.0;
    for (std::size_t i = 0; i < places.rows.size(); ++i) {
        const double weight = 1.0 / (places.seen[i].sd * places.seen[i].sd + spread * spread);
        const double residual = places.seen[i].value - places.rows[i].dot(s.mean);
        chi += weight * residual * residual;
        used += weight * places.rows[i].dot(s.covariance * places.rows[i]);
    }
    return chi - (static_cast<double>(places.rows.size()) - used);
}

Solved solve(const Places& places, const Eigen::VectorXd& prior_sd, double min_spread) {
    double low = min_spread;
    double high = 100.0 * min_spread;
    if (excess(places, solved_with(places, prior_sd, low), low) <= 0.0) high = low;
    for (int i = 0; i < 40 && high > low; ++i) {
        const double middle = 0.5 * (low + high);
        (excess(places, solved_with(places, prior_sd, middle), middle) > 0.0 ? low : high) = middle;
    }
    Solved s = solved_with(places, prior_sd, high);
    const double freedom = std::max(2.0, static_cast<double>(places.rows.size()) - 2.0);
    s.quantile = math::student_t_quantile(0.975, freedom);
    return s;
}

base::Estimate estimate(double mean, double variance, double quantile, double scale) {
    const double half = quantile * std::sqrt(variance);
    return {scale * mean, scale * (mean - half), scale * (mean + half)};
}

Places corners_of(const LimitEvidence& evidence, const std::vector<double>& chance_at_limit,
                  const std::vector<DrivenLap>& driven, const GripDraw& draw) {
    Places places;
    for (std::size_t i = 0; i < evidence.corners.size(); ++i) {
        const LimitCorner& c = evidence.corners[i];
        if (c.flat || chance_at_limit[i] < at_limit) continue;
        std::vector<Reading> readings;
        for (std::size_t l = 0; l < c.laps.size(); ++l) {
            const double v = c.lap_speed_mps[l];
            readings.push_back({c.laps[l], std::log(c.lap_lateral_mps2[l]) -
                                               draw.load_exponent * std::log1p(std::max(-0.9, draw.k * v * v / g))});
        }
        const auto seen = difference(readings, driven);
        if (!seen) continue;
        const double w = c.speed_squared;
        places.rows.emplace_back(Eigen::Vector2d(1.0, draw.load_exponent * w / std::max(0.1 * g, g + draw.k * w)));
        places.seen.push_back(*seen);
    }
    return places;
}

// Sums over the samples of one stretch in one lap.
struct Sums {
    double count = 0.0;
    double residual = 0.0;
    double slowness = 0.0; // 1/v
    double square = 0.0;   // v²
    double speed = 0.0;
};

// A straight's slower and faster half, so that drag and power part.
struct Stretch {
    std::map<std::size_t, Sums> laps;
    double east = 0.0; // of the course, from that at the lap's start
    double north = 0.0;
    double count = 0.0;
};

std::vector<Stretch> stretches_of(const CarData& data, const DrivingForceDraw& d) {
    const std::vector<ThrottleSample> samples = full_throttle_samples(data);
    std::map<std::size_t, std::vector<double>> speeds;
    for (const ThrottleSample& s : samples)
        speeds[s.segment].push_back(s.speed_mps);
    std::map<std::pair<std::size_t, bool>, Stretch> stretches;
    for (const ThrottleSample& s : samples) {
        const double v = s.speed_mps;
        Stretch& stretch = stretches[{s.segment, v > math::median(speeds[s.segment])}];
        const double residual = (1.0 + d.rotating_share) * s.acceleration_mps2 + d.drag_per_kg * v * v -
                                d.power_per_kg * d.power_shares.at(v) / v;
        Sums& sums = stretch.laps[s.lap];
        sums.count += 1.0;
        sums.residual += residual;
        sums.slowness += 1.0 / v;
        sums.square += v * v;
        sums.speed += v;
        stretch.east += std::cos(s.course_rad);
        stretch.north += std::sin(s.course_rad);
        stretch.count += 1.0;
    }
    std::vector<Stretch> all;
    for (auto& [where, stretch] : stretches)
        all.push_back(std::move(stretch));
    return all;
}

Places straights_of(const CarData& data, const std::vector<DrivenLap>& driven, const DrivingForceDraw& d) {
    Places places;
    for (const Stretch& stretch : stretches_of(data, d)) {
        std::vector<Reading> readings;
        Sums mean; // over laps
        const auto laps = static_cast<double>(stretch.laps.size());
        for (const auto& [lap, sums] : stretch.laps) {
            readings.push_back({lap, sums.residual / sums.count});
            mean.slowness += sums.slowness / sums.count / laps;
            mean.square += sums.square / sums.count / laps;
            mean.speed += sums.speed / sums.count / laps;
        }
        const auto seen = difference(readings, driven);
        if (!seen) continue;
        const double along = 2.0 * d.drag_per_kg * mean.speed / stretch.count;
        places.rows.emplace_back(Eigen::Vector4d(-mean.square, d.power_per_kg * mean.slowness, -along * stretch.east,
                                                 -along * stretch.north));
        places.seen.push_back(*seen);
    }
    return places;
}

void add_corners(FigureChanges& changes, const CarFits& fits, const std::vector<DrivenLap>& driven, double per_area) {
    const Eigen::Vector2d prior(grip_prior, downforce_prior_m2 * per_area);
    const std::size_t step = std::max<std::size_t>(1, fits.grip.draws.size() / fits_tried);
    std::array<std::vector<double>, 2> means;
    Eigen::Vector2d variance = Eigen::Vector2d::Zero();
    double quantile = 0.0;
    for (std::size_t i = 0; i < fits.grip.draws.size(); i += step) {
        const Places places = corners_of(fits.evidence, fits.grip.chance_at_limit, driven, fits.grip.draws[i]);
        changes.corners = places.rows.size();
        if (places.rows.size() < fewest_corners) {
            changes.grip = changes.downforce_area_m2 =
                base::untold(said("too few corners are driven at the limit with and without the change"));
            return;
        }
        const Solved s = solve(places, prior, min_corner_spread);
        means[0].push_back(s.mean[0]);
        means[1].push_back(s.mean[1]);
        variance += s.covariance.diagonal();
        quantile = s.quantile;
    }
    const auto total = [&](std::size_t i) {
        const double between = math::standard_deviation(means[i]);
        return variance[static_cast<Eigen::Index>(i)] / static_cast<double>(means[i].size()) + between * between;
    };
    changes.grip = estimate(math::mean(means[0]), total(0), quantile, 1.0);
    changes.downforce_area_m2 = estimate(math::mean(means[1]), total(1), quantile, 1.0 / per_area);
}

void add_straights(FigureChanges& changes, const CarData& data, const CarFits& fits,
                   const std::vector<DrivenLap>& driven, double per_area) {
    const Places places = straights_of(data, driven, fits.driving.best);
    changes.straights = places.rows.size();
    if (places.rows.size() < fewest_stretches) {
        changes.drag_area_m2 = changes.power =
            base::untold(said("too few straights are driven at full throttle with and without the change"));
        return;
    }
    const Eigen::Vector4d prior(drag_prior_m2 * per_area, power_prior, wind_prior_mps, wind_prior_mps);
    const Solved s = solve(places, prior, min_straight_spread_mps2);
    changes.drag_area_m2 = estimate(s.mean[0], s.covariance(0, 0), s.quantile, 1.0 / per_area);
    changes.power = estimate(s.mean[1], s.covariance(1, 1), s.quantile, 1.0);
}

} // namespace

base::Result<FigureChanges> figure_changes(const CarData& recorded, const std::vector<DrivenLap>& driven,
                                           const FigureOptions& options) {
    base::check(driven.size() == recorded.laps.size(), "what is known of each lap");
    CarData data = recorded;
    for (lap::LapTrace& lap : data.laps)
        lap = settled(std::move(lap));
    const auto fits = fit_car(data, options);
    if (!fits) return fits.error();
    FigureChanges changes;
    changes.on_a_tonne = !data.mass;
    const double per_area = 0.5 * data.air.value_kg_m3 / (data.mass ? data.mass->value_kg : base::tonne_kg);
    add_corners(changes, *fits, driven, per_area);
    add_straights(changes, data, *fits, driven, per_area);
    return changes;
}

} // namespace lapwright::car
