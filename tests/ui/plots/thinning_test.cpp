// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/thinning.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <map>
#include <random>

using namespace lapwright::plots;

namespace {

// The obvious way: for each pixel column the least and greatest y of all its samples.
std::map<int, std::pair<double, double>> columns_of(const std::vector<double>& xs, const std::vector<double>& ys,
                                                    const PixelMap& map) {
    std::map<int, std::pair<double, double>> columns;
    for (std::size_t i = 0; i < xs.size(); ++i) {
        const QPointF p = map.point(xs[i], ys[i]);
        auto [place, fresh] = columns.try_emplace(static_cast<int>(std::floor(p.x())), p.y(), p.y());
        if (!fresh) {
            place->second.first = std::min(place->second.first, p.y());
            place->second.second = std::max(place->second.second, p.y());
        }
    }
    return columns;
}

} // namespace

TEST(Thinning, EveryColumnKeepsItsLowestAndHighest) {
    std::mt19937 engine(7);
    std::normal_distribution<double> noise(0.0, 1.0);
    std::vector<double> xs;
    std::vector<double> ys;
    for (int i = 0; i < 20000; ++i) {
        xs.push_back(0.2 * i);
        ys.push_back(std::sin(0.003 * i) * 20.0 + noise(engine));
    }
    const PixelMap map{0.21, 40.0, -3.0, 200.0};
    const auto lines = thinned(xs, ys, xs.front(), xs.back(), map, 1.0);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_LE(lines[0].size(), 4U * static_cast<std::size_t>(0.21 * 4000.0 + 2.0));
    std::vector<double> kept_x;
    std::vector<double> kept_y;
    for (std::size_t i = 0; i < lines[0].size(); ++i) {
        kept_x.push_back(lines[0][i].x());
        kept_y.push_back(lines[0][i].y());
        if (i > 0) {
            EXPECT_GE(kept_x[i], kept_x[i - 1]);
        }
    }
    EXPECT_EQ(columns_of(xs, ys, map), columns_of(kept_x, kept_y, PixelMap{}));
}

TEST(Thinning, FewSamplesStayAsTheyAre) {
    const std::vector<double> xs{0, 10, 20, 30};
    const std::vector<double> ys{1, 2, 1, 5};
    const auto lines = thinned(xs, ys, 0, 30, PixelMap{5.0, 0.0, 1.0, 0.0}, 1.0);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].size(), 4U);
}

TEST(Thinning, ALineBreaksWhereNothingWasMeasured) {
    const double nothing = std::numeric_limits<double>::quiet_NaN();
    const std::vector<double> xs{0, 1, 2, 3, 4, 5};
    const std::vector<double> ys{1, 2, nothing, 4, 5, 6};
    const auto lines = thinned(xs, ys, 0, 5, PixelMap{10.0, 0.0, 1.0, 0.0}, 1.0);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].size(), 2U);
    EXPECT_EQ(lines[1].size(), 3U);
}

TEST(Thinning, OnlyTheViewAndOneSampleBeyond) {
    const std::vector<double> xs{0, 1, 2, 3, 4, 5};
    const std::vector<double> ys{0, 0, 0, 0, 0, 0};
    const auto lines = thinned(xs, ys, 1.5, 3.5, PixelMap{10.0, 0.0, 1.0, 0.0}, 1.0);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].front().x(), 10.0);
    EXPECT_EQ(lines[0].back().x(), 40.0);
}

TEST(Thinning, ValuesBetweenSamples) {
    const std::vector<double> xs{0, 10, 20};
    const std::vector<double> ys{1, 3, std::numeric_limits<double>::quiet_NaN()};
    EXPECT_DOUBLE_EQ(value_at(xs, ys, 5.0), 2.0);
    EXPECT_DOUBLE_EQ(value_at(xs, ys, 10.0), 3.0);
    EXPECT_TRUE(std::isnan(value_at(xs, ys, 15.0)));
    EXPECT_TRUE(std::isnan(value_at(xs, ys, -0.1)));
    EXPECT_TRUE(std::isnan(value_at({}, {}, 0.0)));
    EXPECT_EQ(extent(ys), std::pair(1.0, 3.0));
}

TEST(Dashes, CoverTheirShareOfTheLineAndKeepItsShape) {
    Polyline line;
    for (int i = 0; i <= 1000; ++i)
        line.push_back({0.9 * i, 40.0 * std::sin(0.02 * i)});
    double whole = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        whole += std::hypot(line[i].x() - line[i - 1].x(), line[i].y() - line[i - 1].y());
    double drawn = 0.0;
    for (const Polyline& dash : dashes(line, 7.0, 3.5)) {
        double length = 0.0;
        for (std::size_t i = 1; i < dash.size(); ++i)
            length += std::hypot(dash[i].x() - dash[i - 1].x(), dash[i].y() - dash[i - 1].y());
        EXPECT_LE(length, 7.0 + 1e-9);
        drawn += length;
    }
    EXPECT_NEAR(drawn / whole, 7.0 / 10.5, 0.01);
    EXPECT_TRUE(dashes({}, 7.0, 3.5).empty());
}
