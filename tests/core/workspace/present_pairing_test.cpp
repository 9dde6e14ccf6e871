// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/present_pairing.h"

#include "core/workspace/invented.h"

#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::workspace;
using State = PresentPairing::State;

namespace {

const Origin one = "/data/one.csv";
const Origin two = "/data/two.csv";
const SessionKey first = key_of_bytes("first");
const SessionKey second = key_of_bytes("second");
class Present : public testing::Test {
  protected:
    void open_both() {
        open.add(one, invented("one.csv", "first"));
        open.add(two, invented("two.csv", "second"));
    }
    void compare_both() {
        open_both();
        open.pick_defaults();
        pairing.compare(open.picks());
        pairing.take(invented_comparison(fastest_lap, fastest_lap), open);
    }
    static ExplanationPointer explanation() { return std::make_shared<const causes::Explanation>(); }

    OpenSessions open;
    PresentPairing pairing;
};

} // namespace

TEST_F(Present, GoesFromFilesToTheirExplanation) {
    EXPECT_EQ(pairing.state(), State::nothing_chosen);
    pairing.read({one, two}, {{PresentPairing::WantedLap{one}, PresentPairing::WantedLap{two, 2}}, true});
    EXPECT_EQ(pairing.state(), State::reading);
    open_both();
    pairing.came(two);
    EXPECT_TRUE(pairing.reading());
    pairing.came(one);
    EXPECT_FALSE(pairing.reading());
    ASSERT_TRUE(pairing.fulfil(open));
    EXPECT_EQ(open.picks(), (Picks{LapPick{first, fastest_lap}, LapPick{second, 2}}));
    pairing.compare(open.picks());
    EXPECT_EQ(pairing.state(), State::comparing);
    EXPECT_FALSE(pairing.want_explanation()) << "there is nothing to explain yet";
    pairing.take(invented_comparison(1, 2), open);
    EXPECT_EQ(pairing.state(), State::compared);
    EXPECT_EQ(open.picks().a, (LapPick{first, 1})) << "nobody chose A's lap: the one that the comparison took";
    EXPECT_TRUE(pairing.shows(open.picks()));
    EXPECT_EQ(pairing.laps(), (TwoLaps{first, 1, second, 2}));
    EXPECT_TRUE(pairing.want_explanation());
    EXPECT_EQ(pairing.state(), State::explaining);
    EXPECT_FALSE(pairing.want_explanation()) << "it is on its way";
    EXPECT_TRUE(pairing.take(explanation()));
    EXPECT_EQ(pairing.state(), State::explained);
    EXPECT_FALSE(pairing.want_explanation()) << "it is there";
}

TEST_F(Present, WithoutAPlanFilesAreOnlyOpened) {
    pairing.read({one, two}, {});
    EXPECT_EQ(pairing.state(), State::nothing_chosen);
    open_both();
    pairing.came(one);
    pairing.came(two);
    EXPECT_FALSE(pairing.fulfil(open));
    EXPECT_TRUE(open.picks().complete()) << "but their fastest laps are picked";
}

TEST_F(Present, FilesOfAnEarlierCallAreAwaitedForTheNewerPlan) {
    pairing.read({one}, {});
    pairing.read({two}, {{PresentPairing::WantedLap{two}, PresentPairing::WantedLap{one}}, true});
    open_both();
    pairing.came(two);
    EXPECT_TRUE(pairing.reading());
    pairing.came(one);
    ASSERT_TRUE(pairing.fulfil(open));
    EXPECT_EQ(open.picks().a->session, second);
}

TEST_F(Present, ARefusedFileLeavesNothingToCompare) {
    pairing.read({one, two}, {{PresentPairing::WantedLap{one}, PresentPairing::WantedLap{two}}, true});
    open.add(one, invented("one.csv", "first"));
    pairing.came(one);
    pairing.came(two); // which could not be read
    EXPECT_FALSE(pairing.fulfil(open));
}

TEST_F(Present, WhatCannotBeComparedFailsAndWhatWasShownStays) {
    compare_both();
    const ComparedPointer before = pairing.compared();
    open.pick(Side::a, {first, 5});
    EXPECT_FALSE(pairing.shows(open.picks()));
    pairing.compare(open.picks());
    EXPECT_TRUE(pairing.comes_with(first));
    pairing.refuse();
    EXPECT_EQ(pairing.state(), State::failed);
    EXPECT_EQ(pairing.compared(), before);
    EXPECT_FALSE(pairing.comes_with(first));
    pairing.compare(open.picks());
    EXPECT_EQ(pairing.state(), State::comparing) << "and may be tried again";
}

TEST_F(Present, OneThatHasChangedIsToBeComparedAgain) {
    compare_both();
    EXPECT_TRUE(pairing.shows(open.picks()));
    pairing.outdate(key_of_bytes("another"));
    EXPECT_TRUE(pairing.shows(open.picks()));
    pairing.outdate(second);
    EXPECT_FALSE(pairing.shows(open.picks()));
    EXPECT_TRUE(pairing.compared()) << "until then it is shown";
}

TEST_F(Present, AnExplanationThatComesTooLateIsPassedOver) {
    compare_both();
    ASSERT_TRUE(pairing.want_explanation());
    pairing.forget_explanation(); // a setup has changed
    EXPECT_FALSE(pairing.take(explanation()));
    EXPECT_FALSE(pairing.refuse_explanation());
    EXPECT_EQ(pairing.state(), State::compared);
    ASSERT_TRUE(pairing.want_explanation());
    pairing.take(invented_comparison(1, 1), open); // other laps meanwhile
    EXPECT_FALSE(pairing.take(explanation()));
    ASSERT_TRUE(pairing.want_explanation());
    EXPECT_TRUE(pairing.refuse_explanation());
    EXPECT_EQ(pairing.state(), State::failed);
    EXPECT_TRUE(pairing.want_explanation());
}

TEST_F(Present, WhatIsCalledOffIsNotAwaitedAnyMore) {
    pairing.read({one, two}, {{PresentPairing::WantedLap{one}, PresentPairing::WantedLap{two}}, true});
    EXPECT_FALSE(pairing.call_off());
    EXPECT_FALSE(pairing.reading());
    EXPECT_EQ(pairing.state(), State::nothing_chosen);
    compare_both();
    ASSERT_TRUE(pairing.want_explanation());
    EXPECT_TRUE(pairing.call_off());
    EXPECT_EQ(pairing.state(), State::compared);
    EXPECT_FALSE(pairing.take(explanation()));
}
