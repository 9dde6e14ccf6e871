// SPDX-License-Identifier: GPL-3.0-or-later
// Laps set aside and counted by hand on a session's card, and undone; laps sorted.
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/reason_field.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QLineEdit>
#include <gmock/gmock.h>

using namespace lapwright;

namespace {

class JudgingTest : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        PairedWindowWithBook::SetUp();
        go_to_sessions();
        ASSERT_EQ(window->book().finish(), 0U);
        fixture::settle();
        ASSERT_EQ(QApplication::focusWidget(), &card(0).laps()) << "where the page begins";
    }
    pages::SessionCard& card(std::size_t i) { return *window->sessions_page().cards().at(i); }
    [[nodiscard]] workspace::SessionPointer session() { return window->sessions().now().entries().front().session; }
    void go_to_lap(int number) {
        press(Qt::Key_Home);
        for (int i = 0; i < card(0).laps().rows() && card(0).laps().current_lap() != number; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(card(0).laps().current_lap(), number);
    }
};

} // namespace

TEST_F(JudgingTest, TheFastestLapIsSetAsideWithAReasonAndAnotherIsCompared) {
    const int fastest = session()->fastest()->number;
    ASSERT_EQ(window->sessions().now().picks().a->lap, fastest);
    go_to_lap(fastest);
    press(Qt::Key_T);
    ASSERT_EQ(QApplication::focusWidget(), &card(0).reason().line());
    type(QStringLiteral("cut the chicane"));
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), &card(0).laps());
    EXPECT_FALSE(session()->lap(fastest)->clean);
    EXPECT_THAT(card(0).laps().accessibleName().toStdString(),
                testing::HasSubstr("set aside by hand: cut the chicane"));
    EXPECT_NE(window->sessions().now().picks().a->lap, fastest);
    ASSERT_EQ(window->book().finish(), 0U);
    auto book = std::move(book::Book::open(book_file())).value();
    const auto kept = book::search(book);
    for (const auto& summary : *kept)
        EXPECT_EQ(summary.clean_laps, summary.source.file_name == "one.csv" ? 4 : 5) << summary.source.file_name;
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(session()->lap(fastest)->clean);
    EXPECT_EQ(window->sessions().now().picks().a->lap, fastest);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_FALSE(session()->lap(fastest)->clean);
    press(Qt::Key_T);
    EXPECT_TRUE(session()->lap(fastest)->clean) << "left to the program again, without a question";
}

TEST_F(JudgingTest, ALapThatTheProgramSetAsideCounts) {
    const auto& laps = session()->laps;
    const auto aside =
        std::ranges::find_if(laps, [](const lap::Lap& lap) { return lap.kind == lap::LapKind::flying && !lap.clean; });
    ASSERT_NE(aside, laps.end());
    const int number = aside->number;
    go_to_lap(number);
    press(Qt::Key_T);
    press(Qt::Key_Return);
    EXPECT_TRUE(session()->lap(number)->clean);
    EXPECT_THAT(card(0).laps().accessibleName().toStdString(), testing::HasSubstr("by hand"));
}

TEST_F(JudgingTest, EscapeLeavesALapAndAnOutLapIsNotJudged) {
    const int fastest = session()->fastest()->number;
    go_to_lap(fastest);
    press(Qt::Key_T);
    type(QStringLiteral("traffic"));
    press(Qt::Key_Escape);
    EXPECT_TRUE(session()->lap(fastest)->clean);
    press(Qt::Key_Home);
    press(Qt::Key_T);
    EXPECT_EQ(QApplication::focusWidget(), &card(0).laps());
    EXPECT_FALSE(window->edits().canUndo());
}

TEST_F(JudgingTest, LapsAreSortedByTimeAndTheLapWithTheFocusKeepsIt) {
    const int fastest = session()->fastest()->number;
    go_to_lap(fastest);
    key(Qt::Key_F);
    EXPECT_EQ(card(0).laps().current_lap(), fastest);
    press(Qt::Key_Home);
    EXPECT_EQ(card(0).laps().current_lap(), fastest) << "the first";
    EXPECT_THAT(card(1).laps().row_words(0).toStdString(), testing::HasSubstr("fastest"));
    EXPECT_THAT(card(0).laps().row_words(card(0).laps().rows() - 1).toStdString(), testing::HasSubstr("in lap"));
    QTest::mouseClick(&card(0).laps(), Qt::LeftButton, {}, card(0).laps().mark_rect(-1, false).center());
    press(Qt::Key_Home);
    EXPECT_THAT(card(0).laps().accessibleName().toStdString(), testing::HasSubstr("out lap"));
    EXPECT_FALSE(window->actions().laps_by_time->isChecked());
}
