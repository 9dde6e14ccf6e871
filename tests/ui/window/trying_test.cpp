// SPDX-License-Identifier: GPL-3.0-or-later
// The setup trial in the window, operated as a person would:
// reached by key, menu and button, parts chosen, the effect read.
#include "ui/window/trying.h"

#include "tests/ui/fixture/invented_stages.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/dialogs/trial_dialog.h"
#include "ui/pages/compare/pairing_header.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/theme/elided_label.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QComboBox>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <atomic>
#include <gtest/gtest.h>
#include <mutex>

using namespace lapwright;

namespace {

class TryingTest : public testing::Test {
  protected:
    void SetUp() override {
        bridge::Stages stages = fixture::invented_stages();
        stages.trial = [this](const bridge::TrialWanted& wanted,
                              const base::Progress& progress) -> base::Result<bridge::TrialPointer> {
            if (slow && !runs_on(progress)) return base::cancelled();
            const std::scoped_lock lock(mutex);
            changed.clear();
            for (const auto& one : wanted.sessions)
                changed.push_back(one.changed);
            if (refuse)
                return base::Error{base::ErrorCode::cannot_be_computed, {}, "too few laps", "drive more of them"};
            return fixture::invented_trial();
        };
        window = std::make_unique<window::MainWindow>(stages, settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
        window->open({folder.filePath(QStringLiteral("one.csv")), folder.filePath(QStringLiteral("two.csv")),
                      folder.filePath(QStringLiteral("three.csv"))});
        ASSERT_TRUE(fixture::wait_for([this] { return window->sessions().now().entries().size() == 3; }));
        fixture::settle();
    }
    // Until it is called off or let go; whether it was let go.
    bool runs_on(const base::Progress& progress) {
        started = true;
        while (!let_go) {
            if (!progress("measuring every lap", 0.7)) {
                was_called_off = true;
                return false;
            }
            QThread::msleep(5);
        }
        return true;
    }
    [[nodiscard]] workspace::SessionKey key_of(const char* name) const {
        return fixture::key_of_file(folder.filePath(QLatin1String(name)).toStdString());
    }
    dialogs::TrialDialog* dialog() { return window->trying().dialog(); }
    void open_by_key() {
        QTest::keyClick(window.get(), Qt::Key_B, Qt::ControlModifier);
        ASSERT_TRUE(fixture::wait_for([this] { return dialog() != nullptr && dialog()->isVisible(); }));
    }
    static QString cell(const QTableWidget& table, int row, int column) { return table.item(row, column)->text(); }

    std::mutex mutex;
    std::vector<bool> changed;
    bool refuse = false;
    std::atomic<bool> slow = false;
    std::atomic<bool> started = false;
    std::atomic<bool> let_go = false;
    std::atomic<bool> was_called_off = false;
    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

} // namespace

TEST_F(TryingTest, BaselineChangeBaselineIsReadSegmentBySegment) {
    open_by_key();
    EXPECT_EQ(dialog()->part_of(0).currentText(), QStringLiteral("baseline"));
    EXPECT_EQ(dialog()->part_of(1).currentText(), QStringLiteral("with the change"));
    QTest::keyClick(dialog(), Qt::Key_Return);
    QTableWidget& effects = dialog()->effects();
    ASSERT_TRUE(fixture::wait_for([&] { return effects.rowCount() == 3; }));
    EXPECT_EQ(changed, (std::vector<bool>{false, true, false}));
    EXPECT_EQ(cell(effects, 0, 0), QStringLiteral("Sweep"));
    EXPECT_TRUE(cell(effects, 0, 1).startsWith(QStringLiteral("gains 0.2"))) << cell(effects, 0, 1).toStdString();
    EXPECT_EQ(cell(effects, 0, 2), QStringLiteral("is there"));
    EXPECT_EQ(cell(effects, 1, 0), QStringLiteral("Pit <b>straight</b>"));
    EXPECT_EQ(cell(effects, 1, 2), QStringLiteral("cannot be told"));
    EXPECT_EQ(cell(effects, 2, 0), QStringLiteral("Whole lap"));
    EXPECT_TRUE(dialog()->sentence().startsWith(QStringLiteral("The change is worth")));
}

TEST_F(TryingTest, PartsAreChosenByKeyAndAnOldAnswerGoes) {
    open_by_key();
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog()->effects().rowCount() == 3; }));
    dialog()->part_of(1).setFocus();
    QTest::keyClick(&dialog()->part_of(1), Qt::Key_Up);
    EXPECT_EQ(dialog()->part_of(1).currentText(), QStringLiteral("baseline"));
    EXPECT_EQ(dialog()->effects().rowCount(), 0);
    EXPECT_FALSE(dialog()->run().isEnabled());
    dialog()->part_of(0).setFocus();
    QTest::keyClick(&dialog()->part_of(0), Qt::Key_Up);
    QTest::keyClick(&dialog()->part_of(2), Qt::Key_Down);
    ASSERT_TRUE(dialog()->run().isEnabled());
    QTest::mouseClick(&dialog()->run(), Qt::LeftButton);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog()->effects().rowCount() == 3; }));
    EXPECT_EQ(changed, (std::vector<bool>{false, true}));
}

TEST_F(TryingTest, ARefusalIsSaidInTheDialog) {
    refuse = true;
    open_by_key();
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog()->sentence().contains(QStringLiteral("too few laps")); }));
    EXPECT_EQ(dialog()->effects().rowCount(), 0);
}

TEST_F(TryingTest, TellsHowFarItIsAndStops) {
    slow = true;
    open_by_key();
    EXPECT_FALSE(dialog()->stop().isVisible());
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog()->progress().value() == 700; }));
    EXPECT_TRUE(dialog()->progress().isVisible());
    EXPECT_EQ(dialog()->sentence(), QStringLiteral("measuring every lap"));
    QTest::mouseClick(&dialog()->stop(), Qt::LeftButton);
    ASSERT_TRUE(fixture::wait_for([this] { return was_called_off.load(); }));
    fixture::settle();
    EXPECT_EQ(dialog()->sentence(), QStringLiteral("Stopped: nothing was reckoned."));
    EXPECT_FALSE(dialog()->stop().isVisible());
    EXPECT_EQ(dialog()->effects().rowCount(), 0);
    let_go = true; // and it can be asked again
    QTest::mouseClick(&dialog()->run(), Qt::LeftButton);
    ASSERT_TRUE(fixture::wait_for([&] { return dialog()->effects().rowCount() == 3; }));
    EXPECT_FALSE(dialog()->stop().isVisible());
}

TEST_F(TryingTest, ClosingOrAnotherPartCallsItOff) {
    slow = true;
    open_by_key();
    QTest::keyClick(dialog(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([this] { return started.load(); }));
    dialog()->part_of(0).setFocus();
    QTest::keyClick(&dialog()->part_of(0), Qt::Key_Up);
    ASSERT_TRUE(fixture::wait_for([this] { return was_called_off.load(); }));
    QTest::keyClick(&dialog()->part_of(0), Qt::Key_Down);
    started = was_called_off = false;
    QTest::mouseClick(&dialog()->run(), Qt::LeftButton);
    ASSERT_TRUE(fixture::wait_for([this] { return started.load(); }));
    QTest::keyClick(dialog(), Qt::Key_Escape);
    EXPECT_TRUE(fixture::wait_for([this] { return was_called_off.load() && dialog() == nullptr; }));
}

TEST_F(TryingTest, ButtonAndMenuOpenItTooAndItGoesWithItsSessions) {
    QPushButton* button = nullptr;
    for (QPushButton* one : window->sessions_page().findChildren<QPushButton*>())
        if (one->text() == QStringLiteral("Setup trial…")) button = one;
    ASSERT_NE(button, nullptr);
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(fixture::wait_for([this] { return dialog() != nullptr && dialog()->isVisible(); }));
    QTest::keyClick(dialog(), Qt::Key_Escape);
    ASSERT_TRUE(fixture::wait_for([this] { return dialog() == nullptr; }));
    EXPECT_TRUE(window->actions().pairing_menu->actions().contains(window->actions().trial));
    window->actions().trial->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return dialog() != nullptr; }));
    window->sessions().edit([this](auto& open) { open.remove(key_of("two.csv")); });
    EXPECT_TRUE(fixture::wait_for([this] { return dialog() == nullptr; }));
}

TEST(PairingHeader, SaysWhatTheBestSegmentsMakeAndWhatChanceAloneWould) {
    analysis::Pairing pairing = *fixture::pairing();
    pairing.ideal_a = {89.512, 89.921, 0.42, 90.02};
    pages::PairingHeader header;
    header.set_pairing(pairing);
    QStringList shown;
    for (const auto* label : header.findChildren<theme::ElidedLabel*>())
        shown << label->text();
    EXPECT_TRUE(
        shown.join(QLatin1Char('\n'))
            .contains(QStringLiteral(
                "best segments of A put together: 1:29.512; laps that differ by chance alone would give 1:29.600")));
}
