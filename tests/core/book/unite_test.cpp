// SPDX-License-Identifier: GPL-3.0-or-later
// What a person sees of two books that became one: conflicts, removals, notes.
#include "core/book/unite.h"

#include "core/book/book_content.h"
#include "core/book/conflicts.h"
#include "core/book/judged_by_hand.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/videos.h"

#include <gtest/gtest.h>

namespace lapwright::book {
namespace {

// Two books that have run one in common.
class TwoBooks : public testing::Test {
  protected:
    TwoBooks() {
        one = add_named(mine, "one", {"Wren Alder", "Plover", "Ternbank", 1.77e9, "", {}});
        merge_well(theirs, mine.path());
        same = search(theirs)->at(0).id;
    }

    void say(Book& book, SessionId id, const std::string& driver, int clicks) {
        SessionDetails details = *read_details(book, id);
        details.driver = driver;
        details.setup = wing(clicks);
        EXPECT_TRUE(change_details(book, id, details));
    }

    Folder folder;
    Book mine = open_book(folder.file("mine"));
    Book theirs = open_book(folder.file("theirs"));
    SessionId one{};
    SessionId same{};
};

TEST_F(TwoBooks, WhatEachSaidWithoutTheOtherIsAConflictUntilItIsSettledForBoth) {
    say(mine, one, "Wren A. Alder", 3);
    say(theirs, same, "W. Alder", 5);
    EXPECT_EQ(merge_from(mine, theirs.path())->conflicts, 2);
    const auto found = conflicts(mine);
    ASSERT_TRUE(found.ok());
    ASSERT_EQ(found->size(), 2U);
    EXPECT_EQ(found->at(0).about, "one.csv");
    EXPECT_EQ(found->at(0).field, "driver");
    ASSERT_EQ(found->at(0).values.size(), 2U);
    EXPECT_EQ(found->at(0).values[0].value, "W. Alder"); // the last word
    EXPECT_TRUE(found->at(0).values[0].in_use);
    EXPECT_EQ(found->at(0).values[1].value, "Wren A. Alder");
    EXPECT_EQ(found->at(1).field, "setup");
    EXPECT_EQ(read_details(mine, one)->driver, "W. Alder");
    EXPECT_EQ(read_details(mine, one)->setup.items.at(0).value, "5");

    ASSERT_TRUE(settle_conflict(mine, found->at(0).values[1].key));
    ASSERT_TRUE(settle_conflict(mine, found->at(1).values[1].key));
    EXPECT_FALSE(settle_conflict(mine, found->at(1).values[1].key));
    EXPECT_EQ(read_details(mine, one)->driver, "Wren A. Alder");
    EXPECT_EQ(read_details(mine, one)->setup.items.at(0).value, "3");
    EXPECT_EQ(search(mine, {.words = "hard"})->size(), 1U); // the tyre of that setup
    EXPECT_EQ(merge_from(theirs, mine.path())->conflicts, 0);
    EXPECT_EQ(read_details(theirs, same)->driver, "Wren A. Alder");
    expect_same_content(mine, theirs);
}

TEST_F(TwoBooks, WhatWasSaidAfterTheOtherWasKnownIsNone) {
    say(mine, one, "Wren A. Alder", 3);
    merge_well(theirs, mine.path());
    say(theirs, same, "W. Alder", 5);
    EXPECT_EQ(merge_from(mine, theirs.path())->conflicts, 0);
    EXPECT_EQ(read_details(mine, one)->driver, "W. Alder");
    // The same name in other letters is none either.
    say(mine, one, "w. alder", 5);
    say(theirs, same, "W. ALDER", 5);
    EXPECT_EQ(merge_from(mine, theirs.path())->conflicts, 0);
}

TEST_F(TwoBooks, ARemovalIsKnownInBothAndMayBeTakenBackInEither) {
    ASSERT_TRUE(remove_session(theirs, same));
    const auto merged = merge_from(mine, theirs.path());
    ASSERT_TRUE(merged.ok());
    ASSERT_EQ(merged->removed.size(), 1U); // so that a person is told
    EXPECT_TRUE(search(mine)->empty());
    ASSERT_TRUE(restore_session(mine, one));
    merge_well(theirs, mine.path());
    EXPECT_EQ(search(theirs)->size(), 1U);
    ASSERT_TRUE(remove_session(mine, one));
    ASSERT_EQ(*forget_removed(mine), 1);
    merge_well(mine, theirs.path()); // which still has its samples
    EXPECT_EQ(removed_sessions(mine)->size(), 1U);
    expect_same(*read_recording(theirs, same), small_recording(3, 40));
}

TEST_F(TwoBooks, ANoteThatNobodySawKeepsTheRemovedPairingItIsAbout) {
    const auto pairing = put_pairing(mine, {one, 1, one, 2, "", "A ahead", 0.0});
    const auto note = put_note(mine, {"", {.session = one}, "loose", 0.0});
    merge_well(theirs, mine.path());
    const auto in_theirs = pairings(theirs)->at(0).id;
    ASSERT_TRUE(remove_note(mine, *note));
    ASSERT_TRUE(remove_pairing(mine, *pairing));
    ASSERT_TRUE(put_note(theirs, {"", {.pairing = in_theirs}, "worth a look", 0.0}).ok());
    merge_well(mine, theirs.path());
    merge_well(theirs, mine.path());
    for (Book* book : {&mine, &theirs}) {
        ASSERT_EQ(pairings(*book)->size(), 1U);
        EXPECT_EQ(notes_of_pairing(*book, pairings(*book)->at(0).id)->at(0).text, "worth a look");
        EXPECT_TRUE(notes_of_session(*book, search(*book)->at(0).id)->empty());
    }
    expect_same_content(mine, theirs);
}

TEST_F(TwoBooks, AVideoTravelsWithItsSessionAndIsFoundWhereEachHasIt) {
    const auto write = [&](const std::string& name) {
        std::ofstream(folder.path() / name, std::ios::binary) << std::string(5000, 'v');
        return folder.file(name);
    };
    const Checksum session = source_named("one").checksum;
    const VideoFile here = video_file(write("here.mp4")).value();
    const VideoFile there = video_file(write("there.mp4")).value();
    ASSERT_TRUE(put_video(mine, session, KeptVideo{{here}, KeptStep{2.5, 2.4, 2.6, 0.0, 100.0, "clocks"}}));
    merge_well(theirs, mine.path());
    EXPECT_EQ(video_of(theirs, session).value(), video_of(mine, session).value());
    // The other has it elsewhere and says another offset; each finds it where it lies.
    ASSERT_TRUE(put_video(theirs, session, KeptVideo{{there}, KeptStep{2.6, 2.5, 2.7, 0.0, 100.0, "by_hand"}}));
    merge_well(mine, theirs.path());
    merge_well(theirs, mine.path());
    expect_same_content(mine, theirs);
    const auto kept = *video_of(mine, session);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->step->offset_s, 2.6);
    std::filesystem::remove(there.path);
    EXPECT_EQ(locate(*kept, {}).value(), std::vector{here.path});
    // Taken away later is taken away in both; a part for a friend has it too.
    ASSERT_TRUE(export_sessions(mine, std::vector{one}, folder.file("part")));
    Book part = open_book(folder.file("part"));
    EXPECT_EQ(video_of(part, session).value(), kept);
    ASSERT_TRUE(put_video(theirs, session, std::nullopt));
    merge_well(mine, theirs.path());
    EXPECT_EQ(video_of(mine, session).value(), std::nullopt);
}

TEST_F(TwoBooks, OneNoteWithTwoTextsIsAConflict) {
    const auto uid = put_note(mine, {"", {.session = one}, "loose", 0.0});
    merge_well(theirs, mine.path());
    ASSERT_TRUE(put_note(mine, {*uid, {.session = one}, "loose at the rear", 0.0}).ok());
    ASSERT_TRUE(put_note(theirs, {*uid, {.session = same}, "loose, cold tyres", 0.0}).ok());
    EXPECT_EQ(merge_from(mine, theirs.path())->conflicts, 1);
    const auto found = conflicts(mine);
    EXPECT_EQ(found->at(0).values[1].value, "loose at the rear");
    ASSERT_TRUE(settle_conflict(mine, found->at(0).values[1].key));
    merge_well(theirs, mine.path());
    EXPECT_EQ(notes_of_session(theirs, same)->at(0).text, "loose at the rear");
    expect_same_content(mine, theirs);
}

TEST_F(TwoBooks, WordsOnLapsOfBothCount) {
    const auto judge = [](Book& book, SessionId id, std::size_t lap) {
        auto words = *judged_by_hand(book, id);
        auto laps = *read_laps(book, id);
        words = lap::with_word(words, laps[lap], lap::JudgedByHand{0.0, false, "traffic"});
        EXPECT_TRUE(judge_by_hand(book, id, words, lap::judged_by_hand(laps, words)));
    };
    judge(mine, one, 1);
    judge(theirs, same, 2);
    merge_well(mine, theirs.path());
    merge_well(theirs, mine.path());
    EXPECT_EQ(judged_by_hand(mine, one)->size(), 2U);
    EXPECT_EQ(read_laps(mine, one)->at(1).why_not_clean, "set aside by hand: traffic");
    EXPECT_EQ(read_laps(mine, one)->at(2).why_not_clean, "set aside by hand: traffic");
    expect_same_content(mine, theirs);
    ASSERT_TRUE(judge_by_hand(mine, one, {}, some_laps()));
    merge_well(theirs, mine.path());
    EXPECT_TRUE(judged_by_hand(theirs, same)->empty());
    EXPECT_TRUE(read_laps(theirs, same)->at(1).clean);
    expect_same_content(mine, theirs);
}

} // namespace
} // namespace lapwright::book
