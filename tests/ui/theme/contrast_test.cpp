// SPDX-License-Identifier: GPL-3.0-or-later
// WCAG 2.1: 4.5:1 for text (1.4.3), 3:1 for marks (1.4.11).  The formula is held to published values first.
#include "ui/theme/palette.h"

#include <gtest/gtest.h>

using namespace lapwright::theme;

TEST(Contrast, AgreesWithPublishedValues) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-6);
    EXPECT_NEAR(contrast(QColor(0, 0, 255), Qt::white), 8.59, 0.005); // W3C, WCAG 2.1 techniques
    EXPECT_NEAR(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
    EXPECT_DOUBLE_EQ(contrast(Qt::red, Qt::white), contrast(Qt::white, Qt::red));
}

TEST(Contrast, TextAndMarksReadOnEverythingTheyStandOn) {
    for (const Palette* p : {&paper(), &evening()}) {
        SCOPED_TRACE(p->dark ? "evening" : "paper");
        for (const QColor& ground : {p->paper, p->card, p->chosen}) {
            for (const QColor& text : {p->ink, p->quiet, p->a, p->b, p->third, p->fourth})
                EXPECT_GE(contrast(text, ground), 4.5);
            EXPECT_GE(contrast(p->edge, ground), 3.0);
            EXPECT_GE(contrast(p->ribbon, ground), 3.0);
        }
        for (const QColor& mark : {p->a, p->b, p->third, p->fourth, p->ink, p->ribbon})
            EXPECT_GE(contrast(mark, p->tint), 3.0);
        EXPECT_GE(contrast(p->ink, p->notice), 4.5);
        EXPECT_GE(contrast(ink_on(p->a), p->a), 4.5);
        EXPECT_GE(contrast(ink_on(p->b), p->b), 4.5);
        EXPECT_GE(contrast(ink_on(p->third), p->third), 4.5);
        EXPECT_GE(contrast(ink_on(p->fourth), p->fourth), 4.5);
    }
}

TEST(Contrast, TheSystemsLookFollowsItsWindowColour) {
    QPalette desktop;
    desktop.setColor(QPalette::Window, QColor(0x20, 0x20, 0x20));
    EXPECT_TRUE(palette_for(Choice::system, desktop).dark);
    EXPECT_FALSE(palette_for(Choice::light, desktop).dark);
    desktop.setColor(QPalette::Window, QColor(0xEE, 0xEE, 0xEE));
    EXPECT_FALSE(palette_for(Choice::system, desktop).dark);
    EXPECT_TRUE(palette_for(Choice::dark, desktop).dark);
}
