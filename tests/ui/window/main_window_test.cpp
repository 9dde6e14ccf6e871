// SPDX-License-Identifier: GPL-3.0-or-later
// The window operated as a person would, with invented sessions.
#include "ui/window/main_window.h"

#include "tests/ui/fixture/invented_stages.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/compare/segment_view.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/plots/track_map.h"
#include "ui/window/actions.h"
#include "ui/window/notices.h"

#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QLabel>
#include <QMimeData>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QWheelEvent>
#include <gtest/gtest.h>

using namespace lapwright;
using workspace::Side;

namespace {

class MainWindow : public testing::Test {
  protected:
    void SetUp() override { open_window(); }

    void open_window() {
        window.reset();
        window = std::make_unique<window::MainWindow>(fixture::invented_stages(), settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
    }
    void start(const QStringList& files) {
        window->start(files);
        fixture::settle();
    }
    void start_pairing() {
        start({path("one.csv"), path("two.csv")});
        ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
        fixture::settle();
    }
    static QString path(const char* name) { return QDir::tempPath() + QLatin1Char('/') + QLatin1String(name); }
    static workspace::SessionKey key_of(const char* name) { return fixture::key_of_file(path(name).toStdString()); }
    plots::PlotStack& stack() { return window->compare_page().stack(); }
    // The middle of the speed panel, some part of its width from the left.
    QPoint on_plots(double part) {
        return {60 + static_cast<int>(part * (stack().width() - 70)), stack().height() / 3};
    }
    QWidget* canvas() { return stack().childAt(stack().rect().center()); }
    void key(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(window.get(), static_cast<Qt::Key>(key), modifiers);
        fixture::settle();
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

} // namespace

TEST_F(MainWindow, TwoFilesOpenStraightIntoTheirComparison) {
    start_pairing();
    EXPECT_EQ(window->sessions().now().picks().a->session, key_of("one.csv"));
    EXPECT_EQ(window->sessions().now().picks().b->session, key_of("two.csv"));
    EXPECT_GE(window->compare_page().chosen_segment(), 0);
}

TEST_F(MainWindow, OneFileOpensTheSessionsPage) {
    start({path("one.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions().now().entries().size() == 1; }));
    EXPECT_FALSE(window->on_compare_page());
    EXPECT_FALSE(window->actions().show_compare->isEnabled());
}

TEST_F(MainWindow, ARefusedFileIsOnePlainSentenceAndTheOthersStay) {
    start({path("one.csv"), path("bad.csv"), path("two.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->notices().isVisible(); }));
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions().now().entries().size() == 2; }));
    const QString sentence = path("bad.csv") + QStringLiteral(":7: <b>no table</b> — export again");
    EXPECT_EQ(window->notices().shown(), sentence);
    window->findChild<window::Notices*>()->show_all();
    auto* whole = QApplication::activePopupWidget();
    ASSERT_NE(whole, nullptr);
    const auto* label = whole->findChild<QLabel*>();
    EXPECT_EQ(label->textFormat(), Qt::PlainText);
    EXPECT_EQ(label->text(), sentence);
    whole->close();
    key(Qt::Key_Escape);
    EXPECT_FALSE(window->notices().isVisible());
}

TEST_F(MainWindow, ANoticeTooLongForTheStripIsReadInFullBeneathIt) {
    start({path("one.csv"), path("two.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    const auto passing = [this] {
        for (QFrame* frame : window->findChildren<QFrame*>(QStringLiteral("notice"), Qt::FindDirectChildrenOnly))
            if (frame->isVisible()) return frame;
        return static_cast<QFrame*>(nullptr);
    };
    const QString sentence = QStringLiteral("A sentence that has no room in the strip. ").repeated(4).trimmed();
    window->findChild<window::Notices*>()->add(sentence);
    ASSERT_TRUE(fixture::wait_for([&] { return passing() != nullptr; }));
    EXPECT_EQ(passing()->findChild<QLabel*>()->text(), sentence);
    EXPECT_TRUE(window->rect().contains(passing()->geometry()));
    const QPoint there = passing()->geometry().center();
    EXPECT_NE(window->childAt(there), nullptr); // the pointer works through it
    EXPECT_FALSE(passing()->isAncestorOf(window->childAt(there)) || window->childAt(there) == passing());
    key(Qt::Key_Escape);
    EXPECT_TRUE(fixture::wait_for([&] { return passing() == nullptr; }));
    window->findChild<window::Notices*>()->add(QStringLiteral("Short."));
    fixture::settle();
    EXPECT_EQ(passing(), nullptr);
}

TEST_F(MainWindow, DroppedFilesAreOpened) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path("one.csv")), QUrl::fromLocalFile(path("two.csv"))});
    QDragEnterEvent enter(QPoint(200, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(200, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &drop);
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions().now().picks().complete(); }));
    EXPECT_FALSE(window->on_compare_page());
    EXPECT_EQ(window->sessions().now().entries()[0].key, key_of("one.csv"));
}

TEST_F(MainWindow, LapsArePickedWithMouseAndKeyboard) {
    start_pairing();
    key(Qt::Key_1, Qt::ControlModifier);
    ASSERT_FALSE(window->on_compare_page());
    ASSERT_EQ(window->sessions_page().cards().size(), 2U);
    pages::LapList& laps = window->sessions_page().cards()[1]->laps();
    QTest::mouseClick(&laps, Qt::LeftButton, {}, laps.mark_rect(2, false).center());
    EXPECT_EQ(window->sessions().now().picks().b, (workspace::LapPick{key_of("two.csv"), 2}));
    laps.setFocus();
    QTest::keyClick(&laps, Qt::Key_Down);
    QTest::keyClick(&laps, Qt::Key_A);
    EXPECT_EQ(window->sessions().now().picks().a, (workspace::LapPick{key_of("two.csv"), 3}));
    key(Qt::Key_X);
    EXPECT_EQ(window->sessions().now().picks().a, (workspace::LapPick{key_of("two.csv"), 2}));
    key(Qt::Key_Return);
    EXPECT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
}

TEST_F(MainWindow, AClosedSessionFreesItsSide) {
    start_pairing();
    key(Qt::Key_1, Qt::ControlModifier);
    window->sessions_page().cards()[0]->laps().setFocus();
    key(Qt::Key_Delete);
    EXPECT_EQ(window->sessions().now().entries().size(), 1U);
    EXPECT_FALSE(window->sessions().now().picks().a);
}

TEST_F(MainWindow, TheWheelZoomsAtThePointerAndDoubleClickFits) {
    start_pairing();
    QWidget* plot = canvas();
    const QPoint at = plot->mapFrom(&stack(), on_plots(0.25));
    QTest::mouseMove(plot, at);
    fixture::settle();
    const double under = stack().cursor_m();
    QWheelEvent wheel(at, plot->mapToGlobal(at), {}, {0, 240}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(plot, &wheel);
    EXPECT_NEAR(stack().view().width(), 0.64 * stack().length_m(), 1.0);
    QTest::mouseMove(plot, at + QPoint(1, 0));
    QTest::mouseMove(plot, at);
    fixture::settle();
    EXPECT_NEAR(stack().cursor_m(), under, 5.0) << "the place under the pointer stays there";
    QTest::mouseDClick(plot, Qt::LeftButton, {}, at);
    EXPECT_DOUBLE_EQ(stack().view().width(), stack().length_m());
}

TEST_F(MainWindow, DraggingPansAndDoesNotChoose) {
    start_pairing();
    for (int i = 0; i < 4; ++i)
        key(Qt::Key_Plus);
    QWidget* plot = canvas();
    const int chosen = window->compare_page().chosen_segment();
    const auto before = stack().view();
    const QPoint from = plot->mapFrom(&stack(), on_plots(0.3));
    QTest::mousePress(plot, Qt::LeftButton, {}, from);
    QTest::mouseMove(plot, from + QPoint(60, 0));
    QTest::mouseRelease(plot, Qt::LeftButton, {}, from + QPoint(60, 0));
    EXPECT_LT(stack().view().lower_m, before.lower_m);
    EXPECT_NEAR(stack().view().width(), before.width(), 1e-6);
    EXPECT_EQ(window->compare_page().chosen_segment(), chosen);
}

TEST_F(MainWindow, AStretchSelectsItsRowAndARowItsStretch) {
    start_pairing();
    auto* table = window->findChild<pages::SegmentView*>();
    QWidget* plot = canvas();
    QTest::mouseClick(plot, Qt::LeftButton, {}, plot->mapFrom(&stack(), on_plots(0.6)));
    const int chosen = window->compare_page().chosen_segment();
    EXPECT_EQ(table->currentIndex().row(), chosen);
    EXPECT_GT(chosen, 5);

    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, table->visualRect(table->model()->index(2, 0)).center());
    EXPECT_EQ(window->compare_page().chosen_segment(), 2);
    const auto& stretch = window->compare_page().compared()->pairing->track.segments[2];
    EXPECT_GE(stack().cursor_m(), stretch.start_m);
    EXPECT_LT(stack().cursor_m(), stretch.end_m);

    table->setFocus();
    QTest::keyClick(table, Qt::Key_Down);
    EXPECT_EQ(window->compare_page().chosen_segment(), 3);
    key(Qt::Key_N);
    EXPECT_EQ(window->compare_page().chosen_segment(), 4);
    key(Qt::Key_P);
    key(Qt::Key_P);
    EXPECT_EQ(window->compare_page().chosen_segment(), 2);
}

TEST_F(MainWindow, TheCursorMovesByKeysAndTheViewFollows) {
    start_pairing();
    key(Qt::Key_Home);
    EXPECT_EQ(stack().cursor_m(), 0.0);
    key(Qt::Key_Right);
    const double step = stack().cursor_m();
    EXPECT_GT(step, 0.0);
    key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(stack().cursor_m(), 11.0 * step);
    key(Qt::Key_Left);
    EXPECT_DOUBLE_EQ(stack().cursor_m(), 10.0 * step);
    for (int i = 0; i < 6; ++i)
        key(Qt::Key_Plus);
    key(Qt::Key_End);
    EXPECT_DOUBLE_EQ(stack().view().upper_m, stack().length_m());
    key(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_LT(stack().view().upper_m, stack().length_m());
    key(Qt::Key_W);
    EXPECT_DOUBLE_EQ(stack().view().width(), stack().length_m());
    key(Qt::Key_C);
    EXPECT_LT(stack().view().width(), stack().length_m());
}

TEST_F(MainWindow, CornersAreJoinedWithTheirStraights) {
    start_pairing();
    auto* table = window->findChild<pages::SegmentView*>();
    const int before = table->model()->rowCount();
    key(Qt::Key_J);
    EXPECT_LT(table->model()->rowCount(), before);
    EXPECT_GE(window->compare_page().chosen_segment(), 0);
    key(Qt::Key_J);
    EXPECT_EQ(table->model()->rowCount(), before);
}

TEST_F(MainWindow, AClickOnTheMapGoesThere) {
    start_pairing();
    auto* map = window->findChild<plots::TrackMap*>();
    QTest::mouseClick(map, Qt::LeftButton, {}, {4, map->height() / 2});
    const double west = stack().cursor_m();
    QTest::mouseClick(map, Qt::LeftButton, {}, {map->width() - 4, map->height() / 2});
    EXPECT_NE(stack().cursor_m(), west);
    const auto& segments = window->compare_page().compared()->pairing->track.segments;
    const auto chosen = static_cast<std::size_t>(window->compare_page().chosen_segment());
    EXPECT_GE(stack().cursor_m(), segments[chosen].start_m);
    EXPECT_LE(stack().cursor_m(), segments[chosen].end_m);
}

TEST_F(MainWindow, SettingsAndPairingComeBack) {
    start_pairing();
    key(Qt::Key_U, Qt::ControlModifier);
    key(Qt::Key_U);
    window->actions().look->actions()[1]->trigger();
    window->actions().channels_menu->actions()[1]->trigger();
    window->close();
    open_window();
    EXPECT_TRUE(window->actions().units->actions()[1]->isChecked());
    EXPECT_FALSE(window->actions().band->isChecked());
    EXPECT_TRUE(window->actions().look->actions()[1]->isChecked());
    start({});
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    EXPECT_EQ(window->sessions().now().picks().a->session, key_of("one.csv"));
    EXPECT_TRUE(window->actions().channels_menu->actions()[1]->isChecked());
}

TEST_F(MainWindow, ATrackFileIsNoSession) {
    start({QStringLiteral(SAMPLE_SESSIONS "/ternbank.track.json"), path("one.csv"), path("two.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    EXPECT_EQ(window->sessions().now().entries().size(), 2U);
    EXPECT_FALSE(window->notices().isVisible());
    EXPECT_TRUE(window->actions().forget_track->isEnabled());
    window->actions().forget_track->trigger();
    EXPECT_FALSE(window->actions().forget_track->isEnabled());
    EXPECT_TRUE(settings.value(QStringLiteral("track_file")).toString().isEmpty());
}

TEST_F(MainWindow, EveryActionCanBeReachedByKeyboard) {
    for (const QMenu* menu : window->actions().menus()) {
        EXPECT_TRUE(menu->title().contains(QLatin1Char('&'))) << menu->title().toStdString();
    }
    // No two actions of one page share a key.
    for (const auto& page : {window->actions().of_sessions_page(), window->actions().of_compare_page()}) {
        QList<QKeySequence> keys;
        for (const QAction* action : page)
            keys += action->shortcuts();
        for (const QKeySequence& key : keys)
            EXPECT_EQ(keys.count(key), 1) << key.toString().toStdString();
    }
}

TEST_F(MainWindow, AStackWithManyPanelsScrollsInsteadOfSquashing) {
    start_pairing();
    QStringList all;
    for (const auto& choice : models::channels_of(*window->compare_page().compared()->pairing))
        all << choice.id;
    window->compare_page().set_channels(all);
    fixture::settle();
    EXPECT_GT(stack().height(), 600);
    EXPECT_LE(window->height(), 768);
}
