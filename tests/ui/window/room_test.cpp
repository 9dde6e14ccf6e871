// SPDX-License-Identifier: GPL-3.0-or-later
// No text is clipped: every visible label has the room that its text needs, on both pages and in the dialogs, at the
// smallest screen that the window is made for.
#include "tests/ui/fixture/invented_stages.h"
#include "tests/ui/fixture/room.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/dialogs/about.h"
#include "ui/dialogs/keys_help.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/window/actions.h"
#include "ui/window/main_window.h"

#include <QScrollArea>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

using namespace lapwright;

namespace {

class Room : public testing::TestWithParam<const char*> {
  protected:
    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
};

} // namespace

TEST_P(Room, EveryLabelHasWhatItNeeds) {
    settings.setValue(QStringLiteral("units"), QLatin1String(GetParam()));
    fixture::PairingOptions options;
    options.crowded = true;
    options.driver_a = "Wilhelmina Alexandra Featherstonehaugh-Brandenburg";
    window::MainWindow window(fixture::invented_stages(options), settings);
    window.resize(1366, 768);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    window.start({QStringLiteral("one.csv"), QStringLiteral("two.csv"), QStringLiteral("bad.csv")});
    ASSERT_TRUE(fixture::wait_for([&] { return window.on_compare_page(); }));
    for (int segment = 0; segment < 4; ++segment) {
        SCOPED_TRACE(segment);
        window.compare_page().choose(segment);
        fixture::settle();
        fixture::expect_room(window);
    }
    window.actions().show_sessions->trigger();
    fixture::settle();
    fixture::expect_room(window);
    EXPECT_LE(window.width(), 1366);
    EXPECT_LE(window.height(), 768);
}

TEST_P(Room, DialogsToo) {
    window::MainWindow window(fixture::invented_stages(), settings);
    dialogs::KeysHelp keys(window.actions().key_groups(), &window);
    keys.show();
    fixture::settle();
    fixture::expect_room(keys);
    EXPECT_LE(keys.width(), 1366);
    EXPECT_LE(keys.height(), 768);
    dialogs::About about(QStringLiteral("0.1"), &window);
    about.show();
    fixture::settle();
    fixture::expect_room(about);
}

INSTANTIATE_TEST_SUITE_P(Units, Room, testing::Values("metric", "imperial", "us"));
