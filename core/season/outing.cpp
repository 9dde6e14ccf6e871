// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/outing.h"

#include "core/base/translation.h"
#include "core/car/fit_car.h"
#include "core/car/grip_model.h"
#include "core/car/settle.h"
#include "core/math/statistics.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <Eigen/Eigenvalues>
#include <Eigen/LU>

namespace lapwright::season {
namespace {

using base::said;

constexpr std::size_t draws = 400;
constexpr int steps = 2000;        // of each chain: what is wanted of it is which corners are at their limit
constexpr double least_own = 0.05; // of the variance, so that no outing is taken as exact

using Pair = Eigen::Matrix2d;

Pair matrix(const car::PushErrors& e) {
    Pair m;
    m << e[0], e[1], e[1], e[2];
    return m;
}

car::PushErrors errors(const Pair& m) {
    return {m(0, 0), 0.5 * (m(0, 1) + m(1, 0)), m(1, 1)};
}

bool positive(const Pair& m) {
    return m(0, 0) > 0.0 && m(1, 1) > 0.0 && m.determinant() > 0.0;
}

// What is left of the errors without the shared ones; along no direction less than a share of the whole.
Pair own_errors(const Pair& laps, const Pair& shared) {
    const Eigen::LLT<Pair> root(laps);
    const Pair l = root.matrixL();
    const Pair scaled = l.triangularView<Eigen::Lower>().solve(
        Pair(l.triangularView<Eigen::Lower>().solve(Pair(laps - shared)).transpose()));
    const Eigen::SelfAdjointEigenSolver<Pair> axes(0.5 * (scaled + scaled.transpose()));
    const Pair kept =
        axes.eigenvectors() * axes.eigenvalues().cwiseMax(least_own).asDiagonal() * axes.eigenvectors().transpose();
    return l * kept * l.transpose();
}

// The prior of the fit is taken out again: over many outings it would count as often.
std::optional<Push> push_of(const car::DrivingForce& fit, const car::DrivingPrior& prior) {
    if (!fit.outcome.converged() || fit.draws.size() < 2) return std::nullopt;
    std::vector<double> power;
    std::vector<double> drag;
    for (const car::DrivingForceDraw& draw : fit.draws) {
        power.push_back(draw.power_per_kg);
        drag.push_back(draw.drag_per_kg);
    }
    const double between = math::correlation(power, drag) * fit.power_sd * fit.drag_sd;
    const Pair seen = matrix({fit.power_sd * fit.power_sd, between, fit.drag_sd * fit.drag_sd});
    const Pair known = Eigen::Vector2d(prior.power_sd, prior.drag_sd).cwiseAbs2().asDiagonal();
    if (!positive(seen)) return std::nullopt;
    const Pair information = seen.inverse() - known.inverse();
    if (!positive(information)) return std::nullopt; // the laps add nothing to what cars are like
    const Pair laps = information.inverse();
    const Eigen::Vector2d mean = laps * (seen.inverse() * Eigen::Vector2d(math::mean(power), math::mean(drag)) -
                                         known.inverse() * Eigen::Vector2d(prior.power_per_kg, prior.drag_per_kg));
    return Push{mean[0], mean[1], errors(own_errors(laps, matrix(fit.straight_errors) + matrix(fit.car_errors))),
                fit.straight_errors, fit.car_errors};
}

} // namespace

base::Result<Outing> outing(const car::CarData& recorded, const car::SetupSheet& setup, const std::string& driver,
                            const std::string& track) {
    const auto cannot = [](const std::string& what) {
        return base::Error{
            base::ErrorCode::cannot_be_computed, {}, what, said("record more clean laps at full effort")};
    };
    if (recorded.laps.empty() || recorded.segments.empty()) return cannot(said("there is no clean lap"));
    car::CarData data = recorded;
    for (lap::LapTrace& lap : data.laps)
        lap = car::settled(std::move(lap));
    Outing result;
    result.driver = driver;
    result.track = track;
    result.setup = setup;
    result.density_kg_m3 = data.air.value_kg_m3;
    result.mass_known = data.mass.has_value();
    if (data.mass) {
        result.mass_kg = data.mass->value_kg;
        result.mass_sd_kg = data.mass->sd_kg;
    }
    result.length_sd = data.length_sd;
    const double half_density = result.half_density_per_kg();
    car::DrivingPrior driving_prior;
    driving_prior.drag_per_kg = half_density * car::usual_drag_area;
    driving_prior.drag_sd = driving_prior.drag_per_kg * car::drag_area_share_sd;
    const car::DrivingForce driving = car::fit_driving_force(data, driving_prior, draws, 1);
    if (driving.outcome.status == base::FitStatus::failed)
        return cannot(said("no stretch at full throttle could be found"));
    result.straights = driving.outcome.rests_on;
    result.push = push_of(driving, driving_prior);
    result.limit = car::limit_evidence(data, driving);
    if (result.limit.corners.empty()) return cannot(said("no corner could be found"));
    const car::GripPrior prior{half_density * car::usual_downforce_area, half_density * car::downforce_area_sd};
    result.chance_at_limit = car::fit_grip(result.limit, prior, draws, 1, steps).chance_at_limit;
    result.suspension = car::suspension_downforce(data);
    return result;
}

} // namespace lapwright::season
