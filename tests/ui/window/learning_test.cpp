// SPDX-License-Identifier: GPL-3.0-or-later
// Learning a track in the window: by key from the session in hand, row by row, copied as a table.
#include "ui/window/learning.h"

#include "tests/ui/fixture/paired_window.h"
#include "ui/dialogs/learning_dialog.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/learning_plot.h"
#include "ui/window/notices.h"

#include <QClipboard>
#include <QTableWidget>
#include <gmock/gmock.h>

using namespace lapwright;

namespace {

using LearningTest = fixture::PairedWindow;

} // namespace

TEST_F(LearningTest, TheSessionInHandIsShownSegmentBySegment) {
    go_to_sessions();
    press(Qt::Key_E);
    ASSERT_TRUE(fixture::wait_for(
        [this] { return window->learning().dialog() && window->learning().dialog()->courses().rowCount() == 3; }));
    dialogs::LearningDialog& dialog = *window->learning().dialog();
    EXPECT_THAT(dialog.windowTitle().toStdString(), testing::HasSubstr("Ines Haldane"));
    EXPECT_FALSE(dialog.sentence().isEmpty());
    EXPECT_THAT(dialog.plot().accessibleDescription().toStdString(), testing::HasSubstr("whole lap: 12 laps"));
    EXPECT_TRUE(dialog.courses().hasFocus());
    QTest::keyClick(&dialog.courses(), Qt::Key_Down);
    fixture::settle();
    EXPECT_THAT(dialog.plot().accessibleDescription().toStdString(), testing::HasSubstr("Sweep <b>1</b>"));
    EXPECT_EQ(dialog.courses().item(1, 0)->text().toStdString(), "Sweep <b>1</b>");
    EXPECT_THAT(dialog.courses().item(1, 5)->text().toStdString(), testing::StartsWith("0.3"));
    QTest::keyClick(&dialog.courses(), Qt::Key_C, Qt::ControlModifier);
    fixture::settle();
    EXPECT_THAT(QApplication::clipboard()->text().toStdString(), testing::HasSubstr("Pit straight\t"));
    dialog.close();
}

TEST_F(LearningTest, WithoutALapInHandItSaysWhatToDo) {
    go_to_sessions();
    window->setFocus();
    fixture::settle();
    window->actions().learn->trigger();
    fixture::settle();
    EXPECT_EQ(window->learning().dialog(), nullptr);
    EXPECT_TRUE(window->notices().isVisible());
}

TEST_F(LearningTest, ClosingASessionClosesIt) {
    go_to_sessions();
    press(Qt::Key_E);
    ASSERT_TRUE(fixture::wait_for([this] { return window->learning().dialog() != nullptr; }));
    window->sessions().edit([this](workspace::OpenSessions& open) { open.remove(key_of("one.csv")); });
    EXPECT_TRUE(fixture::wait_for([this] { return window->learning().dialog() == nullptr; }));
}
