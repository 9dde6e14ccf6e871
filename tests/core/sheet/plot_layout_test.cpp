// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/plot_layout.h"

#include <gmock/gmock.h>

#include <cmath>
#include <random>

namespace lapwright::sheet {
namespace {

const Box page{0, 0, 515, 215};

Plot flat() {
    return {{0, 500, 1000}, {100, 100, 100}, {100, 100, 100}, {0, 0, 0}, {}, {}, "km/h", {}};
}

TEST(PlotLayout, PutsTheEndsOfTheLapAtTheEdges) {
    const PlotLayout layout = lay_out(flat(), {}, page);
    for (const Panel& panel : {layout.speed, layout.gap}) {
        EXPECT_DOUBLE_EQ(panel.x(0.0), panel.area.left);
        EXPECT_DOUBLE_EQ(panel.x(1000.0), page.right());
        EXPECT_DOUBLE_EQ(panel.y(panel.low), panel.area.bottom());
        EXPECT_DOUBLE_EQ(panel.y(panel.high), panel.area.top);
    }
    EXPECT_LT(layout.speed.area.bottom(), layout.gap.area.top);
    EXPECT_LE(layout.gap.area.bottom(), page.bottom());
}

TEST(PlotLayout, ACurveWithoutAnySpanStillHasAPlace) {
    const Panel speed = lay_out(flat(), {}, page).speed;
    EXPECT_GT(speed.high, 100.0);
    EXPECT_LT(speed.low, 100.0);
}

TEST(PlotLayout, GridValuesAreRoundAndInside) {
    EXPECT_THAT(grid_values({page, 1000, -0.13, 0.44}),
                testing::ElementsAre(testing::DoubleNear(-0.1, 1e-12), testing::DoubleNear(0.0, 1e-12),
                                     testing::DoubleNear(0.1, 1e-12), testing::DoubleNear(0.2, 1e-12),
                                     testing::DoubleNear(0.3, 1e-12), testing::DoubleNear(0.4, 1e-12)));
    EXPECT_THAT(grid_values({page, 1000, 61, 211}), testing::ElementsAre(100, 150, 200));
}

TEST(PlotLayout, MarksOfOnePlaceStandSideBySide) {
    Finding here;
    here.start_m = 200;
    here.end_m = 300;
    const auto marks = lay_out(flat(), {here, here, {}}, page).marks;
    ASSERT_EQ(marks.size(), 2U) << "a finding of the whole lap has no place";
    EXPECT_GE(marks[1].disc_x - marks[0].disc_x, 2 * mark_radius);
    EXPECT_DOUBLE_EQ(marks[0].shade.width, 0.1 * (515 - 30));
}

// Whichever findings share a place, one after the other or not.
TEST(PlotLayout, NoDiscCoversAnother) {
    std::mt19937 engine(3);
    for (int i = 0; i < 500; ++i) {
        std::vector<Finding> findings(3);
        for (Finding& finding : findings) {
            finding.start_m = 100.0 * static_cast<double>(engine() % 10);
            finding.end_m = finding.start_m + 10.0 + 10.0 * static_cast<double>(engine() % 10);
        }
        const PlotLayout layout = lay_out(flat(), findings, page);
        ASSERT_EQ(layout.marks.size(), 3U);
        for (std::size_t k = 0; k < 3; ++k) {
            EXPECT_LE(layout.marks[k].disc_x + mark_radius, page.right() + 1e-6);
            for (std::size_t m = 0; m < k; ++m)
                EXPECT_GE(std::abs(layout.marks[k].disc_x - layout.marks[m].disc_x), 2 * mark_radius);
        }
    }
}

TEST(PlotLayout, NamesTheDecidingPlaceAboveIt) {
    Plot plot = flat();
    EXPECT_FALSE(lay_out(plot, {}, page).named);
    plot.deciding = {"Tower", 600, 700};
    const PlotLayout middle = lay_out(plot, {}, page);
    ASSERT_TRUE(middle.named);
    EXPECT_EQ(middle.named->name, "Tower");
    EXPECT_DOUBLE_EQ(middle.named->shade.left, middle.speed.x(600));
    EXPECT_DOUBLE_EQ(middle.named->shade.right(), middle.speed.x(700));
    EXPECT_DOUBLE_EQ(middle.named->name_x, middle.speed.x(650));
    plot.deciding = {"Tower", 0, 20}; // beside the title, not on it
    EXPECT_GT(lay_out(plot, {}, page).named->name_x, middle.speed.area.left + 80.0);
}

TEST(PlotLayout, DrawsFirstAndLastAndNotTooMany) {
    EXPECT_TRUE(drawn_points(0).empty());
    EXPECT_THAT(drawn_points(3), testing::ElementsAre(0, 1, 2));
    const auto many = drawn_points(100001);
    EXPECT_EQ(many.back(), 100000U);
    EXPECT_LT(many.size(), 1300U);
}

} // namespace
} // namespace lapwright::sheet
