// SPDX-License-Identifier: GPL-3.0-or-later
// The window with its book: what was written and entered comes back from the book alone, a file is one session however
// often it comes, and a book that cannot be used is one sentence.
#include "ui/window/keeping.h"

#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/sessions.h"
#include "tests/fixture/without_rights.h"
#include "tests/ui/fixture/full_disk.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/theme/note_field.h"
#include "ui/window/debriefing.h"
#include "ui/window/explaining.h"
#include "ui/window/notices.h"

#include <QFile>
#include <QFileInfo>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTimer>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;
using workspace::Side;

namespace {

class Keeping : public fixture::PairedWindow {
  protected:
    void SetUp() override {
        write("one.csv", "invented one");
        write("two.csv", "invented two");
        PairedWindow::SetUp();
    }
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages with_book = fixture::invented_stages();
        with_book.book_file = book_file().toStdString();
        return with_book;
    }
    [[nodiscard]] QString book_file() const { return path("data/book.sqlite"); }
    void write(const char* name, const QByteArray& bytes) const {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    // Everything but the book is forgotten; the window's own edits are in it.
    void forget_settings() {
        window.reset();
        settings.clear();
        settings.sync();
    }
    // The window is closed: the book can be looked at by itself.
    book::Book closed_book() {
        window.reset();
        auto book = book::Book::open(book_file().toStdString());
        EXPECT_TRUE(book.ok());
        return std::move(book).value();
    }
    theme::NoteField& field(Side side) { return window->compare_page().card().note(side); }
    void note(const QString& words) {
        key(Qt::Key_M);
        type(words);
        press(Qt::Key_Return);
    }
};

} // namespace

TEST_F(Keeping, NotesComeBackFromTheBookForTheSameFileUnderAnotherName) {
    ASSERT_TRUE(fixture::wait_for([this] { return window->debriefing().in_book(); }));
    note(QStringLiteral("felt planted"));
    QTest::keyClick(window.get(), Qt::Key_4, Qt::ControlModifier);
    window->debrief_page().notes_field().setPlainText(QStringLiteral("new pads next time"));
    const int chosen = window->compare_page().chosen_segment();
    window->close();
    forget_settings();
    ASSERT_TRUE(QFile::rename(path("one.csv"), path("one moved.csv")));
    window = std::make_unique<window::MainWindow>(stages(), settings);
    window->start({path("one moved.csv"), path("two.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    window->compare_page().choose(chosen);
    EXPECT_TRUE(fixture::wait_for([&] { return field(Side::a).note() == QStringLiteral("felt planted"); }));
    EXPECT_TRUE(fixture::wait_for(
        [&] { return window->debrief_page().notes() == QStringList{QStringLiteral("new pads next time")}; }));
    EXPECT_TRUE(settings.allKeys().filter(QStringLiteral("notes/")).isEmpty());
    book::Book book = closed_book();
    EXPECT_EQ(book::search(book)->size(), 2U);
}

TEST_F(Keeping, ASetupComesBackFromTheBookAndSoDoesItsUndoing) {
    car::SetupSheet sheet;
    sheet.tyre = "soft";
    sheet.items = {{"wing angle", "7 deg"}};
    ASSERT_TRUE(fixture::wait_for([&] { return window->explaining().in_book(key_of("one.csv")); }));
    window->explaining().enter_setups(sheet, {});
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo setup of A"));
    forget_settings();
    open_window();
    EXPECT_TRUE(fixture::wait_for([&] { return window->explaining().setup_a().tyre == "soft"; }));
    ASSERT_EQ(window->explaining().setup_a().items.size(), 1U);
    window->explaining().enter_setups({}, {});
    EXPECT_EQ(window->explaining().setup_a().tyre, "");
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(window->explaining().setup_a().tyre, "soft");
    forget_settings();
    open_window();
    EXPECT_TRUE(fixture::wait_for([&] { return window->explaining().setup_a().tyre == "soft"; }));
}

TEST_F(Keeping, NotesFromARunWithoutTheBookMoveIntoIt) {
    window.reset();
    window = std::make_unique<window::MainWindow>(fixture::invented_stages(), settings);
    window->start({path("one.csv"), path("two.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    window->notes().put({key_of("one.csv")}, QStringLiteral("typed without a book"));
    open_window();
    book::Book book = closed_book();
    book::Filter filter;
    filter.words = "typed without";
    EXPECT_EQ(book::search(book, filter)->size(), 1U);
}

TEST_F(Keeping, ADamagedBookIsOneSentenceAndTheWindowGoesOn) {
    window.reset();
    write("data/book.sqlite", QByteArray(100'000, 'x'));
    for (const char* more : {"data/book.sqlite-wal", "data/book.sqlite-shm"})
        QFile::remove(path(more));
    open_window();
    ASSERT_TRUE(fixture::wait_for([this] { return window->notices().isVisible(); }));
    ASSERT_EQ(window->notices().sentences().size(), 1);
    EXPECT_THAT(window->notices().sentences().front().toStdString(), HasSubstr("The window goes on without its book."));
    note(QStringLiteral("kept all the same"));
    const int chosen = window->compare_page().chosen_segment();
    open_window();
    window->compare_page().choose(chosen);
    EXPECT_EQ(field(Side::a).note(), QStringLiteral("kept all the same"));
    EXPECT_EQ(QFileInfo(book_file()).size(), 100'000);
}

TEST_F(Keeping, WhatTheDiskDoesNotTakeIsSaidAndTriedAgainAndAskedAboutAtTheEnd) {
    ASSERT_TRUE(fixture::wait_for([this] { return window->debriefing().in_book(); }));
    static_cast<void>(window->book().finish());
    const QAction& waiting = *window->actions().write_waiting;
    EXPECT_FALSE(waiting.isEnabled());
    QString asked;
    const auto answer = [&asked](const QString& word) {
        QTimer::singleShot(0, qApp, [&asked, word] {
            auto* question = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            ASSERT_NE(question, nullptr);
            asked = question->text() + QLatin1Char(' ') + question->informativeText();
            for (QAbstractButton* button : question->buttons())
                if (button->text().remove(QLatin1Char('&')) == word) return button->click();
            question->reject();
        });
    };
    {
        const fixture::FullDisk full(16'384);
        note(QStringLiteral("the disk is full"));
        ASSERT_TRUE(fixture::wait_for([&] { return waiting.isEnabled(); }));
        EXPECT_EQ(waiting.iconText(), QStringLiteral("1 edit is not in the book"));
        ASSERT_EQ(window->notices().sentences().size(), 1);
        EXPECT_THAT(window->notices().sentences().front().toStdString(), HasSubstr("make room on the disk"));
        note(QStringLiteral("the disk is still full"));
        ASSERT_TRUE(
            fixture::wait_for([&] { return waiting.iconText() == QStringLiteral("2 edits are not in the book"); }));
        EXPECT_EQ(window->notices().sentences().size(), 1);
        answer(QStringLiteral("Stay"));
        EXPECT_FALSE(window->close());
        EXPECT_TRUE(window->isVisible());
        EXPECT_THAT(asked.toStdString(), HasSubstr("2 edits are not in the book yet. "));
        EXPECT_THAT(asked.toStdString(), HasSubstr("the disk is full"));
    }
    window->actions().write_waiting->trigger();
    EXPECT_TRUE(fixture::wait_for([&] { return !waiting.isEnabled(); }));
    EXPECT_TRUE(window->notices().sentences().isEmpty());
    EXPECT_TRUE(settings.allKeys().filter(QStringLiteral("notes/")).isEmpty());
    EXPECT_TRUE(window->close());
    book::Book book = closed_book();
    book::Filter filter;
    filter.words = "still full";
    EXPECT_EQ(book::search(book, filter)->size(), 1U);
}

TEST_F(Keeping, ABookThatCanOnlyBeReadIsShownAndSaysSoOnce) {
    ASSERT_TRUE(fixture::wait_for([this] { return window->debriefing().in_book(); }));
    const int chosen = window->compare_page().chosen_segment();
    note(QStringLiteral("written before"));
    window.reset();
    ASSERT_TRUE(QFile::setPermissions(folder.path(), QFileDevice::Permissions(0x7777)));
    ASSERT_TRUE(QFile::setPermissions(path("data"), QFileDevice::Permissions(0x5555)));
    {
        const fixture::WithoutRights meanwhile;
        open_window();
        window->compare_page().choose(chosen);
        EXPECT_TRUE(fixture::wait_for([&] { return field(Side::a).note() == QStringLiteral("written before"); }));
        ASSERT_EQ(window->notices().sentences().size(), 1);
        EXPECT_THAT(window->notices().sentences().front().toStdString(), HasSubstr("this book can only be read here"));
        EXPECT_FALSE(window->book().takes_edits());
        key(Qt::Key_N);
        note(QStringLiteral("beside the book"));
        static_cast<void>(window->book().finish());
        fixture::settle();
        EXPECT_EQ(window->notices().sentences().size(), 1);
        EXPECT_TRUE(window->close()); // without a question
        window.reset();
    }
    ASSERT_TRUE(QFile::setPermissions(path("data"), QFileDevice::Permissions(0x7777)));
    {
        book::Book book = closed_book();
        book::Filter filter;
        filter.words = "beside";
        EXPECT_TRUE(book::search(book, filter)->empty());
    }
    open_window(); // which may write it: what was kept beside the book moves into it
    EXPECT_TRUE(fixture::wait_for([this] { return window->debriefing().in_book(); }));
    book::Book book = closed_book();
    book::Filter filter;
    filter.words = "beside";
    EXPECT_EQ(book::search(book, filter)->size(), 1U);
}

TEST_F(Keeping, WithoutABookNoFileIsMade) {
    window.reset();
    ASSERT_TRUE(QFile::remove(book_file()));
    window = std::make_unique<window::MainWindow>(fixture::invented_stages(), settings);
    window->start({path("one.csv"), path("two.csv")});
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }));
    window.reset();
    EXPECT_FALSE(QFile::exists(book_file()));
}
