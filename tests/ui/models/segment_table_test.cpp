// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/segment_table.h"

#include "core/workspace/compared.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "ui/models/channels.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

using namespace lapwright;
using models::SegmentTable;

namespace {

comparison::SegmentComparison corner(const char* name, double gain, std::optional<double> sd) {
    comparison::SegmentComparison row;
    row.segment = {name, track::SegmentKind::corner, 0.0, 100.0, 1.0, 50.0};
    row.gain_s = {gain, sd, false};
    row.a.min_speed_mps = comparison::Figure{20.0, 0.05, false};
    row.a.exit_speed_mps = {30.0, std::nullopt, false};
    row.b.exit_speed_mps = {29.0, std::nullopt, false};
    return row;
}

QString cell(const SegmentTable& table, int row, int column) {
    return table.data(table.index(row, column), Qt::DisplayRole).toString();
}

} // namespace

TEST(SegmentTable, SaysWhoWonHowMuchAndWhatIsNotThere) {
    SegmentTable table;
    QAbstractItemModelTester tester(&table, QAbstractItemModelTester::FailureReportingMode::Fatal);
    table.set_segments({corner("Gate", 0.18, 0.03), corner("Hook", -0.36, std::nullopt)});
    EXPECT_EQ(cell(table, 0, SegmentTable::gain_column), QStringLiteral("A\u00a00.18"));
    EXPECT_EQ(table.data(table.index(0, SegmentTable::gain_column), SegmentTable::MarginRole).toString(),
              QStringLiteral("±0.06"));
    EXPECT_EQ(cell(table, 1, SegmentTable::gain_column), QStringLiteral("B\u00a00.36"));
    EXPECT_TRUE(table.data(table.index(0, 0), SegmentTable::StandsOutRole).toBool());
    EXPECT_DOUBLE_EQ(table.data(table.index(0, 0), SegmentTable::BarRole).toDouble(), 0.5);
    EXPECT_DOUBLE_EQ(table.data(table.index(1, 0), SegmentTable::BarRole).toDouble(), -1.0);
    EXPECT_EQ(cell(table, 0, SegmentTable::slow_a_column), QStringLiteral("72.0"));
    EXPECT_EQ(cell(table, 0, SegmentTable::slow_b_column), QStringLiteral("—")) << "absent, never 0";
}

TEST(SegmentTable, FollowsUnitsAndCursor) {
    SegmentTable table;
    table.set_segments({corner("Gate", 0.18, 0.03), corner("Hook", -0.36, std::nullopt)});
    QSignalSpy changed(&table, &SegmentTable::dataChanged);
    table.set_units(base::UnitSystem::imperial);
    EXPECT_EQ(cell(table, 0, SegmentTable::slow_a_column), QStringLiteral("44.7"));
    EXPECT_EQ(changed.size(), 1);
    table.set_cursor_row(1);
    EXPECT_EQ(changed.size(), 2);
    table.set_cursor_row(1);
    EXPECT_EQ(changed.size(), 2) << "a cursor that stays in its row paints nothing";
    EXPECT_TRUE(table.data(table.index(1, 0), SegmentTable::CursorRole).toBool());
}

TEST(Channels, TheSameMeaningIsOneChannelAndAnUnknownOneGoesByItsName) {
    const auto pairing = fixture::pairing();
    const auto choices = models::channels_of(*pairing);
    const auto find = [&](const char* id) {
        const auto place = std::ranges::find(choices, QLatin1String(id), &models::ChannelChoice::id);
        return place == choices.end() ? nullptr : &*place;
    };
    const auto* throttle = find("meaning:throttle");
    ASSERT_NE(throttle, nullptr);
    EXPECT_NE(throttle->a, nullptr);
    EXPECT_NE(throttle->b, nullptr);
    const auto* boost = find("name:Boost <b>&amp;");
    ASSERT_NE(boost, nullptr);
    EXPECT_NE(boost->a, nullptr);
    EXPECT_EQ(boost->b, nullptr);
    EXPECT_EQ(models::unit_of(*boost, base::UnitSystem::us), base::Unit::pound_per_square_inch);
    EXPECT_NE(find("motion:lateral"), nullptr);
}

TEST(Compared, SummedSegmentsWinTheSameTimeAndTheMapFollowsTheGap) {
    const auto pairing = fixture::pairing();
    const auto compared = workspace::compared(pairing);
    double all = 0.0;
    for (const auto& row : compared->summed)
        all += row.gain_s.value;
    EXPECT_NEAR(all, pairing->comparison.gap_at_end_s.value, 1e-9);
    EXPECT_LT(compared->summed.size(), pairing->comparison.segments.size());
    // A straight, then the corner "Gate" with the straight behind it.
    const auto& own = pairing->comparison.segments;
    EXPECT_EQ(compared->summed[1].a.min_speed_mps->value, own[1].a.min_speed_mps->value);
    EXPECT_EQ(compared->summed[1].a.top_speed_mps->value, own[2].a.top_speed_mps->value);
    EXPECT_EQ(compared->summed[1].a.exit_speed_mps.value, own[2].a.exit_speed_mps.value);
    EXPECT_NEAR(compared->summed[1].gain_s.value, own[1].gain_s.value + own[2].gain_s.value, 1e-12);
    ASSERT_EQ(compared->favour.size(), pairing->track.line.position_m.size());
    for (const double favour : compared->favour) {
        EXPECT_GE(favour, -1.0);
        EXPECT_LE(favour, 1.0);
    }
}

// Whichever segment it is whose gain cannot be told.
TEST(Compared, TheMapHasNoColourWhereNobodyIsToldToHaveWon) {
    const auto pairing = fixture::pairing();
    for (std::size_t untold = 0; untold < pairing->comparison.segments.size(); ++untold) {
        auto unsure = std::make_shared<analysis::Pairing>(*pairing);
        comparison::SegmentComparison& segment = unsure->comparison.segments[untold];
        segment.gain_s.sd = 10.0;
        const auto compared = workspace::compared(unsure);
        for (std::size_t node = 0; node < compared->favour.size(); ++node) {
            const double station_m = static_cast<double>(node) * pairing->track.line.step_m;
            if (station_m >= segment.segment.start_m && station_m < segment.segment.end_m) {
                EXPECT_EQ(compared->favour[node], 0.0) << station_m;
            }
        }
    }
}
