// SPDX-License-Identifier: GPL-3.0-or-later
// A person's word on a lap stands above the program's, whatever line cuts the drive into laps.
#include "core/lap/judged_by_hand.h"

#include <gtest/gtest.h>

using namespace lapwright::lap;

namespace {

std::vector<Lap> laps_from(double first_s) {
    std::vector<Lap> laps;
    for (int i = 0; i < 5; ++i) {
        const double start_s = first_s + 90.0 * i;
        const bool flies = i > 0;
        laps.push_back({i,
                        flies ? LapKind::flying : LapKind::out,
                        start_s,
                        start_s + 90.0,
                        {},
                        flies && i != 3,
                        i == 3 ? "3.1 s lost near 420 m" : ""});
    }
    return laps;
}

} // namespace

TEST(JudgedByHand, IsTheWordThatCountsAndSaysWhy) {
    const auto laps = laps_from(0.0);
    auto words = with_word({}, laps[2], JudgedByHand{0.0, false, "behind a slower car"});
    words = with_word(words, laps[3], JudgedByHand{0.0, true, "slow on purpose"});
    const auto judged = judged_by_hand(laps, words);
    EXPECT_FALSE(judged[2].clean);
    EXPECT_EQ(judged[2].why_not_clean, "set aside by hand: behind a slower car");
    EXPECT_TRUE(judged[3].clean);
    EXPECT_EQ(judged[3].why_not_clean, "");
    EXPECT_EQ(word_on(judged[3], words)->reason, "slow on purpose");
    EXPECT_EQ(judged[1].clean, laps[1].clean);
    words = with_word(words, laps[2], std::nullopt);
    EXPECT_TRUE(judged_by_hand(laps, words)[2].clean) << "taken back";
    EXPECT_EQ(words.size(), 1U);
}

TEST(JudgedByHand, TheLastWordOnALapIsTheOnlyOne) {
    const auto laps = laps_from(0.0);
    auto words = with_word({}, laps[1], JudgedByHand{0.0, false, "traffic"});
    words = with_word(words, laps[1], JudgedByHand{0.0, false, "a spin"});
    ASSERT_EQ(words.size(), 1U);
    EXPECT_EQ(judged_by_hand(laps, words)[1].why_not_clean, "set aside by hand: a spin");
}

// For lines up to half a lap away the same tarmac lies in the middle of the lap, whatever its number.
TEST(JudgedByHand, FollowsTheDriveToLapsOfAnotherLine) {
    const auto words = with_word({}, laps_from(0.0)[2], JudgedByHand{0.0, false, ""});
    for (const double moved_s : {-44.0, -20.0, 0.0, 20.0, 44.0}) {
        auto laps = laps_from(moved_s);
        for (Lap& lap : laps)
            lap.number += 7;
        const auto judged = judged_by_hand(laps, words);
        for (std::size_t i = 0; i < judged.size(); ++i)
            EXPECT_EQ(judged[i].clean, laps[i].clean && i != 2) << moved_s;
    }
}

TEST(JudgedByHand, ALapThatDoesNotFlyIsNotJudged) {
    const auto laps = laps_from(0.0);
    const auto judged = judged_by_hand(laps, with_word({}, laps[0], JudgedByHand{0.0, true, ""}));
    EXPECT_FALSE(judged[0].clean);
}
