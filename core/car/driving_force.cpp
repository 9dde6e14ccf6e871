// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/driving_force.h"

#include "core/base/constants.h"
#include "core/car/force_information.h"
#include "core/car/full_throttle.h"
#include "core/car/power_curve.h"
#include "core/math/random.h"
#include "core/math/robust_regression.h"
#include "core/math/statistics.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <optional>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr double rolling_sd = 0.003;
constexpr double rotating_sd = 0.01;
// Relative change of power for a change of speed of its own size: a driven tyre slips 1 % where it pushes with 0.3 of
// its load and less at speed, and gears differ by half a per cent in what they lose.
constexpr double power_tilt_sd = 0.012;
// Where no engine speed tells the shifts, what they cost looks like power that falls towards some speeds.
constexpr double unseen_shifts_tilt_sd = 0.025;
constexpr std::size_t fewest_samples = 30;
constexpr double samples_alike = 7.0; // neighbours share their error: the motion is smoothed over some 20 m
constexpr double place_m = 80.0;
constexpr double min_noise_mps2 = 0.02;
constexpr double normal_sd_over_mad = 1.4826; // of the median magnitude of normal errors
constexpr int noise_rounds = 3;
// Along a straight wind and gradient that nobody measured act alike: 0.03 m/s² is a gradient of 0.3 %.  That
// prior counts as much as four straights.
constexpr double straight_sd_mps2 = 0.03;
constexpr double straight_prior_weight = 4.0;
// From a kei car to beyond any that laps a circuit.
constexpr double min_power_per_kg = 15.0;
constexpr double max_power_per_kg = 1500.0;

// Of either component.  Over open land a mean of 3 to 4 m/s at 10 m, some 60 % of it at the height of a car.
constexpr double wind_sd_mps = 1.8;

// The priors as information; of the wind for the drag that is usual, of the curve for p as first found.
struct Prior {
    Normal precision;
    Unknowns mean;
    double log_weight = 0.0;
};

Prior prior_of(const DrivingPrior& prior, const CurvePrior* curve, double first_power) {
    const Eigen::Index terms = curve ? curve->covariance.rows() : 0;
    const Eigen::Index unknowns = curve_at + terms;
    Prior p{Normal::Zero(unknowns, unknowns), Unknowns::Zero(unknowns), curve ? curve->log_weight : 0.0};
    p.precision(0, 0) = 1.0 / (prior.power_sd * prior.power_sd);
    p.mean[0] = prior.power_per_kg;
    p.precision(1, 1) = 1.0 / (prior.drag_sd * prior.drag_sd);
    p.mean[1] = prior.drag_per_kg;
    p.precision.diagonal().segment(wind_at, curve_at - wind_at).fill(std::pow(wind_sd_mps * prior.drag_per_kg, -2));
    if (curve) p.precision.bottomRightCorner(terms, terms) = curve->covariance.inverse() / (first_power * first_power);
    return p;
}

std::vector<Prior> priors_of(const DrivingPrior& prior, const std::optional<CurveScale>& scale, double first_power) {
    if (!scale) return {prior_of(prior, nullptr, first_power)};
    std::vector<Prior> all;
    for (const CurvePrior& curve : scale->priors())
        all.push_back(prior_of(prior, &curve, first_power));
    return all;
}

struct Mean {
    double sum = 0.0;
    double weight = 0.0;
    [[nodiscard]] double value() const { return sum / weight; }
};

// How many times the variance of independent samples the means of groups have; `fitted` parameters were fitted.
template <typename Key>
double samples_alike_in(const std::map<Key, Mean>& groups, double variance, double fitted) {
    double sum = 0.0;
    for (const auto& [key, mean] : groups)
        sum += mean.weight * mean.value() * mean.value() / variance;
    const double free = static_cast<double>(groups.size()) - fitted;
    return free >= 1.0 ? sum / free : 0.0;
}

// Errors are shared by neighbours, by all of a straight, by all laps at a place, where a hill is not known or the
// motion is smooth over long, and, where the curve does not do, by all of a speed: the means of the residuals tell how
// far.
ForceNoise noise_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
                    const Eigen::VectorXd& residuals, double fitted) {
    std::map<std::size_t, Mean> straights;
    std::map<std::pair<std::size_t, std::size_t>, Mean> passes;
    std::map<std::pair<std::size_t, long>, Mean> places;
    std::map<long, Mean> speeds;
    std::vector<double> sizes;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const auto at = static_cast<Eigen::Index>(i);
        const double w = weights[at];
        if (!(w > 0.0)) continue;
        sizes.push_back(std::abs(residuals[at]));
        const ThrottleSample& s = samples[i];
        for (Mean* mean :
             {&straights[s.segment], &passes[{s.segment, s.lap}],
              &places[{s.segment, std::lround(s.distance_m / place_m)}], &speeds[std::lround(s.speed_mps / 2.0)]}) {
            mean->sum += w * residuals[at];
            mean->weight += w;
        }
    }
    const auto free_of_straights = [&](auto& groups) {
        for (auto& [key, mean] : groups)
            mean.sum -= mean.weight * straights[key.first].value();
    };
    free_of_straights(passes);
    free_of_straights(places);
    const auto count = static_cast<double>(straights.size());
    const double scale = std::max(min_noise_mps2, normal_sd_over_mad * math::median(sizes));
    const double variance = scale * scale;
    ForceNoise noise;
    noise.variance = variance * std::max({samples_alike, samples_alike_in(passes, variance, count),
                                          samples_alike_in(places, variance, count + fitted),
                                          samples_alike_in(speeds, variance, fitted)});
    double squares = straight_prior_weight * straight_sd_mps2 * straight_sd_mps2;
    for (const auto& [segment, mean] : straights)
        squares += std::max(0.0, mean.value() * mean.value() - noise.variance / mean.weight);
    noise.straight_variance = squares / (straight_prior_weight + count);
    return noise;
}

double half_log_determinant(const Eigen::LLT<Normal>& root) {
    return root.matrixLLT().diagonal().array().log().sum();
}

// What the samples and one prior say together.
struct Posterior {
    Posterior(const ForceInformation& data, const Prior& prior)
        : root(Normal(data.matrix + prior.precision)), prior_precision(prior.precision),
          prior_pull(prior.precision * prior.mean), centre(root.solve(data.right_side({}) + prior_pull)) {
        const double fit = (data.right_side({}) + prior_pull).dot(centre) - prior_pull.dot(prior.mean);
        log_weight = prior.log_weight + half_log_determinant(Eigen::LLT<Normal>(prior.precision)) + 0.5 * fit -
                     half_log_determinant(root);
    }

    // As many parameters as the samples decided, not the prior (Moody 1992; Spiegelhalter et al. 2002).
    [[nodiscard]] double fitted(const ForceInformation& data) const {
        const Normal share = root.solve(data.matrix);
        return share.trace();
    }

    Eigen::LLT<Normal> root;
    Normal prior_precision;
    Unknowns prior_pull;
    Unknowns centre;
    double log_weight; // of the prior times the evidence (marginal likelihood of a linear model), up to a constant
};

// One for each prior that may be.
class Posteriors {
  public:
    Posteriors(const ForceInformation& data, const std::vector<Prior>& priors) {
        for (const Prior& prior : priors)
            if (Posterior posterior(data, prior); posterior.root.info() == Eigen::Success)
                all_.push_back(std::move(posterior));
        if (all_.empty()) return;
        const double most = likeliest().log_weight;
        for (const Posterior& posterior : all_)
            chances_.push_back(std::exp(posterior.log_weight - most));
    }

    [[nodiscard]] bool none() const { return all_.empty(); } // samples beyond any number
    [[nodiscard]] const Posterior& likeliest() const {
        return *std::ranges::max_element(all_, {}, &Posterior::log_weight);
    }
    [[nodiscard]] const Posterior& drawn(math::Random& random) const {
        double left = random.uniform() * std::accumulate(chances_.begin(), chances_.end(), 0.0);
        std::size_t i = 0;
        while (i + 1 < all_.size() && left > chances_[i])
            left -= chances_[i++];
        return all_[i];
    }

  private:
    std::vector<Posterior> all_;
    std::vector<double> chances_; // relative to the likeliest
};

Eigen::VectorXd residuals_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& y, const Unknowns& x,
                             const std::optional<CurveScale>& scale) {
    Eigen::VectorXd residuals = y;
    for (Eigen::Index i = 0; i < y.size(); ++i)
        residuals[i] -= columns(samples[static_cast<std::size_t>(i)], scale).dot(x);
    return residuals;
}

CurveTerms curve_of(const Unknowns& x) {
    return x.tail(x.size() - curve_at) / x[0];
}

// A car that may be: beyond, a draw of the normal posterior is drawn again, which cuts prior and posterior alike.
bool possible(const Unknowns& x, const DrivingPrior& prior) {
    return x[0] > min_power_per_kg && x[0] < max_power_per_kg && x[1] > 0.1 * prior.drag_per_kg &&
           x[1] < 4.0 * prior.drag_per_kg;
}

// A tilt of the power turns p/v into p/v (1 + ε (v/v̄ − 1)) = p/v − ε p/v + ε p/v̄.
Unknowns tilted(Unknowns x, double tilt, double mean_speed, const Unknowns& of_one) {
    const double push = tilt * x[0];
    x -= push / mean_speed * of_one;
    x[0] += push;
    return x;
}

double tilt_sd_of(const std::optional<CurveScale>& scale) {
    return !scale || scale->over_engine_speed() ? power_tilt_sd : unseen_shifts_tilt_sd;
}

// Exact draws of the posterior: what no lap can tell first, then p, d and the curve given it; Student's tails for a
// noise that is known from few straights.
void draw_posterior(DrivingForce& fit, const ForceInformation& data, const Posteriors& posteriors,
                    const DrivingPrior& bounds, double mean_speed, const std::optional<CurveScale>& scale,
                    const std::optional<CurveBySpeed>& by_speed, std::size_t count, math::Random& random) {
    const double tilt_sd = tilt_sd_of(scale);
    const double degrees_of_freedom = straight_prior_weight + static_cast<double>(fit.outcome.rests_on);
    for (std::size_t attempt = 0; fit.draws.size() < count && attempt < 100 * count; ++attempt) {
        const Posterior& posterior = posteriors.drawn(random);
        Nuisance nuisance;
        nuisance.rolling = std::max(0.006, usual_rolling + rolling_sd * random.normal());
        nuisance.rotating = std::max(0.0, usual_rotating + rotating_sd * random.normal());
        nuisance.tilt = tilt_sd * random.normal();
        Unknowns z(data.one.size());
        for (double& value : z)
            value = random.normal();
        double spread = 0.0;
        for (int i = 0; i < static_cast<int>(degrees_of_freedom); ++i)
            spread += std::pow(random.normal(), 2) / std::floor(degrees_of_freedom);
        Unknowns x = posterior.root.solve(data.right_side(nuisance) + posterior.prior_pull);
        x += posterior.root.matrixU().solve(z) / std::sqrt(std::max(0.05, spread));
        x = tilted(x, nuisance.tilt, mean_speed, posterior.root.solve(data.one));
        if (!possible(x, bounds)) continue;
        fit.draws.push_back({x[0], x[1], nuisance.rolling, nuisance.rotating, {}});
        if (by_speed)
            fit.draws.back().power_shares = by_speed->shares(curve_of(x), scale->unseen_sd() * random.normal());
    }
}

double median_of(const std::vector<DrivingForceDraw>& draws, double DrivingForceDraw::* member) {
    std::vector<double> values;
    for (const DrivingForceDraw& draw : draws)
        values.push_back(draw.*member);
    return math::median(values);
}

double sd_of(const std::vector<DrivingForceDraw>& draws, double DrivingForceDraw::* member) {
    std::vector<double> values;
    for (const DrivingForceDraw& draw : draws)
        values.push_back(draw.*member);
    return math::standard_deviation(values);
}

PowerCurveSeen curve_seen(const CurveScale& scale, const Unknowns& best) {
    constexpr int steps = 20;
    PowerCurveSeen seen{scale.slowest(), scale.fastest(), 1e9, 0.0};
    const CurveTerms c = curve_of(best);
    for (int i = 0; i <= steps; ++i) {
        const CurveTerms terms =
            scale.terms_at(seen.slowest_rev_s + (seen.fastest_rev_s - seen.slowest_rev_s) * i / steps);
        const double share = 1.0 + c.dot(terms);
        seen.min_share = std::min(seen.min_share, share);
        seen.max_share = std::max(seen.max_share, share);
    }
    return seen;
}

PushErrors errors_of(const Normal& covariance) {
    return {covariance(0, 0), covariance(0, 1), covariance(1, 1)};
}

// As large as the straights' offsets make the errors, against those of straights that are known to be level.
PushErrors straight_errors(const Posterior& posterior, const std::map<std::size_t, Straight>& straights,
                           const ForceNoise& noise) {
    constexpr double hardly_any = 1e-9;
    const Normal level =
        information_of(straights, {noise.variance, hardly_any * noise.variance}).matrix + posterior.prior_precision;
    const Normal one = Normal::Identity(level.rows(), level.cols());
    return errors_of(Normal(posterior.root.solve(one)) - Normal(Eigen::LLT<Normal>(level).solve(one)));
}

PushErrors car_errors(const Posterior& posterior, const ForceInformation& data, double mean_speed, double tilt_sd) {
    const Unknowns rolling = rolling_sd * g * posterior.root.solve(data.one);
    const Unknowns rotating = rotating_sd * posterior.root.solve(data.acceleration);
    const Unknowns tilt =
        tilted(posterior.centre, tilt_sd, mean_speed, posterior.root.solve(data.one)) - posterior.centre;
    return errors_of(rolling * rolling.transpose() + rotating * rotating.transpose() + tilt * tilt.transpose());
}

// Which samples count, by a regression without priors: wind, and a curve over the car's own speed, are left to the
// posterior, since few straights tell them from drag.
math::RobustFit regress(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& y,
                        const std::optional<CurveScale>& scale) {
    const Eigen::Index curve = scale && scale->over_engine_speed() ? scale->term_count() : 0;
    Eigen::MatrixXd design(y.size(), 2 + curve);
    for (Eigen::Index i = 0; i < y.size(); ++i) {
        const Unknowns x = columns(samples[static_cast<std::size_t>(i)], scale);
        design.row(i).head(2) = x.head(2).transpose();
        if (curve > 0) design.row(i).tail(curve) = x.tail(curve).transpose();
    }
    return math::fit_robust(design, y, math::Intercept::no, math::RobustLoss::tukey);
}

bool usable(const math::RobustFit& robust, Eigen::Index samples) {
    return robust.outcome.status != base::FitStatus::failed && robust.weights.size() == samples;
}

// A metre at full throttle gives a speed of P / m v² to the car: so weighted, one mean power stands for the curve.
Eigen::VectorXd power_weights(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights) {
    Eigen::VectorXd result = weights;
    for (Eigen::Index i = 0; i < result.size(); ++i)
        result[i] /= std::pow(samples[static_cast<std::size_t>(i)].speed_mps, 2);
    return result;
}

} // namespace

DrivingForce fit_driving_force(const CarData& data, const DrivingPrior& prior, std::size_t draws, std::uint64_t seed) {
    DrivingForce fit;
    fit.outcome.status = base::FitStatus::failed;
    const std::vector<ThrottleSample> samples = full_throttle_samples(data);
    if (samples.size() < fewest_samples) return fit;
    Eigen::VectorXd y(static_cast<Eigen::Index>(samples.size()));
    double speed_sum = 0.0;
    for (Eigen::Index i = 0; i < y.size(); ++i) {
        const ThrottleSample& s = samples[static_cast<std::size_t>(i)];
        y[i] = (1.0 + usual_rotating) * s.acceleration_mps2 + (usual_rolling + s.slope) * g;
        speed_sum += s.speed_mps;
    }
    math::RobustFit robust = regress(samples, y, CurveScale::of(samples, Eigen::VectorXd::Ones(y.size())));
    if (!usable(robust, y.size()) || !(robust.fit.coefficients[0] > 0.0)) robust = regress(samples, y, std::nullopt);
    if (!usable(robust, y.size())) return fit;
    for (Eigen::Index i = 0; i < y.size(); ++i)
        fit.evidence.push_back({samples[static_cast<std::size_t>(i)].speed_mps, y[i], robust.weights[i] > 0.3});
    const Eigen::VectorXd weights = power_weights(samples, robust.weights);
    const std::optional<CurveScale> scale = CurveScale::of(samples, weights);
    const auto straights = straights_of(samples, robust.weights, scale);
    fit.outcome.rests_on = straights.size();
    const double first_power = std::max(min_power_per_kg, robust.fit.coefficients[0]);
    const std::vector<Prior> priors = priors_of(prior, scale, first_power);
    ForceNoise noise = noise_of(samples, robust.weights, robust.fit.residuals, 2.0);
    ForceInformation information = information_of(straights, noise);
    for (int i = 0; i < noise_rounds; ++i) {
        const Posteriors likely(information, priors);
        if (likely.none()) return fit;
        const Posterior& best = likely.likeliest();
        noise =
            noise_of(samples, robust.weights, residuals_of(samples, y, best.centre, scale), best.fitted(information));
        information = information_of(straights, noise);
    }
    const Posteriors posteriors(information, priors);
    if (posteriors.none()) return fit;
    math::Random random(seed, 11);
    const auto by_speed = scale ? std::optional<CurveBySpeed>(CurveBySpeed(samples, weights, *scale)) : std::nullopt;
    const double mean_speed = speed_sum / static_cast<double>(y.size());
    draw_posterior(fit, information, posteriors, prior, mean_speed, scale, by_speed, draws, random);
    if (fit.draws.size() < draws) return fit;
    fit.best = {median_of(fit.draws, &DrivingForceDraw::power_per_kg),
                median_of(fit.draws, &DrivingForceDraw::drag_per_kg),
                usual_rolling,
                usual_rotating,
                {}};
    fit.power_sd = sd_of(fit.draws, &DrivingForceDraw::power_per_kg);
    fit.drag_sd = sd_of(fit.draws, &DrivingForceDraw::drag_per_kg);
    const Posterior& likeliest = posteriors.likeliest();
    fit.straight_errors = straight_errors(likeliest, straights, noise);
    fit.car_errors = car_errors(likeliest, information, mean_speed, tilt_sd_of(scale));
    if (scale && scale->over_engine_speed()) {
        fit.curve = curve_seen(*scale, posteriors.likeliest().centre);
    }
    fit.outcome.status = robust.outcome.status;
    fit.outcome.rounds = robust.outcome.rounds;
    return fit;
}

} // namespace lapwright::car
