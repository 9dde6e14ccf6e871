// SPDX-License-Identifier: GPL-3.0-or-later
// The panels of the plots as a person works on them: folded, resized, moved, and further channels gone on to while
// speed and gap stay in view; notices that take no room of a page.
#include "tests/ui/fixture/paired_window.h"
#include "ui/plots/plot_stack.h"
#include "ui/plots/stack_looks.h"

#include <gmock/gmock.h>
#include <qcustomplot.h>

using namespace lapwright;

namespace {

class Panels : public fixture::PairedWindow {
  protected:
    void SetUp() override {
        settings.setValue(QStringLiteral("compare/channels"),
                          QStringList{QStringLiteral("meaning:throttle"), QStringLiteral("meaning:gear"),
                                      QStringLiteral("motion:lateral"), QStringLiteral("motion:longitudinal")});
        PairedWindow::SetUp();
    }
    plots::PlotStack& stack() { return window->compare_page().stack(); }
    [[nodiscard]] const plots::StackRows& rows() { return stack().panels().panels(); }
    [[nodiscard]] bool folded(const QString& id) { return plots::is_folded(stack().panels().content(), id); }
    [[nodiscard]] QStringList ids() {
        QStringList all;
        for (const auto& panel : rows())
            all << panel->id;
        return all;
    }
    // In hand: the panel of that id.
    void take(const QString& id) {
        for (int i = 0; i < 12; ++i) {
            key(Qt::Key_Z, Qt::ShiftModifier);
            if (stack().panel_in_hand() == id) return;
        }
        FAIL() << id.toStdString() << " is not taken in hand";
    }
    [[nodiscard]] int height_of(const QString& id) { return rows()[*plots::find_panel(rows(), id)]->rect->height(); }
};

} // namespace

TEST_F(Panels, SpeedAndGapStayInViewWhileChannelsGoOn) {
    window->resize(1366, 768);
    fixture::settle();
    const auto first = stack().channels_shown();
    ASSERT_LT(first.count, 4U) << "more channels than have room";
    const QStringList before = ids();
    key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(stack().channels_shown().first, 1U);
    EXPECT_NE(ids(), before);
    for (const char* always : {"panel:track", "panel:speed", "panel:gap", "panel:gains"})
        EXPECT_TRUE(ids().contains(QLatin1String(always))) << always;
    EXPECT_LE(stack().height(), stack().parentWidget()->height()) << "nothing scrolls away";
    for (int i = 0; i < 10; ++i)
        key(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(stack().channels_shown().first + stack().channels_shown().count, 4U) << "it ends with the last";
    // Where all have room all are shown.
    window->resize(1600, 1400);
    fixture::settle();
    EXPECT_EQ(stack().channels_shown().count, 4U);
}

TEST_F(Panels, AFoldedPanelKeepsItsNameAndIsRemembered) {
    const QString gains = QStringLiteral("panel:gains");
    take(gains);
    const int gap_before = height_of(QStringLiteral("panel:gap"));
    const std::size_t channels_before = stack().channels_shown().count;
    key(Qt::Key_Z);
    EXPECT_TRUE(folded(gains));
    EXPECT_LE(height_of(gains), 2);
    EXPECT_TRUE(stack().channels_shown().count > channels_before || height_of(QStringLiteral("panel:gap")) > gap_before)
        << "a further channel or the others take its room";
    window->close();
    ASSERT_NO_FATAL_FAILURE(open_window());
    EXPECT_TRUE(folded(gains));
    take(gains);
    key(Qt::Key_Z);
    EXPECT_FALSE(folded(gains));
}

TEST_F(Panels, APanelGrowsByKeyAndByItsBorder) {
    const QString speed = QStringLiteral("panel:speed");
    take(speed);
    const int before = height_of(speed);
    key(Qt::Key_Down, Qt::ControlModifier);
    fixture::settle();
    EXPECT_LT(height_of(speed), before);
    key(Qt::Key_Up, Qt::ControlModifier);
    key(Qt::Key_Up, Qt::ControlModifier);
    fixture::settle();
    const int taller = height_of(speed);
    EXPECT_GT(taller, before - 4);
    // By mouse: the border beneath the speed, twenty pixels down.
    auto* plot = stack().findChild<QCustomPlot*>();
    const std::size_t below = *plots::find_panel(rows(), speed) + 1;
    QPoint at(plot->width() / 2, 0);
    while (at.y() < plot->height() && plots::border_at(stack().panels().content(), rows(), at) != below)
        at.ry() += 1;
    ASSERT_LT(at.y(), plot->height());
    at.ry() += 2;
    QTest::mousePress(plot, Qt::LeftButton, {}, at);
    QTest::mouseMove(plot, at + QPoint(0, 20));
    QTest::mouseRelease(plot, Qt::LeftButton, {}, at + QPoint(0, 20));
    fixture::settle();
    EXPECT_GT(height_of(speed), taller + 8);
}

TEST_F(Panels, AChannelIsMovedByKeyAndRemembered) {
    const QString gear = QStringLiteral("meaning:gear");
    window->resize(1600, 1400);
    fixture::settle();
    ASSERT_EQ(ids().indexOf(gear), 3);
    take(gear);
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(ids().indexOf(gear), 2);
    EXPECT_EQ(settings.value(QStringLiteral("compare/channels")).toStringList().front(), gear);
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(ids().indexOf(gear), 3);
}

TEST_F(Panels, APageReachesTheFootOfTheWindow) {
    const QWidget& page = window->compare_page();
    const int foot = page.mapTo(window.get(), QPoint(0, page.height())).y();
    EXPECT_GE(foot, window->height() - 2);
}
