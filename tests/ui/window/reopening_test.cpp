// SPDX-License-Identifier: GPL-3.0-or-later
// A kept pairing is on the screen before its sessions are read, says what it would say if they had been, and nothing
// jumps when they have.
#include "core/analysis/known_track.h"
#include "core/book/database.h"
#include "core/book/pairings.h"
#include "core/book/tracks.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/bridge/book_session.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/plots/plot_stack.h"
#include "ui/theme/note_field.h"
#include "ui/window/book_looking.h"
#include "ui/window/debriefing.h"
#include "ui/window/explaining.h"
#include "ui/window/notices.h"

#include <QAbstractItemView>
#include <QLabel>
#include <atomic>

using namespace lapwright;

namespace {

class Reopening : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        PairedWindowWithBook::SetUp();
        ASSERT_TRUE(fixture::wait_for([this] { return window->debriefing().in_book(); }));
        window->close();
        window.reset(); // after all is in the book
        loads = 0;
    }
    void TearDown() override {
        held = false;
        window.reset();
    }
    // The invented pairing as if it were worked out from the sessions that are open.
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages stages = PairedWindowWithBook::stages();
        stages.load = [this,
                       load = stages.load](const std::string& file, const std::optional<track::TrackRecord>& track,
                                           const base::Progress& progress) -> base::Result<bridge::SessionPointer> {
            while (held) {
                if (!base::go_on(progress, "held", 0.5)) return base::cancelled();
                QThread::msleep(1);
            }
            ++loads;
            const auto invented = load(file, track, progress);
            if (!invented.ok()) return invented.error();
            auto session = std::make_shared<analysis::Session>(*invented.value());
            session->track_choice = analysis::track_choice(track, bridge::tracks_of_book(book_file()));
            return bridge::SessionPointer(std::move(session));
        };
        stages.compare = [this](const bridge::Wanted& wanted,
                                const base::Progress&) -> base::Result<models::ComparedPointer> {
            fixture::PairingOptions options;
            options.noisy = other_numbers;
            options.channels = false; // they would have to be in the recording
            auto pairing = std::make_shared<analysis::Pairing>(*fixture::pairing(options));
            pairing->a.session = wanted.a;
            pairing->b.session = wanted.b;
            pairing->a.lap.number = wanted.lap_a.value_or(wanted.a->fastest()->number);
            pairing->b.lap.number = wanted.lap_b.value_or(wanted.b->fastest()->number);
            pairing->track_choice = analysis::track_choice(wanted.track, {});
            return models::compared(std::move(pairing));
        };
        return stages;
    }
    [[nodiscard]] book::PairingSummary kept_pairing() const {
        auto book = std::move(book::Book::open(book_file())).value();
        return book::pairing_list(book)->front();
    }
    void in_book(const std::function<void(book::Book&)>& edit) const {
        auto book = std::move(book::Book::open(book_file())).value();
        edit(book);
    }
    // Without anything but the book; files are held back until they are let go.
    void open_empty_window() {
        settings.clear();
        show_window();
    }
    void ask() { Q_EMIT window->findChild<window::BookLooking*>()->pairing_asked(kept_pairing()); }
    bool wait_for_page() {
        return fixture::wait_for([this] { return window->on_compare_page(); });
    }
    bool wait_for_whole() {
        held = false;
        return fixture::wait_for([this] { return window->shelf().complete() && loads == 2; }) &&
               fixture::wait_for([this] { return !window->findChild<bridge::Worker*>()->busy(); });
    }
    // All words and figures of the Compare page.
    [[nodiscard]] QStringList shown() {
        QStringList all{window->windowTitle()};
        pages::ComparePage& page = window->compare_page();
        for (int row = 0; row < page.table().rowCount(); ++row) {
            page.choose(row);
            for (int column = 0; column < page.table().columnCount(); ++column)
                all << page.table().index(row, column).data().toString();
            for (const QLabel* label : page.findChildren<QLabel*>())
                all << label->text();
        }
        return all;
    }

    mutable std::atomic<bool> held = false;
    mutable std::atomic<int> loads = 0;
    bool other_numbers = false;
};

} // namespace

TEST_F(Reopening, ShowsWhatTheBookKeepsAndNothingJumpsWhenTheRestHasCome) {
    held = true;
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    EXPECT_EQ(loads, 0);
    EXPECT_FALSE(window->compare_page().compared()->whole);
    const QStringList at_once = shown();
    EXPECT_GT(at_once.size(), 100);
    window->compare_page().choose(2);
    window->compare_page().show_chosen_stretch();
    fixture::settle();
    const QPixmap before = window->compare_page().stack().grab();
    ASSERT_TRUE(wait_for_whole());
    fixture::settle();
    EXPECT_EQ(window->compare_page().chosen_segment(), 2);
    EXPECT_EQ(window->compare_page().stack().grab().toImage(), before.toImage());
    EXPECT_EQ(shown(), at_once);
    in_book([](book::Book& book) { book.database().run("DELETE FROM kept_view"); });
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    EXPECT_TRUE(window->compare_page().compared()->whole);
    EXPECT_EQ(shown(), at_once);
}

TEST_F(Reopening, TheCausesWaitForTheSessionsAndAreReadAnewAfterAStop) {
    held = true;
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    key(Qt::Key_3, Qt::ControlModifier);
    ASSERT_TRUE(fixture::wait_for([this] { return window->findChild<bridge::Worker*>()->busy(); }));
    EXPECT_FALSE(window->explaining().explanation());
    window->actions().cancel->trigger();
    ASSERT_TRUE(fixture::wait_for([this] { return !window->findChild<bridge::Worker*>()->busy(); }));
    held = false;
    key(Qt::Key_2, Qt::ControlModifier);
    key(Qt::Key_3, Qt::ControlModifier);
    EXPECT_TRUE(fixture::wait_for([this] { return window->explaining().explanation() != nullptr; }));
    EXPECT_EQ(loads, 2);
}

TEST_F(Reopening, AStaleOneIsNotShown) {
    in_book([](book::Book& book) {
        track::TrackRecord record;
        record.name = "Mudflat";
        ASSERT_FALSE(book::put_track(book, record));
    });
    held = true;
    open_empty_window();
    ask();
    QTest::qWait(100);
    EXPECT_FALSE(window->on_compare_page());
    held = false;
    ASSERT_TRUE(wait_for_page());
    EXPECT_TRUE(window->compare_page().compared()->whole);
    EXPECT_EQ(loads, 2);
    window.reset(); // and is kept anew
    loads = 0;
    held = true;
    open_empty_window();
    ask();
    EXPECT_TRUE(wait_for_page());
    EXPECT_EQ(loads, 0);
}

TEST_F(Reopening, WhatIsWorkedOutOtherwiseTakesItsPlaceAndIsKept) {
    other_numbers = true; // as a library underneath might have brought about
    held = true;
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    const QStringList at_once = shown();
    key(Qt::Key_3, Qt::ControlModifier);
    ASSERT_TRUE(wait_for_whole());
    EXPECT_TRUE(fixture::wait_for([this] { return window->explaining().explanation() != nullptr; }));
    EXPECT_TRUE(window->causes_page().isVisible());
    EXPECT_TRUE(window->compare_page().compared()->whole);
    const QStringList worked_out = shown();
    EXPECT_NE(worked_out, at_once);
    window.reset();
    loads = 0;
    held = true;
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    EXPECT_EQ(loads, 0);
    EXPECT_EQ(shown(), worked_out);
}

TEST_F(Reopening, ThePairingOfTheLastTimeIsShownAtOnceWhenTheProgramStarts) {
    held = true;
    show_window();
    window->start({});
    ASSERT_TRUE(wait_for_page());
    EXPECT_EQ(loads, 0);
    EXPECT_FALSE(window->compare_page().compared()->whole);
    EXPECT_TRUE(wait_for_whole());
}

TEST_F(Reopening, ANoteMayBeWrittenBeforeTheSessionsAreRead) {
    held = true;
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    key(Qt::Key_M);
    type(QStringLiteral("at once"));
    press(Qt::Key_Return);
    const int chosen = window->compare_page().chosen_segment();
    ASSERT_TRUE(wait_for_whole());
    EXPECT_TRUE(window->notices().sentences().isEmpty());
    open_empty_window();
    ask();
    ASSERT_TRUE(wait_for_page());
    window->compare_page().choose(chosen);
    EXPECT_EQ(window->compare_page().card().note(models::Side::a).note(), QStringLiteral("at once"));
}
