// SPDX-License-Identifier: GPL-3.0-or-later
// Who drove what, and whose car is mine: the setup sheet beside a
// file, the titles in every output, and whom "try next" speaks to.
#include "app/commands/commands.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <unistd.h>

using namespace lapwright;
using nlohmann::json;
using testing::AnyOf;
using testing::HasSubstr;
using testing::Not;

namespace {

namespace fs = std::filesystem;

const std::string plover = "Ylva Tarnby — Plover, white hatch with splitter and wing";
const std::string dunlin = "Odran Pell — Dunlin, dark red coupe with a small lip";

// Both sample sessions in a folder of their own: Plover's file names nobody, its setup sheet does.
class WhoseCar : public testing::Test {
  protected:
    void SetUp() override {
        folder_ = fs::temp_directory_path() / ("lapwright-whose-" + std::to_string(::getpid()));
        fs::create_directories(folder_);
        for (const char* name : {"plover-saturday-2.csv", "plover-saturday-2.setup.json", "dunlin-saturday-2.txt"})
            fs::copy_file(fs::path(TEST_SOURCE_DIR) / "../sample-sessions" / name, path(name),
                          fs::copy_options::overwrite_existing);
    }
    void TearDown() override { fs::remove_all(folder_); }

    [[nodiscard]] std::string path(const std::string& name) const { return (folder_ / name).string(); }
    [[nodiscard]] std::string hatch() const { return path("plover-saturday-2.csv"); }
    [[nodiscard]] std::string coupe() const { return path("dunlin-saturday-2.txt"); }
    [[nodiscard]] std::string hatch_sheet() const { return path("plover-saturday-2.setup.json"); }

    std::string call(const std::vector<std::string>& words, int expected = 0) {
        std::ostringstream out;
        std::ostringstream err;
        const auto keep = [this](const sheet::Sheet& sheet, const commands::SheetRequest&) {
            sheet_ = sheet;
            return base::Result<void>();
        };
        EXPECT_EQ(commands::run(words, out, err, keep), expected) << err.str();
        err_ = err.str();
        return out.str();
    }
    // To whom the advice of all findings speaks: "A", "B", "AB", or nothing.
    static std::string spoken_to(const json& document) {
        bool a = false;
        bool b = false;
        for (const json& finding : document.at("findings")) {
            if (finding.at("try_next").is_null()) continue;
            const auto words = finding["try_next"].get<std::string>();
            a = a || words.starts_with("A:");
            b = b || words.starts_with("B:");
        }
        return std::string(a ? "A" : "") + (b ? "B" : "");
    }

    fs::path folder_;
    std::string err_;
    sheet::Sheet sheet_;
};

} // namespace

TEST_F(WhoseCar, TheSheetBesideTheFileNamesItEverywhere) {
    EXPECT_THAT(call({"laps", hatch()}), HasSubstr(plover));
    EXPECT_THAT(err_, HasSubstr("setup read from " + hatch_sheet()));
    EXPECT_EQ(json::parse(call({"laps", "--json", hatch()}))["sessions"][0]["driver"], "Ylva Tarnby");
    for (const bool swapped : {false, true}) {
        const std::string& a = swapped ? coupe() : hatch();
        const std::string& b = swapped ? hatch() : coupe();
        const std::string title_a = swapped ? dunlin : plover;
        const std::string title_b = swapped ? plover : dunlin;
        EXPECT_THAT(call({"compare", a, b}), AllOf(HasSubstr("A  " + title_a), HasSubstr("B  " + title_b)));
        EXPECT_THAT(err_, HasSubstr("setup read from " + hatch_sheet()));
        EXPECT_THAT(err_, Not(HasSubstr("dunlin"))) << "no sheet lies beside that one";
        const json compared = json::parse(call({"compare", "--json", a, b}));
        EXPECT_EQ(compared[swapped ? "b" : "a"]["car"], "Plover, white hatch with splitter and wing");
        if (swapped) {
            EXPECT_THAT(call({"causes", a, b}), AllOf(HasSubstr("A  " + title_a), HasSubstr("B  " + title_b)));
            continue;
        }
        const json causes = json::parse(call({"causes", "--json", a, b}));
        EXPECT_EQ(causes["a"]["driver"], "Ylva Tarnby");
        EXPECT_EQ(causes["cars"]["a"]["mass_kg"]["decided_by"], "setup") << "its mass is read as well";
        call({"sheet", a, b, "--out", path("wall.pdf")});
        EXPECT_THAT(sheet_.side_a, HasSubstr(title_a.substr(0, 20)));
        EXPECT_THAT(sheet_.side_b, HasSubstr(title_b.substr(0, 20)));
    }
}

// Either car is asked by itself: with A and B swapped the answers change places, and without masses areas are on a
// tonne.
TEST_F(WhoseCar, HowMuchWingIsAskedOfEitherCar) {
    const json there = json::parse(call({"wing", "--json", hatch(), coupe()}));
    const json back = json::parse(call({"wing", "--json", coupe(), hatch()}));
    ASSERT_FALSE(there["a"]["steps"].empty());
    for (std::size_t k = 0; k < there["a"]["steps"].size(); ++k)
        EXPECT_NEAR(there["a"]["steps"][k]["lap_s"]["value"].get<double>(),
                    back["b"]["steps"][k]["lap_s"]["value"].get<double>(), 0.03);
    EXPECT_TRUE(there["on_a_tonne"]) << "the coupe's mass is unknown";
    EXPECT_THAT(call({"wing", hatch(), coupe(), "--drag-per-downforce", "0.3"}),
                AllOf(HasSubstr("0.30 ±0.06 m² of drag"), HasSubstr("\nA"), HasSubstr("\nB"), HasSubstr("on a tonne")));
    EXPECT_TRUE(there["other_track"].is_null());
    // Of both cars on the line of another recording; of the same track where that is all there is.
    const json moved = json::parse(call({"wing", "--json", hatch(), coupe(), "--track-of", coupe()}));
    EXPECT_NEAR(moved["other_track"]["length_m"].get<double>(), 3858.0, 30.0);
    const auto first = [](const json& wing) { return wing["b"]["steps"][0]["lap_s"]["value"].get<double>(); };
    EXPECT_NEAR(first(moved), first(there), 0.25 * std::abs(first(there)) + 0.1);
    EXPECT_NE(first(moved), first(there));
    EXPECT_THAT(call({"wing", hatch(), coupe(), "--track-of", coupe()}), HasSubstr("On the track and the line of "));
    call({"wing", hatch(), coupe(), "--track-of", path("nowhere.csv")}, 1);
    call({"wing", hatch(), coupe(), "--drag-per-downforce", "7"}, 2);
    call({"wing", hatch(), path("nowhere.csv")}, 1);
    call({"wing", hatch(), hatch(), "--lap-a", "1", "--lap-b", "2"}); // one car, two laps
}

TEST_F(WhoseCar, ASheetThatWasNamedGoesBeforeTheOneBesideTheFile) {
    std::ofstream(path("other.json")) << R"({"driver": "Wren Alder", "mass_kg": 1000})";
    const json causes = json::parse(call({"causes", "--json", hatch(), coupe(), "--setup-a", path("other.json")}));
    EXPECT_EQ(causes["a"]["driver"], "Wren Alder");
    EXPECT_TRUE(causes["a"]["car"].is_null()) << "nothing is taken from the other sheet";
    EXPECT_NEAR(causes["cars"]["a"]["mass_kg"]["value"].get<double>(), 1000.0, 1e-9);
    EXPECT_THAT(err_, Not(HasSubstr("setup read from " + hatch_sheet())));
    // And its names go before the file's.
    EXPECT_EQ(json::parse(call({"causes", "--json", hatch(), coupe(), "--setup-b", path("other.json")}))["b"]["driver"],
              "Wren Alder");
}

TEST_F(WhoseCar, ADamagedSheetBesideTheFileIsToldAndKeepsNothingOut) {
    for (const char* damaged : {"{", "[]", "{\"mass_kg\": 1e999}", "{\"car\": 7, \"items\": 3}", ""}) {
        std::ofstream(hatch_sheet()) << damaged;
        EXPECT_THAT(call({"compare", hatch(), hatch(), "--lap-a", "5", "--lap-b", "6"}),
                    HasSubstr("A  plover-saturday-2.csv, lap 5"))
            << damaged;
        EXPECT_THAT(err_, AllOf(HasSubstr(hatch_sheet()), HasSubstr("without a setup sheet"))) << damaged;
    }
}

TEST_F(WhoseCar, TryNextSpeaksToMyCarAsTheBookSaysUnlessItIsNamed) {
    const std::string book = path("book.sqlite");
    const json known =
        json::parse(call({"book", "--book", book, "my-car", "PLOVER, white hatch with splitter and wing", "--json"}));
    EXPECT_EQ(known["car"], "PLOVER, white hatch with splitter and wing");
    for (const bool swapped : {false, true}) {
        const std::string& a = swapped ? coupe() : hatch();
        const std::string& b = swapped ? hatch() : coupe();
        const std::string mine = swapped ? "B" : "A";
        const json by_book = json::parse(call({"causes", "--json", a, b, "--book", book}));
        EXPECT_EQ(by_book["my_car"], swapped ? "b" : "a");
        EXPECT_EQ(spoken_to(by_book), mine);
        EXPECT_THAT(err_, HasSubstr("\"try next\" speaks to " + mine));
        if (!swapped) continue;
        EXPECT_THAT(call({"causes", a, b, "--book", book}), HasSubstr("\"Try next\" speaks to " + mine + "."));
        const json by_option = json::parse(call({"causes", "--json", a, b, "--book", book, "--my-car", "a"}));
        EXPECT_EQ(by_option["my_car"], "a");
        EXPECT_THAT(spoken_to(by_option), AnyOf("A", ""));
        call({"sheet", a, b, "--book", book, "--out", path("wall.pdf")});
        for (const sheet::Finding& finding : sheet_.findings)
            EXPECT_FALSE(finding.try_next.starts_with(swapped ? "A:" : "B:")) << finding.try_next;
    }
    call({"book", "--book", book, "my-car", "--forget"});
    EXPECT_TRUE(json::parse(call({"causes", "--json", hatch(), coupe(), "--book", book}))["my_car"].is_null());
    EXPECT_THAT(call({"book", "--book", book, "my-car"}), HasSubstr("does not know which car is yours"));
}

TEST_F(WhoseCar, ABookThatCannotBeReadIsRefusedWhereItWasNamed) {
    std::ofstream(path("no-book")) << "not a book";
    EXPECT_EQ(call({"causes", hatch(), coupe(), "--book", path("no-book")}, 1), "");
    EXPECT_THAT(err_, HasSubstr("no-book"));
    EXPECT_EQ(call({"causes", hatch(), coupe(), "--book", path("nowhere")}, 1), "");
    EXPECT_FALSE(fs::exists(path("nowhere"))) << "none is begun";
}
