// SPDX-License-Identifier: GPL-3.0-or-later
// The draws of two cars go together as far as is stated, and stay the draws they were.
#include "core/car/alike_errors.h"

#include "core/math/statistics.h"

#include <gtest/gtest.h>

using namespace lapwright;

namespace {

struct Draw {
    double drag = 0.0;
    double power = 0.0;
};

std::vector<Draw> drawn(std::uint64_t seed) {
    math::Random random(seed, 7);
    std::vector<Draw> draws(2000);
    for (Draw& draw : draws) {
        draw.drag = random.normal();
        draw.power = 0.8 * draw.drag + 0.6 * random.normal();
    }
    return draws;
}

std::vector<double> column(const std::vector<Draw>& draws, double Draw::* member) {
    std::vector<double> values;
    for (const Draw& draw : draws)
        values.push_back(draw.*member);
    return values;
}

} // namespace

TEST(AlikeErrors, TwoCarsGoTogetherAndEachStaysItself) {
    std::vector<Draw> a = drawn(11);
    std::vector<Draw> b = drawn(12);
    const std::vector<Draw> before = a;
    car::order_alike(a, &Draw::drag, 11, 3);
    car::order_alike(b, &Draw::drag, 12, 3);
    EXPECT_NEAR(math::correlation(column(a, &Draw::drag), column(b, &Draw::drag)), car::alike_errors, 0.06);
    EXPECT_NEAR(math::correlation(column(a, &Draw::drag), column(a, &Draw::power)),
                math::correlation(column(before, &Draw::drag), column(before, &Draw::power)), 1e-9);
    for (double Draw::* member : {&Draw::drag, &Draw::power}) {
        std::vector<double> now = column(a, member);
        std::vector<double> then = column(before, member);
        std::ranges::sort(now);
        std::ranges::sort(then);
        EXPECT_EQ(now, then);
    }
}

TEST(AlikeErrors, OneCarIsItsOwn) {
    std::vector<Draw> a = drawn(11);
    std::vector<Draw> same = drawn(11);
    car::order_alike(a, &Draw::drag, 11, 3);
    car::order_alike(same, &Draw::drag, 11, 3);
    EXPECT_EQ(column(a, &Draw::drag), column(same, &Draw::drag));
}
