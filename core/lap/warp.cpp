// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/warp.h"

#include "core/base/check.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace lapwright::lap {
namespace {

constexpr double knot_spacing_m = 10.0;
// Variance that the walk gains per metre: slip of 0.3 % that hangs together over 40 m; braking hard, 6 % over 20 m.
constexpr double rolling_walk_m = 0.003 * 0.003 * 40.0;
constexpr double braking_walk_m = 0.06 * 0.06 * 20.0;
// Another line through a corner, by 0.3 m over 30 m, is longer or shorter by that times the curvature.
constexpr double line_walk_m3 = 0.3 * 0.3 * 30.0;
constexpr std::array drift_prior_sd{0.02, 0.1};
constexpr double least_hard_braking_mps2 = 4.0;
// What is left over hangs together over so much: a driver's way through a corner.
constexpr double rest_length_m = 8.0;
constexpr double least_rest_mps2 = 0.05;
// From coarse to fine, so that a corner finds its own from far.
constexpr std::array blur_m{60.0, 60.0, 30.0, 30.0, 12.0, 12.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
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
    const double hard = std::max(least_hard_braking_mps2, math::quantile(slowing, 0.95));
    for (double& value : slowing)
        value = std::pow(std::min(1.0, value / hard), 2);
    return slowing;
}

// The shift beforehand, between neighbouring knots.
struct Walk {
    std::vector<double> precision;
    std::vector<double> braking_m; // metres braked, weighted by how hard
};

Walk walk_of(const Cornering& lap, std::size_t knots) {
    const std::vector<double> brakes = braking(lap);
    std::vector<double> variance(knots - 1, 0.0);
    Walk walk{{}, std::vector<double>(knots - 1, 0.0)};
    for (std::size_t i = 0; i < lap.size(); ++i) {
        const double curvature = lap.lateral_mps2[i] / std::pow(std::max(5.0, lap.speed_mps[i]), 2);
        const std::size_t k = i * (knots - 1) / lap.size();
        variance[k] +=
            lap.step_m * (rolling_walk_m + brakes[i] * braking_walk_m + curvature * curvature * line_walk_m3);
        walk.braking_m[k] += lap.step_m * brakes[i];
    }
    for (const double value : variance)
        walk.precision.push_back(1.0 / std::max(value, 1e-6));
    return walk;
}

Drift drift_of(const Walk& walk, std::vector<double> step_m) {
    Drift drift{std::move(step_m), {}};
    for (std::size_t k = 0; k + 1 < drift.step_m.size(); ++k)
        drift.pull.push_back(walk.precision[k] * drift.step_m[k] - walk.precision[k + 1] * drift.step_m[k + 1]);
    return drift;
}

Warp from_walk(const Walk& walk, double knot_step_m) {
    Warp warp;
    const std::size_t knots = walk.precision.size() + 1;
    warp.knot_step_m = knot_step_m;
    warp.shift_m.assign(knots, 0.0);
    for (std::size_t k = 1; k + 1 < knots; ++k) {
        warp.diagonal.push_back(walk.precision[k - 1] + walk.precision[k]);
        warp.next.push_back(-walk.precision[k]); // the last one is that to the last knot
    }
    warp.before_first = -walk.precision.front();
    warp.drifts = {drift_of(walk, std::vector<double>(knots - 1, knot_step_m)), drift_of(walk, walk.braking_m)};
    warp.drift_spread = {drift_prior_sd[0], 0.0, drift_prior_sd[1]};
    return warp;
}

// Solves the tridiagonal system by Cholesky, L Lᵀ x = right; `half` adds the solution of Lᵀ x = z for a draw.
struct Cholesky {
    std::vector<double> diagonal;
    std::vector<double> below;

    explicit Cholesky(const Warp& warp) {
        const std::size_t n = warp.diagonal.size();
        diagonal.resize(n);
        below.resize(n, 0.0);
        for (std::size_t k = 0; k < n; ++k) {
            const double under = k > 0 ? below[k - 1] : 0.0;
            diagonal[k] = std::sqrt(warp.diagonal[k] - under * under);
            if (k + 1 < n) below[k] = warp.next[k] / diagonal[k];
        }
    }
    [[nodiscard]] std::vector<double> forward(std::vector<double> right) const {
        for (std::size_t k = 0; k < right.size(); ++k)
            right[k] = (right[k] - (k > 0 ? below[k - 1] * right[k - 1] : 0.0)) / diagonal[k];
        return right;
    }
    [[nodiscard]] std::vector<double> backward(std::vector<double> right) const {
        for (std::size_t k = right.size(); k-- > 0;)
            right[k] = (right[k] - (k + 1 < right.size() ? below[k] * right[k + 1] : 0.0)) / diagonal[k];
        return right;
    }
};

double dot(const std::vector<double>& x, const std::vector<double>& y) {
    return std::inner_product(x.begin(), x.end(), y.begin(), 0.0);
}

// Inner knots and drifts together: what the knots leave of the drifts' precision is a two by two system.
std::vector<double> solve_with_drifts(Warp& warp, const Walk& walk, const std::vector<double>& right) {
    const Cholesky factor(warp);
    std::vector<double> shift = factor.backward(factor.forward(right));
    std::array<std::vector<double>, 2> answers;
    for (std::size_t d = 0; d < 2; ++d)
        answers[d] = factor.backward(factor.forward(warp.drifts[d].pull));
    const auto precision = [&](std::size_t d, std::size_t e) {
        double sum = d == e ? 1.0 / (drift_prior_sd[d] * drift_prior_sd[d]) : 0.0;
        for (std::size_t k = 0; k < walk.precision.size(); ++k)
            sum += walk.precision[k] * warp.drifts[d].step_m[k] * warp.drifts[e].step_m[k];
        return sum - dot(warp.drifts[d].pull, answers[e]);
    };
    const double p00 = precision(0, 0);
    const double p01 = precision(0, 1);
    const double p11 = precision(1, 1);
    const double determinant = p00 * p11 - p01 * p01;
    const double r0 = dot(warp.drifts[0].pull, shift);
    const double r1 = dot(warp.drifts[1].pull, shift);
    warp.drifts[0].size = (p11 * r0 - p01 * r1) / determinant;
    warp.drifts[1].size = (p00 * r1 - p01 * r0) / determinant;
    const double sd = std::sqrt(p11 / determinant);
    warp.drift_spread = {sd, -p01 / determinant / sd, 1.0 / std::sqrt(p11)};
    for (std::size_t d = 0; d < 2; ++d)
        for (std::size_t k = 0; k < shift.size(); ++k)
            shift[k] += warp.drifts[d].size * answers[d][k];
    return shift;
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

// Spread of what is left over, where it could be mistaken for a shift: the quarter of the lap with the steepest slopes.
double rest_sd(const std::vector<double>& left, const std::vector<double>& slope) {
    std::vector<double> steepness(slope.size());
    std::ranges::transform(slope, steepness.begin(), [](double s) { return std::abs(s); });
    const double steep = math::quantile(steepness, 0.75);
    std::vector<double> there;
    for (std::size_t i = 0; i < left.size(); ++i)
        if (steepness[i] >= steep) there.push_back(left[i]);
    return math::robust_sd(there);
}

// One step of Gauss-Newton at one blur: shift and posterior of `warp` become the new ones.
void improve(Warp& warp, const Cornering& lap, const View& seen, const Walk& walk) {
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
    const double variance = std::pow(std::max(least_rest_mps2, rest_sd(left, slope)), 2);
    const double weight = lap.step_m / (rest_length_m * variance);
    Warp next = from_walk(walk, warp.knot_step_m);
    next.gain = warp.gain;
    next.correlation = warp.correlation;
    std::vector<double> right(next.diagonal.size(), 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        const double in_knots = static_cast<double>(i) * lap.step_m / warp.knot_step_m;
        const auto k = std::min(static_cast<std::size_t>(in_knots), next.shift_m.size() - 2);
        const double part = in_knots - static_cast<double>(k);
        const double target = left[i] + slope[i] * shift_at(warp, warp.shift_m, in_knots * warp.knot_step_m);
        const double h0 = slope[i] * (1.0 - part);
        const double h1 = slope[i] * part;
        if (k > 0) {
            next.diagonal[k - 1] += weight * h0 * h0;
            right[k - 1] += weight * h0 * target;
        }
        if (k + 1 < next.shift_m.size() - 1) {
            next.diagonal[k] += weight * h1 * h1;
            right[k] += weight * h1 * target;
        }
        if (k > 0 && k < next.diagonal.size()) next.next[k - 1] += weight * h0 * h1;
        if (k == 0) next.before_first += weight * h0 * h1;
        if (k == next.diagonal.size()) next.next.back() += weight * h0 * h1;
    }
    const std::vector<double> solved = solve_with_drifts(next, walk, right);
    double before = 0.0;
    for (std::size_t k = 0; k < solved.size(); ++k) {
        const double old = warp.shift_m[k + 1];
        const double wished = old + std::clamp(solved[k] - old, -longest_step_m, longest_step_m);
        const double most = steepest_shift * warp.knot_step_m;
        before = std::clamp(wished, before - most, before + most);
        next.shift_m[k + 1] = before;
    }
    warp = std::move(next);
}

} // namespace

double shift_at(const Warp& warp, std::span<const double> shift_m, double distance_m) {
    const double in_knots = std::clamp(distance_m / warp.knot_step_m, 0.0, static_cast<double>(shift_m.size() - 1));
    const auto k = std::min(static_cast<std::size_t>(in_knots), shift_m.size() - 2);
    return shift_m[k] + (in_knots - static_cast<double>(k)) * (shift_m[k + 1] - shift_m[k]);
}

Warp unfitted_warp(const Cornering& lap) {
    const std::size_t knots = knots_for(lap);
    return from_walk(walk_of(lap, knots), lap.length_m() / static_cast<double>(knots - 1));
}

Warp fit_warp(const Cornering& lap, std::span<const double> curvature_per_m) {
    base::check(lap.size() == curvature_per_m.size() && lap.size() >= 16, "a lap and a track on different grids");
    const Walk walk = walk_of(lap, knots_for(lap));
    Warp warp = unfitted_warp(lap);
    for (const double blur : blur_m)
        improve(warp, lap, view(lap, curvature_per_m, blur), walk);
    return warp;
}

std::vector<double> drawn_shift(const Warp& warp, double start_m, double end_m, math::NormalStream& normals) {
    const std::size_t inner = warp.diagonal.size();
    std::vector<double> mean(inner, 0.0);
    mean.front() -= warp.before_first * start_m;
    mean.back() -= warp.next.back() * end_m;
    const double z0 = normals.next();
    const double z1 = normals.next();
    const std::array drawn{warp.drift_spread[0] * z0, warp.drift_spread[1] * z0 + warp.drift_spread[2] * z1};
    for (std::size_t d = 0; d < 2; ++d)
        for (std::size_t k = 0; k < inner; ++k)
            mean[k] += drawn[d] * warp.drifts[d].pull[k];
    const Cholesky factor(warp);
    mean = factor.backward(factor.forward(std::move(mean)));
    std::vector<double> noise(inner);
    for (double& value : noise)
        value = normals.next();
    noise = factor.backward(std::move(noise));
    std::vector<double> shift = warp.shift_m;
    shift.front() += start_m;
    shift.back() += end_m;
    for (std::size_t k = 0; k < inner; ++k)
        shift[k + 1] += mean[k] + noise[k];
    return shift;
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
