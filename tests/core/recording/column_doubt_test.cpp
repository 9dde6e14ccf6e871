// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/column_doubt.h"

#include <gtest/gtest.h>

#include <set>

namespace lapwright::recording {
namespace {

TEST(ColumnDoubt, EveryKindHasWordsOfItsOwn) {
    std::set<std::string> told;
    for (int i = 1; i <= static_cast<int>(DoubtKind::written_unit_wrong); ++i) {
        const auto kind = static_cast<DoubtKind>(i);
        const std::string words_of_kind = words(ColumnDoubt{kind, {"speed", "km/h", "the positions"}, {1.5}});
        EXPECT_TRUE(told.insert(words_of_kind).second) << i << ": " << words_of_kind;
        EXPECT_NE(words(ColumnDoubt{kind}), "") << i;
        EXPECT_EQ(words_of_kind.find('?'), std::string::npos) << words_of_kind;
    }
    EXPECT_EQ(words(ColumnDoubt{}), "");
    EXPECT_TRUE(ColumnDoubt{}.empty());
}

TEST(ColumnDoubt, SaysWhatIsTakenAndWhatElseItCouldBe) {
    EXPECT_EQ(words({DoubtKind::unit_open, {"km/h", "mph", "m/s"}}),
              "no unit is written; km/h, mph and m/s are all plausible: taken as km/h");
    EXPECT_EQ(words({DoubtKind::form_open, {"ddmm.mmmm", "minutes of arc"}}),
              "ddmm.mmmm and minutes of arc are both plausible: taken as ddmm.mmmm");
    EXPECT_EQ(words({DoubtKind::taken_by_motion, {"speed", "km/h", "the positions"}}),
              "its name does not say what it is: taken as the speed in km/h, because it follows the positions");
    EXPECT_EQ(words({DoubtKind::laps_too_short, {}, {0.04}}),
              "it changes every 0.0 s, which no lap takes: not used as the number of the lap");
}

} // namespace
} // namespace lapwright::recording
