// SPDX-License-Identifier: GPL-3.0-or-later
// The warp against shifts that are known: a lap on an invented track whose own distance was stretched.
#include "core/lap/warp.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <numbers>
#include <vector>

namespace lapwright::lap {
namespace {

constexpr double length_m = 2400.0;
constexpr std::size_t places = 1200;

// Corners of different length and both hands, closed.
double curvature(double station_m) {
    const double phase = 2.0 * std::numbers::pi * station_m / length_m;
    return 0.012 * std::sin(5.0 * phase) + 0.008 * std::sin(8.0 * phase + 1.0);
}

double true_shift(double distance_m) {
    return 4.0 * std::sin(2.0 * std::numbers::pi * distance_m / length_m);
}

std::vector<double> track() {
    std::vector<double> values(places);
    for (std::size_t i = 0; i < places; ++i)
        values[i] = curvature(length_m * static_cast<double>(i) / places);
    return values;
}

Cornering lap(double sign, double noise_mps2, std::uint64_t seed = 3) {
    Cornering result;
    result.step_m = length_m / places;
    math::NormalStream normals(seed, 1);
    for (std::size_t i = 0; i < places; ++i) {
        const double d = result.step_m * static_cast<double>(i);
        const double v = 30.0 + 8.0 * std::sin(2.0 * std::numbers::pi * d / length_m + 0.5);
        result.speed_mps.push_back(v);
        result.lateral_mps2.push_back(sign * (v * v * curvature(d + true_shift(d)) + 0.1) +
                                      noise_mps2 * normals.next());
        result.longitudinal_mps2.push_back(0.0);
    }
    return result;
}

TEST(Warp, FindsTheShiftOfAStretchedLap) {
    for (const double sign : {1.0, -1.0}) {
        const Warp warp = fit_warp(lap(sign, 0.2), track());
        EXPECT_NEAR(warp.gain, sign, 0.02);
        for (double d = 0.0; d <= length_m; d += 50.0)
            EXPECT_NEAR(shift_at(warp, warp.shift_m, d), true_shift(d), 0.5) << d;
    }
}

TEST(Warp, StaysMonotoneAndKeepsBothEnds) {
    const Warp warp = fit_warp(lap(1.0, 3.0), track());
    EXPECT_EQ(warp.shift_m.front(), 0.0);
    EXPECT_EQ(warp.shift_m.back(), 0.0);
    for (std::size_t k = 1; k < warp.shift_m.size(); ++k)
        EXPECT_GT(warp.knot_step_m + warp.shift_m[k] - warp.shift_m[k - 1], 0.0);
}

// Spread of the draws against what the fit misses, over laps
// with their own noise: neither may be more than twice the other.
TEST(Warp, DrawsSpreadAsWideAsTheFitErrs) {
    math::NormalStream normals(9, 1);
    double spread = 0.0;
    double missed = 0.0;
    for (std::uint64_t seed = 10; seed < 18; ++seed) {
        const Warp warp = fit_warp(lap(1.0, 0.5, seed), track());
        for (int draw = 0; draw < 20; ++draw) {
            const std::vector<double> shift = drawn_shift(warp, 0.0, 0.0, normals);
            for (std::size_t k = 0; k < shift.size(); ++k)
                spread += std::pow(shift[k] - warp.shift_m[k], 2) / 20.0;
        }
        for (std::size_t k = 0; k < warp.shift_m.size(); ++k)
            missed += std::pow(warp.shift_m[k] - true_shift(warp.knot_step_m * static_cast<double>(k)), 2);
    }
    EXPECT_GT(spread, 0.25 * missed);
    EXPECT_LT(spread, 4.0 * missed);
}

// Another driver turns in earlier or later here and there: a place that is mistaken for another is told by the spread.
TEST(Warp, DrawsSpreadAsWideAsOtherLinesMislead) {
    math::NormalStream normals(21, 1);
    double squares = 0.0;
    double count = 0.0;
    for (std::uint64_t seed = 30; seed < 42; ++seed) {
        Cornering driven = lap(1.0, 0.3, seed);
        for (int corner = 0; corner < 3; ++corner) {
            const double at_m = length_m * 0.5 * std::erfc(normals.next() / std::numbers::sqrt2);
            const double size = 0.006 * normals.next();
            for (std::size_t i = 0; i < places; ++i) {
                const double off = (driven.step_m * static_cast<double>(i) - at_m) / 20.0;
                driven.lateral_mps2[i] += std::pow(driven.speed_mps[i], 2) * size * off * std::exp(-0.5 * off * off);
            }
        }
        const Warp warp = fit_warp(driven, track());
        std::vector<double> spread(warp.shift_m.size(), 0.0);
        for (int draw = 0; draw < 30; ++draw) {
            const std::vector<double> shift = drawn_shift(warp, 0.0, 0.0, normals);
            for (std::size_t k = 0; k < shift.size(); ++k)
                spread[k] += std::pow(shift[k] - warp.shift_m[k], 2) / 30.0;
        }
        for (std::size_t k = 1; k + 1 < spread.size(); ++k, count += 1.0)
            squares += std::pow(warp.shift_m[k] - true_shift(warp.knot_step_m * static_cast<double>(k)), 2) / spread[k];
    }
    EXPECT_LT(squares / count, 4.0);
    EXPECT_GT(squares / count, 0.1);
}

// Too few rounds for 60 m of blur to become none: nothing of the fit is used but the sensor's hand, which is told.
TEST(Warp, AFitThatStillMovesIsNotUsed) {
    const Warp fitted = fit_warp(lap(-1.0, 0.2), track());
    EXPECT_TRUE(fitted.outcome.converged());
    EXPECT_GE(fitted.outcome.rounds, 12);
    const Warp hasty = fit_warp(lap(-1.0, 0.2), track(), 5);
    const Warp unfitted = unfitted_warp(lap(-1.0, 0.2));
    EXPECT_EQ(unfitted.outcome.status, base::FitStatus::not_run);
    EXPECT_EQ(hasty.outcome.status, base::FitStatus::not_converged);
    EXPECT_EQ(hasty.outcome.rounds, 5);
    EXPECT_EQ(hasty.shift_m, unfitted.shift_m);
    EXPECT_EQ(hasty.start_sd_m, unfitted.start_sd_m);
    EXPECT_LT(hasty.gain, 0.0);
}

// The ends are held where the lap is said to begin; that both belong elsewhere is seen.
TEST(Warp, SeesThatTheLapBeginsElsewhere) {
    std::vector<double> moved(places);
    for (std::size_t i = 0; i < places; ++i)
        moved[i] = curvature(length_m * static_cast<double>(i) / places - 3.0);
    const Warp warp = fit_warp(lap(1.0, 0.3), moved);
    EXPECT_LT(warp.start_sd_m, 1.5);
    EXPECT_NEAR(warp.start_m, 3.0, 3.0 * warp.start_sd_m);
}

// A track that turns nowhere says nothing of where its lap begins: what was thought beforehand stays, 20 m either way.
TEST(Warp, ABeginningThatNothingTellsIsAsOpenAsBefore) {
    const Warp warp = fit_warp(lap(1.0, 0.3), std::vector<double>(places, 0.0));
    EXPECT_NEAR(warp.start_m, 0.0, 1e-6);
    EXPECT_NEAR(warp.start_sd_m, 20.0, 1e-6);
    EXPECT_NEAR(unfitted_warp(lap(1.0, 0.3)).start_sd_m, 20.0, 1e-12);
}

TEST(Warp, ADrawFollowsItsEnds) {
    const Warp warp = fit_warp(lap(1.0, 0.2), track());
    math::NormalStream normals(9, 2);
    const std::vector<double> shift = drawn_shift(warp, 0.7, -0.4, normals);
    EXPECT_DOUBLE_EQ(shift.front(), 0.7);
    EXPECT_DOUBLE_EQ(shift.back(), -0.4);
}

TEST(Warp, FindsWhereOnTheTrackALapBegins) {
    std::vector<double> moved(places);
    for (std::size_t i = 0; i < places; ++i)
        moved[i] = curvature(length_m * static_cast<double>(i) / places - 300.0);
    const Offset offset = best_offset(lap(-1.0, 0.3), moved);
    EXPECT_NEAR(offset.offset_m, 300.0, 8.0);
    EXPECT_GT(offset.agreement, 0.95);
    EXPECT_LT(offset.agreement_at_zero, offset.agreement - 0.2);
}

} // namespace
} // namespace lapwright::lap
