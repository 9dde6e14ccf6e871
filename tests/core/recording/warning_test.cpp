// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/warning_words.h"

#include <gmock/gmock.h>

#include <set>

namespace lapwright::recording {
namespace {

std::vector<WarningKind> all_kinds() {
    std::vector<WarningKind> kinds;
    for (int i = 1; i <= static_cast<int>(WarningKind::map_not_settled); ++i)
        kinds.push_back(static_cast<WarningKind>(i));
    return kinds;
}

TEST(Warning, EveryKindHasItsNameAndItsWords) {
    std::set<std::string_view> names;
    std::set<std::string> sentences;
    for (const WarningKind kind : all_kinds()) {
        EXPECT_TRUE(names.insert(name(kind)).second) << name(kind);
        EXPECT_EQ(parse_warning_kind(name(kind)), kind);
        const Warning warning{.kind = kind,
                              .of = "speed",
                              .seen = {2, {7, 9}},
                              .figures = {1.5, 2.5},
                              .texts = {std::string(name(kind)), "km/h"},
                              .doubt = {DoubtKind::unit_open, {std::string(name(kind)), "km/h"}}};
        EXPECT_TRUE(sentences.insert(words(warning)).second) << words(warning);
        EXPECT_NE(words(Warning{.kind = kind, .texts = {"why"}}), "") << name(kind);
        EXPECT_THAT(sentence(warning), testing::EndsWith(".")) << name(kind);
    }
    EXPECT_EQ(parse_warning_kind("of another time"), WarningKind::other);
}

TEST(Warning, CountsAndLinesAreTold) {
    Warning warning{.kind = WarningKind::rows_wrong_width};
    warning.seen.add(7);
    EXPECT_EQ(words(warning), "1 row has too few or too many cells and was left out (line 7)");
    for (const std::uint32_t line : {8U, 12U, 40U, 41U, 50U, 60U})
        warning.seen.add(line);
    EXPECT_EQ(words(warning),
              "7 rows have too few or too many cells and were left out (lines 7, 8, 12, 40, 41 and 2 more)");
    EXPECT_EQ(warning.line(), 7U);
    EXPECT_EQ(sentence({.kind = WarningKind::midnight_passed, .seen = {1, {9}}}),
              "The clock passes midnight here: the time goes on (line 9).");
}

TEST(Warning, FiguresAreToldInTheirUnits) {
    EXPECT_EQ(words({.kind = WarningKind::gaps, .of = "speed", .seen = {1, {}}, .figures = {0.85, 9.95}}),
              "1 gap in \"speed\" and what was sampled with it, the longest of 0.85 s at 9.9 s");
    EXPECT_EQ(words({.kind = WarningKind::wheel_speed_scale, .figures = {0.982}}),
              "wheel speed reads 1.8 % low against the speed over the ground");
    EXPECT_EQ(
        words({.kind = WarningKind::speed_scale_off, .figures = {1.07}}),
        "the recorded speed reads 7 % too high against the positions, as a wheel's does: its scale was estimated");
    EXPECT_EQ(words({.kind = WarningKind::speed_contradicts, .of = "v", .texts = {"mph", "km/h"}}),
              "column \"v\": its unit is written as mph, but it fits the positions in km/h: taken as km/h");
    EXPECT_EQ(words({.kind = WarningKind::speed_contradicts, .of = "v", .figures = {3.0}}),
              "column \"v\": it reads 3.00 times the speed between the positions: not used as a speed");
}

TEST(Warning, WhatABookKeptIsToldAsItWasKept) {
    EXPECT_EQ(sentence({.kind = WarningKind::other, .seen = {1, {7}}, .told = "seen here"}), "Seen here (line 7).");
    EXPECT_EQ(sentence({.kind = WarningKind::other}), "");
}

TEST(Warning, StandsUnderItsHeading) {
    EXPECT_EQ(remark_of(WarningKind::column_unsure), Remark::guessed);
    EXPECT_EQ(remark_of(WarningKind::clock_jumped), Remark::mended);
    EXPECT_EQ(remark_of(WarningKind::gaps), Remark::seen);
    EXPECT_EQ(words(Remark::left_out), "Left out");
}

} // namespace
} // namespace lapwright::recording
