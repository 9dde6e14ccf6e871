// SPDX-License-Identifier: GPL-3.0-or-later
// The Sessions page while no session is open: what the book has last is there and is opened, samples can be tried.
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/window/samples.h"

#include <QPushButton>

using namespace lapwright;

namespace {

class Start : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        ids = fixture::fill_season(book_file());
        show_window();
        window->start({});
        fixture::settle();
    }
    pages::StartView& view() { return window->sessions_page().start(); }

    std::vector<book::SessionId> ids;
};

} // namespace

TEST_F(Start, WhatWasComparedAndDrivenLastIsThereAndReturnOpensIt) {
    ASSERT_TRUE(fixture::wait_for([this] { return view().sessions().model()->rowCount() == 6; }));
    EXPECT_EQ(view().pairings().model()->rowCount(), 1);
    EXPECT_TRUE(view().sessions().isVisible());
    view().pairings().setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([this] { return window->on_compare_page(); }, 30'000));
    EXPECT_EQ(window->sessions().now().entries().size(), 2U);
    go_to_sessions();
    EXPECT_FALSE(view().isVisible()) << "it gives way to what is open";
}

TEST_F(Start, ASessionOpensFromItsRowAndClosingTheLastOneLeadsBack) {
    ASSERT_TRUE(fixture::wait_for([this] { return view().sessions().model()->rowCount() == 6; }));
    view().sessions().setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([this] { return window->sessions_page().cards().size() == 1; }, 30'000));
    EXPECT_FALSE(view().isVisible());
    window->sessions().edit([](workspace::OpenSessions& open) { open.remove(open.entries().front().key); });
    fixture::settle();
    EXPECT_TRUE(view().isVisible());
}

TEST_F(Start, TheSampleSessionsAreTriedByOneClick) {
    view().set_samples(true);
    int asked = 0;
    QObject::connect(&view(), &pages::StartView::samples_asked, [&] { ++asked; });
    view().samples().click();
    EXPECT_EQ(asked, 1);
}
