// SPDX-License-Identifier: GPL-3.0-or-later
// A kept pairing that is opened again says what it said, notes and all; what was called off can be asked for anew.
#include "core/book/pairings.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/compare/segment_card.h"
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
    }
    void TearDown() override {
        held = false;
        window.reset();
    }
    // Files can be held back until they are let go.
    [[nodiscard]] bridge::Stages stages() const override {
        bridge::Stages stages = PairedWindowWithBook::stages();
        stages.load =
            [this, load = stages.load](const workspace::Origin& origin, const std::optional<track::TrackRecord>& track,
                                       const base::Progress& progress) -> base::Result<bridge::SessionPointer> {
            while (held) {
                if (!base::go_on(progress, "held", 0.5)) return base::cancelled();
                QThread::msleep(1);
            }
            return load(origin, track, progress);
        };
        return stages;
    }
    // Without anything but the book.
    void open_from_book() {
        window->close();
        window.reset(); // after all is in the book
        settings.clear();
        show_window();
        ask();
    }
    void ask() {
        auto book = std::move(book::Book::open(book_file())).value();
        Q_EMIT window->findChild<window::BookLooking*>()->pairing_asked(book::pairing_list(book)->front());
    }
    bool wait_for_page() {
        return fixture::wait_for([this] { return window->on_compare_page(); });
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
};

} // namespace

TEST_F(Reopening, SaysWhatItSaidNotesAndAll) {
    key(Qt::Key_M);
    type(QStringLiteral("too early"));
    press(Qt::Key_Return);
    const int chosen = window->compare_page().chosen_segment();
    const QStringList before = shown();
    EXPECT_GT(before.size(), 100);
    open_from_book();
    ASSERT_TRUE(wait_for_page());
    window->compare_page().choose(chosen);
    EXPECT_TRUE(fixture::wait_for([this] {
        return window->compare_page().card().note(workspace::Side::a).note() == QStringLiteral("too early");
    }));
    EXPECT_EQ(shown(), before);
    EXPECT_TRUE(window->notices().sentences().isEmpty());
}

TEST_F(Reopening, WhatWasCalledOffCanBeAskedForAnew) {
    held = true;
    open_from_book();
    const auto* worker = window->findChild<bridge::Worker*>();
    ASSERT_TRUE(fixture::wait_for([&] { return worker->busy(); }));
    window->actions().cancel->trigger();
    ASSERT_TRUE(fixture::wait_for([&] { return !worker->busy(); }));
    EXPECT_FALSE(window->on_compare_page());
    held = false;
    ask();
    ASSERT_TRUE(wait_for_page());
    key(Qt::Key_3, Qt::ControlModifier);
    EXPECT_TRUE(fixture::wait_for([this] { return window->explaining().explanation() != nullptr; }));
}
