// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/sessions.h"

#include "core/book/book_fixture.h"
#include "core/book/notes.h"
#include "core/book/search.h"
#include "core/book/unit_text.h"

#include <gtest/gtest.h>

#include <set>

namespace lapwright::book {
namespace {

TEST(Sessions, ARecordingReadsBackBitForBit) {
    const Folder folder;
    const recording::Recording written = small_recording();
    SessionId id{};
    {
        Book book = open_book(folder.file("book"));
        const auto added = add_session(book, source_named("a"), written, details_of(written), some_laps());
        ASSERT_TRUE(added.ok()) << base::one_line(added.error());
        EXPECT_FALSE(added->was_there);
        id = added->id;
    }
    Book book = open_book(folder.file("book"));
    const auto read = read_recording(book, id);
    ASSERT_TRUE(read.ok()) << base::one_line(read.error());
    EXPECT_EQ(read->source_file, "a.csv");
    expect_same(*read, written);
}

TEST(Sessions, AnEmptyRecordingReadsBackToo) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const recording::Recording empty;
    const auto added = add_session(book, source_named("none"), empty, {}, {});
    ASSERT_TRUE(added.ok());
    const auto read = read_recording(book, added->id);
    ASSERT_TRUE(read.ok());
    expect_same(*read, empty);
}

TEST(Sessions, TheSameSourceComesOnce) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const SessionId first = add_named(book, "a");
    const auto again = add_session(book, source_named("a"), small_recording(9), {}, {});
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->was_there);
    EXPECT_EQ(again->id, first);
    EXPECT_EQ(search(book)->size(), 1U);
    EXPECT_EQ(read_laps(book, first)->size(), some_laps().size());
    EXPECT_EQ(*find_session(book, source_named("a").checksum), first);
    EXPECT_EQ(*find_session(book, source_named("b").checksum), std::nullopt);
}

TEST(Sessions, LapsReadBack) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const SessionId id = add_named(book, "a");
    auto laps = some_laps();
    const auto expect_laps = [&] {
        const auto read = read_laps(book, id);
        ASSERT_TRUE(read.ok());
        ASSERT_EQ(read->size(), laps.size());
        for (std::size_t i = 0; i < laps.size(); ++i) {
            EXPECT_EQ((*read)[i].number, laps[i].number);
            EXPECT_EQ((*read)[i].kind, laps[i].kind);
            EXPECT_EQ((*read)[i].start_s, laps[i].start_s);
            EXPECT_EQ((*read)[i].end_s, laps[i].end_s);
            EXPECT_EQ((*read)[i].time_sd_s, laps[i].time_sd_s);
            EXPECT_EQ((*read)[i].clean, laps[i].clean);
            EXPECT_EQ((*read)[i].why_not_clean, laps[i].why_not_clean);
        }
    };
    expect_laps();
    laps[1].clean = false;
    laps[1].why_not_clean = "traffic";
    laps.pop_back();
    ASSERT_TRUE(change_laps(book, id, laps));
    expect_laps();
}

TEST(Sessions, DetailsChangeAndReadBack) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const SessionId id = add_named(book, "a", {"Wren Alder", "Plover", "Ternbank", 1e9, "", {}});
    SessionDetails details{" Wren Alder ", "Dunlin", "", {}, "wet, drying", {}};
    details.setup.tyre = "soft 200";
    details.setup.mass = car::Mass{1085.0, 6.0};
    details.setup.items = {{"wing angle", "7 deg"}};
    details.setup.conditions.temperature_k = 291.15;
    ASSERT_TRUE(change_details(book, id, details));
    const auto read = read_details(book, id);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read->driver, "Wren Alder");
    EXPECT_EQ(read->car, "Dunlin");
    EXPECT_EQ(read->track, "");
    EXPECT_EQ(read->start_unix_s, std::nullopt);
    EXPECT_EQ(read->conditions, "wet, drying");
    EXPECT_EQ(read->setup.tyre, "soft 200");
    EXPECT_EQ(read->setup.mass->value_kg, 1085.0);
    ASSERT_EQ(read->setup.items.size(), 1U);
    EXPECT_EQ(read->setup.items[0].value, "7 deg");
    EXPECT_NEAR(*read->setup.conditions.temperature_k, 291.15, 1e-9);
    // A name that nobody bears any more is gone from the lists.
    EXPECT_EQ(names(book)->cars, std::vector<std::string>{"Dunlin"});
}

TEST(Sessions, NamesAreOneWhateverTheirCaseAndBlanks) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    add_named(book, "a", {"Wren Alder", "Plover", "Ternbank", {}, "", {}});
    add_named(book, "b", {" wren alder", "PLOVER ", "ternbank", {}, "", {}});
    EXPECT_EQ(names(book)->drivers, std::vector<std::string>{"Wren Alder"});
    EXPECT_EQ(names(book)->tracks, std::vector<std::string>{"Ternbank"});
    EXPECT_EQ(search(book, {.car = "plover"})->size(), 2U);
}

TEST(Sessions, RemovedIsOutOfListsAndComesBackWhole) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const SessionId id = add_named(book, "a");
    ASSERT_TRUE(put_note(book, {"", {.session = id}, "loose at the rear", 1.0}).ok());
    ASSERT_TRUE(remove_session(book, id));
    EXPECT_TRUE(search(book)->empty());
    EXPECT_FALSE(read_recording(book, id).ok());
    EXPECT_FALSE(remove_session(book, id));
    EXPECT_EQ(*find_session(book, source_named("a").checksum), std::nullopt);
    ASSERT_TRUE(restore_session(book, id));
    EXPECT_EQ(search(book)->at(0).notes, 1);
    ASSERT_TRUE(remove_session(book, id));
    const auto again = add_session(book, source_named("a"), small_recording(), {}, {});
    EXPECT_TRUE(again->was_there);
    ASSERT_TRUE(again->removed_unix_s); // said, and not taken back
    EXPECT_TRUE(search(book)->empty());
    const auto removed = removed_sessions(book);
    ASSERT_EQ(removed->size(), 1U);
    EXPECT_EQ(removed->at(0).id, id);
    EXPECT_EQ(removed->at(0).file_name, "a.csv");
    EXPECT_EQ(removed->at(0).removed_unix_s, *again->removed_unix_s);

    const auto before = std::filesystem::file_size(folder.file("book"));
    ASSERT_EQ(*forget_removed(book), 1);
    EXPECT_FALSE(restore_session(book, id));
    EXPECT_FALSE(add_session(book, source_named("a"), small_recording(), {}, {})->was_there);
    EXPECT_GT(before, 0U);
}

TEST(Sessions, AnotherReadingOfTheSameSourceTakesItsPlace) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    const SessionId id = add_named(book, "a");
    const recording::Recording other = small_recording(77, 123);
    ASSERT_TRUE(replace_recording(book, id, other));
    expect_same(*read_recording(book, id), other);
    EXPECT_EQ(search(book)->at(0).duration_s, other.duration_s);
}

TEST(Sessions, ChecksumAndSizeOfAFile) {
    const Folder folder;
    std::ofstream(folder.file("three.csv"), std::ios::binary) << "abc";
    const auto source = source_of_file(folder.file("three.csv"));
    ASSERT_TRUE(source.ok());
    EXPECT_EQ(*source, (Source{"three.csv", 3, sha256_of("abc")}));
    EXPECT_EQ(source_of_file(folder.file("none.csv")).error().code, base::ErrorCode::file_not_readable);
}

TEST(Sessions, WhatIsNotThereIsSaid) {
    const Folder folder;
    Book book = open_book(folder.file("book"));
    EXPECT_EQ(read_recording(book, SessionId{5}).error().code, base::ErrorCode::book_not_usable);
    EXPECT_FALSE(read_details(book, SessionId{5}).ok());
    EXPECT_FALSE(read_laps(book, SessionId{5}).ok());
    EXPECT_FALSE(change_laps(book, SessionId{5}, {}));
    EXPECT_FALSE(change_details(book, SessionId{5}, {}));
    EXPECT_TRUE(names(book).ok()); // and the book works on
}

TEST(UnitText, IsOneForEachUnit) {
    std::set<std::string> texts;
    for (int i = 0; i <= static_cast<int>(base::Unit::ampere); ++i) {
        const auto unit = static_cast<base::Unit>(i);
        EXPECT_EQ(unit_of(unit_text(unit)), unit);
        EXPECT_TRUE(texts.insert(unit_text(unit)).second) << unit_text(unit);
    }
}

} // namespace
} // namespace lapwright::book
