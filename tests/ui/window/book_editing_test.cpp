// SPDX-License-Identifier: GPL-3.0-or-later
// The book's list, changed as a person would: a session removed, names given, both undone; filters; kept pairings.
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/models/book_list.h"
#include "ui/models/pairing_list.h"
#include "ui/pages/sessions/book_filter.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/rename_form.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <gmock/gmock.h>

using namespace lapwright;
using models::BookList;
using testing::HasSubstr;

namespace {

class BookEditing : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        ids = fixture::fill_season(book_file());
        PairedWindowWithBook::SetUp();
        key(Qt::Key_L);
        ASSERT_TRUE(wait_for_rows(16));
        ASSERT_TRUE(fixture::wait_for([&] { return view().filter().track().count() == 4; }));
    }
    pages::BookPanel& panel() { return window->sessions_page().book_panel(); }
    pages::BookView& view() { return window->sessions_page().book(); }
    bool wait_for_rows(int rows) {
        return fixture::wait_for([&] { return view().model().rowCount() == rows; });
    }
    [[nodiscard]] QString cell(int column) {
        return view().model().index(view().list().current_row(), column).data().toString();
    }
    // Chosen in the list by its keys.
    void choose(const char* file) {
        view().list().setFocus();
        view().list().choose_row(0);
        for (int i = 0; i < 20 && cell(BookList::file_column) != QLatin1String(file); ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(cell(BookList::file_column), QLatin1String(file));
    }
    pages::RenameForm* form() { return window->findChild<pages::RenameForm*>(); }
    book::Book closed_book() {
        window.reset();
        auto book = book::Book::open(book_file());
        EXPECT_TRUE(book.ok());
        return std::move(book).value();
    }

    std::vector<book::SessionId> ids;
};

} // namespace

TEST_F(BookEditing, ASessionIsRemovedOnlyAfterAYesAndUndoBringsItBack) {
    choose("run-3.csv");
    press(Qt::Key_Delete);
    ASSERT_THAT(view().question().toStdString(), HasSubstr("Take run-3.csv of "));
    EXPECT_THAT(view().question().toStdString(), HasSubstr("With it go its laps and samples, 1 kept pairing."));
    press(Qt::Key_Escape);
    EXPECT_EQ(view().question(), QString());
    EXPECT_EQ(view().model().rowCount(), 16);
    ASSERT_TRUE(view().list().hasFocus());
    press(Qt::Key_Delete);
    press(Qt::Key_Return);
    ASSERT_TRUE(wait_for_rows(15));
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo removal of run-3.csv"));
    press(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(wait_for_rows(16));
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(wait_for_rows(15));
    book::Book book = closed_book();
    EXPECT_FALSE(book::read_summary(book, ids[2]).ok());
    EXPECT_EQ(book::pairing_list(book)->size(), 1U); // of the window's own two laps
}

TEST_F(BookEditing, ACarGetsAnotherNameInAllSessionsAndUndoTakesItBack) {
    choose("run-1.csv");
    press(Qt::Key_F2);
    ASSERT_NE(form(), nullptr);
    form()->what().setCurrentIndex(1); // track, car, driver
    EXPECT_EQ(form()->line().text(), QStringLiteral("Plover"));
    EXPECT_FALSE(form()->done().isEnabled()); // it has this name already
    QTest::keyClicks(&form()->line(), QStringLiteral("Plover II"));
    EXPECT_EQ(form()->done().text(), QStringLiteral("&Rename"));
    QTest::keyClick(&form()->line(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return cell(BookList::car_column) == QStringLiteral("Plover II"); }));
    EXPECT_EQ(window->actions().undo->text(), QStringLiteral("&Undo new name of Plover"));
    ASSERT_TRUE(fixture::wait_for([&] { return view().filter().car().findText(QStringLiteral("Plover II")) >= 0; }));
    QApplication::setActiveWindow(window.get());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(fixture::wait_for([&] { return cell(BookList::car_column) == QStringLiteral("Plover"); }));
}

TEST_F(BookEditing, TwoNamesThatBecomeOneAreSaidBefore) {
    choose("run-1.csv");
    press(Qt::Key_F2);
    ASSERT_NE(form(), nullptr);
    form()->what().setCurrentIndex(2);
    QTest::keyClicks(&form()->line(), QStringLiteral(" odran pell"));
    EXPECT_THAT(form()->said().toStdString(),
                HasSubstr("There is a driver \"Odran Pell\" already: the two become one"));
    EXPECT_EQ(form()->done().text(), QStringLiteral("&Unite the two"));
    QTest::keyClick(&form()->line(), Qt::Key_Return);
    ASSERT_TRUE(fixture::wait_for([&] { return cell(BookList::driver_column) == QStringLiteral("Odran Pell"); }));
    QApplication::setActiveWindow(window.get());
    key(Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return cell(BookList::driver_column) == QStringLiteral("Wren Alder"); }));
    book::Book book = closed_book();
    EXPECT_EQ(book::search(book, {.driver = "Odran Pell"})->size(), 3U);
}

TEST_F(BookEditing, ASessionWithoutADateGetsOne) {
    choose("run-14.csv");
    EXPECT_EQ(cell(BookList::date_column), QStringLiteral("—"));
    press(Qt::Key_F2);
    ASSERT_NE(form(), nullptr);
    form()->what().setCurrentIndex(3);
    EXPECT_FALSE(form()->done().isEnabled());
    QTest::keyClicks(&form()->line(), QStringLiteral("august"));
    EXPECT_THAT(form()->said().toStdString(), HasSubstr("\"august\" is no date"));
    EXPECT_FALSE(form()->done().isEnabled());
    form()->line().clear();
    QTest::keyClicks(&form()->line(), QStringLiteral("2026-12-01 09:30"));
    EXPECT_THAT(form()->said().toStdString(), HasSubstr("driven on 1 Dec 2026, 9:30 UTC"));
    QTest::keyClick(&form()->line(), Qt::Key_Return);
    const auto first_date = [&] { return view().model().index(0, BookList::date_column).data().toString(); };
    ASSERT_TRUE(fixture::wait_for([&] { return first_date() == QStringLiteral("1 Dec 2026, 9:30 UTC"); }));
    EXPECT_EQ(cell(BookList::date_column), first_date()); // the session is chosen still, wherever it went
    QApplication::setActiveWindow(window.get());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(fixture::wait_for([&] { return first_date() != QStringLiteral("1 Dec 2026, 9:30 UTC"); }));
}

TEST_F(BookEditing, FiltersHoldBesideTheWords) {
    pages::BookFilter& filter = view().filter();
    filter.track().setFocus();
    press(Qt::Key_End);
    EXPECT_EQ(filter.track().currentText(), QStringLiteral("Ternbank"));
    ASSERT_TRUE(wait_for_rows(12));
    filter.tyre().setFocus();
    press(Qt::Key_Down);
    EXPECT_EQ(filter.tyre().currentText(), QStringLiteral("hard 220"));
    ASSERT_TRUE(wait_for_rows(4));
    view().words().setFocus();
    type(QStringLiteral("gusty"));
    ASSERT_TRUE(wait_for_rows(1));
    view().words().clear();
    filter.from().setFocus();
    type(QStringLiteral("2026-04"));
    EXPECT_THAT(view().said().toStdString(), HasSubstr("\"2026-04\" is no date"));
    type(QStringLiteral("-01"));
    ASSERT_TRUE(wait_for_rows(1)); // the one without a date is in no range
    filter.until().setFocus();
    type(QStringLiteral("2026-04-02"));
    ASSERT_TRUE(wait_for_rows(0));
    EXPECT_EQ(view().said(), QStringLiteral("No session is all of this."));
    press(Qt::Key_Return);
    EXPECT_TRUE(view().list().hasFocus());
}

TEST_F(BookEditing, AKeptPairingOpensWithBothItsSessions) {
    press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    pages::PairingsView& pairings = panel().pairings();
    ASSERT_TRUE(fixture::wait_for([&] { return pairings.model().rowCount() == 2; }));
    EXPECT_THAT(pairings.said().toStdString(), HasSubstr("2 pairings, the last one first."));
    int row = 0;
    while (pairings.model().pairings()[static_cast<std::size_t>(row)].a.id != ids[2])
        ++row;
    pairings.list().choose_row(row);
    EXPECT_THAT(pairings.model().index(row, models::PairingList::a_column).data().toString().toStdString(),
                HasSubstr("Wren Alder, Plover, lap 1, "));
    EXPECT_THAT(pairings.chosen().toStdString(), HasSubstr("Wren Alder, Plover, lap 1, "));
    ASSERT_TRUE(pairings.list().hasFocus());
    press(Qt::Key_Return);
    ASSERT_TRUE(
        fixture::wait_for([&] { return window->on_compare_page() && window->sessions().now().entries().size() == 4; }));
    EXPECT_EQ(window->sessions().now().picks().a, (workspace::LapPick{fixture::key_of_file("run-3.csv"), 1}));
    EXPECT_EQ(window->sessions().now().picks().b, (workspace::LapPick{fixture::key_of_file("run-4.csv"), 1}));
}
