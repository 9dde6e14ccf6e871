// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's map: the whole line inside its box, true in its proportions, and no number on the line or on another.
#include "core/sheet/svg_map.h"

#include "core/sheet/plot_layout.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

namespace lapwright::sheet {
namespace {

Sheet drawn(std::mt19937& engine) {
    std::uniform_real_distribution<double> part(0.0, 1.0);
    Sheet sheet;
    const double wide = 200.0 + 900.0 * part(engine);
    const double high = 200.0 + 900.0 * part(engine);
    const double lobes = 0.25 * part(engine);
    for (int i = 0; i < 400; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / 400.0;
        const double r = 1.0 + lobes * std::sin(3.0 * angle);
        sheet.map.distance_m.push_back(10.0 * i);
        sheet.map.east_m.push_back(wide * r * std::cos(angle));
        sheet.map.north_m.push_back(high * r * std::sin(angle));
    }
    for (int f = 0; f < 3; ++f) {
        const double start = 3700.0 * part(engine);
        sheet.findings.push_back({"", "", "", "", Favours::a, start, start + 50.0 + 200.0 * part(engine)});
    }
    return sheet;
}

std::vector<std::pair<double, double>> discs(const std::string& shapes) {
    std::vector<std::pair<double, double>> all;
    const auto value = [&](std::size_t from, const char* name) {
        const auto at = shapes.find(name, from);
        return std::stod(shapes.substr(at + std::string(name).size()));
    };
    for (auto at = shapes.find("<circle"); at != std::string::npos; at = shapes.find("<circle", at + 1))
        all.emplace_back(value(at, "cx=\""), value(at, "cy=\""));
    return all;
}

} // namespace

TEST(SheetMap, NumbersStandInsideBesideTheLineAndApart) {
    std::mt19937 engine(17);
    for (int round = 0; round < 300; ++round) {
        const auto at = discs(map_drawing(drawn(engine)).shapes);
        ASSERT_EQ(at.size(), 3U);
        for (std::size_t i = 0; i < at.size(); ++i) {
            EXPECT_GE(at[i].first, mark_radius);
            EXPECT_LE(at[i].first, map_width_pt - mark_radius);
            EXPECT_GE(at[i].second, mark_radius);
            EXPECT_LE(at[i].second, map_height_pt - mark_radius);
            for (std::size_t k = 0; k < i; ++k)
                EXPECT_GE(std::hypot(at[i].first - at[k].first, at[i].second - at[k].second), 1.6 * mark_radius)
                    << round;
        }
    }
}

TEST(SheetMap, WithoutALineThereIsNone) {
    EXPECT_EQ(svg_map({}), "");
}

} // namespace lapwright::sheet
