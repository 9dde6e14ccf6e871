// SPDX-License-Identifier: GPL-3.0-or-later
// The command line from words to output: contract, exit status, one line for what is wrong.
#include "app/commands/call.h"
#include "app/commands/commands.h"
#include "app/commands/table_text.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <numeric>
#include <optional>
#include <sstream>
#include <unistd.h>

using namespace lapwright::commands;
using lapwright::test::call;
using Outcome = lapwright::test::Called;
using testing::HasSubstr;

namespace {

std::string sample(const std::string& name) {
    return std::string(TEST_SOURCE_DIR) + "/../sample-sessions/" + name;
}

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

} // namespace

TEST(CommandLine, KnowsWhenTheWindowIsWanted) {
    EXPECT_EQ(wish({}), Wish::open_window);
    EXPECT_EQ(wish({"a.csv", "b.csv"}), Wish::open_window);
    EXPECT_EQ(wish({"laps", "a.csv"}), Wish::run_command);
    EXPECT_EQ(wish({"--version"}), Wish::run_command);
}

TEST(CommandLine, LapsKeepsItsContract) {
    const Outcome o = call({"laps", hatch, coupe, "--json"});
    ASSERT_EQ(o.status, 0) << o.err;
    const auto json = nlohmann::json::parse(o.out);
    ASSERT_EQ(json.at("sessions").size(), 2U);
    for (const auto& session : json["sessions"]) {
        for (const char* key : {"file", "driver", "car", "start_utc", "warnings", "channels", "laps"})
            EXPECT_TRUE(session.contains(key)) << key;
        for (const auto& channel : session["channels"])
            for (const char* key : {"name", "meaning", "unit", "rate_hz"})
                EXPECT_TRUE(channel.contains(key)) << key;
        for (const auto& lap : session["laps"])
            for (const char* key : {"number", "kind", "clean", "start_s", "time_s", "time_sd_s"})
                EXPECT_TRUE(lap.contains(key)) << key;
    }
    const auto& laps = json["sessions"][0]["laps"];
    EXPECT_EQ(laps[0]["kind"], "out");
    EXPECT_EQ(laps[4]["clean"], false) << "lap 4 is in traffic";
    EXPECT_NEAR(laps[6]["time_s"].get<double>(), 90.434, 0.06);
}

// What the sheet says is looked at before it is painted.
TEST(CommandLine, TheSheetSaysWhySetupsAndAll) {
    lapwright::sheet::Sheet written;
    SheetRequest request;
    const SheetWriter keep = [&](const lapwright::sheet::Sheet& sheet, const SheetRequest& asked) {
        written = sheet;
        request = asked;
        return lapwright::base::Result<void>();
    };
    std::ostringstream out;
    std::ostringstream err;
    const int status =
        run({"sheet", hatch, coupe, "--setup-a", sample("plover-saturday-2.setup.json"), "--setup-b",
             sample("dunlin-saturday-2.setup.json"), "--mass-a", "1320", "--out", "wall.pdf", "--paper", "letter"},
            out, err, keep);
    ASSERT_EQ(status, 0) << err.str();
    EXPECT_EQ(request.path, "wall.pdf");
    EXPECT_TRUE(request.us_letter);
    ASSERT_EQ(written.findings.size(), 3U);
    EXPECT_TRUE(std::ranges::any_of(written.findings, [](const lapwright::sheet::Finding& finding) {
        return finding.claim.find("aero") != std::string::npos || finding.claim.find("downforce") != std::string::npos;
    })) << "A's wing is among the findings";
    const auto lists = [&](const std::string& name) {
        return std::ranges::any_of(written.causes, [&](const lapwright::sheet::Pair& pair) {
            return pair.name == name || pair.name == "of it " + name;
        });
    };
    for (const char* name : {"tyre grip", "downforce", "drag", "power", "mass", "aero", "driver & rest"})
        EXPECT_TRUE(lists(name)) << name;
    const auto mass = std::ranges::find(written.setup, "mass", &lapwright::sheet::Pair::name);
    ASSERT_NE(mass, written.setup.end());
    EXPECT_THAT(mass->text, HasSubstr("1320")) << "the named mass goes before the sheet's";
    EXPECT_THAT(mass->text, HasSubstr("1465"));
    EXPECT_THAT(written.side_a, HasSubstr("air"));
}

TEST(CommandLine, TheSheetWithoutSetupsKnowsForcesPerMassAlone) {
    namespace fs = std::filesystem;
    const fs::path folder = fs::temp_directory_path() / ("lapwright-alone-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    for (const std::string& file : {hatch, coupe})
        fs::copy_file(file, folder / fs::path(file).filename(), fs::copy_options::overwrite_existing);
    lapwright::sheet::Sheet written;
    std::ostringstream out;
    std::ostringstream err;
    const int status =
        run({"sheet", folder / fs::path(hatch).filename(), folder / fs::path(coupe).filename(), "--out", "wall.pdf"},
            out, err, [&](const lapwright::sheet::Sheet& sheet, const SheetRequest&) -> lapwright::base::Result<void> {
                written = sheet;
                return {};
            });
    fs::remove_all(folder);
    ASSERT_EQ(status, 0) << err.str();
    EXPECT_GE(written.causes.size(), 6U);
    EXPECT_EQ(std::ranges::find(written.causes, "mass", &lapwright::sheet::Pair::name), written.causes.end())
        << "mass is no cause of its own";
    EXPECT_TRUE(written.setup.empty());
    bool asked = false;
    const SheetWriter never = [&](const lapwright::sheet::Sheet&, const SheetRequest&) {
        asked = true;
        return lapwright::base::Result<void>();
    };
    EXPECT_EQ(run({"sheet", hatch, coupe, "--out", "wall.pdf", "--setup-b", "/nowhere.json"}, out, err, never), 1);
    EXPECT_THAT(err.str(), HasSubstr("/nowhere.json"));
    EXPECT_FALSE(asked) << "nothing is written";
}

TEST(CommandLine, CompareKeepsItsContract) {
    const Outcome o = call({"compare", hatch, coupe, "--track", sample("ternbank.track.json"), "--json"});
    ASSERT_EQ(o.status, 0) << o.err;
    const auto json = nlohmann::json::parse(o.out);
    for (const char* key : {"a", "b", "track", "gap_s", "gap_sd_s", "trace", "segments", "warnings"})
        EXPECT_TRUE(json.contains(key)) << key;
    const std::size_t n = json["trace"]["distance_m"].size();
    for (const char* key : {"speed_a_mps", "speed_b_mps", "gap_s", "gap_sd_s", "curvature_per_m"})
        EXPECT_EQ(json["trace"][key].size(), n) << key;
    double sum = 0.0;
    for (const auto& s : json["segments"]) {
        for (const char* key : {"name",
                                "kind",
                                "start_m",
                                "end_m",
                                "gain_s",
                                "gain_sd_s",
                                "entry_speed_a_mps",
                                "entry_speed_b_mps",
                                "min_speed_a_mps",
                                "min_speed_b_mps",
                                "exit_speed_a_mps",
                                "exit_speed_b_mps",
                                "top_speed_a_mps",
                                "top_speed_b_mps",
                                "braking_point_a_m",
                                "braking_point_b_m",
                                "full_throttle_a_m",
                                "full_throttle_b_m",
                                "min_speed_at_a_m",
                                "min_speed_at_b_m"})
            EXPECT_TRUE(s.contains(key)) << key;
        sum += s["gain_s"].get<double>();
    }
    EXPECT_NEAR(sum, json["gap_s"].get<double>(), 1e-9);
    EXPECT_NEAR(json["gap_s"].get<double>(), json["b"]["time_s"].get<double>() - json["a"]["time_s"].get<double>(),
                1e-9);
    EXPECT_NEAR(json["gap_s"].get<double>(), 0.460, 0.06);
    EXPECT_EQ(json["a"]["lap"], 6);
}

TEST(CommandLine, TheSameFileTwiceComparesTwoLapsOfOneSession) {
    const Outcome o = call({"compare", hatch, hatch, "--lap-a", "6", "--lap-b", "2", "--json"});
    ASSERT_EQ(o.status, 0) << o.err;
    const auto json = nlohmann::json::parse(o.out);
    EXPECT_EQ(json["a"]["lap"], 6);
    EXPECT_EQ(json["b"]["lap"], 2);
    EXPECT_GT(json["gap_s"].get<double>(), 0.0);
}

TEST(CommandLine, TracesGiveALapOverDistanceWithEveryChannel) {
    const Outcome json = call({"traces", coupe, "--lap", "3", "--json"});
    ASSERT_EQ(json.status, 0) << json.err;
    const auto lap = nlohmann::json::parse(json.out);
    EXPECT_EQ(lap["lap"], 3);
    const std::size_t points = lap["distance_m"].size();
    EXPECT_DOUBLE_EQ(lap["distance_m"][0], 0.0);
    EXPECT_NEAR(lap["elapsed_s"][points - 1], lap["time_s"].get<double>(), 1e-12);
    std::vector<std::string> names;
    for (const auto& channel : lap["channels"]) {
        names.push_back(channel["name"]);
        EXPECT_EQ(channel["values"].size(), points) << channel["name"];
    }
    EXPECT_THAT(names, testing::IsSupersetOf({"RPM", "Pedal", "Brake pressure"}));

    const Outcome csv = call({"traces", coupe, "--lap", "3", "--csv"});
    ASSERT_EQ(csv.status, 0) << csv.err;
    EXPECT_EQ(static_cast<std::size_t>(std::ranges::count(csv.out, '\n')), points + 1);
    const std::string header = csv.out.substr(0, csv.out.find("\r\n")); // RFC 4180, section 2.1
    EXPECT_EQ(header.find('\n'), std::string::npos);
    EXPECT_THAT(header, HasSubstr("RPM (Hz)"));
    EXPECT_THAT(call({"traces", coupe, "--lap", "99"}).err, HasSubstr("99"));
    EXPECT_EQ(call({"traces", coupe, "--lap", "99"}).status, 1);
}

TEST(CommandLine, TablesSpeakTheAskedUnits) {
    const Outcome metric = call({"compare", hatch, coupe});
    const Outcome us = call({"compare", hatch, coupe, "--units", "us"});
    ASSERT_EQ(metric.status, 0) << metric.err;
    EXPECT_THAT(metric.out, HasSubstr("km/h"));
    EXPECT_THAT(us.out, HasSubstr("mph"));
    EXPECT_THAT(us.out, HasSubstr("from ft"));
    EXPECT_THAT(metric.out, HasSubstr("A ahead by"));
}

TEST(CommandLine, WhatIsWrongComesInOneLineAndNothingElse) {
    for (const auto& [words, status] : std::vector<std::pair<std::vector<std::string>, int>>{
             {{"laps", "no/such.csv"}, 1},
             {{"compare", hatch, "no/such.csv"}, 1},
             {{"compare", hatch, coupe, "--track", "no/such.json"}, 1},
             {{"compare", hatch, coupe, "--lap-a", "99"}, 1}}) {
        const Outcome o = call(words);
        EXPECT_EQ(o.status, status);
        EXPECT_TRUE(o.out.empty());
        EXPECT_EQ(std::count(o.err.begin(), o.err.end(), '\n'), 1) << o.err;
        EXPECT_THAT(o.err, HasSubstr(" — "));
    }
    EXPECT_EQ(call({"compare", hatch}).status, 2);
    EXPECT_EQ(call({"compare", hatch, coupe, "--units", "furlongs"}).status, 2);
    EXPECT_EQ(call({"compare", hatch, coupe, "--step", "0"}).status, 2);
    EXPECT_EQ(call({"laps"}).status, 2);
    EXPECT_EQ(call({"--help"}).status, 0);
}

TEST(CommandLine, ASheetTakesThePlaceOfNothingButAnOlderSheet) {
    const std::filesystem::path folder(testing::TempDir());
    const std::string session = (folder / "lapwright-session.html").string(); // the name alone makes no sheet
    std::filesystem::copy_file(hatch, session, std::filesystem::copy_options::overwrite_existing);
    const auto size = std::filesystem::file_size(session);
    const Outcome own = call({"sheet", coupe, session, "--out", session});
    EXPECT_EQ(own.status, 1);
    EXPECT_THAT(own.err, HasSubstr("read by the same command"));
    const Outcome other = call({"sheet", coupe, hatch, "--out", session});
    EXPECT_EQ(other.status, 1);
    EXPECT_THAT(other.err, HasSubstr("is no sheet of this kind"));
    EXPECT_EQ(std::filesystem::file_size(session), size);
    std::ofstream(session, std::ios::trunc) << "<!DOCTYPE html>\n<html>somebody's page</html>\n";
    EXPECT_EQ(call({"sheet", coupe, hatch, "--out", session}).status, 1)
        << "a page of another hand is not ours to lose";
    std::filesystem::remove(session);
    ASSERT_EQ(call({"sheet", coupe, hatch, "--out", session}).status, 0);
    std::ofstream(session, std::ios::app) << "<!-- older -->";
    EXPECT_EQ(call({"sheet", coupe, hatch, "--out", session}).status, 0);
    std::ifstream renewed(session);
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(renewed), {}).find("older"), std::string::npos);
    std::filesystem::remove(session);
}

TEST(CommandLine, NoOptionTakesANumberThatIsNone) {
    for (const char* value : {"nan", "-nan", "inf", "1e999", "nan(1)"}) {
        EXPECT_EQ(call({"compare", hatch, coupe, "--step", value}).status, 2) << value;
        EXPECT_EQ(call({"causes", hatch, coupe, "--mass-a", value}).status, 2) << value;
        EXPECT_EQ(call({"causes", hatch, coupe, "--mass-b", value}).status, 2) << value;
        EXPECT_EQ(call({"compare", hatch, coupe, "--lap-a", value}).status, 2) << value;
    }
    EXPECT_EQ(call({"book", "--book", "", "list"}).status, 2) << "an empty name is not the person's own book";
}

TEST(CommandLine, TheSameFileByAnotherPathIsOneCar) {
    const std::filesystem::path other = std::filesystem::path(testing::TempDir()) / "lapwright-alias.csv";
    std::filesystem::remove(other);
    std::filesystem::create_symlink(std::filesystem::absolute(hatch), other);
    const Outcome o = call({"causes", hatch, other.string(), "--lap-b", "2", "--json"});
    ASSERT_EQ(o.status, 0) << o.err;
    const auto json = nlohmann::json::parse(o.out);
    EXPECT_EQ(json["total"]["causes"]["power"], 0.0);
    std::filesystem::remove(other);
}

TEST(CommandLine, ARecipeThatFitsNoFileIsSaid) {
    const std::string file = testing::TempDir() + "lapwright-other-recipe.json";
    std::ofstream(file) << call({"recipe", coupe}).out;
    const Outcome o = call({"laps", hatch, "--recipe", file});
    EXPECT_EQ(o.status, 1);
    EXPECT_THAT(o.err, HasSubstr("with other columns"));
    EXPECT_EQ(call({"laps", hatch, coupe, "--recipe", file}).status, 0) << "it fits one of them";
    std::filesystem::remove(file);
}

TEST(CommandLine, ARecordingWithoutLapsIsAResult) {
    const std::string file = testing::TempDir() + "lapwright-no-laps.csv";
    {
        std::ofstream out(file);
        out << "Time (s),Latitude (deg),Longitude (deg),Speed (km/h)\n";
        for (int i = 0; i < 400; ++i) // along a road, never back
            out << 0.1 * i << "," << 50.0 + 1e-5 * i << "," << 8.0 + 2e-6 * i << ",40.5\n";
    }
    const Outcome o = call({"laps", file, "--json"});
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_FALSE(o.err.empty());
    const auto session = nlohmann::json::parse(o.out)["sessions"][0];
    EXPECT_TRUE(session["laps"].empty());
    EXPECT_EQ(session["channels"].size(), 3U);
    EXPECT_EQ(session["warnings"].back()["code"], "no_laps");
    EXPECT_THAT(call({"laps", file}).out, HasSubstr("no laps: "));
    EXPECT_EQ(call({"compare", file, hatch}).status, 1);
    std::filesystem::remove(file);
}

TEST(CommandLine, NoControlCodeReachesATerminal) {
    const std::string file = testing::TempDir() + "lapwright-\x1b[2J-codes.csv";
    std::ofstream(file) << "Time,\x1b]0;title\x07,\xc2\x9b"
                           "31m\n0,1,2\n1,2,3\n";
    const Outcome o = call({"laps", file});
    for (const std::string& text : {o.out, o.err}) {
        EXPECT_EQ(text.find('\x1b'), std::string::npos);
        EXPECT_EQ(text.find('\x07'), std::string::npos);
        EXPECT_EQ(text.find("\xc2\x9b"), std::string::npos);
    }
    std::filesystem::remove(file);
}

TEST(CommandLine, ATrialNeedsTheBaselineOnBothSides) {
    const std::string changed = sample("plover-saturday-3-less-wing.tsv");
    const Outcome twice = call({"trial", hatch, changed, hatch, "--changed", "2"});
    EXPECT_EQ(twice.status, 1);
    EXPECT_THAT(twice.err, HasSubstr("is there twice"));
    // One baseline stands for the run before and the run after, an altitude apart: only the arithmetic is looked at.
    std::stringstream rows;
    rows << std::ifstream(hatch).rdbuf();
    std::string text = rows.str();
    text.replace(text.find(",12.25,"), 7, ",12.26,");
    const std::string after = testing::TempDir() + "lapwright-after.csv";
    std::ofstream(after) << text;
    const Outcome o = call({"trial", hatch, changed, after, "--changed", "2", "--json"});
    std::filesystem::remove(after);
    ASSERT_EQ(o.status, 0) << o.err;
    const auto json = nlohmann::json::parse(o.out);
    EXPECT_NEAR(json["lap"]["gain_s"].get<double>(), -0.63, 0.15) << "less wing costs time here";
    double sum = 0.0;
    for (const auto& s : json["segments"])
        sum += s["gain_s"].get<double>();
    EXPECT_NEAR(sum, json["lap"]["gain_s"].get<double>(), 1e-9);
    const Outcome no_return = call({"trial", hatch, changed, "--changed", "2"});
    EXPECT_EQ(no_return.status, 1);
    EXPECT_THAT(no_return.err, HasSubstr("drive the baseline once more"));
}

TEST(CommandLine, ARecipeCorrectsTheColumnsOfAFile) {
    const Outcome written = call({"recipe", hatch});
    ASSERT_EQ(written.status, 0) << written.err;
    auto recipe = nlohmann::json::parse(written.out);
    // Somebody insists that the brake pedal is a throttle and that there is no throttle.
    for (auto& column : recipe["columns"]) {
        if (column["header"].get<std::string>().starts_with("Throttle"))
            column = {{"header", column["header"]}, {"use", "skip"}};
        else if (column["header"].get<std::string>().starts_with("Brake"))
            column["meaning"] = "throttle";
    }
    const std::string file = testing::TempDir() + "lapwright-recipe-test.json";
    std::ofstream(file) << recipe.dump();
    const Outcome o = call({"laps", hatch, coupe, "--recipe", file, "--json"});
    ASSERT_EQ(o.status, 0) << o.err;
    const auto sessions = nlohmann::json::parse(o.out)["sessions"];
    std::string throttle;
    for (const auto& channel : sessions[0]["channels"])
        if (channel["meaning"] == "throttle") throttle = channel["name"];
    EXPECT_TRUE(throttle.starts_with("Brake")) << throttle;
    // The other file has another shape: the recipe is not for it.
    for (const auto& channel : sessions[1]["channels"]) {
        const bool brake = std::string(channel["name"]).starts_with("Brake");
        EXPECT_FALSE(brake && channel["meaning"] == "throttle");
    }
    EXPECT_EQ(call({"laps", hatch, "--recipe", "no/such.json"}).status, 1);
}

TEST(Aligned, ARowIsALineWhateverItsCellsHold) {
    EXPECT_EQ(aligned({{"driver", "car"}, {"Mara\nQuill", "a\tb\r"}}, 2), "driver      car\nMara Quill  a b\n");
}

TEST(Aligned, CountsCharactersNotBytes) {
    EXPECT_EQ(aligned({{"é", "1"}, {"ab", "22"}}, 1), "é    1\nab  22\n");
}
