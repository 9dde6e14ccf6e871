// SPDX-License-Identifier: GPL-3.0-or-later
// From every page to corners, sessions, laps and commands by a few letters; channels chosen several at once and
// remembered as sets; the wheel scrolls or zooms.
#include "tests/ui/fixture/paired_window.h"
#include "ui/dialogs/channel_picker.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/find_places.h"
#include "ui/window/preferences.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QWheelEvent>
#include <gmock/gmock.h>

using namespace lapwright;

namespace {

class FindingTest : public fixture::PairedWindow {
  protected:
    // In the dialog that the key opens, as a hand does.
    void find(const QString& words) {
        QTimer::singleShot(0, window.get(), [&] {
            QWidget* dialog = QApplication::activeModalWidget();
            ASSERT_NE(dialog, nullptr);
            auto* line = dialog->findChild<QLineEdit*>();
            QTest::keyClicks(line, words);
            QTest::keyClick(line, Qt::Key_Return);
        });
        key(Qt::Key_G, Qt::ControlModifier);
    }
    dialogs::ChannelPicker& picker() {
        auto* found = window->findChild<dialogs::ChannelPicker*>();
        EXPECT_NE(found, nullptr);
        return *found;
    }
    void tick(int row) {
        picker().list().setCurrentRow(row);
        QTest::keyClick(&picker().list(), Qt::Key_Space);
        fixture::settle();
    }
    [[nodiscard]] QStringList shown() const { return window::load_preferences(settings).channels; }
};

} // namespace

TEST_F(FindingTest, ASegmentIsFoundFromTheSessionsPage) {
    go_to_sessions();
    const auto& segments = window->pairing().compared()->pairing->track.segments;
    const track::Segment& first = segments.front(); // others may have its name in theirs
    window->compare_page().go_to(segments.back().start_m);
    find(QString::fromStdString(first.name));
    EXPECT_TRUE(window->on_compare_page());
    EXPECT_NEAR(window->compare_page().stack().cursor_m(), 0.5 * (first.start_m + first.end_m), 2.0);
}

TEST_F(FindingTest, ASessionIsFoundByItsDriver) {
    find(QStringLiteral("two.csv"));
    EXPECT_FALSE(window->on_compare_page());
    EXPECT_EQ(window->focusWidget(), &window->sessions_page().cards().back()->laps());
}

TEST_F(FindingTest, ALapIsTakenByItsNumberAndDriver) {
    const auto& before = window->sessions().now().picks().a;
    const int other = before->lap == 2 ? 3 : 2;
    find(QStringLiteral("lap %1, Haldane").arg(other));
    EXPECT_EQ(window->sessions().now().picks().a->lap, other);
}

TEST_F(FindingTest, SeveralChannelsAreShownAtOnceAndASetOfThemIsRemembered) {
    key(Qt::Key_G);
    ASSERT_GE(picker().list().count(), 3);
    tick(0);
    tick(2);
    EXPECT_EQ(shown().size(), 2);
    picker().sets().setEditText(QStringLiteral("braking"));
    QTest::mouseClick(picker().findChildren<QPushButton*>().at(0), Qt::LeftButton);
    tick(0);
    tick(1);
    const QStringList before = shown();
    QTest::keyClick(&picker(), Qt::Key_Escape);
    fixture::settle();
    open_window(); // the next time
    key(Qt::Key_G);
    picker().sets().setCurrentIndex(picker().sets().findText(QStringLiteral("braking")));
    Q_EMIT picker().sets().activated(picker().sets().currentIndex());
    fixture::settle();
    EXPECT_NE(shown(), before);
    EXPECT_EQ(shown().size(), 2);
    EXPECT_EQ(picker().list().item(0)->checkState(), Qt::Checked);
    EXPECT_EQ(picker().list().item(1)->checkState(), Qt::Unchecked);
}

TEST_F(FindingTest, TheWheelScrollsWhatIsHigherThanItsRoomAndZoomsWithCtrl) {
    key(Qt::Key_G);
    for (int row = 0; row < picker().list().count(); ++row)
        tick(row);
    QTest::keyClick(&picker(), Qt::Key_Escape);
    fixture::settle();
    window->resize(1000, 520);
    fixture::settle();
    plots::PlotStack& stack = window->compare_page().stack();
    auto* area = qobject_cast<QScrollArea*>(stack.parentWidget()->parentWidget());
    ASSERT_NE(area, nullptr);
    ASSERT_GT(area->verticalScrollBar()->maximum(), 0);
    QWidget* plot = stack.findChild<QWidget*>();
    const auto turn = [&](Qt::KeyboardModifiers held) {
        const QPointF at(300, 60);
        QWheelEvent wheel(at, plot->mapToGlobal(at), {}, {0, -240}, Qt::NoButton, held, Qt::NoScrollPhase, false);
        QApplication::sendEvent(plot, &wheel);
        fixture::settle();
    };
    const double whole_m = stack.view().width();
    turn(Qt::NoModifier);
    EXPECT_GT(stack.channels_shown().first, 0U) << "speed and gap stay, the channels go on";
    EXPECT_EQ(stack.view().width(), whole_m);
    stack.zoom(0.25);
    const double quarter_m = stack.view().width();
    turn(Qt::ControlModifier);
    EXPECT_GT(stack.view().width(), quarter_m);
}
