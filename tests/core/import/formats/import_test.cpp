// SPDX-License-Identifier: GPL-3.0-or-later
// From bytes to a Recording: the plain case, with what must come out written by hand.
#include "core/import/formats/import.h"

#include "core/base/constants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using recording::Meaning;
using recording::Recording;

Recording read(std::string_view text) {
    auto result = import_bytes(text, "session.csv");
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : base::one_line(result.error()));
    return result.ok() ? std::move(result).value() : Recording{};
}

std::vector<std::string> codes(const Recording& recording) {
    std::vector<std::string> found;
    for (const auto& warning : recording.warnings)
        found.emplace_back(recording::name(warning.kind));
    return found;
}

TEST(Import, ReadsCommasUnitsInBracketsAndThePreamble) {
    const Recording recording =
        read("Driver,Mara Quill\n"
             "Car: Hatch 16V\n"
             "Track,Ternbank\n"
             "Start,2026-05-16T10:20:03.4Z\n"
             "\n"
             "Time (s),Lap,Latitude (deg),Longitude (deg),GPS Speed (km/h),Lateral Acc (g),Throttle (%)\n"
             "0.00,1,52.0,-1.0,36.0,0.5,100\n"
             "0.04,1,52.00001,-1.0,72.0,-0.5,50\n"
             "0.08,2,52.00002,-1.0,108.0,1,0\n");
    EXPECT_EQ(recording.driver, "Mara Quill");
    EXPECT_EQ(recording.car, "Hatch 16V");
    EXPECT_EQ(recording.track, "Ternbank");
    ASSERT_TRUE(recording.start_unix_s);
    EXPECT_EQ(recording::utc_text(*recording.start_unix_s), "2026-05-16T10:20:03.400Z");
    EXPECT_DOUBLE_EQ(recording.duration_s, 0.08);
    const auto* speed = recording.find(Meaning::speed);
    ASSERT_NE(speed, nullptr);
    EXPECT_THAT(speed->values, testing::Pointwise(testing::DoubleEq(), {10.0, 20.0, 30.0}));
    EXPECT_THAT(*speed->time_s, testing::Pointwise(testing::DoubleEq(), {0.0, 0.04, 0.08}));
    EXPECT_THAT(*speed->source_lines, testing::ElementsAre(7U, 8U, 9U));
    EXPECT_EQ(speed->source_unit, base::Unit::kilometre_per_hour);
    EXPECT_DOUBLE_EQ(recording.find(Meaning::latitude)->values[0], 52.0 * base::pi / 180.0);
    EXPECT_DOUBLE_EQ(recording.find(Meaning::lateral_acceleration)->values[1], -0.5 * 9.80665);
    EXPECT_DOUBLE_EQ(recording.find(Meaning::throttle)->values[1], 0.5);
    EXPECT_THAT(recording.find(Meaning::lap_number)->values, testing::ElementsAre(1.0, 1.0, 2.0));
    EXPECT_THAT(codes(recording), testing::IsEmpty());
}

TEST(Import, ReadsSemicolonsDecimalCommasAndMilliseconds) {
    const Recording recording =
        read("Fahrer;Jonas Wiek\r\n"
             "Zeit [ms];Runde;Geschwindigkeit [km/h];Querbeschleunigung [m/s²];Drehzahl [1/min]\r\n"
             "0;1;36,0;1,5;6000\r\n"
             "20;1;54,0;-2,5;6600\r\n"
             "40;1;72,0;0;7200\r\n");
    EXPECT_EQ(recording.driver, "Jonas Wiek");
    EXPECT_THAT(*recording.find(Meaning::speed)->time_s, testing::Pointwise(testing::DoubleEq(), {0.0, 0.02, 0.04}));
    EXPECT_THAT(recording.find(Meaning::speed)->values, testing::Pointwise(testing::DoubleEq(), {10.0, 15.0, 20.0}));
    EXPECT_THAT(recording.find(Meaning::lateral_acceleration)->values, testing::ElementsAre(1.5, -2.5, 0.0));
    EXPECT_THAT(recording.find(Meaning::engine_speed)->values,
                testing::Pointwise(testing::DoubleEq(), {100.0, 110.0, 120.0}));
}

TEST(Import, ReadsTabsAndAUnitRow) {
    const Recording recording = read("time\tlap\tspeed\tlong acc\n"
                                     "s\t\tmph\tg\n"
                                     "0.0\t1\t100\t0.1\n"
                                     "0.1\t1\t101\t0.2\n");
    EXPECT_DOUBLE_EQ(recording.find(Meaning::speed)->values[0], 44.704);
    EXPECT_DOUBLE_EQ(recording.find(Meaning::longitudinal_acceleration)->values[1], 0.2 * 9.80665);
}

TEST(Import, KeepsTheStampsOfEachRate) {
    const Recording recording = read("time (s),speed (m/s),lateral acc (g)\n"
                                     "0.00,10,0.1\n0.01,,0.2\n0.02,12,0.3\n0.03,,0.4\n0.04,14,0.5\n");
    EXPECT_THAT(*recording.find(Meaning::speed)->time_s, testing::Pointwise(testing::DoubleEq(), {0.0, 0.02, 0.04}));
    EXPECT_EQ(recording.find(Meaning::lateral_acceleration)->size(), 5U);
}

TEST(Import, LeavesOutADamagedRowAndSaysWhere) {
    const Recording recording = read("time (s),speed (m/s)\n0.0,10\n0.1,11,99\n0.2,12\n0.3,oops\n0.4,14\n");
    EXPECT_THAT(recording.find(Meaning::speed)->values, testing::ElementsAre(10.0, 12.0, 14.0));
    ASSERT_THAT(codes(recording), testing::ElementsAre("rows_wrong_width", "cells_not_readable"));
    EXPECT_EQ(recording.warnings[0].line(), 3U);
    EXPECT_EQ(recording.warnings[1].line(), 5U);
}

TEST(Import, RefusesInOneSentence) {
    const auto nothing = import_bytes("This is a letter.\nIt has no numbers.\n", "letter.txt");
    ASSERT_FALSE(nothing.ok());
    EXPECT_EQ(nothing.error().code, base::ErrorCode::not_a_table);
    const auto no_time = import_bytes("speed (m/s),lap\n1,1\n2,1\n", "x.csv");
    ASSERT_FALSE(no_time.ok());
    EXPECT_EQ(no_time.error().code, base::ErrorCode::time_not_usable);
    const auto missing = import_file("/nowhere/at/all.csv");
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.error().code, base::ErrorCode::file_not_readable);
}

} // namespace
} // namespace lapwright::import
