// SPDX-License-Identifier: GPL-3.0-or-later
// "lapwright book": sessions go in once, are found, go to the friend and come back.
#include "app/commands/commands.h"
#include "core/book/book.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

namespace lapwright::commands {
namespace {

using nlohmann::json;

class BookCommands : public testing::Test {
  protected:
    BookCommands() {
        std::string pattern =
            (std::filesystem::temp_directory_path() / "lapwright-book-").string() + std::string(6, 'X');
        folder = ::mkdtemp(pattern.data());
    }
    ~BookCommands() override { std::filesystem::remove_all(folder); }

    std::string file(const std::string& name) const { return (folder / name).string(); }

    int call(std::vector<std::string> words, const std::string& book = "book") {
        words.insert(words.begin(), {"book", "--book", file(book)});
        out.str("");
        err.str("");
        return run(words, out, err);
    }

    json answer() const { return json::parse(out.str()); }

    std::string sample(const std::string& name) const {
        return std::string(TEST_SOURCE_DIR) + "/../sample-sessions/" + name;
    }

    std::filesystem::path folder;
    std::ostringstream out;
    std::ostringstream err;
};

// Whoever mistypes a name is told so, and finds no empty book of that name afterwards.
TEST_F(BookCommands, OnlyAddAndMergeBeginABook) {
    const std::vector<std::vector<std::string>> others{{"list"},
                                                       {"season", "Ternbank"},
                                                       {"figures", "Plover"},
                                                       {"together", "Plover"},
                                                       {"pairings"},
                                                       {"check"},
                                                       {"export", "--out", file("out")},
                                                       {"remove", "1"},
                                                       {"restore", "1"},
                                                       {"forget"},
                                                       {"rename", "car", "a", "b"},
                                                       {"date", "1", "2026-05-16"}};
    for (const auto& words : others) {
        EXPECT_EQ(call(words), 1) << words.front();
        EXPECT_TRUE(err.str().starts_with(file("book") + ": there is no such book")) << err.str();
        EXPECT_EQ(std::ranges::count(err.str(), '\n'), 1) << err.str();
    }
    std::ofstream(file("book")) << "";
    EXPECT_EQ(call({"list"}), 1);
    EXPECT_EQ(std::filesystem::file_size(file("book")), 0U);
    std::filesystem::remove(file("book"));
    EXPECT_TRUE(std::filesystem::is_empty(folder));
    EXPECT_EQ(call({"merge", file("none")}), 1);
}

TEST_F(BookCommands, TheBookIsNoLoggersFile) {
    ASSERT_TRUE(book::Book::open(file("book")).ok());
    EXPECT_EQ(call({"add", file("book")}), 1);
    EXPECT_THAT(err.str(), testing::HasSubstr("this is the book itself"));
}

TEST_F(BookCommands, ASessionGoesInOnceAndIsFound) {
    const std::vector<std::string> add{
        "add",     sample("dunlin-saturday-2.txt"), "--setup",      sample("dunlin-saturday-2.setup.json"),
        "--track", sample("ternbank.track.json"),   "--conditions", "dry, light wind",
        "--json"};
    ASSERT_EQ(call(add), 0) << err.str();
    EXPECT_FALSE(answer()["sessions"][0]["was_there"]);
    EXPECT_GT(answer()["sessions"][0]["laps"], 5);
    ASSERT_EQ(call(add), 0);
    EXPECT_TRUE(answer()["sessions"][0]["was_there"]);
    EXPECT_EQ(answer()["sessions"][0]["renewed"], (json{"track", "setup", "conditions"}));
    ASSERT_EQ(call({"add", sample("dunlin-saturday-2.txt"), "--conditions", "dry, light wind"}), 0);
    EXPECT_TRUE(out.str().ends_with("was in the book already, as 1; now with the conditions given here\n"));

    ASSERT_EQ(call({"list", "--json"}), 0);
    ASSERT_EQ(answer()["sessions"].size(), 1U);
    const json session = answer()["sessions"][0];
    EXPECT_EQ(session["file"], "dunlin-saturday-2.txt");
    EXPECT_EQ(session["driver"], "Odran Pell");
    EXPECT_EQ(session["track"], "Ternbank");
    EXPECT_EQ(session["conditions"], "dry, light wind");
    EXPECT_GT(session["clean_laps"], 3);
    EXPECT_GT(session["best_clean_s"], 60.0);
    EXPECT_EQ(session["sha256"].get<std::string>().size(), 64U);

    ASSERT_EQ(call({"list", "odran", "light", "--from", "2026-05-16", "--until", "2026-05-16", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"].size(), 1U);
    ASSERT_EQ(call({"list", "--from", "2026-05-17", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"].size(), 0U);
    EXPECT_EQ(call({"list", "--from", "soon"}), 1);
    ASSERT_EQ(call({"list"}), 0);
    EXPECT_NE(out.str().find("Odran Pell"), std::string::npos);
    ASSERT_EQ(call({"season", "ternbank", "--json"}), 0);
    EXPECT_GT(answer()["sessions"][0]["median_clean_s"], 60.0);
    EXPECT_TRUE(answer()["sessions"][0]["setup_change"].is_null()); // the first of its car
    ASSERT_EQ(call({"figures", "dunlin"}), 0);
    EXPECT_NE(out.str().find("no session has figures"), std::string::npos);
    const std::string car = session["car"].get<std::string>();
    ASSERT_EQ(call({"together", car, "--json"}), 0) << err.str();
    EXPECT_EQ(answer()["sessions"].size(), 1U);
    EXPECT_GT(answer()["sessions"][0]["figures"]["power_w"]["low"], 200e3);
    EXPECT_EQ(answer()["so_far"][0]["figures"], answer()["sessions"][0]["figures"]);
    EXPECT_TRUE(answer()["setup_changes"].empty());
    EXPECT_FALSE(answer()["notes"].empty());
    ASSERT_EQ(call({"together", car}), 0);
    EXPECT_NE(out.str().find("one session alone"), std::string::npos);
    EXPECT_EQ(call({"together", "Plover"}), 1);
    EXPECT_NE(err.str().find("the book has no session of a car \"Plover\""), std::string::npos) << err.str();

    ASSERT_EQ(call({"rename", "driver", "odran pell", "Odran Pell-Marsh", "--json"}), 0) << err.str();
    EXPECT_EQ(answer(), (json{{"from", "Odran Pell"}, {"to", "Odran Pell-Marsh"}, {"sessions", 1}, {"united", false}}));
    EXPECT_EQ(call({"rename", "driver", "Odran Pell", "Nobody"}), 1);
    EXPECT_NE(err.str().find("the book has no driver \"Odran Pell\""), std::string::npos);
    ASSERT_EQ(call({"rename", "driver", "Odran Pell-Marsh", "Odran Pell"}), 0);
    EXPECT_EQ(out.str(), "Odran Pell-Marsh is now Odran Pell, in 1 session\n");

    ASSERT_EQ(call({"date", "1", "2026-06-01 09:30"}), 0) << err.str();
    EXPECT_EQ(out.str(), "session 1 is now of 1 Jun 2026, 9:30 UTC\n");
    EXPECT_EQ(call({"date", "1", "2026-06-01 25:00"}), 1);
    EXPECT_NE(err.str().find("has no time of day"), std::string::npos) << err.str();
    ASSERT_EQ(call({"list", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"][0]["start_utc"].get<std::string>().substr(0, 16), "2026-06-01T09:30");
    EXPECT_EQ(call({"date", "1", "soon"}), 1);
    EXPECT_NE(err.str().find("\"soon\" is no date"), std::string::npos);

    ASSERT_EQ(call({"pairings", "--json"}), 0);
    EXPECT_TRUE(answer()["pairings"].empty());
    ASSERT_EQ(call({"remove", "1"}), 0) << err.str();
    EXPECT_EQ(out.str(), "session 1 is out of the book; restore brings it back\n");
    ASSERT_EQ(call({"list"}), 0);
    EXPECT_EQ(out.str(), "no session\n");
    EXPECT_EQ(call({"remove", "1"}), 1);
    EXPECT_NE(err.str().find("not in the book (any more)"), std::string::npos);
    ASSERT_EQ(call({"list", "--removed", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"][0]["file"], "dunlin-saturday-2.txt");
    ASSERT_EQ(call({"restore", "1"}), 0) << err.str();
    EXPECT_EQ(out.str(), "session 1 is in the book again\n");
    ASSERT_EQ(call({"remove", "1"}), 0) << err.str();
    ASSERT_EQ(call({"add", sample("dunlin-saturday-2.txt")}), 0);
    EXPECT_NE(out.str().find("is in the book again, as 1 (it was removed on "), std::string::npos) << out.str();
    ASSERT_EQ(call({"list", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"][0]["conditions"], "dry, light wind") << "as it was";
    ASSERT_EQ(call({"forget"}), 0) << err.str();
    EXPECT_EQ(out.str(), "0 removed sessions are gone for good\n");

    // The track that came with the first one times another, whose file names no track; files that cannot be read keep
    // it out as little as one that is there already.
    EXPECT_EQ(call({"add", file("none.csv"), sample("dunlin-saturday-2.txt"), file("no.csv"),
                    sample("plover-saturday-2.csv")}),
              1);
    EXPECT_EQ(std::ranges::count(err.str(), '\n'), 4)
        << "two refusals, two setup sheets beside their files" << err.str();
    EXPECT_EQ(std::ranges::count(out.str(), '\n'), 2) << out.str();
    EXPECT_NE(out.str().find("is in the book as 2"), std::string::npos) << out.str();
    ASSERT_EQ(call({"list", "--driver", "Ylva Tarnby", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"].size(), 1U) << "its file names nobody, the setup sheet beside it does";
    ASSERT_EQ(call({"list", "--track", "Ternbank", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"].size(), 2U);

    ASSERT_EQ(call({"export", "1", "--out", file("for-the-friend")}), 0) << err.str();
    ASSERT_EQ(call({"merge", file("for-the-friend"), "--json"}, "theirs"), 0) << err.str();
    EXPECT_EQ(answer()["sessions"], 1);
    ASSERT_EQ(call({"check", "--json"}, "theirs"), 0);
    EXPECT_TRUE(answer()["whole"]);
    ASSERT_EQ(call({"salvage"}, "theirs"), 0);
    EXPECT_EQ(out.str(), "the book is whole; nothing was changed\n");

    // One that was removed is saved too, but is none that the list shows.
    ASSERT_EQ(call({"remove", "1"}), 0);
    std::fstream(file("book"), std::ios::binary | std::ios::in | std::ios::out) << std::string(100, '\0');
    ASSERT_EQ(call({"salvage"}), 0) << err.str();
    EXPECT_TRUE(out.str().starts_with("1 session, 1 removed session, 0 notes are in the book; the damaged one is kept "
                                      "as " +
                                      file("book") + ".damaged\n"))
        << out.str();
    ASSERT_EQ(call({"list", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"].size(), 1U);
    EXPECT_EQ(call({"salvage"}, "no-such"), 1);
}

TEST_F(BookCommands, WhatTwoPeopleSaidIsShownAndSettled) {
    ASSERT_EQ(call({"add", sample("plover-saturday-2.csv")}), 0) << err.str();
    ASSERT_EQ(call({"merge", file("book"), "--json"}, "theirs"), 0) << err.str();
    ASSERT_EQ(call({"list", "--json"}), 0);
    const std::string car = answer()["sessions"][0]["car"];
    ASSERT_EQ(call({"rename", "car", car, "Plover blue"}), 0) << err.str();
    ASSERT_EQ(call({"rename", "car", car, "Plover 2"}, "theirs"), 0) << err.str();
    ASSERT_EQ(call({"conflicts"}), 0);
    EXPECT_EQ(out.str(), "no conflict\n");
    ASSERT_EQ(call({"merge", file("theirs")}), 0) << err.str();
    EXPECT_NE(out.str().find("1 conflict: "), std::string::npos) << out.str();
    ASSERT_EQ(call({"conflicts", "--json"}), 0);
    const auto conflict = answer()["conflicts"][0];
    EXPECT_EQ(conflict["field"], "car");
    EXPECT_EQ(conflict["values"][0]["value"], "Plover 2");
    EXPECT_TRUE(conflict["values"][0]["in_use"]);
    EXPECT_EQ(conflict["values"][1]["value"], "Plover blue");
    ASSERT_EQ(call({"conflicts"}), 0);
    EXPECT_NE(out.str().find(", car:\n"), std::string::npos) << out.str();
    ASSERT_EQ(call({"settle", conflict["values"][1]["key"].get<std::string>()}), 0) << err.str();
    ASSERT_EQ(call({"list", "--car", "Plover blue", "--json"}), 0);
    EXPECT_EQ(answer()["sessions"].size(), 1U);
    ASSERT_EQ(call({"conflicts"}), 0);
    EXPECT_EQ(out.str(), "no conflict\n");
    EXPECT_EQ(call({"settle", "00000000"}), 1);
}

TEST_F(BookCommands, WhatCannotBeUsedIsSaidInOneLine) {
    EXPECT_EQ(call({"add", file("none.csv")}), 1);
    EXPECT_NE(err.str().find("none.csv"), std::string::npos);
    EXPECT_EQ(call({"merge", file("none")}), 1);
    EXPECT_EQ(call({"export", "7", "--out", file("part")}), 1);
    EXPECT_FALSE(std::filesystem::exists(file("part")));
    EXPECT_EQ(call({}), 2);
    EXPECT_EQ(call({"frobnicate"}), 2);
    EXPECT_EQ(call({"list", "--frobnicate"}), 2);
    EXPECT_EQ(call({"merge", "one", "two"}), 2);
    err.str("");
    EXPECT_EQ(run({"book", "list", "--book", file("behind")}, out, err), 1);
    EXPECT_TRUE(err.str().starts_with(file("behind") + ": ")) << err.str();
    EXPECT_EQ(call({"add", sample("dunlin-saturday-2.txt")}, "no/such/folder/book"), 1);
}

TEST_F(BookCommands, AnExportTakesThePlaceOfNothing) {
    for (const char* const name : {"book", "other"})
        ASSERT_TRUE(book::Book::open(file(name)).ok());
    std::ofstream(file("session.csv")) << "time,speed\n";
    for (const auto& [name, why] : {std::pair(file("book"), "read by the same command"),
                                    {file("other"), "is a book"},
                                    {file("session.csv"), "there already"},
                                    {folder.string(), "folder or a device"},
                                    {std::string("/dev/full"), "folder or a device"}}) {
        EXPECT_EQ(call({"export", "--out", name}), 1) << name;
        EXPECT_TRUE(err.str().starts_with(name + ": ")) << err.str();
        EXPECT_NE(err.str().find(why), std::string::npos) << err.str();
        EXPECT_NE(err.str().find(" — name a file"), std::string::npos) << err.str();
    }
    EXPECT_EQ(std::filesystem::file_size(file("session.csv")), 11U);
    EXPECT_TRUE(std::filesystem::is_character_file("/dev/full"));
    EXPECT_EQ(call({"list"}, "other"), 0) << err.str();
    EXPECT_EQ(call({"export", "--out", file("new")}), 0) << err.str();
}

} // namespace
} // namespace lapwright::commands
