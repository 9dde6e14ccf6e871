// SPDX-License-Identifier: GPL-3.0-or-later
// The Causes page inside the window: explained when it is wanted, with the setup of both sessions, off the UI thread.
#include "tests/ui/fixture/explanation_fixture.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/window/actions.h"
#include "ui/window/explaining.h"
#include "ui/window/main_window.h"

#include <QAction>
#include <QFile>
#include <QSettings>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <gtest/gtest.h>

using namespace lapwright;

namespace {

class CausesInWindow : public testing::Test {
  protected:
    void SetUp() override { open_window(); }

    void open_window() {
        window.reset();
        bridge::Stages stages;
        stages.load = [](const workspace::Origin& origin, const std::optional<track::TrackRecord>&,
                         const base::Progress&) -> base::Result<bridge::SessionPointer> {
            const std::string& path = std::get<std::string>(origin);
            return fixture::session(path, path.find("one") != std::string::npos ? "Ines" : "Tomas", "hatch", 90.0);
        };
        stages.compare = [](const bridge::Wanted&, const base::Progress&) -> base::Result<workspace::ComparedPointer> {
            return workspace::compared(fixture::pairing());
        };
        stages.explain = [this](const bridge::Question& question,
                                const base::Progress& progress) -> base::Result<bridge::ExplanationPointer> {
            ++asked;
            while (slow) {
                if (!progress("splitting the gap", 0.5)) return base::cancelled();
                QThread::msleep(2);
            }
            fixture::ExplanationOptions options;
            options.mass_a = question.setup_a.mass.has_value();
            options.mass_b = question.setup_b.mass.has_value();
            if (question.setup_a.mass) options.mass_a_kg = question.setup_a.mass->value_kg;
            return fixture::explanation(*question.compared->pairing, options);
        };
        window = std::make_unique<window::MainWindow>(stages, settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
        window->start({folder.filePath(QStringLiteral("one.csv")), folder.filePath(QStringLiteral("two.csv"))});
        ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
        fixture::settle();
    }
    void show_causes() {
        QTest::keyClick(window.get(), Qt::Key_3, Qt::ControlModifier);
        fixture::settle();
    }
    bool explained() {
        return fixture::wait_for([this] { return window->causes_page().explanation() != nullptr; });
    }
    void write(const char* name, const char* words) {
        QFile file(folder.filePath(QLatin1String(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(words);
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::atomic<int> asked{0};
    std::atomic<bool> slow{false};
    std::unique_ptr<window::MainWindow> window;
};

} // namespace

TEST_F(CausesInWindow, IsWorkedOutWhenThePageIsWantedAndOnlyOnce) {
    EXPECT_EQ(asked, 0);
    show_causes();
    EXPECT_TRUE(window->causes_page().isVisible());
    ASSERT_TRUE(explained());
    EXPECT_FALSE(window->causes_page().sentence().isEmpty());
    QTest::keyClick(window.get(), Qt::Key_2, Qt::ControlModifier);
    show_causes();
    EXPECT_EQ(asked, 1);
}

TEST_F(CausesInWindow, ASetupFileBesideTheSessionIsTaken) {
    write("one.setup.json", R"({"mass_kg": 1300})");
    write("two.setup.json", R"({"mass_kg": 1400})");
    open_window();
    show_causes();
    ASSERT_TRUE(explained());
    EXPECT_FALSE(window->causes_page().explanation()->per_kilogram);
    EXPECT_DOUBLE_EQ(window->causes_page().explanation()->car_a.mass_kg->value, 1300.0);
}

TEST_F(CausesInWindow, AnEnteredMassIsExplainedAnewAndKept) {
    show_causes();
    ASSERT_TRUE(explained());
    EXPECT_TRUE(window->causes_page().explanation()->per_kilogram);
    car::SetupSheet a;
    a.mass = car::Mass{1290.0, 8.0};
    car::SetupSheet b;
    b.mass = car::Mass{1400.0, 8.0};
    window->explaining().enter_setups(a, b);
    ASSERT_TRUE(explained());
    EXPECT_EQ(asked, 2);
    EXPECT_DOUBLE_EQ(window->causes_page().explanation()->car_a.mass_kg->value, 1290.0);
    open_window();
    EXPECT_DOUBLE_EQ(window->explaining().setup_a().mass->value_kg, 1290.0);
}

TEST_F(CausesInWindow, CanBeStoppedAndStartedAgain) {
    slow = true;
    show_causes();
    ASSERT_TRUE(fixture::wait_for([this] { return asked == 1; }));
    QTest::keyClick(window.get(), Qt::Key_Period, Qt::ControlModifier);
    ASSERT_TRUE(fixture::wait_for([this] { return !window->actions().cancel->isEnabled(); }));
    EXPECT_TRUE(window->causes_page().sentence().startsWith(QStringLiteral("Stopped")));
    slow = false;
    show_causes();
    EXPECT_TRUE(explained());
}

TEST_F(CausesInWindow, EnterOnARowShowsItsPlaceOnTheComparePage) {
    show_causes();
    ASSERT_TRUE(explained());
    fixture::settle();
    window->causes_page().matrix().setFocus();
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(&window->causes_page().matrix(), Qt::Key_Down);
    QTest::keyClick(&window->causes_page().matrix(), Qt::Key_Return);
    EXPECT_TRUE(window->on_compare_page());
    EXPECT_EQ(window->compare_page().chosen_segment(), 3);
}

TEST_F(CausesInWindow, WhatIfAnswersThroughTheWorker) {
    show_causes();
    ASSERT_TRUE(explained());
    pages::WhatIfCard& card = window->causes_page().what_if();
    QTest::keyClick(&card.slider(findings::Lever::grip), Qt::Key_PageUp);
    EXPECT_TRUE(fixture::wait_for([&] { return card.prediction_text().contains(QStringLiteral("predicted: −")); }))
        << card.prediction_text().toStdString();
}
