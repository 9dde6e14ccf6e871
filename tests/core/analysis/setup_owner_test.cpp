// SPDX-License-Identifier: GPL-3.0-or-later
// Whose a setup sheet is, whatever the order of the sessions.
#include "core/analysis/setup_owner.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <deque>
#include <random>

using namespace lapwright;

namespace {

struct Open {
    std::deque<recording::Recording> recordings;
    std::vector<analysis::SetupCandidate> sessions;

    void add(const std::string& file, const std::string& driver, const std::string& car) {
        recordings.emplace_back();
        recordings.back().driver = driver;
        recordings.back().car = car;
        sessions.push_back({file, &recordings.back()});
    }
};

car::SetupSheet sheet_of(const std::string& driver, const std::string& car) {
    car::SetupSheet sheet;
    sheet.driver = driver;
    sheet.car = car;
    return sheet;
}

} // namespace

TEST(SetupOwner, TheFilesNameGoesBeforeTheNamesInIt) {
    Open open;
    open.add("/a/run.csv", "Wren Alder", "Plover");
    open.add("/a/other.csv", "", "");
    const auto sheet = sheet_of("Wren Alder", "Plover");
    EXPECT_EQ(analysis::setup_owner("/b/other.setup.json", sheet, open.sessions, false), 1U);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet, open.sessions, false), 0U);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("", ""), open.sessions, false), std::nullopt);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("wren alder", ""), open.sessions, true), 0U);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("Wren Alder", "Dunlin"), open.sessions, true),
              std::nullopt);
}

TEST(SetupOwner, TheOnlySessionTakesWhatDoesNotContradict) {
    Open open;
    open.add("/a/run.csv", "", "Plover");
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("Wren Alder", ""), open.sessions, false), 0U);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("", "Dunlin"), open.sessions, false), std::nullopt);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("", "Dunlin"), open.sessions, true), 0U);
    EXPECT_EQ(analysis::setup_owner("/b/today.json", sheet_of("", ""), {}, true), std::nullopt);
}

// It never depends on the order in which the sessions stand.
TEST(SetupOwner, IsTheSameWhateverTheOrder) {
    constexpr std::array drivers{"", "Wren Alder", "Odran Pell"};
    constexpr std::array cars{"", "Plover", "Dunlin"};
    std::mt19937 engine(11);
    for (int i = 0; i < 500; ++i) {
        Open open;
        const unsigned count = 1 + engine() % 4;
        for (unsigned k = 0; k < count; ++k)
            open.add("/a/" + std::string(1, static_cast<char>('a' + engine() % 4)) + ".csv", drivers[engine() % 3],
                     cars[engine() % 3]);
        const auto sheet = sheet_of(drivers[engine() % 3], cars[engine() % 3]);
        const std::string file = engine() % 2 == 0 ? "/b/a.setup.json" : "/b/today.json";
        const bool together = engine() % 2 == 0;
        const auto owner = analysis::setup_owner(file, sheet, open.sessions, together);
        std::vector<analysis::SetupCandidate> turned = open.sessions;
        std::ranges::reverse(turned);
        const auto other = analysis::setup_owner(file, sheet, turned, together);
        ASSERT_EQ(owner.has_value(), other.has_value());
        if (owner) {
            EXPECT_EQ(open.sessions[*owner].recording, turned[*other].recording);
        }
    }
}
