// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/label_layout.h"

#include <gtest/gtest.h>
#include <random>

using namespace lapwright::plots;

namespace {

double measure(const QString& text) {
    return 7.0 * static_cast<double>(text.size());
}

QString shorten(const QString& text, double room) {
    return text.left(qMax(0, static_cast<int>(room / 7.0) - 1)) + QStringLiteral("…");
}

} // namespace

TEST(LabelLayout, NamesNeverTouchAndNeverLeaveTheRoom) {
    std::mt19937 engine(3);
    std::uniform_real_distribution<double> anywhere(0.0, 800.0);
    std::uniform_int_distribution<int> letters(2, 18);
    for (int round = 0; round < 200; ++round) {
        std::vector<Name> names;
        for (int i = 0; i < 14; ++i) {
            names.push_back({QString(letters(engine), QLatin1Char('n')), anywhere(engine), anywhere(engine)});
        }
        const auto placed = place_names(names, 0.0, 800.0, 2, 6.0, measure, shorten);
        EXPECT_FALSE(placed.empty());
        for (std::size_t i = 0; i < placed.size(); ++i) {
            EXPECT_GE(placed[i].left, 0.0);
            EXPECT_LE(placed[i].left + placed[i].width, 800.0 + 1e-9);
            EXPECT_LE(placed[i].left, names[placed[i].index].anchor);
            EXPECT_GE(placed[i].left + placed[i].width, names[placed[i].index].anchor);
            for (std::size_t k = 0; k < i; ++k) {
                if (placed[k].row != placed[i].row) continue;
                const bool apart = placed[k].left + placed[k].width + 6.0 <= placed[i].left + 1e-9 ||
                                   placed[i].left + placed[i].width + 6.0 <= placed[k].left + 1e-9;
                EXPECT_TRUE(apart);
            }
        }
    }
}

TEST(LabelLayout, TheMoreImportantNameStays) {
    const std::vector<Name> names{{QStringLiteral("aaaaaaaaaa"), 50.0, 1.0}, {QStringLiteral("bbbbbbbbbb"), 52.0, 2.0}};
    const auto placed = place_names(names, 0.0, 100.0, 1, 6.0, measure, shorten);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].index, 1U);
    EXPECT_EQ(placed[0].text, names[1].text);
}
