// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/warp.h"

#include "core/base/check.h"
#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace lapwright::lap {
namespace {

constexpr double knot_spacing_m = 10.0;
// Variance that the walk gains per metre: slip of 0.3 % that hangs together over 40 m; braking hard, 6 % over 20 m.
constexpr double rolling_walk_m = 0.003 * 0.003 * 40.0;
constexpr double braking_walk_m = 0.06 * 0.06 * 20.0;
// Another line through a corner, by 1 m over 50 m, is longer or shorter by that times the curvature.
constexpr double line_walk_m3 = 1.0 * 1.0 * 50.0;
constexpr double distance_course_sd = 0.02;
constexpr double braking_course_sd = 0.1;
constexpr double wave_course_sd = 0.01; // a slow wave of the slip, one a lap
// Variance of the walk against what is usual: doublings thought of, and their spread beforehand.
constexpr int min_doublings = -4;
constexpr int max_doublings = 8;
constexpr int doublings_step = 2;
constexpr double doublings_sd = 2.0;
constexpr double min_hard_braking_mps2 = 4.0;
constexpr double start_sd_m = 20.0; // beforehand
// What is left over hangs together (a driver's way through a corner), over so much at the most.
constexpr double longest_rest_m = 40.0;
constexpr double min_rest_mps2 = 0.05;
// From coarse to fine, so that a corner finds its own from far.
constexpr std::array blur_m{60.0, 60.0, 30.0, 30.0, 12.0, 12.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
// The fit has converged when a round moves no knot by more: less than a driver's line differs from lap to lap.
constexpr double settled_m = 0.5;
constexpr double longest_step_m = 15.0;
constexpr double steepest_shift = 0.5; // of a metre a metre: distance stays monotone

std::size_t knots_for(const Cornering& lap) {
    return 1 + std::max<std::size_t>(4, static_cast<std::size_t>(std::lround(lap.length_m() / knot_spacing_m)));
}

double at_place(std::span<const double> closed, double place) {
    const double n = static_cast<double>(closed.size());
    const double wrapped = place - n * std::floor(place / n);
    const auto i = std::min(static_cast<std::size_t>(wrapped), closed.size() - 1);
    const double part = wrapped - static_cast<double>(i);
    return closed[i] + part * (closed[(i + 1) % closed.size()] - closed[i]);
}

// Each place's braking, 0..1, against the lap's hard braking, squared.
std::vector<double> braking(const Cornering& lap) {
    std::vector<double> slowing(lap.size());
    std::ranges::transform(lap.longitudinal_mps2, slowing.begin(), [](double a) { return std::max(0.0, -a); });
    const double hard = std::max(min_hard_braking_mps2, math::quantile(slowing, 0.95));
    for (double& value : slowing)
        value = std::pow(std::min(1.0, value / hard), 2);
    return slowing;
}

// Begins so many turns into the wave.
Course wave_course(std::size_t steps, double knot_step_m, double begin) {
    Course course{{}, wave_course_sd};
    for (std::size_t k = 0; k < steps; ++k) {
        const double phase = (static_cast<double>(k) + 0.5) / static_cast<double>(steps);
        course.step_m.push_back(knot_step_m * std::sin(2.0 * base::pi * (phase + begin)));
    }
    return course;
}

std::vector<double> rolling_shares(const Cornering& lap, std::size_t knots) {
    const std::vector<double> brakes = braking(lap);
    std::vector<double> sum(knots - 1, 0.0);
    std::vector<double> count(knots - 1, 0.0);
    for (std::size_t i = 0; i < lap.size(); ++i) {
        const std::size_t k = i * sum.size() / lap.size();
        sum[k] += 1.0 - brakes[i];
        count[k] += 1.0;
    }
    for (std::size_t k = 0; k < sum.size(); ++k)
        sum[k] = count[k] > 0.0 ? sum[k] / count[k] : 0.0;
    return sum;
}

// The shift beforehand.
SlipPrior prior_of(const Cornering& lap, std::size_t knots) {
    const std::size_t steps = knots - 1;
    const double knot_step_m = lap.length_m() / static_cast<double>(steps);
    const std::vector<double> brakes = braking(lap);
    SlipPrior prior{std::vector<double>(steps, 0.0), {}};
    Course with_braking{std::vector<double>(steps, 0.0), braking_course_sd};
    for (std::size_t i = 0; i < lap.size(); ++i) {
        const double curvature = lap.lateral_mps2[i] / std::pow(std::max(5.0, lap.speed_mps[i]), 2);
        const std::size_t k = i * steps / lap.size();
        prior.variance_m2[k] +=
            lap.step_m * (rolling_walk_m + brakes[i] * braking_walk_m + curvature * curvature * line_walk_m3);
        with_braking.step_m[k] += lap.step_m * brakes[i];
    }
    for (double& value : prior.variance_m2)
        value = std::max(value, 1e-6);
    prior.courses = {Course{std::vector<double>(steps, knot_step_m), distance_course_sd}, std::move(with_braking),
                     wave_course(steps, knot_step_m, 0.0), wave_course(steps, knot_step_m, 0.25)};
    return prior;
}

// What is known beforehand, at every restlessness that is thought of.
struct Before {
    SlipPrior prior;
    std::vector<double> factor;
    std::vector<double> log_weight; // chance, and what makes the evidence a density

    explicit Before(SlipPrior known) : prior(std::move(known)) {
        for (int doublings = min_doublings; doublings <= max_doublings; doublings += doublings_step) {
            factor.push_back(std::ldexp(1.0, doublings));
            log_weight.push_back(-0.5 * std::pow(doublings / doublings_sd, 2) -
                                 slip_posterior(prior, factor.back(), nothing_seen(prior)).log_evidence);
        }
    }
};

struct Cases {
    std::vector<Warp::Case> cases;
    double log_evidence = 0.0;
};

Cases cases_of(const Before& before, const SlipSeen& seen) {
    Cases all;
    double greatest = -std::numeric_limits<double>::infinity();
    for (std::size_t f = 0; f < before.factor.size(); ++f) {
        Warp::Case one{0.0, slip_posterior(before.prior, before.factor[f], seen)};
        one.chance = one.slip.log_evidence + before.log_weight[f];
        greatest = std::max(greatest, one.chance);
        all.cases.push_back(std::move(one));
    }
    double sum = 0.0;
    for (Warp::Case& one : all.cases)
        sum += one.chance = std::exp(one.chance - greatest);
    for (Warp::Case& one : all.cases)
        one.chance /= sum;
    all.log_evidence = greatest + std::log(sum);
    return all;
}

// Where both ends together lie best: the evidence's parabola through three places.
void find_start(Warp& warp, const Before& before, const SlipSeen& seen) {
    constexpr double apart_m = 1.0;
    const auto evidence = [&](double move_m) {
        const Moved moved = moved_by(seen, move_m);
        return cases_of(before, moved.seen).log_evidence + moved.gained;
    };
    const double ahead = evidence(apart_m);
    const double here = evidence(0.0);
    const double behind = evidence(-apart_m);
    const double precision = (2.0 * here - ahead - behind) / (apart_m * apart_m) + 1.0 / (start_sd_m * start_sd_m);
    if (!(precision > 0.0)) return;
    warp.start_m = (ahead - behind) / (2.0 * apart_m) / precision;
    warp.start_sd_m = 1.0 / std::sqrt(precision);
}

// The lap and the curvature at one blur.
struct View {
    std::vector<double> speed_squared;
    std::vector<double> lateral;
    std::vector<double> curvature;
};

View view(const Cornering& lap, std::span<const double> curvature_per_m, double blur) {
    const auto half = static_cast<std::size_t>(std::lround(0.5 * blur / lap.step_m));
    View seen;
    std::vector<double> curvature(lap.size());
    for (std::size_t i = 0; i < lap.size(); ++i) {
        const double v = std::max(5.0, lap.speed_mps[i]);
        seen.speed_squared.push_back(v * v);
        curvature[i] = lap.lateral_mps2[i] / (v * v);
    }
    curvature = blurred(curvature, half);
    for (std::size_t i = 0; i < lap.size(); ++i)
        seen.lateral.push_back(curvature[i] * seen.speed_squared[i]);
    seen.curvature = blurred(curvature_per_m, half);
    return seen;
}

struct Line {
    double gain;
    double bias;
};

Line regression(const std::vector<double>& asked, const std::vector<double>& found) {
    const double mean_asked = math::mean(asked);
    const double mean_found = math::mean(found);
    double cross = 0.0;
    double square = 0.0;
    for (std::size_t i = 0; i < asked.size(); ++i) {
        cross += (asked[i] - mean_asked) * (found[i] - mean_found);
        square += (asked[i] - mean_asked) * (asked[i] - mean_asked);
    }
    const double gain = square > 0.0 ? cross / square : 0.0;
    return {gain, mean_found - gain * mean_asked};
}

// What is left over, where it could be mistaken for a shift: the quarter of the lap with the steepest slopes.
struct Rest {
    double variance = 0.0;
    double length_m = 0.0; // over which it hangs together: the integral of its autocorrelation up to its first zero
};

Rest rest_of(const std::vector<double>& left, const std::vector<double>& slope, double step_m) {
    const std::size_t n = left.size();
    std::vector<double> steepness(n);
    std::ranges::transform(slope, steepness.begin(), [](double s) { return std::abs(s); });
    const double steep = math::quantile(steepness, 0.75);
    const auto products = [&](std::size_t lag) {
        double sum = 0.0;
        for (std::size_t i = 0; i < n; ++i)
            if (steepness[i] >= steep) sum += left[i] * 0.5 * (left[(i + lag) % n] + left[(i + n - lag) % n]);
        return sum;
    };
    // A mean square, nothing robust: where two drivers' lines part, the fit must not be believed.
    const double own = products(0);
    const auto places = static_cast<double>(std::ranges::count_if(steepness, [&](double s) { return s >= steep; }));
    Rest rest{std::max(min_rest_mps2 * min_rest_mps2, own / places), step_m};
    for (std::size_t lag = 1; static_cast<double>(lag) * step_m < longest_rest_m && own > 0.0; ++lag) {
        const double correlation = products(lag) / own;
        if (correlation <= 0.0) break;
        rest.length_m += 2.0 * step_m * correlation;
    }
    return rest;
}

// One step of Gauss-Newton at one blur: shift and posterior of `warp` become the new ones.  What it saw.
SlipSeen improve(Warp& warp, const Cornering& lap, const View& seen, const Before& before) {
    const std::size_t n = lap.size();
    std::vector<double> asked(n);
    std::vector<double> slope(n);
    for (std::size_t i = 0; i < n; ++i) {
        const double place =
            static_cast<double>(i) + shift_at(warp, warp.shift_m, static_cast<double>(i) * lap.step_m) / lap.step_m;
        asked[i] = seen.speed_squared[i] * at_place(seen.curvature, place);
        slope[i] = seen.speed_squared[i] *
                   (at_place(seen.curvature, place + 1.0) - at_place(seen.curvature, place - 1.0)) / (2.0 * lap.step_m);
    }
    const Line line = regression(asked, seen.lateral);
    warp.gain = line.gain;
    warp.correlation = math::correlation(asked, seen.lateral);
    std::vector<double> left(n);
    for (std::size_t i = 0; i < n; ++i) {
        slope[i] *= line.gain;
        left[i] = seen.lateral[i] - line.gain * asked[i] - line.bias;
    }
    const Rest rest = rest_of(left, slope, lap.step_m);
    const double weight = lap.step_m / (rest.length_m * rest.variance);
    SlipSeen found = nothing_seen(before.prior);
    for (std::size_t i = 0; i < n; ++i) {
        const double in_knots = static_cast<double>(i) * lap.step_m / warp.knot_step_m;
        const auto k = std::min(static_cast<std::size_t>(in_knots), warp.shift_m.size() - 2);
        const double part = in_knots - static_cast<double>(k);
        const double target = left[i] + slope[i] * shift_at(warp, warp.shift_m, in_knots * warp.knot_step_m);
        const double h0 = slope[i] * (1.0 - part);
        const double h1 = slope[i] * part;
        found.diagonal[k] += weight * h0 * h0;
        found.diagonal[k + 1] += weight * h1 * h1;
        found.next[k] += weight * h0 * h1;
        found.right[k] += weight * h0 * target;
        found.right[k + 1] += weight * h1 * target;
    }
    warp.cases = cases_of(before, found).cases;
    std::vector<double> wanted(warp.shift_m.size(), 0.0);
    for (const Warp::Case& one : warp.cases)
        for (std::size_t k = 0; k < wanted.size(); ++k)
            wanted[k] += one.chance * one.slip.mean_m[k];
    double last = 0.0;
    for (std::size_t k = 1; k + 1 < wanted.size(); ++k) {
        const double old = warp.shift_m[k];
        const double wished = old + std::clamp(wanted[k] - old, -longest_step_m, longest_step_m);
        const double most = steepest_shift * warp.knot_step_m;
        last = std::clamp(wished, last - most, last + most);
        warp.shift_m[k] = last;
    }
    return found;
}

} // namespace

double shift_at(const Warp& warp, std::span<const double> shift_m, double distance_m) {
    const double in_knots = std::clamp(distance_m / warp.knot_step_m, 0.0, static_cast<double>(shift_m.size() - 1));
    const auto k = std::min(static_cast<std::size_t>(in_knots), shift_m.size() - 2);
    return shift_m[k] + (in_knots - static_cast<double>(k)) * (shift_m[k + 1] - shift_m[k]);
}

namespace {

Warp unfitted(const Cornering& lap, const Before& before) {
    Warp warp;
    const std::size_t knots = before.prior.variance_m2.size() + 1;
    warp.knot_step_m = lap.length_m() / static_cast<double>(knots - 1);
    warp.shift_m.assign(knots, 0.0);
    warp.rolling = rolling_shares(lap, knots);
    warp.cases = cases_of(before, nothing_seen(before.prior)).cases;
    warp.start_sd_m = start_sd_m;
    warp.outcome.rests_on = knots;
    return warp;
}

double greatest_move(std::span<const double> from, std::span<const double> to) {
    double most = 0.0;
    for (std::size_t k = 0; k < to.size(); ++k)
        most = std::max(most, std::abs(to[k] - from[k]));
    return most;
}

// The hand of the sensor is told long before the places are.
Warp given_up(const Cornering& lap, const Before& before, const Warp& restless) {
    Warp warp = unfitted(lap, before);
    warp.outcome = {base::FitStatus::not_converged, restless.outcome.rounds, restless.outcome.rests_on};
    warp.gain = restless.gain;
    warp.correlation = restless.correlation;
    return warp;
}

} // namespace

Warp unfitted_warp(const Cornering& lap) {
    return unfitted(lap, Before(prior_of(lap, knots_for(lap))));
}

Warp fit_warp(const Cornering& lap, std::span<const double> curvature_per_m, int max_rounds) {
    base::check(lap.size() == curvature_per_m.size() && lap.size() >= 16, "a lap and a track on different grids");
    const Before before(prior_of(lap, knots_for(lap)));
    Warp warp = unfitted(lap, before);
    SlipSeen seen;
    for (int round = 0; round < max_rounds && !warp.outcome.converged(); ++round) {
        const bool sharp = static_cast<std::size_t>(round) >= blur_m.size();
        const std::vector<double> last = warp.shift_m;
        seen = improve(warp, lap, view(lap, curvature_per_m, sharp ? 0.0 : blur_m[static_cast<std::size_t>(round)]),
                       before);
        warp.outcome.rounds = round + 1;
        if (static_cast<std::size_t>(round) + 1 >= blur_m.size() && greatest_move(last, warp.shift_m) <= settled_m)
            warp.outcome.status = base::FitStatus::converged;
    }
    if (!warp.outcome.converged()) return given_up(lap, before, warp);
    find_start(warp, before, seen);
    return warp;
}

std::vector<double> drawn_shift(const Warp& warp, double start_m, double end_m, math::NormalStream& normals) {
    double left = 0.5 * std::erfc(normals.next() / std::numbers::sqrt2); // evenly in 0..1
    std::size_t drawn = 0;
    while (drawn + 1 < warp.cases.size() && left >= warp.cases[drawn].chance)
        left -= warp.cases[drawn++].chance;
    return drawn_slip(warp.cases[drawn].slip, start_m, end_m, normals);
}

double rolling_scale(const Warp& warp, std::span<const double> shift_m) {
    double gained = 0.0;
    double rolled = 0.0;
    for (std::size_t k = 0; k < warp.rolling.size(); ++k) {
        gained += warp.rolling[k] * (shift_m[k + 1] - shift_m[k]);
        rolled += warp.rolling[k] * warp.knot_step_m;
    }
    return rolled > 0.0 ? 1.0 + gained / rolled : 1.0;
}

Offset best_offset(const Cornering& lap, std::span<const double> curvature_per_m) {
    constexpr double blur = 30.0;
    constexpr std::size_t stride = 3; // some six metres
    const View seen = view(lap, curvature_per_m, blur);
    const std::size_t n = lap.size();
    std::vector<double> found;
    for (std::size_t i = 0; i < n; i += stride)
        found.push_back(seen.lateral[i] / seen.speed_squared[i]);
    Offset best;
    for (std::size_t moved = 0; moved < n; moved += stride) {
        std::vector<double> track;
        for (std::size_t i = 0; i < n; i += stride)
            track.push_back(seen.curvature[(i + moved) % n]);
        const double agreement = std::abs(math::correlation(track, found));
        if (moved == 0) best.agreement_at_zero = agreement;
        if (agreement <= best.agreement) continue;
        best.agreement = agreement;
        best.offset_m = lap.step_m * (static_cast<double>(moved) - (moved > n / 2 ? static_cast<double>(n) : 0.0));
    }
    return best;
}

} // namespace lapwright::lap
