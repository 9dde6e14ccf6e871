// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/session_names.h"

#include "core/book/book_fixture.h"
#include "core/book/search.h"
#include "core/workspace/book_connection.h"
#include "core/workspace/invented.h"
#include "core/workspace/setups.h"

#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

const SessionKey first = key_of_bytes("first");
const SessionNames all_of_it{"Wren Alder", "Plover", "Ternbank", 1.8e9, "dry, gusty"};

SessionPointer on_known_track(const std::string& name) {
    auto session = std::make_shared<analysis::Session>(*invented("one.csv", "first"));
    session->known_track = track::TrackRecord{name, {}, 0.0, {}};
    return session;
}

} // namespace

TEST(SessionNames, AFileThatKnowsNothingGetsAllOfThem) {
    const SessionPointer unknown = invented("one.csv", "first");
    EXPECT_EQ(names_of(*unknown), SessionNames{});
    const SessionPointer known = with_names(unknown, all_of_it);
    EXPECT_EQ(names_of(*known), all_of_it);
    EXPECT_EQ(known->title(), "Wren Alder — Plover");
    EXPECT_EQ(known->laps.size(), unknown->laps.size());
    EXPECT_EQ(with_names(known, all_of_it), known) << "nothing is another";
    EXPECT_EQ(names_of(*with_names(known, {})), SessionNames{}) << "undone";
}

TEST(SessionNames, TheNameThatTheGateTellsIsNotTakenForTheFiles) {
    const SessionPointer session = on_known_track("Ternbank");
    EXPECT_EQ(names_of(*session).track, "Ternbank");
    const SessionPointer driven = with_names(session, {"Wren Alder", "", "Ternbank", {}, ""});
    EXPECT_TRUE(driven->recording->track.empty());
    EXPECT_EQ(named(session, {.track = "Ternbank"}), session);
}

TEST(SessionNames, WhatTheBookDoesNotKnowStays) {
    const SessionPointer session = with_names(invented("one.csv", "first"), all_of_it);
    book::SessionDetails kept;
    kept.car = "Plover II";
    kept.start_unix_s = all_of_it.start_unix_s;
    const SessionNames now = names_of(*named(session, kept));
    EXPECT_EQ(now.car, "Plover II");
    EXPECT_EQ(now.driver, "Wren Alder");
    EXPECT_EQ(now.conditions, "dry, gusty");
}

TEST(SessionNames, OneReadingIsTheSameUnderOtherNames) {
    const SessionPointer session = invented("one.csv", "first");
    EXPECT_TRUE(same_reading(*session, *with_names(session, all_of_it)));
    EXPECT_FALSE(same_reading(*session, *invented("one.csv", "first"))) << "read anew";
}

TEST(SessionNames, AreOnOneLineWithoutBlanksAround) {
    EXPECT_EQ(plain({" Wren\tAlder ", "", "\nTernbank", {}, " dry "}),
              (SessionNames{"Wren Alder", "", "Ternbank", {}, "dry"}));
}

TEST(SessionNames, AreInTheBookAndOutOfItAgain) {
    book::Folder folder;
    BookConnection book(folder.file("book.sqlite"));
    ASSERT_TRUE(book.open());
    ASSERT_TRUE(book.keep({"/data/one.csv", invented("one.csv", "first")}));
    car::SetupSheet sheet;
    sheet.tyre = "soft";
    ASSERT_TRUE(book.put_setup(first, sheet));
    ASSERT_TRUE(book.put_names(first, all_of_it));
    const book::SessionDetails kept = book.details().at(first);
    EXPECT_EQ(names_of(*named(invented("one.csv", "first"), kept)), all_of_it);
    EXPECT_EQ(kept.setup.tyre, "soft") << "a name changes nothing of the setup";
    book::Filter filter;
    filter.words = "gusty";
    EXPECT_EQ(book::search(book.book(), filter)->size(), 1U);
    ASSERT_TRUE(book.put_names(first, {}));
    EXPECT_EQ(book.details().at(first).driver, "");
    EXPECT_EQ(book.details().at(first).start_unix_s, std::nullopt);
    EXPECT_FALSE(book.put_names(key_of_bytes("never opened"), all_of_it));
}

TEST(SessionNames, ASetupThatNamesItsDriverSaysTheNewName) {
    OpenSessions sessions;
    sessions.add("/data/one.csv", invented("one.csv", "first"));
    Setups setups;
    car::SetupSheet sheet;
    sheet.driver = "last owner";
    sheet.tyre = "soft";
    setups.enter(first, sheet);
    setups.rename(first, "Wren Alder", "Plover");
    EXPECT_EQ(setups.known(first, sessions).sheet.driver, "Wren Alder");
    EXPECT_EQ(setups.known(first, sessions).sheet.car, "") << "it named none";
    EXPECT_EQ(setups.known(first, sessions).sheet.tyre, "soft");
}
