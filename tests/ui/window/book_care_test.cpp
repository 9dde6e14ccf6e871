// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to the whole book from the window: it is checked, a friend's is merged into it, a damaged one is saved,
// removed sessions and pairings come back; and what the book calls a session is what every page calls it.
#include "core/book/search.h"
#include "core/book/sessions.h"
#include "core/book/sha256.h"
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_queue.h"
#include "ui/models/book_list.h"
#include "ui/models/pairing_list.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/removed_list.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/book_care.h"
#include "ui/window/debriefing.h"
#include "ui/window/notices.h"

#include <QFile>
#include <QListWidget>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;

namespace {

class BookCare : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        ids = fixture::fill_season(book_file());
        PairedWindowWithBook::SetUp();
        ASSERT_TRUE(fixture::wait_for([this] { return window->debriefing().in_book(); }));
    }
    // Comparisons of the sessions as they are called now.
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages with_book = PairedWindowWithBook::stages();
        with_book.compare = [](const bridge::Wanted& wanted,
                               const base::Progress&) -> base::Result<workspace::ComparedPointer> {
            auto pairing = std::make_shared<analysis::Pairing>(*fixture::pairing());
            pairing->a.session = wanted.a;
            pairing->b.session = wanted.b;
            return workspace::compared(std::move(pairing));
        };
        return with_book;
    }
    window::BookCare& care() { return *window->findChild<window::BookCare*>(); }
    pages::BookPanel& panel() { return window->sessions_page().book_panel(); }
    bool says(const char* words) {
        return fixture::wait_for(
            [&] { return window->notices().sentences().join(QLatin1Char('\n')).contains(QLatin1String(words)); });
    }

    std::vector<book::SessionId> ids;
};

const std::string long_name = "Wren " + std::string(195, 'W');

} // namespace

TEST_F(BookCare, TheBookIsCheckedAndSaysThatItIsWhole) {
    EXPECT_TRUE(window->actions().check_book->isEnabled());
    EXPECT_FALSE(window->actions().salvage_book->isEnabled());
    window->actions().check_book->trigger();
    EXPECT_TRUE(says("The book was read to its end and is whole."));
}

TEST_F(BookCare, AFriendsBookIsMergedAndTheListFollows) {
    const std::string theirs = path("theirs.sqlite").toStdString();
    {
        auto other = book::Book::open(theirs);
        book::Book book = std::move(other).value();
        const fixture::InventedSession& like = fixture::invented_season[0];
        for (const std::string file : {"theirs-1.csv", "theirs-2.csv"}) {
            const auto recording = fixture::detail::tiny_recording(like, file);
            ASSERT_TRUE(book::add_session(book, {file, 1000, book::sha256_of(file)}, recording,
                                          book::details_of(recording), fixture::detail::laps_of(like)));
        }
    }
    key(Qt::Key_L);
    pages::BookView& view = window->sessions_page().book();
    const auto rows = [&](int count) { return fixture::wait_for([&] { return view.model().rowCount() == count; }); };
    ASSERT_TRUE(rows(16));
    care().merge(QString::fromStdString(theirs));
    EXPECT_TRUE(says("2 new sessions came from the friend's book"));
    EXPECT_TRUE(rows(18));
    care().merge(path("none"));
    EXPECT_TRUE(says("there is no such file"));
}

TEST_F(BookCare, ARemovedSessionIsListedAndComesBackUndoTakesItAgain) {
    window->book().edit([id = ids[2]](auto& own) { return book::remove_session(own.book(), id); });
    key(Qt::Key_L);
    pages::BookView& view = window->sessions_page().book();
    const auto rows = [&](int count) { return fixture::wait_for([&] { return view.model().rowCount() == count; }); };
    ASSERT_TRUE(rows(15));
    key(Qt::Key_Delete, Qt::ControlModifier);
    auto* list = window->findChild<pages::RemovedList*>();
    ASSERT_NE(list, nullptr);
    ASSERT_TRUE(fixture::wait_for([&] { return list->list().count() == 1; }));
    EXPECT_TRUE(list->list().item(0)->text().startsWith(QStringLiteral("run-3.csv · ")));
    EXPECT_TRUE(list->list().item(0)->text().contains(QStringLiteral("removed on")));
    QTest::keyClick(&list->list(), Qt::Key_Return);
    EXPECT_TRUE(rows(16));
    EXPECT_TRUE(fixture::wait_for([&] { return list->list().count() == 0; }));
    EXPECT_EQ(list->said(), QStringLiteral("No session was taken out of the book."));
    list->close();
    window->edits().undo();
    EXPECT_TRUE(rows(15));
}

TEST_F(BookCare, AKeptPairingIsTakenOutAndUndoBringsItBack) {
    window->actions().pairings->trigger();
    pages::PairingsView& view = panel().pairings();
    const auto rows = [&](int count) { return fixture::wait_for([&] { return view.model().rowCount() == count; }); };
    ASSERT_TRUE(rows(2));
    for (int round = 0; round < 2; ++round) {
        view.list().setFocus();
        view.list().choose_row(1);
        press(Qt::Key_Delete);
        ASSERT_TRUE(rows(1));
        EXPECT_TRUE(window->actions().undo->text().startsWith(QStringLiteral("&Undo removal of the pairing ")));
        window->edits().undo();
        ASSERT_TRUE(rows(2));
        window->edits().redo();
        ASSERT_TRUE(rows(1));
        window->edits().undo();
        ASSERT_TRUE(rows(2));
    }
}

TEST_F(BookCare, ADamagedBookIsSavedFromTheWindowAndUsedAgain) {
    window.reset();
    {
        QFile file(QString::fromStdString(book_file()));
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        file.write(QByteArray(100, '\0'));
    }
    open_window();
    ASSERT_TRUE(fixture::wait_for([this] { return window->actions().salvage_book->isEnabled(); }));
    EXPECT_FALSE(window->actions().book->isEnabled());
    window->actions().salvage_book->trigger();
    EXPECT_TRUE(says("16 sessions and "));
    EXPECT_TRUE(fixture::wait_for([this] { return window->actions().book->isEnabled(); }));
    EXPECT_FALSE(window->actions().salvage_book->isEnabled());
    EXPECT_TRUE(QFile::exists(QString::fromStdString(book_file() + ".damaged")));
    EXPECT_EQ(window->notices().sentences().size(), 1); // that it went on without the book is no longer so
    key(Qt::Key_L);
    EXPECT_TRUE(fixture::wait_for([this] { return window->sessions_page().book().model().rowCount() == 16; }));
}

TEST_F(BookCare, ANewNameReachesTheOpenComparisonAndItsSheet) {
    const auto driver = [this] { return window->compare_page().compared()->pairing->a.session->recording->driver; };
    const std::string before = driver();
    ASSERT_FALSE(before.empty());
    window->book().edit_names(
        [before](auto& kept) { return kept.rename({1, book::NameTable::driver, before, "Merel Vane", false}); });
    EXPECT_TRUE(fixture::wait_for([&] { return driver() == "Merel Vane"; }));
    EXPECT_TRUE(window->on_compare_page());
    EXPECT_TRUE(window->windowTitle().startsWith(QStringLiteral("Merel Vane lap ")));
    ASSERT_TRUE(window->debriefing().composed());
    EXPECT_THAT(window->debriefing().composed()->side_a, HasSubstr("Merel Vane"));
    window->book().edit_names([](auto& own) { return own.undo_rename(1); });
    EXPECT_TRUE(fixture::wait_for([&] { return driver() == before; }));
}

// Two hundred characters are a name too: they are cut, and no page grows by them.
TEST_F(BookCare, AVeryLongNameWidensNoPage) {
    const auto driver = [this] { return window->compare_page().compared()->pairing->a.session->recording->driver; };
    ASSERT_FALSE(driver().empty());
    auto book = book::Book::open(book_file());
    book::Book own = std::move(book).value();
    const auto sessions = book::search(own, {.driver = driver()});
    for (const auto& session : *sessions) {
        auto details = *book::read_details(own, session.id);
        details.driver = long_name;
        details.car = long_name;
        ASSERT_TRUE(book::change_details(own, session.id, details));
    }
    // Tells what the sessions are called.
    window->book().edit_names(
        [id = sessions->front().id](auto& kept) { return book::change_start(kept.book(), id, 1.7e9); });
    ASSERT_TRUE(fixture::wait_for([&] { return driver() == long_name; }));
    for (const auto key_of_page : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4}) {
        key(key_of_page, Qt::ControlModifier);
        EXPECT_LE(window->minimumSizeHint().width(), 1366) << static_cast<int>(key_of_page);
        EXPECT_EQ(window->width(), 1366);
    }
}
