// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/book_connection.h"

#include "core/book/book_fixture.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/workspace/invented.h"
#include "core/workspace/reading.h"

#include <gmock/gmock.h>

using namespace lapwright;
using namespace lapwright::workspace;
using testing::HasSubstr;

namespace {

const SessionKey first = key_of_bytes("first");
const SessionKey second = key_of_bytes("second");

class Connection : public testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(book.open());
        ASSERT_TRUE(keep(book, "one.csv", "first"));
        ASSERT_TRUE(keep(book, "two.csv", "second"));
    }
    static base::Result<KeptSession> keep(BookConnection& into, const std::string& name, const std::string& bytes,
                                          const std::vector<Note>& notes = {}) {
        SessionToKeep wanted{"/data/" + name, invented(name, bytes, "Wren Alder", "Plover")};
        wanted.notes = notes;
        return into.keep(wanted);
    }
    // As in the next run.
    [[nodiscard]] KeptSession reopened() const {
        BookConnection next(folder.file("data/book.sqlite"));
        EXPECT_TRUE(next.open());
        return std::move(keep(next, "renamed.csv", "first")).value();
    }
    std::size_t found(const std::string& words) {
        book::Filter filter;
        filter.words = words;
        return book::search(book.book(), filter)->size();
    }

    book::Folder folder;
    BookConnection book{folder.file("data/book.sqlite")}; // with its folder
};

} // namespace

TEST_F(Connection, SessionsAreInTheBookWithLapsAndSamples) {
    const auto sessions = book::search(book.book());
    ASSERT_EQ(sessions->size(), 2U);
    for (const auto& session : *sessions) {
        EXPECT_EQ(session.laps, 7);
        EXPECT_EQ(session.clean_laps, 4);
        EXPECT_EQ(book::read_recording(book.book(), session.id)->channels.size(), 1U);
    }
}

TEST_F(Connection, NotesComeBackForTheSameFileUnderAnotherName) {
    ASSERT_TRUE(book.put_note({{first, 3, "Sweep", 400.0}, "felt planted"}));
    const KeptSession again = reopened();
    ASSERT_EQ(again.notes.size(), 1U);
    EXPECT_EQ(again.notes[0].text, "felt planted");
    EXPECT_EQ(again.notes[0].about.at_m, 400.0);
    EXPECT_EQ(book::search(book.book())->size(), 2U);
}

TEST_F(Connection, ANoteThatIsTakenBackIsOutOfTheBookAndComesBackAsTheSame) {
    ASSERT_TRUE(book.put_note({{first}, "wrong"}));
    ASSERT_TRUE(book.put_note({{first}, ""}));
    EXPECT_EQ(found("wrong"), 0U);
    ASSERT_TRUE(book.put_note({{first}, "right"}));
    EXPECT_EQ(found("right"), 1U);
    EXPECT_EQ(reopened().notes.size(), 1U);
}

TEST_F(Connection, NotesFromARunWithoutTheBookMoveIntoIt) {
    ASSERT_TRUE(keep(book, "one.csv", "first", {{{first}, "typed without a book"}}));
    EXPECT_EQ(found("typed without"), 1U);
}

TEST_F(Connection, APairingIsKeptWithItsNote) {
    const TwoLaps laps{first, 3, second, 1};
    EXPECT_EQ(*book.keep_pairing({laps, "A ahead by 0.4 s", "new pads"}), "new pads");
    EXPECT_EQ(*book.keep_pairing({laps, "A ahead by 0.4 s", ""}), "new pads");
    ASSERT_TRUE(book.put_pairing_note(laps, ""));
    EXPECT_EQ(*book.keep_pairing({laps, "A ahead by 0.4 s", ""}), "");
    const auto pairings = book::pairings(book.book());
    ASSERT_EQ(pairings->size(), 1U);
    EXPECT_EQ(pairings->front().pairing.sentence, "A ahead by 0.4 s");
    // Taken out and brought back it can be written on.
    ASSERT_TRUE(book.take_pairing(1, pairings->front().id));
    EXPECT_TRUE(book::pairings(book.book())->empty());
    ASSERT_TRUE(book.bring_back_pairing(1));
    EXPECT_TRUE(book.put_pairing_note(laps, "again"));
}

TEST_F(Connection, ASetupNamesDriverAndCarOfItsSession) {
    car::SetupSheet sheet;
    sheet.driver = "Odran Pell";
    sheet.tyre = "soft";
    ASSERT_TRUE(book.put_setup(first, sheet));
    EXPECT_EQ(book.details().at(first).driver, "Odran Pell");
    EXPECT_EQ(reopened().details.setup.tyre, "soft");
    const SessionPointer session = invented("one.csv", "first", "Wren Alder", "Plover");
    const SessionPointer renamed = named(session, book.details().at(first));
    EXPECT_EQ(renamed->recording->driver, "Odran Pell");
    EXPECT_EQ(renamed->recording->car, "Plover");
    EXPECT_EQ(named(renamed, book.details().at(first)), renamed) << "nothing is another";
}

TEST_F(Connection, WhatIsNotThereIsSaid) {
    const auto put = book.put_note({{key_of_bytes("never opened")}, "lost"});
    ASSERT_FALSE(put);
    EXPECT_THAT(put.error().what, HasSubstr("not in the book"));
    EXPECT_TRUE(book.undo_rename(99)) << "what was refused is not taken back";
    EXPECT_TRUE(book.bring_back_pairing(99));
}

TEST_F(Connection, ARemovedSessionThatIsOpenedAgainIsInTheBookAgain) {
    const auto sessions = book::search(book.book());
    for (const auto& session : *sessions)
        ASSERT_TRUE(book::remove_session(book.book(), session.id));
    EXPECT_TRUE(book::search(book.book())->empty());
    ASSERT_TRUE(keep(book, "one.csv", "first"));
    EXPECT_EQ(book::search(book.book())->size(), 1U);
}
