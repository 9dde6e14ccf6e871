// SPDX-License-Identifier: GPL-3.0-or-later
// The book on the Sessions page, by its keys: words narrow the list, Return opens a session of which no file is left.
#include "ui/window/book_looking.h"

#include "tests/ui/fixture/importing_fixture.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/models/book_list.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/debriefing.h"
#include "ui/window/notices.h"

#include <QFile>
#include <QLineEdit>
#include <algorithm>
#include <gmock/gmock.h>

using namespace lapwright;

namespace {

class BookLooking : public fixture::PairedWindowWithBook {
  protected:
    pages::BookView& view() { return window->sessions_page().book(); }
    bool wait_for_rows(int rows) {
        return fixture::wait_for([&] { return view().model().rowCount() == rows; });
    }
};

} // namespace

TEST_F(BookLooking, WordsNarrowTheListAndEscapeGoesBack) {
    key(Qt::Key_L);
    ASSERT_TRUE(view().isVisible());
    ASSERT_TRUE(view().words().hasFocus());
    ASSERT_TRUE(wait_for_rows(2));
    EXPECT_EQ(view().said(), QStringLiteral("2 sessions"));
    type(QStringLiteral("brand coup")); // beginnings of words, of driver and car
    ASSERT_TRUE(wait_for_rows(1)) << view().words().text().toStdString() << ": " << view().said().toStdString();
    EXPECT_EQ(view().model().index(0, models::BookList::driver_column).data().toString(),
              QStringLiteral("Tomas Brandvold"));
    type(QStringLiteral(" nothing"));
    ASSERT_TRUE(wait_for_rows(0));
    EXPECT_EQ(view().said(), QStringLiteral("No session has all of these words."));
    press(Qt::Key_Escape);
    EXPECT_FALSE(view().isVisible());
    EXPECT_TRUE(window->sessions_page().cards().back()->laps().hasFocus());
}

TEST_F(BookLooking, ANoteThatIsWrittenIsFoundAtOnce) {
    window->notes().put({key_of("one.csv")}, QStringLiteral("wet patch"));
    key(Qt::Key_L);
    ASSERT_TRUE(wait_for_rows(2));
    type(QStringLiteral("patch"));
    ASSERT_TRUE(wait_for_rows(1));
    EXPECT_EQ(view().model().index(0, models::BookList::notes_column).data().toString(), QStringLiteral("1"));
}

// Open from its file, it is not opened a second time out of the book.
TEST_F(BookLooking, ASessionThatIsOpenIsShownAndNotOpenedTwice) {
    key(Qt::Key_L);
    ASSERT_TRUE(wait_for_rows(2));
    ASSERT_TRUE(fixture::wait_for([&] { return window->debriefing().in_book(); }));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_FALSE(view().isVisible());
    fixture::settle();
    EXPECT_EQ(window->sessions().now().entries().size(), 2U);
    const auto& cards = window->sessions_page().cards();
    EXPECT_TRUE(std::ranges::any_of(cards, [](pages::SessionCard* card) { return card->laps().hasFocus(); }));
}

TEST_F(BookLooking, AFileThatIsOpenUnderAnotherNameIsOneSessionWithIt) {
    const auto before = window->sessions().now().picks().a;
    ASSERT_TRUE(QFile::copy(path("one.csv"), path("one again.csv")));
    window->open({path("one again.csv")});
    const auto first = [this] { return window->sessions().now().entries()[0]; };
    ASSERT_TRUE(fixture::wait_for([&] { return *first().file() == path("one again.csv").toStdString(); }));
    EXPECT_EQ(window->sessions().now().entries().size(), 2U);
    EXPECT_EQ(first().key, key_of("one.csv"));
    EXPECT_EQ(window->sessions().now().picks().a, before);
}

TEST_F(BookLooking, WithoutABookThereIsNoWayToIt) {
    window.reset();
    window = std::make_unique<window::MainWindow>(fixture::invented_stages(), settings);
    EXPECT_FALSE(window->actions().book->isEnabled());
}

namespace {

class BookSession : public fixture::ImportingFixture {
  protected:
    void SetUp() override { open_with_book(); }
    void open_with_book() {
        window.reset();
        const std::string book = folder.filePath(QStringLiteral("book.sqlite")).toStdString();
        window = std::make_unique<window::MainWindow>(bridge::analysis_stages(recipes(), book), settings);
        window->resize(1366, 768);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        QApplication::setActiveWindow(window.get());
    }
};

} // namespace

TEST_F(BookSession, OpensWithItsLapsAndNotesWithoutItsFile) {
    const QString file = folder.filePath(QStringLiteral("run.csv"));
    ASSERT_TRUE(QFile::copy(QStringLiteral(SAMPLE_SESSIONS "/plover-saturday-2.csv"), file));
    window->open({file});
    ASSERT_TRUE(wait_for_session(file));
    const std::vector<lap::Lap> laps = session(file)->laps;
    window->notes().put({workspace::key_of(*session(file))}, QStringLiteral("new pads"));
    open_with_book();
    ASSERT_TRUE(QFile::remove(file));
    QTest::keyClick(window.get(), Qt::Key_L);
    pages::BookView& view = window->sessions_page().book();
    ASSERT_TRUE(fixture::wait_for([&] { return view.model().rowCount() == 1; }, fixture::patience_ms));
    QTest::keyClick(&view.words(), Qt::Key_Down);
    ASSERT_TRUE(view.list().hasFocus());
    QTest::keyClick(&view.list(), Qt::Key_Return);
    ASSERT_TRUE(
        fixture::wait_for([&] { return window->sessions().now().entries().size() == 1; }, fixture::patience_ms));
    EXPECT_FALSE(view.isVisible());
    const auto& entry = window->sessions().now().entries().front();
    ASSERT_EQ(entry.session->laps.size(), laps.size());
    for (std::size_t i = 0; i < laps.size(); ++i)
        EXPECT_EQ(entry.session->laps[i].time_s(), laps[i].time_s());
    EXPECT_TRUE(fixture::wait_for([&] { return window->notes().text({entry.key}) == QStringLiteral("new pads"); },
                                  fixture::patience_ms));
    Q_EMIT window->sessions_page().columns_asked(entry.key);
    EXPECT_THAT(window->notices().sentences().join(QLatin1Char(' ')).toStdString(),
                testing::HasSubstr("run.csv came out of the book"));
}

TEST_F(BookSession, ATrackFileThatWasGivenOnceTimesTheSessionsThatComeLater) {
    const QString file = QStringLiteral(SAMPLE_SESSIONS "/plover-saturday-2.csv");
    window->open({file, QStringLiteral(SAMPLE_SESSIONS "/ternbank.track.json")});
    ASSERT_TRUE(wait_for_session(file));
    const double with_file_s = session(file)->fastest()->time_s();
    open_with_book();
    window->open({file});
    ASSERT_TRUE(wait_for_session(file));
    EXPECT_EQ(session(file)->gate_origin, "Ternbank, as the book knows it");
    EXPECT_EQ(session(file)->fastest()->time_s(), with_file_s);
    const auto knows_track = [&] { return session(file)->known_track.has_value(); };
    ASSERT_TRUE(window->actions().forget_track->isEnabled());
    window->actions().forget_track->trigger();
    ASSERT_TRUE(fixture::wait_for([&] { return !knows_track(); }, fixture::patience_ms));
    EXPECT_FALSE(window->actions().forget_track->isEnabled());
    window->actions().undo->trigger();
    EXPECT_TRUE(fixture::wait_for(knows_track, fixture::patience_ms));
}

TEST_F(BookLooking, ThePairingOfAnotherBookIsNotReopened) {
    window->close();
    bridge::Stages friends = stages();
    friends.book_file = path("friends.sqlite").toStdString();
    window = std::make_unique<window::MainWindow>(friends, settings);
    window->start({});
    fixture::settle();
    EXPECT_TRUE(window->sessions().now().entries().empty());
    window = std::make_unique<window::MainWindow>(stages(), settings);
    window->start({});
    EXPECT_TRUE(fixture::wait_for([&] { return window->on_compare_page(); }));
}
