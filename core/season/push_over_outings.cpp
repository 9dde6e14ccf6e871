// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/push_over_outings.h"

#include "core/base/number_text.h"
#include "core/car/fit_car.h"
#include "core/math/random.h"
#include "core/season/unknowns.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <Eigen/LU>

#include <cmath>

namespace lapwright::season {
namespace {

constexpr double day_power_sd = 0.01;    // relative
constexpr double day_area_sd_m2 = 0.005; // attitude and wear of the day

using Pair = Eigen::Matrix2d;

struct Model {
    Unknowns unknowns;
    std::vector<Terms> power; // of each outing, W
    std::vector<Terms> area;  // m²
    std::vector<std::vector<Terms>> power_effects;
    std::vector<std::vector<Terms>> area_effects;
};

Pair in_watts_and_areas(const Outing& outing, const car::PushErrors& e) {
    const double watts = outing.mass_kg;
    const double area = 1.0 / outing.half_density_per_kg();
    Pair m;
    m << e[0] * watts * watts, e[1] * watts * area, e[1] * watts * area, e[2] * area * area;
    return m;
}

// Unknowns of two that vary together: two standard normals and the root of their covariance.
void add_shared(Model& model, std::size_t s, const std::string& name, const Pair& covariance) {
    const Eigen::LLT<Pair> root(covariance + 1e-12 * Pair(covariance.diagonal().asDiagonal()));
    if (root.info() != Eigen::Success) return;
    const Pair l = root.matrixL();
    const std::size_t first = model.unknowns.place(name + " 1", 0.0, 1.0);
    const std::size_t second = model.unknowns.place(name + " 2", 0.0, 1.0);
    model.power[s].emplace_back(first, l(0, 0));
    model.area[s].emplace_back(first, l(1, 0));
    model.area[s].emplace_back(second, l(1, 1));
}

void add_setup(Model& model, const std::vector<SetupLevels>& levels, double typical_w) {
    for (const SetupLevels& item : levels) {
        const UsualEffect usual = usual_effect(item.kind);
        model.power_effects.push_back(add_item(model.unknowns, item, "power", usual.log_power, typical_w, model.power));
        model.area_effects.push_back(add_item(model.unknowns, item, "area", usual.drag_area_m2, 1.0, model.area));
    }
}

double typical_power_w(const std::vector<Outing>& outings) {
    double sum = 0.0;
    double count = 0.0;
    for (const Outing& one : outings) {
        if (!one.push) continue;
        sum += one.push->power_per_kg * one.mass_kg;
        count += 1.0;
    }
    return count > 0.0 ? sum / count : 0.0;
}

Model model_of(const std::vector<Outing>& outings, const std::vector<SetupLevels>& levels, double typical_w) {
    Model model;
    const std::size_t power = model.unknowns.place("power", typical_w, typical_w); // so wide that the laps decide
    const std::size_t area =
        model.unknowns.place("area", car::usual_drag_area, car::drag_area_share_sd * car::usual_drag_area);
    for (std::size_t s = 0; s < outings.size(); ++s) {
        const std::string day = "day " + base::integer_text(static_cast<std::int64_t>(s));
        model.power.push_back({{power, 1.0}, {model.unknowns.place(day + " of power", 0.0, day_power_sd), typical_w}});
        model.area.push_back({{area, 1.0}, {model.unknowns.place(day + " of area", 0.0, day_area_sd_m2), 1.0}});
    }
    add_setup(model, levels, typical_w);
    return model;
}

using Vector = Eigen::VectorXd;
using Matrix = Eigen::MatrixXd;

Vector dense(const Terms& terms, std::size_t count) {
    Vector row = Vector::Zero(static_cast<Eigen::Index>(count));
    for (const auto& [place, factor] : terms)
        row[static_cast<Eigen::Index>(place)] += factor;
    return row;
}

} // namespace

PushOverOutings fit_push_over(const std::vector<Outing>& outings, const std::vector<SetupLevels>& levels,
                              std::size_t draws, std::uint64_t seed) {
    PushOverOutings result;
    result.outcome.status = base::FitStatus::failed;
    const double typical_w = typical_power_w(outings);
    if (!(typical_w > 0.0)) return result;
    const Model figures = model_of(outings, levels, typical_w); // what is asked for
    Model seen = figures;                                       // and what each outing shows of it
    for (std::size_t s = 0; s < outings.size(); ++s) {
        const Outing& one = outings[s];
        if (!one.push) continue;
        const std::string track =
            one.track.empty() ? "outing " + base::integer_text(static_cast<std::int64_t>(s)) : one.track;
        add_shared(seen, s, "straights of " + track, in_watts_and_areas(one, one.push->of_straights));
        add_shared(seen, s, "of the car", in_watts_and_areas(one, one.push->of_car));
    }
    const std::size_t count = seen.unknowns.count();
    const auto size = static_cast<Eigen::Index>(count);
    const Vector mean = Eigen::Map<const Vector>(seen.unknowns.means().data(), size);
    const Vector sd = Eigen::Map<const Vector>(seen.unknowns.sds().data(), size);
    Matrix information = sd.cwiseAbs2().cwiseInverse().asDiagonal();
    Vector right = mean.cwiseQuotient(sd.cwiseAbs2());
    for (std::size_t s = 0; s < outings.size(); ++s) {
        const Outing& one = outings[s];
        if (!one.push) continue;
        ++result.outcome.rests_on;
        Matrix rows(2, size);
        rows.row(0) = dense(seen.power[s], count).transpose();
        rows.row(1) = dense(seen.area[s], count).transpose();
        const Eigen::Vector2d y(one.push->power_per_kg * one.mass_kg,
                                one.push->drag_per_kg / one.half_density_per_kg());
        const Pair weight = in_watts_and_areas(one, one.push->own).inverse();
        information += rows.transpose() * weight * rows;
        right += rows.transpose() * (weight * y);
    }
    const Eigen::LLT<Matrix> root(information);
    if (root.info() != Eigen::Success) return result;
    const Vector centre = root.solve(right);
    math::Random random(seed, 52);
    Vector z(size);
    for (std::size_t i = 0; i < draws; ++i) {
        for (double& value : z)
            value = random.normal();
        const Vector x = centre + root.matrixU().solve(z);
        PushOverDraw draw;
        for (std::size_t s = 0; s < outings.size(); ++s) {
            draw.power_w.push_back(sum_of(figures.power[s], x));
            draw.drag_area_m2.push_back(sum_of(figures.area[s], x));
        }
        draw.power_effects = values_of(figures.power_effects, x);
        draw.drag_effects = values_of(figures.area_effects, x);
        result.draws.push_back(std::move(draw));
    }
    result.outcome.status = base::FitStatus::converged;
    result.outcome.rounds = 1;
    return result;
}

} // namespace lapwright::season
