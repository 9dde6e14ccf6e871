// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/grip_over_outings.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/car/fit_car.h"
#include "core/car/grip_priors.h"
#include "core/math/random.h"
#include "core/season/sparse_information.h"
#include "core/season/unknowns.h"

#include <Eigen/Core>
#include <Eigen/SparseCholesky>

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <numbers>

namespace lapwright::season {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr double track_sd = 0.04;
constexpr double day_sd = 0.02;
constexpr double driver_sd = 0.02;
constexpr double at_limit = 0.5;
constexpr double zone_repeats = 2.0; // a zone is repeated so much less well than a corner's peak
constexpr double least_gain = 1e-8;  // of the logarithm of the density

// Standard deviations that are mixed over, with the logarithms of their prior weights.
struct Spreads {
    double habit = 0.025;  // σ_b
    double repeat = 0.006; // σ_w
    double log_weight = 0.0;
};

std::vector<Spreads> spreads() {
    std::vector<Spreads> all;
    for (const double b : {-2.0, -1.0, 0.0, 1.0, 2.0})
        for (const double w : {-1.5, -0.75, 0.0, 0.75, 1.5})
            all.push_back({car::usual_corner_spread * std::exp(car::usual_spread_sd * b),
                           0.006 * std::exp(std::numbers::ln2 * w), -0.5 * (b * b + w * w)});
    return all;
}

// y = terms·x + n ln(1 + k v²/g) + noise
struct Row {
    std::size_t outing = 0;
    double speed_squared = 0.0;
    double y = 0.0;
    double error = 0.0;
    double weight = 1.0;
    bool zone = false;
    Terms terms;
};

// An area that springs show: the outing's, off by a share that is the same in every outing, and an error of its own.
struct SpringsRow {
    double area_m2 = 0.0;
    double own_sd = 0.0;
    Terms terms;
};

struct Model {
    Unknowns unknowns;
    std::vector<Row> rows;
    std::size_t exponent = 0;
    std::vector<Terms> level;                     // of each outing, without driver
    std::vector<Terms> area;                      // of each outing, m²
    std::vector<std::vector<Terms>> grip_effects; // of items and values, against the first
    std::vector<std::vector<Terms>> area_effects;
    std::vector<double> per_area; // k of each outing for an area of 1 m²
    std::vector<SpringsRow> springs;
    std::vector<std::size_t> habits; // places whose prior is σ_b
};

std::string who(const std::string& what, std::initializer_list<std::string> names) {
    std::string text = what;
    for (const std::string& name : names)
        text += '\n' + name;
    return text;
}

void add_setup(Model& model, const std::vector<SetupLevels>& levels) {
    for (const SetupLevels& item : levels) {
        const UsualEffect usual = usual_effect(item.kind);
        model.grip_effects.push_back(add_item(model.unknowns, item, "grip", usual.log_grip, 1.0, model.level));
        model.area_effects.push_back(add_item(model.unknowns, item, "area", usual.downforce_area_m2, 1.0, model.area));
    }
}

// One that is not known is nobody else's.
std::string track_of(const Outing& outing, std::size_t s) {
    return outing.track.empty() ? who("outing", {base::integer_text(static_cast<std::int64_t>(s))}) : outing.track;
}

void add_rows(Model& model, const Outing& outing, std::size_t s, std::size_t peak, const std::string& usual_driver) {
    const std::string track = track_of(outing, s);
    Terms level = model.level[s];
    if (outing.driver != usual_driver)
        level.emplace_back(model.unknowns.place(who("driver", {outing.driver}), 0.0, driver_sd), 1.0);
    for (std::size_t i = 0; i < outing.limit.corners.size(); ++i) {
        const car::LimitCorner& c = outing.limit.corners[i];
        const double chance = outing.chance_at_limit[i];
        if (c.flat || chance < at_limit) continue;
        Row row{s, c.speed_squared, c.log_lateral, c.error, chance, false, level};
        row.terms.emplace_back(peak, -c.fall);
        const std::size_t before = model.unknowns.count();
        const std::size_t habit = model.unknowns.place(who("habit", {outing.driver, track, c.corner}), 0.0, 0.0);
        if (model.unknowns.count() > before) model.habits.push_back(habit);
        row.terms.emplace_back(habit, 1.0);
        model.rows.push_back(std::move(row));
    }
    for (const car::LimitZone& z : outing.limit.zones) {
        const std::size_t braking =
            model.unknowns.place(who("braking", {outing.driver}), car::braking_mean, car::braking_sd);
        const std::size_t drift = model.unknowns.place(who("drift", {outing.driver}), 0.0, car::drift_sd);
        const std::size_t habit =
            model.unknowns.place(who("zone", {outing.driver, track, z.corner}), 0.0, car::usual_zone_spread);
        const std::size_t own_drift =
            model.unknowns.place(who("zone's drift", {outing.driver, track, z.corner}), 0.0, car::drift_spread);
        Row slow{s, z.slow_speed_squared, z.slow_log, z.slow_error, 1.0, true, level};
        slow.terms.emplace_back(braking, 1.0);
        slow.terms.emplace_back(habit, 1.0);
        Row fast = slow;
        const double reach = (z.fast_speed_squared - z.slow_speed_squared) / car::zone_scale;
        model.rows.push_back(std::move(slow));
        if (!(reach > 0.0)) continue; // both halves are the same
        fast.speed_squared = z.fast_speed_squared;
        fast.y = z.fast_log;
        fast.error = z.fast_error;
        fast.terms.emplace_back(drift, reach);
        fast.terms.emplace_back(own_drift, reach);
        model.rows.push_back(std::move(fast));
    }
}

void add_springs(Model& model, const Outing& outing, std::size_t s) {
    if (!outing.suspension || !outing.suspension->told()) return;
    const double per_area = 0.5 * outing.density_kg_m3;
    const double area = outing.suspension->n_per_mps2 / per_area;
    const double all = outing.suspension->sd / per_area;
    const double shared = std::hypot(car::attitude_sd, outing.setup.springs ? outing.setup.springs->relative_sd : 0.0);
    const double own = std::sqrt(std::max(0.1 * all * all, all * all - shared * shared * area * area));
    Terms terms = model.area[s];
    terms.emplace_back(model.unknowns.place("springs", 0.0, shared), area);
    model.springs.push_back({area, own, std::move(terms)});
}

Model model_of(const std::vector<Outing>& outings, const std::vector<SetupLevels>& levels) {
    Model model;
    const std::size_t limit = model.unknowns.place("limit", std::log(car::usual_limit_g * g), car::log_limit_sd);
    const std::size_t area = model.unknowns.place("area", car::usual_downforce_area, car::downforce_area_sd);
    const std::size_t peak = model.unknowns.place("peak", car::peak_mean, car::peak_sd);
    model.exponent = model.unknowns.place("exponent", car::exponent_mean, car::exponent_sd);
    for (std::size_t s = 0; s < outings.size(); ++s) {
        const std::string track = who("track", {track_of(outings[s], s)});
        model.level.push_back(
            {{limit, 1.0},
             {model.unknowns.place(track, 0.0, track_sd), 1.0},
             {model.unknowns.place(who("day", {base::integer_text(static_cast<std::int64_t>(s))}), 0.0, day_sd), 1.0}});
        model.area.push_back({{area, 1.0}});
        model.per_area.push_back(outings[s].half_density_per_kg());
    }
    add_setup(model, levels);
    for (std::size_t s = 0; s < outings.size(); ++s) {
        add_rows(model, outings[s], s, peak, outings.front().driver);
        add_springs(model, outings[s], s);
    }
    return model;
}

using Vector = Eigen::VectorXd;
using Root = Eigen::SimplicialLLT<SparseInformation::Matrix>;

// What a row says of the exponent and of its outing's area, behind its terms: factors at that load, or 0 for a pattern.
Terms with_load(const Model& model, const Row& row, double log_load, double per_area) {
    Terms all = row.terms;
    all.emplace_back(model.exponent, log_load);
    for (const auto& [place, factor] : model.area[row.outing])
        all.emplace_back(place, factor * per_area);
    return all;
}

SparseInformation information_of(const Model& model) {
    std::vector<Terms> rows;
    for (const Row& row : model.rows)
        rows.push_back(with_load(model, row, 0.0, 0.0));
    for (const SpringsRow& row : model.springs)
        rows.push_back(row.terms);
    return {model.unknowns.count(), rows};
}

struct Laplace {
    Vector mode;
    std::shared_ptr<Root> root; // of the information
    double log_weight = 0.0;
    int rounds = 0;
    bool settled = false;
};

class Density {
  public:
    Density(const Model& model, const Spreads& spread) : model_(model), spread_(spread) {
        const auto count = static_cast<Eigen::Index>(model.unknowns.count());
        mean_ = Eigen::Map<const Vector>(model.unknowns.means().data(), count);
        sd_ = Eigen::Map<const Vector>(model.unknowns.sds().data(), count);
        for (const std::size_t habit : model.habits)
            sd_[static_cast<Eigen::Index>(habit)] = spread.habit;
    }

    // Logarithm of prior times likelihood but for constants; with information and slope where they are asked for.
    double at(const Vector& x, SparseInformation* information, Vector* slope) const {
        const Vector away = (x - mean_).cwiseQuotient(sd_);
        double sum = -0.5 * away.squaredNorm() - sd_.array().log().sum();
        if (information != nullptr) {
            information->begin(sd_.cwiseAbs2().cwiseInverse());
            *slope = -away.cwiseQuotient(sd_);
        }
        const double n = x[static_cast<Eigen::Index>(model_.exponent)];
        for (std::size_t i = 0; i < model_.rows.size(); ++i) {
            const Row& row = model_.rows[i];
            const double repeat = row.zone ? zone_repeats * spread_.repeat : spread_.repeat;
            const double variance = (row.error * row.error + repeat * repeat) / row.weight;
            const double per_area = model_.per_area[row.outing] * row.speed_squared / g;
            const double load = std::max(0.1, 1.0 + per_area * sum_of(model_.area[row.outing], x));
            const double residual = row.y - sum_of(row.terms, x) - n * std::log(load);
            sum -= 0.5 * (residual * residual / variance + std::log(variance));
            if (information == nullptr) continue;
            const Terms all = with_load(model_, row, std::log(load), n * per_area / load);
            add(i, all, residual, variance, *information, *slope);
        }
        for (std::size_t i = 0; i < model_.springs.size(); ++i) {
            const SpringsRow& row = model_.springs[i];
            const double residual = row.area_m2 - sum_of(row.terms, x);
            const double variance = row.own_sd * row.own_sd;
            sum -= 0.5 * residual * residual / variance;
            if (information != nullptr)
                add(model_.rows.size() + i, row.terms, residual, variance, *information, *slope);
        }
        return sum;
    }

  private:
    static void add(std::size_t row, const Terms& terms, double residual, double variance,
                    SparseInformation& information, Vector& slope) {
        for (const auto& [place, factor] : terms)
            slope[static_cast<Eigen::Index>(place)] += factor * residual / variance;
        information.add(row, terms, 1.0 / variance);
    }

    const Model& model_;
    Spreads spread_;
    Vector mean_;
    Vector sd_;
};

Laplace laplace(const Model& model, const Spreads& spread, Vector start, SparseInformation& information) {
    constexpr int most_rounds = 60;
    const Density density(model, spread);
    Laplace result;
    result.root = std::make_shared<Root>();
    result.root->analyzePattern(information.matrix());
    Vector slope;
    double now = density.at(start, &information, &slope);
    const auto exponent = static_cast<Eigen::Index>(model.exponent);
    for (; result.rounds < most_rounds && !result.settled; ++result.rounds) {
        result.root->factorize(information.matrix());
        const Vector step = result.root->solve(slope);
        double share = 1.0;
        double gained = 0.0;
        for (; share > 1e-4; share *= 0.5) {
            Vector moved = start + share * step;
            moved[exponent] = std::clamp(moved[exponent], car::min_exponent, 1.0);
            gained = density.at(moved, nullptr, nullptr) - now;
            if (gained < 0.0) continue;
            start = moved;
            break;
        }
        result.settled = gained < least_gain;
        now = density.at(start, &information, &slope);
    }
    result.root->factorize(information.matrix());
    result.mode = start;
    const SparseInformation::Matrix root = result.root->matrixL();
    result.log_weight = spread.log_weight + now - root.diagonal().array().log().sum();
    return result;
}

bool possible(const Model& model, const Vector& x) {
    const double n = x[static_cast<Eigen::Index>(model.exponent)];
    if (n < car::min_exponent || n > 1.0) return false;
    for (std::size_t s = 0; s < model.area.size(); ++s) {
        const double k = model.per_area[s] * sum_of(model.area[s], x);
        if (k < car::min_downforce_factor || k > car::max_downforce_factor) return false;
    }
    return true;
}

GripOverDraw drawn(const Model& model, const Vector& x) {
    GripOverDraw draw;
    for (std::size_t s = 0; s < model.area.size(); ++s) {
        draw.log_limit.push_back(sum_of(model.level[s], x));
        draw.downforce_area_m2.push_back(sum_of(model.area[s], x));
    }
    draw.grip_effects = values_of(model.grip_effects, x);
    draw.area_effects = values_of(model.area_effects, x);
    draw.load_exponent = x[static_cast<Eigen::Index>(model.exponent)];
    return draw;
}

} // namespace

GripOverOutings fit_grip_over(const std::vector<Outing>& outings, const std::vector<SetupLevels>& levels,
                              std::size_t draws, std::uint64_t seed) {
    const Model model = model_of(outings, levels);
    GripOverOutings result;
    result.outcome.rests_on = model.rows.size();
    result.outcome.status = base::FitStatus::converged;
    Vector start =
        Eigen::Map<const Vector>(model.unknowns.means().data(), static_cast<Eigen::Index>(model.unknowns.count()));
    SparseInformation information = information_of(model);
    std::vector<Laplace> all;
    double most = -1e300;
    for (const Spreads& spread : spreads()) {
        all.push_back(laplace(model, spread, start, information));
        start = all.back().mode; // the next is near it
        most = std::max(most, all.back().log_weight);
        result.outcome.rounds += all.back().rounds;
    }
    std::vector<double> up_to;
    for (const Laplace& one : all) {
        const double chance = std::exp(one.log_weight - most);
        if (chance > 0.01 && !one.settled) result.outcome.status = base::FitStatus::not_converged;
        up_to.push_back((up_to.empty() ? 0.0 : up_to.back()) + chance);
    }
    math::Random random(seed, 51);
    Vector z(start.size());
    for (std::size_t attempt = 0; result.draws.size() < draws && attempt < 50 * draws; ++attempt) {
        const double at = random.uniform() * up_to.back();
        const auto chosen = std::ranges::lower_bound(up_to, at) - up_to.begin();
        for (double& value : z)
            value = random.normal();
        const Laplace& one = all[static_cast<std::size_t>(chosen)];
        const Vector away = one.root->matrixU().solve(z);
        const Vector x = one.mode + one.root->permutationPinv() * away;
        if (possible(model, x)) result.draws.push_back(drawn(model, x));
    }
    if (result.draws.size() < draws) result.outcome.status = base::FitStatus::failed;
    return result;
}

} // namespace lapwright::season
