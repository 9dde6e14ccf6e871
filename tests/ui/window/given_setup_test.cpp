// SPDX-License-Identifier: GPL-3.0-or-later
// Setup sheets that are opened or dropped like any file: to whom they go, also while their session is still being read,
// and the names that they give.
#include "tests/ui/fixture/invented_stages.h"
#include "tests/ui/fixture/waiting.h"
#include "ui/bridge/book_queue.h"
#include "ui/window/actions.h"
#include "ui/window/explaining.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QFile>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QUndoStack>
#include <gtest/gtest.h>

using namespace lapwright;

namespace {

// Sessions whose files name nobody; GetParam: with a book.
class GivenSetup : public testing::TestWithParam<bool> {
  protected:
    void SetUp() override {
        for (const char* name : {"one.csv", "two.csv"})
            write(name, name);
        open_window();
    }
    void open_window() {
        bridge::Stages stages = fixture::invented_stages();
        stages.load = [](const workspace::Origin& origin, const std::optional<track::TrackRecord>&,
                         const base::Progress&) -> base::Result<bridge::SessionPointer> {
            const std::string& path = std::get<std::string>(origin);
            QThread::msleep(30); // a sheet is there before its session
            return fixture::session(path, "", "", 90.0);
        };
        if (GetParam()) stages.book_file = path("book.sqlite").toStdString();
        window.reset();
        window = std::make_unique<window::MainWindow>(stages, settings);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    void write(const char* name, const char* content) const {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
    }
    [[nodiscard]] QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }
    [[nodiscard]] workspace::SessionKey key_of(const char* name) const {
        return fixture::key_of_file(path(name).toStdString());
    }
    // Opened or dropped, it is the same.
    void drop(const std::vector<const char*>& names) {
        QStringList files;
        for (const char* name : names)
            files << path(name);
        window->open(files);
    }
    [[nodiscard]] std::string title(const char* name) const {
        const auto session = window->sessions().now().session(key_of(name));
        return session ? session->title() : std::string();
    }
    [[nodiscard]] bool named(const char* name, const std::string& expected) const {
        return fixture::wait_for([&] { return title(name) == expected; });
    }

    QTemporaryDir folder;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    std::unique_ptr<window::MainWindow> window;
};

constexpr const char* sheet = R"({"driver": "Wren Alder", "car": "Plover", "tyre": "soft"})";

} // namespace

TEST_P(GivenSetup, GoesToTheSessionThatIsDroppedWithIt) {
    write("of-today.json", sheet);
    drop({"of-today.json", "two.csv"});
    EXPECT_TRUE(named("two.csv", "Wren Alder — Plover")) << title("two.csv");
    EXPECT_EQ(window->explaining().known_setup(key_of("two.csv")).tyre, "soft");
    fixture::settle();
    EXPECT_TRUE(window->notices()
                    .sentences()
                    .join(QLatin1Char(32))
                    .contains(QStringLiteral("The setup of two.csv was read from of-today.json.")))
        << window->notices().sentences().join(QLatin1Char(32)).toStdString();
    // And is there the next time, without being dropped again.
    static_cast<void>(window->book().finish());
    fixture::settle();
    open_window();
    window->open({path("two.csv")});
    EXPECT_TRUE(named("two.csv", "Wren Alder — Plover")) << title("two.csv");
    EXPECT_TRUE(
        fixture::wait_for([this] { return window->explaining().known_setup(key_of("two.csv")).tyre == "soft"; }));
}

TEST_P(GivenSetup, OfSeveralSessionsWithoutNamesGoesToNone) {
    write("of-today.json", sheet);
    drop({"one.csv", "of-today.json", "two.csv"});
    EXPECT_TRUE(fixture::wait_for([this] {
        return window->notices()
            .sentences()
            .join(QLatin1Char(32))
            .contains(QStringLiteral("of-today.json is a setup sheet, but no single open"));
    }));
    EXPECT_EQ(title("one.csv"), "one.csv");
    EXPECT_EQ(title("two.csv"), "two.csv");
}

TEST_P(GivenSetup, DroppedLaterGoesToTheOnlyOpenSessionAndIsUndone) {
    drop({"one.csv"});
    ASSERT_TRUE(named("one.csv", "one.csv"));
    fixture::settle();
    write("of-today.json", R"({"tyre": "soft"})");
    drop({"of-today.json"});
    EXPECT_TRUE(
        fixture::wait_for([this] { return window->explaining().known_setup(key_of("one.csv")).tyre == "soft"; }));
    EXPECT_EQ(window->edits().undoText(), QStringLiteral("setup of one.csv"));
    window->actions().undo->trigger();
    EXPECT_TRUE(fixture::wait_for([this] { return window->explaining().known_setup(key_of("one.csv")).tyre.empty(); }));
}

INSTANTIATE_TEST_SUITE_P(Book, GivenSetup, testing::Bool(),
                         [](const auto& with) { return with.param ? "With" : "Without"; });
