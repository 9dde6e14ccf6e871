// SPDX-License-Identifier: GPL-3.0-or-later
// Laps behind A and B: chosen by key and by mark, shown with their letters, undone, refused with a sentence; the spread
// of clean laps and the driven lines beside them.
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/compare/further_row.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/plots/track_map.h"
#include "ui/window/notices.h"

#include <gmock/gmock.h>

using namespace lapwright;

namespace {

class LapsBehind : public fixture::PairedWindow {
  protected:
    void SetUp() override {
        PairedWindow::SetUp();
        go_to_sessions();
    }
    pages::LapList& laps(std::size_t card) { return window->sessions_page().cards().at(card)->laps(); }
    void take_behind(int lap) {
        press(Qt::Key_Home);
        while (laps(0).current_lap() != lap)
            press(Qt::Key_Down);
        press(Qt::Key_C);
    }
    [[nodiscard]] QStringList words() { return window->compare_page().further_row().words(); }
    [[nodiscard]] bool wait_for_laps(qsizetype count) {
        return fixture::wait_for([this, count] { return words().size() == count; });
    }
    [[nodiscard]] QImage plots() { return window->compare_page().stack().grab().toImage(); }
};

} // namespace

TEST_F(LapsBehind, AreChosenByKeyAndMarkAndShownWithTheirGapToA) {
    take_behind(1);
    ASSERT_TRUE(wait_for_laps(1));
    QTest::mouseClick(&laps(1), Qt::LeftButton, {}, laps(1).further_rect(3).center());
    ASSERT_TRUE(wait_for_laps(2));
    EXPECT_THAT(words()[0].toStdString(),
                testing::AllOf(testing::HasSubstr("C  lap 1"), testing::HasSubstr("+0.50 ±0.04 s to A")));
    EXPECT_THAT(words()[1].toStdString(), testing::HasSubstr("D  lap 3"));
    EXPECT_THAT(laps(0).row_words(1).toStdString(), testing::HasSubstr("behind A and B as C"));
    key(Qt::Key_2, Qt::ControlModifier);
    const QImage with = plots();
    key(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(wait_for_laps(1));
    key(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(wait_for_laps(0));
    EXPECT_FALSE(window->compare_page().further_row().isVisible());
    EXPECT_NE(plots(), with);
}

TEST_F(LapsBehind, FourAtMostAndTheSameKeyTakesOneAway) {
    for (const int lap : {1, 3, 4, 5})
        take_behind(lap);
    ASSERT_TRUE(wait_for_laps(4));
    take_behind(6);
    EXPECT_TRUE(window->notices().isVisible());
    take_behind(3);
    ASSERT_TRUE(wait_for_laps(3));
    EXPECT_THAT(words()[1].toStdString(), testing::HasSubstr("D  lap 4")) << "letters follow";
}

TEST_F(LapsBehind, OneThatIsRefusedIsASentenceAndTheOthersStay) {
    take_behind(2);
    take_behind(1);
    ASSERT_TRUE(wait_for_laps(1));
    EXPECT_THAT(window->notices().sentences().join(QLatin1Char('\n')).toStdString(),
                testing::HasSubstr("lap 2 leaves the track"));
}

TEST_F(LapsBehind, ClosingTheSessionTakesItsLapsAway) {
    take_behind(1);
    ASSERT_TRUE(wait_for_laps(1));
    window->sessions().edit([this](workspace::OpenSessions& open) { open.remove(key_of("one.csv")); });
    EXPECT_TRUE(window->sessions().now().further().empty());
}

TEST_F(LapsBehind, SpreadAndLinesAreSeenAndRemembered) {
    key(Qt::Key_2, Qt::ControlModifier);
    const QImage before = plots();
    key(Qt::Key_U, Qt::ShiftModifier);
    const QImage with_spread = plots();
    EXPECT_NE(with_spread, before);
    const QImage map_before = window->compare_page().map().grab().toImage();
    key(Qt::Key_L, Qt::ShiftModifier);
    EXPECT_NE(plots(), with_spread) << "a panel of the difference";
    EXPECT_NE(window->compare_page().map().grab().toImage(), map_before);
    window->close();
    EXPECT_TRUE(settings.value(QStringLiteral("compare/spread")).toBool());
    EXPECT_TRUE(settings.value(QStringLiteral("compare/lines")).toBool());
}

TEST_F(LapsBehind, RightAndLeftGoToTheLapsOfTheOtherSession) {
    ASSERT_TRUE(laps(0).hasFocus());
    press(Qt::Key_Right);
    EXPECT_TRUE(laps(1).hasFocus());
    press(Qt::Key_Right);
    EXPECT_TRUE(laps(1).hasFocus()) << "there is no other";
    press(Qt::Key_Left);
    EXPECT_TRUE(laps(0).hasFocus());
}
