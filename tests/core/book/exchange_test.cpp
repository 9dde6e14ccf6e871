// SPDX-License-Identifier: GPL-3.0-or-later
// A session or a book for the friend, and two books made one.
#include "core/book/exchange.h"

#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/tracks.h"

#include <gtest/gtest.h>

namespace lapwright::book {
namespace {

SessionDetails of(const std::string& driver, const std::string& car, const std::string& track) {
    return {driver, car, track, 1.77e9, "dry", {}};
}

track::TrackRecord record_named(const std::string& name) {
    track::TrackRecord record;
    record.name = name;
    record.gate = {{0.95, 0.04, 12.0}, 1.25, 18.0};
    return record;
}

class Exchange : public testing::Test {
  protected:
    Exchange() {
        one = add_named(mine, "one", of("Wren Alder", "Plover", "Ternbank"));
        two = add_named(mine, "two", of("Wren Alder", "Plover", "Gull Head"));
        three = add_named(mine, "three", of("Åsa Lönn", "Dunlin", "Ternbank"));
        pairing = *put_pairing(mine, {one, 2, three, 1, "both", "A ahead by 0.48 s", 100.0});
        static_cast<void>(put_pairing(mine, {one, 2, two, 1, "other", "", 100.0}));
        on_session = *put_note(mine, {"", {.session = one, .lap = 2}, "loose at the rear", 10.0});
        on_pairing = *put_note(mine, {"", {.pairing = pairing, .segment = "Sweep"}, "she brakes later", 10.0});
        static_cast<void>(put_note(mine, {"", {.session = two}, "damp", 10.0}));
        EXPECT_TRUE(put_track(mine, record_named("Ternbank")));
        EXPECT_TRUE(put_track(mine, record_named("Gull Head")));
        EXPECT_TRUE(put_figures(mine, one, {{"grip", 1.2, 1.1, 1.3, "data"}}));
    }

    [[nodiscard]] std::string part() const { return folder.file("for-the-friend"); }

    Folder folder;
    Book mine = open_book(folder.file("mine"));
    SessionId one{};
    SessionId two{};
    SessionId three{};
    PairingId pairing{};
    std::string on_session;
    std::string on_pairing;
};

TEST_F(Exchange, OneSessionGoesWithWhatBelongsToIt) {
    const std::vector<SessionId> chosen{one};
    const auto written = export_sessions(mine, chosen, part());
    ASSERT_TRUE(written) << base::one_line(written.error());
    Book theirs = open_book(part());
    ASSERT_EQ(search(theirs)->size(), 1U);
    const SessionSummary summary = search(theirs)->at(0);
    EXPECT_EQ(summary.driver, "Wren Alder");
    EXPECT_EQ(summary.source, source_named("one"));
    EXPECT_EQ(summary.clean_laps, 2);
    expect_same(*read_recording(theirs, summary.id), *read_recording(mine, one));
    ASSERT_EQ(notes_of_session(theirs, summary.id)->size(), 1U);
    EXPECT_EQ(notes_of_session(theirs, summary.id)->at(0).uid, on_session);
    EXPECT_TRUE(pairings(theirs)->empty());
    ASSERT_EQ(tracks(theirs)->size(), 1U); // and no name of anybody else
    EXPECT_EQ(names(theirs)->drivers.size(), 1U);
    EXPECT_EQ(season_of_car(theirs, "Plover")->at(0).figures.at(0).value, 1.2);
    EXPECT_EQ(search(theirs, {.words = "loose"})->size(), 1U);
    EXPECT_TRUE(theirs.check()->whole());
}

TEST_F(Exchange, TheFileStandsAlone) {
    ASSERT_TRUE(export_book(mine, part()));
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        const std::string name = entry.path().filename().string();
        EXPECT_TRUE(name == "mine" || name == "mine-wal" || name == "mine-shm" || name == "for-the-friend") << name;
    }
    // It may lie where nobody can write: the merge below reads it from there and leaves it as it was.
    const auto before = std::filesystem::last_write_time(part());
    Book other = open_book(folder.file("other"));
    ASSERT_TRUE(merge_from(other, part()).ok());
    EXPECT_EQ(std::filesystem::last_write_time(part()), before);
}

TEST_F(Exchange, TwoSessionsGoWithThePairingBetweenThem) {
    const std::vector<SessionId> chosen{three, one};
    ASSERT_TRUE(export_sessions(mine, chosen, part()));
    Book theirs = open_book(part());
    ASSERT_EQ(pairings(theirs)->size(), 1U);
    const KeptPairing kept = pairings(theirs)->at(0);
    EXPECT_EQ(kept.pairing.title, "both");
    EXPECT_EQ(read_summary(theirs, kept.pairing.session_a)->source, source_named("one"));
    EXPECT_EQ(notes_of_pairing(theirs, kept.id)->at(0).uid, on_pairing);
}

TEST_F(Exchange, AWholeBookIntoAnEmptyOneIsTheSameBook) {
    ASSERT_TRUE(remove_session(mine, two));
    ASSERT_TRUE(export_book(mine, part()));
    Book theirs = open_book(folder.file("theirs"));
    const auto merged = merge_from(theirs, part());
    ASSERT_TRUE(merged.ok()) << base::one_line(merged.error());
    EXPECT_EQ(merged->sessions, 2);
    EXPECT_EQ(merged->known_sessions, 0);
    EXPECT_EQ(merged->notes, 2);
    EXPECT_EQ(merged->pairings, 1);
    EXPECT_EQ(merged->tracks, 2);
    EXPECT_TRUE(theirs.check()->whole());
    const auto again = merge_from(theirs, part());
    ASSERT_TRUE(again.ok());
    EXPECT_EQ(again->sessions, 0);
    EXPECT_EQ(again->known_sessions, 2);
    EXPECT_EQ(again->notes + again->pairings + again->tracks, 0);
    EXPECT_EQ(search(theirs)->size(), 2U);
}

TEST_F(Exchange, TwoBooksBecomeOne) {
    Book theirs = open_book(folder.file("theirs"));
    add_named(theirs, "spare", of("Someone", "Else", "Far")); // so that ids differ
    const SessionId same = add_named(theirs, "one", of("WREN ALDER", "", ""));
    const SessionId fresh = add_named(theirs, "four", of("wren alder", "dunlin", "TERNBANK"));
    static_cast<void>(put_note(theirs, {on_session, {.session = same}, "much better now", 20.0}));
    static_cast<void>(put_note(theirs, {"", {.session = fresh}, "first time out", 20.0}));
    static_cast<void>(put_pairing(theirs, {same, 2, fresh, 1, "new one", "", 50.0}));
    ASSERT_TRUE(put_track(theirs, record_named("Far")));

    const auto merged = merge_from(mine, theirs.path());
    ASSERT_TRUE(merged.ok()) << base::one_line(merged.error());
    EXPECT_EQ(merged->sessions, 2);
    EXPECT_EQ(merged->known_sessions, 1);
    EXPECT_EQ(merged->notes, 2);
    EXPECT_EQ(merged->pairings, 1);
    EXPECT_EQ(merged->tracks, 1);
    EXPECT_EQ(search(mine)->size(), 5U);
    EXPECT_EQ(search(mine, {.driver = "Wren Alder"})->size(), 3U);
    EXPECT_EQ(search(mine, {.car = "Dunlin", .track = "Ternbank"})->size(), 2U);
    EXPECT_EQ(names(mine)->drivers.size(), 3U);
    EXPECT_EQ(notes_of_session(mine, one)->at(0).text, "much better now");
    EXPECT_EQ(search(mine, {.words = "much better"})->size(), 1U);
    EXPECT_EQ(read_summary(mine, one)->car, "Plover"); // stays as it was here
    EXPECT_EQ(pairings(mine)->size(), 3U);
    EXPECT_EQ(search(theirs)->size(), 3U); // the other is as it was
    EXPECT_TRUE(mine.check()->whole());

    // The older of two notes does not come back over the newer.
    ASSERT_TRUE(merge_from(theirs, mine.path()).ok());
    EXPECT_EQ(notes_of_session(theirs, same)->at(0).text, "much better now");
    EXPECT_EQ(read_summary(theirs, same)->car, "Plover"); // filled in, as nothing stood there
    EXPECT_EQ(search(theirs)->size(), 5U);
}

TEST_F(Exchange, ARemovedSessionStaysRemovedAndIsNamed) {
    ASSERT_TRUE(export_book(mine, part()));
    ASSERT_TRUE(remove_session(mine, two));
    const auto merged = merge_from(mine, part());
    ASSERT_TRUE(merged.ok()) << base::one_line(merged.error());
    EXPECT_EQ(merged->known_sessions, 3);
    ASSERT_EQ(merged->removed.size(), 1U);
    EXPECT_EQ(merged->removed[0].id, two);
    EXPECT_EQ(merged->removed[0].track, "Gull Head");
    EXPECT_EQ(search(mine)->size(), 2U);
}

// Written by a program with other habits.
TEST_F(Exchange, AFriendsNamesAreCleanedAsOnesOwn) {
    {
        Book theirs = open_book(folder.file("theirs"));
        add_named(theirs, "four", of("Nell", "Snipe", "A"));
        add_named(theirs, "five", of("Odd", "Twin", "B"));
        add_named(theirs, "six", of("None", "Twice", "B"));
        Database& database = theirs.database();
        database.run("UPDATE driver SET name = ' Wren' || char(10) || 'Alder ' WHERE name = 'Nell'");
        database.run("UPDATE driver SET name = char(9) || char(27) WHERE name = 'None'");
        database.run("UPDATE car SET name = 'One' || char(9) || 'Two' WHERE name = 'Twin'");
        database.run("UPDATE car SET name = 'One Two ' WHERE name = 'Twice'");
    }
    const auto merged = merge_from(mine, folder.file("theirs"));
    ASSERT_TRUE(merged.ok()) << base::one_line(merged.error());
    EXPECT_EQ(search(mine, {.driver = "Wren Alder"})->size(), 3U);
    EXPECT_EQ(search(mine, {.car = "One Two"})->size(), 2U);
    EXPECT_EQ(names(mine)->drivers, (std::vector<std::string>{"Odd", "Wren Alder", "Åsa Lönn"}));
    EXPECT_EQ(search(mine)->size(), 6U);
    EXPECT_TRUE(mine.check()->whole());
}

TEST_F(Exchange, WhatIsNoBookIsRefusedAndChangesNothing) {
    std::ofstream(folder.file("text"), std::ios::binary) << std::string(5000, 'x');
    const auto merged = merge_from(mine, folder.file("text"));
    ASSERT_FALSE(merged.ok());
    EXPECT_EQ(merged.error().place.file, folder.file("text"));
    EXPECT_EQ(merge_from(mine, folder.file("none")).error().code, base::ErrorCode::file_not_readable);
    EXPECT_FALSE(merge_from(mine, mine.path()).ok());
    EXPECT_FALSE(export_book(mine, mine.path()));
    EXPECT_FALSE(export_book(mine, folder.file("no/such/folder/book")));
    const std::vector<SessionId> wrong{SessionId{99}};
    EXPECT_FALSE(export_sessions(mine, wrong, part()));
    EXPECT_FALSE(std::filesystem::exists(part()));
    EXPECT_EQ(search(mine)->size(), 3U);
    EXPECT_TRUE(mine.check()->whole());
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        EXPECT_EQ(entry.path().string().find(".part"), std::string::npos) << entry.path();
}

} // namespace
} // namespace lapwright::book
