// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/setups.h"

#include "core/book/book_fixture.h"
#include "core/workspace/invented.h"

#include <fstream>
#include <gmock/gmock.h>

using namespace lapwright;
using namespace lapwright::workspace;
using testing::HasSubstr;

namespace {

const SessionKey first = key_of_bytes("first");

car::SetupSheet on(const std::string& tyre) {
    car::SetupSheet sheet;
    sheet.tyre = tyre;
    return sheet;
}

class SetupsTest : public testing::Test {
  protected:
    void write(const std::string& name, const std::string& text) const { std::ofstream(folder.file(name)) << text; }
    void open(const std::string& name, const std::string& driver = "", const std::string& car = "") {
        sessions.add(folder.file(name), invented(name, name == "one.csv" ? "first" : name, driver, car));
    }
    [[nodiscard]] KnownSetup known() const { return setups.known(first, sessions); }
    [[nodiscard]] std::string owner(const std::string& sheet, std::vector<Origin> together = {}) const {
        const auto given = read_given_setup(folder.file(sheet), std::move(together));
        const auto* entry = given ? owner_of(*given, sessions) : nullptr;
        return entry ? entry->file_name() : "";
    }

    book::Folder folder;
    OpenSessions sessions;
    Setups setups;
};

constexpr const char* whose = R"({"driver": "Wren Alder", "car": "Plover", "tyre": "soft"})";

} // namespace

TEST_F(SetupsTest, TheOneBesideTheFileUntilOneIsEntered) {
    open("one.csv");
    EXPECT_EQ(known().words, "not given");
    write("one.setup.json", R"({"tyre": "hard"})");
    EXPECT_EQ(known().sheet.tyre, "hard");
    EXPECT_EQ(known().words, "from one.setup.json, which lies beside it");
    setups.enter(first, on("soft"));
    EXPECT_EQ(known().sheet.tyre, "soft");
    EXPECT_EQ(known().words, "as entered here");
    setups.enter(first, std::nullopt);
    EXPECT_EQ(known().sheet.tyre, "hard");
    write("one.setup.json", "{");
    EXPECT_THAT(known().words, HasSubstr("one.setup.json"));
}

TEST_F(SetupsTest, TheBooksBeforeTheOneBesideTheFile) {
    open("one.csv");
    EXPECT_FALSE(setups.take_from_book(first, on("medium")));
    EXPECT_EQ(known().words, "from the book");
    write("one.setup.json", R"({"tyre": "hard"})");
    EXPECT_EQ(known().sheet.tyre, "medium");
    EXPECT_THAT(known().words, HasSubstr("says otherwise"));
    setups.enter(first, on("hard"));
    EXPECT_THAT(known().words, HasSubstr("as one.setup.json beside the file has it"));
    setups.enter(first, std::nullopt);
    EXPECT_FALSE(setups.entered(first));
    EXPECT_EQ(known().sheet.tyre, "hard");
}

TEST_F(SetupsTest, OneThatWasEnteredOnTheWayIntoTheBookGoesThere) {
    open("one.csv");
    setups.enter(first, on("soft"));
    const auto newer = setups.take_from_book(first, on("medium"));
    ASSERT_TRUE(newer);
    EXPECT_EQ(newer->tyre, "soft");
    EXPECT_EQ(known().sheet.tyre, "soft");
}

TEST_F(SetupsTest, OneOfAnEarlierRunGivesWayToTheBook) {
    open("one.csv");
    setups.take_kept(first, on("soft"));
    EXPECT_EQ(known().sheet.tyre, "soft");
    EXPECT_FALSE(setups.take_from_book(first, on("medium")));
    EXPECT_EQ(known().sheet.tyre, "medium");
}

TEST_F(SetupsTest, AGivenOneGoesToTheSessionOfItsName) {
    open("one.csv");
    open("two.csv");
    write("two.setup.json", whose);
    EXPECT_EQ(owner("two.setup.json"), "two.csv");
}

TEST_F(SetupsTest, AGivenOneGoesToNoneOfSeveralWithoutNames) {
    open("one.csv");
    open("two.csv");
    write("of-today.json", whose);
    EXPECT_EQ(owner("of-today.json"), "");
    EXPECT_EQ(owner("of-today.json", {folder.file("two.csv")}), "two.csv") << "but to the one that came with it";
}

TEST_F(SetupsTest, AGivenOneThatSpeaksOfAnotherCarIsNotTaken) {
    open("one.csv", "Wren Alder", "Plover");
    write("other.json", R"({"car": "Dunlin", "tyre": "hard"})");
    EXPECT_EQ(owner("other.json"), "");
    write("of-today.json", whose);
    EXPECT_EQ(owner("of-today.json"), "one.csv");
}

TEST_F(SetupsTest, WhatSaysNothingOrIsATrackIsNoSetup) {
    write("nothing.json", "{}");
    EXPECT_FALSE(read_given_setup(folder.file("nothing.json"), {}));
    EXPECT_FALSE(read_given_setup(TEST_SOURCE_DIR "/../sample-sessions/ternbank.track.json", {}));
}
