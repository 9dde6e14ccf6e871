// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/session_shelf.h"

#include "tests/ui/fixture/pairing_fixture.h"

#include <QSignalSpy>
#include <gtest/gtest.h>

using namespace lapwright;
using models::LapPick;
using models::SessionShelf;
using models::Side;

namespace {

const QString first = QStringLiteral("/data/one.csv");
const QString second = QStringLiteral("/data/two.csv");

void add(SessionShelf& shelf, const QString& path) {
    shelf.add(path, fixture::session(path.toStdString(), "Driver", "car", 90.0));
}

} // namespace

TEST(SessionShelf, SessionsStandAsTheyWereAskedForWhicheverIsReadyFirst) {
    SessionShelf shelf;
    shelf.expect({first, second});
    add(shelf, second);
    add(shelf, first);
    ASSERT_EQ(shelf.entries().size(), 2U);
    EXPECT_EQ(shelf.entries()[0].path, first);
}

TEST(SessionShelf, ByDefaultEachSessionsFastestCleanLap) {
    SessionShelf shelf;
    add(shelf, first);
    add(shelf, second);
    QSignalSpy picks(&shelf, &SessionShelf::picks_changed);
    shelf.pick_defaults();
    EXPECT_EQ(picks.size(), 1);
    const int fastest = shelf.entries()[0].session->fastest()->number;
    EXPECT_EQ(shelf.picked(Side::a), (LapPick{first, fastest}));
    EXPECT_EQ(shelf.picked(Side::b), (LapPick{second, fastest}));
    shelf.pick_defaults();
    EXPECT_EQ(picks.size(), 1) << "nothing changed, nothing is told";
}

TEST(SessionShelf, ALapThatTheOtherSideHoldsChangesSides) {
    SessionShelf shelf;
    add(shelf, first);
    shelf.pick(Side::a, {first, 1});
    shelf.pick(Side::b, {first, 2});
    shelf.pick(Side::b, {first, 1});
    EXPECT_EQ(shelf.picked(Side::a), (LapPick{first, 2}));
    EXPECT_EQ(shelf.picked(Side::b), (LapPick{first, 1}));
}

TEST(SessionShelf, SwapAndUnknownLaps) {
    SessionShelf shelf;
    add(shelf, first);
    shelf.pick(Side::a, {first, 1});
    shelf.pick(Side::a, {first, 99});
    shelf.pick(Side::b, {second, 1});
    EXPECT_EQ(shelf.picked(Side::a), (LapPick{first, 1}));
    EXPECT_FALSE(shelf.picked(Side::b));
    shelf.swap();
    EXPECT_FALSE(shelf.picked(Side::a));
    EXPECT_EQ(shelf.picked(Side::b), (LapPick{first, 1}));
}

TEST(SessionShelf, ClosingASessionFreesItsSide) {
    SessionShelf shelf;
    add(shelf, first);
    add(shelf, second);
    shelf.pick_defaults();
    ASSERT_TRUE(shelf.complete());
    shelf.remove(first);
    EXPECT_FALSE(shelf.picked(Side::a));
    EXPECT_TRUE(shelf.picked(Side::b));
    EXPECT_EQ(shelf.session(first), nullptr);
}

TEST(SessionShelf, TwoThatAreOneKeepTheFirstPlaceAndThePicks) {
    const QString again = QStringLiteral("book:1/one.csv");
    SessionShelf shelf;
    add(shelf, again);
    add(shelf, second);
    add(shelf, first);
    shelf.pick(Side::a, {again, 2});
    shelf.pick(Side::b, {second, 1});
    shelf.unite(first, again);
    ASSERT_EQ(shelf.entries().size(), 2U);
    EXPECT_EQ(shelf.entries()[0].path, first);
    EXPECT_EQ(shelf.picked(Side::a), (LapPick{first, 2}));
    EXPECT_EQ(shelf.picked(Side::b), (LapPick{second, 1}));
    shelf.unite(first, again); // it is gone already
    EXPECT_EQ(shelf.entries().size(), 2U);
}
