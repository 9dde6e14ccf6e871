// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/file_name.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace lapwright::sheet {

TEST(SheetFileName, SaysTrackDateAndDrivers) {
    EXPECT_EQ(file_name_for("Ternbank", "2026-05-16", "Ylva Tarnby", "Odran Pell"),
              "Ternbank 2026-05-16 Ylva Tarnby - Odran Pell");
    EXPECT_EQ(file_name_for("", "2026-05-16", "Ylva Tarnby", "Ylva Tarnby"), "2026-05-16 Ylva Tarnby");
    EXPECT_EQ(file_name_for("Ternbank", "", "", "Odran Pell"), "Ternbank Odran Pell");
    EXPECT_EQ(file_name_for("", "", "", ""), "debrief");
}

TEST(SheetFileName, IsOneThatEveryFileSystemTakes) {
    std::mt19937 random(20261130);
    const std::string letters = "aZ0 .-/\\:*?\"<>|$`'&;!#~%\n\t\x01é";
    for (int round = 0; round < 3000; ++round) {
        std::string words;
        for (auto i = random() % 200; i > 0; --i)
            words += letters[random() % letters.size()];
        const std::string name = file_name_for(words, "", words, "b");
        EXPECT_EQ(name.find_first_of("<>:\"/\\|?*%$`'&;!#~"), std::string::npos);
        EXPECT_TRUE(std::ranges::none_of(name, [](char c) { return static_cast<unsigned char>(c) < 0x20U; }));
        EXPECT_FALSE(name.empty() || name.front() == '.' || name.front() == '-' || name.back() == '.' ||
                     name.back() == ' ');
        EXPECT_LE(name.size(), 120U);
    }
}

} // namespace lapwright::sheet
