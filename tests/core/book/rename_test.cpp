// SPDX-License-Identifier: GPL-3.0-or-later
// Other names: for all sessions at once, two made one and two again.
#include "core/book/book_fixture.h"
#include "core/book/rename.h"
#include "core/book/search.h"
#include "core/book/tracks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lapwright::book {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class Renames : public testing::Test {
  protected:
    Renames() {
        first = add_named(book, "first", {"Wren Alder", "Plover", "Ternbank", 1.77e9, "dry", {}});
        second = add_named(book, "second", {"W. Alder", "Plover", "Tern Bank", 1.78e9, "dry", {}});
        gone = add_named(book, "gone", {"W. Alder", "Dunlin", "Tern Bank", 1.79e9, "dry", {}});
        EXPECT_TRUE(remove_session(book, gone));
    }

    std::size_t count(const Filter& filter) { return search(book, filter)->size(); }
    std::string driver(SessionId id) { return read_summary(book, id)->driver; }

    Folder folder;
    Book book = open_book(folder.file("book"));
    SessionId first{};
    SessionId second{};
    SessionId gone{};
};

track::TrackRecord record(const std::string& name, double heading_rad) {
    track::TrackRecord one;
    one.name = name;
    one.gate = {{0.95, 0.04, 12.0}, heading_rad, 18.0};
    return one;
}

TEST_F(Renames, ANameIsAnotherInEverySessionAndInTheSearch) {
    const auto renamed = rename(book, NameTable::car, " plover ", " Plover II ", Unite::no);
    ASSERT_TRUE(renamed.ok()) << base::one_line(renamed.error());
    EXPECT_EQ(renamed->what.from, "Plover");
    EXPECT_EQ(renamed->what.to, "Plover II");
    EXPECT_EQ(renamed->what.sessions, 2);
    EXPECT_FALSE(renamed->what.with);
    EXPECT_EQ(count({.car = "Plover"}), 0U);
    EXPECT_EQ(count({.car = "plover ii"}), 2U);
    EXPECT_EQ(count({.words = "II"}), 2U);
    ASSERT_TRUE(undo_rename(book, *renamed));
    EXPECT_EQ(count({.car = "Plover"}), 2U);
    EXPECT_EQ(count({.words = "II"}), 0U);
    EXPECT_TRUE(book.check()->whole());
}

TEST_F(Renames, TheSameNameWrittenOtherwiseUnitesNothing) {
    const auto renamed = rename(book, NameTable::driver, "wren alder", "WREN ALDER", Unite::no);
    ASSERT_TRUE(renamed.ok());
    EXPECT_EQ(driver(first), "WREN ALDER");
    EXPECT_FALSE(renamed->what.with);
}

TEST_F(Renames, TwoAreOneOnlyWhenThatIsSaidAndCanBeTwoAgain) {
    const auto refused = rename(book, NameTable::driver, "W. Alder", "wren alder", Unite::no);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(base::one_line(refused.error()), HasSubstr("there is a driver \"Wren Alder\" already, with 1 session"));
    EXPECT_EQ(driver(second), "W. Alder");

    const auto renamed = rename(book, NameTable::driver, "W. Alder", "wren alder", Unite::yes);
    ASSERT_TRUE(renamed.ok());
    EXPECT_EQ(renamed->what.with, "Wren Alder");
    EXPECT_EQ(renamed->what.sessions, 1); // the removed one is not counted
    EXPECT_EQ(renamed->what.sessions_with, 1);
    EXPECT_THAT(renamed->sessions, ElementsAre(second, gone));
    EXPECT_EQ(driver(second), "Wren Alder");
    EXPECT_THAT(names(book)->drivers, ElementsAre("Wren Alder"));
    ASSERT_TRUE(restore_session(book, gone));
    EXPECT_EQ(driver(gone), "Wren Alder");
    ASSERT_TRUE(undo_rename(book, *renamed));
    EXPECT_EQ(driver(first), "Wren Alder");
    EXPECT_EQ(driver(second), "W. Alder");
    EXPECT_EQ(driver(gone), "W. Alder");
    EXPECT_EQ(count({.words = "wren"}), 1U);
    EXPECT_TRUE(book.check()->whole());
}

TEST_F(Renames, ATrackKeepsItsGateUnderItsNewName) {
    ASSERT_TRUE(put_track(book, record("Tern Bank", 1.0)));
    ASSERT_TRUE(rename(book, NameTable::track, "Tern Bank", "Tern Hill", Unite::no).ok());
    EXPECT_EQ((*read_track(book, "tern hill"))->name, "Tern Hill");
    EXPECT_EQ(tracks(book)->at(0).name, "Tern Hill");
}

TEST_F(Renames, AnEditedTrackKeepsItsLineWhileItsGateStaysAndComesBackAsItWas) {
    track::ReferenceLine line;
    line.length_m = 2.0;
    line.position_m = {{0.0, 0.0}, {1.0, 0.0}};
    line.tangent = {{1.0, 0.0}, {1.0, 0.0}};
    line.curvature_per_m = {0.0, 0.0};
    track::TrackRecord before = record("Tern Bank", 1.0);
    ASSERT_TRUE(put_track(book, before, KeptLine{{{0.95, 0.04, 0.0}, true}, line}));
    track::TrackRecord named = before;
    named.segments = {{"Sweep", track::SegmentKind::corner, 0.0, 400.0, 0.0, {}}};
    const auto first_parts = change_track(book, named);
    ASSERT_TRUE(first_parts.ok());
    EXPECT_EQ((*read_track(book, "Tern Bank"))->segments.size(), 1U);
    EXPECT_TRUE(*read_line(book, "Tern Bank"));
    const auto moved_parts = change_track(book, record("Tern Bank", 1.2));
    ASSERT_TRUE(moved_parts.ok());
    EXPECT_FALSE(*read_line(book, "Tern Bank")) << "it begins at another gate";
    ASSERT_TRUE(bring_back_track(book, "Tern Bank", *moved_parts));
    EXPECT_TRUE(*read_line(book, "Tern Bank"));
    ASSERT_TRUE(bring_back_track(book, "Tern Bank", *first_parts));
    EXPECT_TRUE((*read_track(book, "Tern Bank"))->segments.empty());
    EXPECT_FALSE(change_track(book, record("", 1.0)).ok());
}

TEST_F(Renames, OfTwoTracksTheGateOfTheOtherStaysAndAMissingOneIsTaken) {
    ASSERT_TRUE(put_track(book, record("Tern Bank", 1.0)));
    const auto taken = rename(book, NameTable::track, "Tern Bank", "Ternbank", Unite::yes);
    EXPECT_NEAR((*read_track(book, "Ternbank"))->gate.heading_rad, 1.0, 1e-9);
    ASSERT_TRUE(undo_rename(book, *taken));
    EXPECT_FALSE(*read_track(book, "Ternbank"));
    EXPECT_TRUE(*read_track(book, "Tern Bank"));

    ASSERT_TRUE(put_track(book, record("Ternbank", 0.5)));
    const auto kept = rename(book, NameTable::track, "Tern Bank", "Ternbank", Unite::yes);
    EXPECT_NEAR((*read_track(book, "Ternbank"))->gate.heading_rad, 0.5, 1e-9);
    ASSERT_TRUE(undo_rename(book, *kept));
    EXPECT_NEAR((*read_track(book, "Tern Bank"))->gate.heading_rad, 1.0, 1e-9);
    EXPECT_NEAR((*read_track(book, "Ternbank"))->gate.heading_rad, 0.5, 1e-9);
}

TEST_F(Renames, ANameIsOneLineOfNoMoreThanAHundredAndTwentyCharacters) {
    const auto renamed = rename(book, NameTable::driver, "Wren Alder", "\tWren\nAlder\x1b[1m", Unite::no);
    ASSERT_TRUE(renamed.ok()) << base::one_line(renamed.error());
    EXPECT_EQ(renamed->what.to, "Wren Alder [1m");
    EXPECT_EQ(driver(first), "Wren Alder [1m");
    EXPECT_EQ(driver(add_named(book, "third", {"Mara\nQuill", "", "", {}, "", {}})), "Mara Quill");
    std::string umlauts; // of two bytes each
    for (int i = 0; i < 120; ++i)
        umlauts += "ü";
    EXPECT_TRUE(rename(book, NameTable::car, "Plover", umlauts, Unite::no).ok());
    EXPECT_THAT(base::one_line(rename(book, NameTable::car, umlauts, umlauts + "x", Unite::no).error()),
                HasSubstr("longer than 120 characters"));
}

TEST_F(Renames, WhatCannotBeRenamedIsSaid) {
    EXPECT_THAT(base::one_line(rename(book, NameTable::car, "Gannet", "Plover", Unite::yes).error()),
                HasSubstr("the book has no car \"Gannet\""));
    EXPECT_THAT(base::one_line(rename(book, NameTable::car, "Plover", "  ", Unite::yes).error()),
                HasSubstr("the new name is empty"));
    EXPECT_EQ(count({.car = "Plover"}), 2U);
}

} // namespace
} // namespace lapwright::book
