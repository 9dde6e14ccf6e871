// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/tables.h"

#include <gmock/gmock.h>

namespace lapwright::sheet {
namespace {

std::string cell(const Table& table, std::size_t row, const std::string& column) {
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (table.columns[i] != column) continue;
        const Cell& found = table.rows.at(row).at(i);
        const Number* number = std::get_if<Number>(&found);
        return number != nullptr ? number->text : std::get<std::string>(found);
    }
    return "no such column";
}

TEST(SegmentsTable, SaysUnitsInTheHeadingAndLeavesTheAbsentEmpty) {
    comparison::SegmentComparison bowl;
    bowl.segment = {"Bowl", track::SegmentKind::corner, 100.0, 250.5, 0.0, {}};
    bowl.gain_s = {-0.25, 0.0123, false};
    bowl.a.min_speed_mps = comparison::Figure{25.0, {}, false};
    const std::vector<comparison::SegmentComparison> rows{bowl};
    const Table metric = segments_table(rows, base::UnitSystem::metric);
    for (const auto& row : metric.rows)
        EXPECT_EQ(row.size(), metric.columns.size());
    EXPECT_EQ(cell(metric, 0, "segment"), "Bowl");
    EXPECT_EQ(cell(metric, 0, "end (m)"), "250.5000");
    EXPECT_EQ(cell(metric, 0, "gain of A (s)"), "-0.2500");
    EXPECT_EQ(cell(metric, 0, "standard uncertainty (s)"), "0.0123");
    EXPECT_EQ(cell(metric, 0, "slowest A (km/h)"), "90.0000");
    EXPECT_EQ(cell(metric, 0, "slowest B (km/h)"), "");
    // 1 mile is 1609.344 m (NIST SP 811, B.8): 25 m/s = 55.9234 mph.
    EXPECT_EQ(cell(segments_table(rows, base::UnitSystem::us), 0, "slowest A (mph)"), "55.9234");
}

TEST(CausesTable, EndsWithTheWholeLapAndItsInterval) {
    causes::Explanation explanation;
    causes::SegmentRow bowl;
    bowl.segment = {"Bowl", track::SegmentKind::corner, 0.0, 100.0, 0.0, {}};
    bowl.row.gain = {0.5, 0.4, 0.6};
    explanation.segments = {bowl};
    explanation.total.gain = {0.5, 0.4, 0.6};
    explanation.total.driver_and_rest = {-0.1, -0.2, 0.05};
    const Table table = causes_table(explanation);
    ASSERT_EQ(table.rows.size(), 4U);
    for (const auto& row : table.rows)
        EXPECT_EQ(row.size(), table.columns.size());
    EXPECT_EQ(cell(table, 0, "gain of A (s)"), "0.5000");
    EXPECT_EQ(cell(table, 1, "driver and rest (s)"), "-0.1000");
    EXPECT_EQ(cell(table, 2, "driver and rest (s)"), "-0.2000");
    EXPECT_EQ(cell(table, 3, "driver and rest (s)"), "0.0500");
    EXPECT_EQ(cell(table, 1, "mass (s)"), "0.0000");
    explanation.per_kilogram = true;
    EXPECT_EQ(cell(causes_table(explanation), 1, "mass (s)"), "") << "absent without both masses";
}

} // namespace
} // namespace lapwright::sheet
