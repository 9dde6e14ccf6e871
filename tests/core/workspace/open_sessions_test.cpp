// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/open_sessions.h"

#include "core/workspace/invented.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <vector>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

const Origin one = "/data/one.csv";
const Origin two = "/data/two.csv";
const SessionKey first = key_of_bytes("first");
const SessionKey second = key_of_bytes("second");

OpenSessions both_open() {
    OpenSessions open;
    open.add(one, invented("one.csv", "first"));
    open.add(two, invented("two.csv", "second"));
    return open;
}

} // namespace

TEST(OpenSessions, StandAsTheyWereAskedForWhicheverIsReadyFirst) {
    OpenSessions open;
    open.expect({one, two});
    open.add(two, invented("two.csv", "second"));
    open.add(one, invented("one.csv", "first"));
    ASSERT_EQ(open.entries().size(), 2U);
    EXPECT_EQ(open.entries()[0].key, first);
}

TEST(OpenSessions, ByDefaultEachSessionsFastestCleanLap) {
    OpenSessions open = both_open();
    open.pick_defaults();
    EXPECT_EQ(open.picks(), (Picks{LapPick{first, fastest_lap}, LapPick{second, fastest_lap}}));
    EXPECT_TRUE(open.picks().a->fastest);
    open.take_fastest(1, 2); // the comparison found another one the fastest
    EXPECT_EQ(open.picks(), (Picks{LapPick{first, 1}, LapPick{second, 2}}));
    open.pick(Side::a, {first, 5});
    open.take_fastest(1, 1);
    EXPECT_EQ(open.picks().a, (LapPick{first, 5})) << "a lap that was chosen stays";
}

TEST(OpenSessions, ALapThatTheOtherSideHoldsChangesSides) {
    OpenSessions open = both_open();
    open.pick(Side::a, {first, 1});
    open.pick(Side::b, {first, 2});
    open.pick(Side::b, {first, 1});
    EXPECT_EQ(open.picks(), (Picks{LapPick{first, 2}, LapPick{first, 1}}));
}

TEST(OpenSessions, SwapAndUnknownLaps) {
    OpenSessions open;
    open.add(one, invented("one.csv", "first"));
    open.pick(Side::a, {first, 1});
    open.pick(Side::a, {first, 99});
    open.pick(Side::b, {second, 1});
    EXPECT_EQ(open.picks(), (Picks{LapPick{first, 1}, std::nullopt}));
    open.swap();
    EXPECT_EQ(open.picks(), (Picks{std::nullopt, LapPick{first, 1}}));
}

TEST(OpenSessions, ClosingASessionFreesItsSide) {
    OpenSessions open = both_open();
    open.pick_defaults();
    open.remove(first);
    EXPECT_FALSE(open.picks().a);
    EXPECT_TRUE(open.picks().b);
    EXPECT_EQ(open.session(first), nullptr);
}

// From its file, under another name of it, and out of the book, in whichever order.
TEST(OpenSessions, OneThatComesFromSeveralPlacesIsOneInItsOldPlaceWithItsPicks) {
    const Origin again = "/data/one again.csv";
    const Origin in_book = book::SessionId{7};
    std::vector<Origin> origins{one, again, in_book};
    std::ranges::sort(origins);
    do {
        OpenSessions open;
        open.add(origins[0], invented("one.csv", "first"));
        open.add(two, invented("two.csv", "second"));
        open.pick_defaults();
        const Picks before = open.picks();
        open.add(origins[1], invented("one.csv", "first"));
        open.add(origins[2], invented("one.csv", "first"));
        ASSERT_EQ(open.entries().size(), 2U);
        EXPECT_EQ(open.entries()[0].key, first);
        EXPECT_EQ(open.picks(), before);
        // Its columns can be read anew from the file that came last.
        const Origin last_file = origins[2] == in_book ? origins[1] : origins[2];
        EXPECT_EQ(open.entries()[0].origin(), last_file);
        for (const Origin& origin : origins)
            EXPECT_EQ(open.find(origin), &open.entries()[0]);
    } while (std::ranges::next_permutation(origins).found);
}

TEST(OpenSessions, AFileWithOtherBytesThanBeforeTakesItsOldPlace) {
    OpenSessions open = both_open();
    open.pick_defaults();
    open.add(one, invented("one.csv", "exported again"));
    ASSERT_EQ(open.entries().size(), 2U);
    EXPECT_EQ(open.entries()[0].key, key_of_bytes("exported again"));
    EXPECT_EQ(open.picks().a, (LapPick{key_of_bytes("exported again"), fastest_lap}));
    open.add(one, invented("one.csv", "second")); // and now it is the other one
    ASSERT_EQ(open.entries().size(), 1U);
    EXPECT_EQ(open.entries()[0].key, second);
}
