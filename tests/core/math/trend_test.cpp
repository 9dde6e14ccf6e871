// SPDX-License-Identifier: GPL-3.0-or-later
// The robust trend: by hand, against counting orders, and whether its intervals hold as often as they say.
#include "core/math/trend.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numeric>
#include <random>
#include <vector>

using namespace lapwright::math;

namespace {

// All orders of n things, counted one by one.
double counted_chance(int n, std::size_t most) {
    std::vector<int> order(static_cast<std::size_t>(n));
    std::iota(order.begin(), order.end(), 0);
    double few = 0.0;
    double all = 0.0;
    do {
        std::size_t inversions = 0;
        for (std::size_t i = 0; i < order.size(); ++i)
            for (std::size_t j = i + 1; j < order.size(); ++j)
                inversions += order[i] > order[j];
        few += inversions <= most;
        all += 1.0;
    } while (std::ranges::next_permutation(order).found);
    return few / all;
}

struct Course {
    const char* name;
    double (*at)(double share); // of the session that is over
};

constexpr Course courses[]{{"level", [](double) { return 0.0; }}, {"straight", [](double share) { return -share; }}};

// What laps differ by.
struct Scatter {
    const char* name;
    double (*draw)(std::mt19937_64& random);
};

double normal(std::mt19937_64& random) {
    return std::normal_distribution<double>(0.0, 0.15)(random);
}

constexpr Scatter scatters[]{
    {"normal", normal},
    {"long tails", [](std::mt19937_64& random) { return 0.15 * std::student_t_distribution<double>(3.0)(random); }},
    {"now and then in traffic", [](std::mt19937_64& random) {
         const bool traffic = std::bernoulli_distribution(0.12)(random);
         return normal(random) + (traffic ? std::exponential_distribution<double>(1.0 / 1.5)(random) : 0.0);
     }}};

} // namespace

TEST(Trend, IsTheMedianOfAllSlopes) {
    const std::vector<double> x{1, 2, 3, 4, 5};
    const std::vector<double> y{1.26, 1.27, 1.12, 1.16, 1.03};
    // Slopes in order: −0.15 −0.13 −0.08 −0.07 −0.0575 | −0.055 −0.045 −0.0333 0.01 0.04
    const auto found = trend(x, y);
    ASSERT_TRUE(found && found->slope_interval && found->level_interval);
    EXPECT_NEAR(found->slope, -0.05625, 1e-12);
    EXPECT_NEAR(found->slope_interval->low, -0.15, 1e-12);
    EXPECT_NEAR(found->slope_interval->high, 0.04, 1e-12);
    EXPECT_TRUE(found->level_interval->contains(found->level_at_end));
}

TEST(Trend, FollowsAStraightCourseWhateverOneBadValue) {
    std::vector<double> x;
    std::vector<double> y;
    for (int i = 0; i < 12; ++i) {
        x.push_back(i + (i > 6 ? 3.0 : 0.0)); // a pause
        y.push_back(90.0 - 0.25 * x.back());
    }
    y[5] += 20.0;
    const auto found = trend(x, y);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->slope, -0.25, 1e-12);
    EXPECT_NEAR(found->level_at_end, 90.0 - 0.25 * x.back(), 1e-9);
}

TEST(Trend, FewValuesHaveNoInterval) {
    const std::vector<double> x{0, 1, 2, 3};
    const std::vector<double> y{4, 3, 2, 1};
    EXPECT_FALSE(trend(std::span(x).first(1), std::span(y).first(1)));
    const auto four = trend(x, y);
    ASSERT_TRUE(four);
    EXPECT_FALSE(four->slope_interval);
    EXPECT_FALSE(four->level_interval);
    EXPECT_EQ(four->slope, -1.0);
}

TEST(Trend, ChancesOfInversionsAreThoseOfAllOrders) {
    for (int n = 2; n <= 7; ++n)
        for (std::size_t most = 0; most <= static_cast<std::size_t>(n * (n - 1) / 2); ++most)
            EXPECT_NEAR(chance_of_inversions(static_cast<std::size_t>(n), most), counted_chance(n, most), 1e-12)
                << n << " things, " << most << " inversions";
    // Where the exact distribution ends its normal approximation goes on.
    EXPECT_NEAR(chance_of_inversions(60, 700), chance_of_inversions(61, 729), 0.02);
}

TEST(Trend, IntervalsHoldAsOftenAsTheySay) {
    std::mt19937_64 random(16);
    constexpr int draws = 1500;
    for (const Course& course : courses)
        for (const Scatter& scatter : scatters)
            for (const int n : {5, 8, 20}) {
                int slope_held = 0;
                int level_held = 0;
                for (int draw = 0; draw < draws; ++draw) {
                    std::vector<double> x;
                    std::vector<double> y;
                    for (int i = 0; i < n; ++i) {
                        x.push_back(i);
                        y.push_back(course.at(i / (n - 1.0)) + scatter.draw(random));
                    }
                    const auto found = trend(x, y);
                    slope_held += found->slope_interval->contains((course.at(1.0) - course.at(0.0)) / (n - 1.0));
                    level_held += found->level_interval->contains(course.at(1.0));
                }
                const std::string what = std::string(course.name) + ", " + scatter.name + ", " + std::to_string(n);
                EXPECT_GE(slope_held, 0.94 * draws) << what;
                EXPECT_GE(level_held, 0.93 * draws) << what;
            }
}
