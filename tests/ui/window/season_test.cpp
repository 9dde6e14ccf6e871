// SPDX-License-Identifier: GPL-3.0-or-later
// The season in the window, by its keys and by the mouse: a track's
// laps, a car's figures, a session that is opened out of it.
#include "core/analysis/keep_session.h"
#include "core/analysis/run.h"
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/paired_window.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/season_view.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/season_plot.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <filesystem>
#include <gmock/gmock.h>

using namespace lapwright;
using testing::HasSubstr;
using testing::StartsWith;
using Part = pages::BookPanel::Part;

namespace {

class Season : public fixture::PairedWindowWithBook {
  protected:
    void SetUp() override {
        ids = fixture::fill_season(book_file());
        PairedWindowWithBook::SetUp();
    }
    pages::BookPanel& panel() { return window->sessions_page().book_panel(); }
    pages::SeasonView& view() { return panel().season(); }
    bool wait_for_rows(int rows) {
        return fixture::wait_for([&] { return view().model().rowCount() == rows; });
    }
    bool show_ternbank() {
        key(Qt::Key_L, Qt::ControlModifier);
        if (!fixture::wait_for([&] { return view().name_box().count() == 3; })) return false;
        while (view().name() != QStringLiteral("Ternbank"))
            QTest::keyClick(&view().name_box(), Qt::Key_Down);
        return wait_for_rows(12);
    }
    [[nodiscard]] QString cell(int row, const QString& title) {
        const models::SeasonList& model = view().model();
        for (int column = 0; column < model.columnCount(); ++column)
            if (model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString() == title)
                return model.index(row, column).data().toString();
        return QStringLiteral("no such column");
    }

    std::vector<book::SessionId> ids;
};

} // namespace

TEST_F(Season, ATracksLapsStandInTheOrderOfTimeWithWhatChanged) {
    ASSERT_TRUE(show_ternbank());
    EXPECT_EQ(panel().part(), Part::season);
    EXPECT_THAT(view().said().toStdString(),
                StartsWith("Ternbank, 12 sessions: quickest clean lap 1:31.874, Wren Alder in Plover, "));
    EXPECT_THAT(view().said().toStdString(), HasSubstr("One without a date stands last"));
    // A mark for all with a date and a clean lap, the oldest first; the two cars are two series.
    const auto& marks = view().plot().course().marks;
    ASSERT_EQ(marks.size(), 10U);
    EXPECT_TRUE(std::ranges::is_sorted(marks, {}, &plots::SeasonMark::unix_s));
    EXPECT_EQ(marks[0].value, 96.412);
    EXPECT_NEAR(*marks[0].companion, 96.412 + 1.21 * 0.3, 0.4);
    EXPECT_EQ(view().plot().course().series.size(), 2U);
    const QString changed = QStringLiteral("Setup since the one before");
    EXPECT_EQ(cell(0, changed), QStringLiteral("—"));
    EXPECT_EQ(cell(1, changed), QStringLiteral("no change"));
    EXPECT_EQ(cell(2, changed), QStringLiteral("wing angle 3 deg → 5 deg"));
    EXPECT_EQ(cell(3, changed), QStringLiteral("—")); // the other car's first
    EXPECT_EQ(cell(11, QStringLiteral("Date")), QStringLiteral("—"));
    EXPECT_EQ(cell(2, QStringLiteral("Conditions")), QStringLiteral("dry, gusty, 10\u00a0°C"));
}

TEST_F(Season, APointAndItsRowAreOneSessionAndReturnOpensIt) {
    ASSERT_TRUE(show_ternbank());
    window->sessions_page().repaint();
    fixture::settle();
    QTest::mouseClick(view().plot().childAt(view().plot().place_of(2)), Qt::LeftButton, {}, view().plot().place_of(2));
    EXPECT_EQ(view().list().current_row(), 2);
    EXPECT_EQ(view().plot().chosen(), 2);
    EXPECT_THAT(view().said_of_chosen().toStdString(), HasSubstr("wing angle 3 deg → 5 deg"));
    ASSERT_TRUE(view().list().hasFocus());
    press(Qt::Key_Down);
    EXPECT_EQ(view().plot().chosen(), 3);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    const workspace::SessionKey opened = fixture::key_of_file("run-3.csv");
    EXPECT_TRUE(fixture::wait_for([&] { return window->sessions().now().session(opened) != nullptr; }));
    EXPECT_FALSE(panel().isVisible());
}

TEST_F(Season, TheViewZoomsByKeysAndGoesBackToTheWhole) {
    ASSERT_TRUE(show_ternbank());
    view().list().setFocus();
    const double whole_s = view().plot().shown_s();
    press(Qt::Key_Plus);
    EXPECT_NEAR(view().plot().shown_s(), 0.7 * whole_s, 0.01 * whole_s);
    press(Qt::Key_W);
    EXPECT_NEAR(view().plot().shown_s(), whole_s, 1.0);
    press(Qt::Key_Minus); // no further than the season
    EXPECT_NEAR(view().plot().shown_s(), whole_s, 1.0);
}

TEST_F(Season, OneCarIsLookedAtAlone) {
    ASSERT_TRUE(show_ternbank());
    view().part_box().setFocus();
    press(Qt::Key_Down); // Dunlin, after "All cars"
    EXPECT_EQ(view().model().rowCount(), 3);
    EXPECT_EQ(view().plot().course().series, std::vector<QString>{QStringLiteral("Dunlin")});
    EXPECT_THAT(view().said().toStdString(), StartsWith("Ternbank, 3 sessions: quickest clean lap 1:33.512"));
}

TEST_F(Season, ACarsFiguresAreShownWithTheirIntervals) {
    ASSERT_TRUE(show_ternbank());
    view().of_box().setFocus();
    press(Qt::Key_Down);
    ASSERT_TRUE(fixture::wait_for([&] { return view().name_box().findText(QStringLiteral("Plover")) >= 0; }));
    view().name_box().setCurrentIndex(view().name_box().findText(QStringLiteral("Plover")));
    ASSERT_TRUE(wait_for_rows(9));
    EXPECT_EQ(view().part_box().count(), 4);
    EXPECT_THAT(view().said().toStdString(),
                StartsWith("Plover, 9 sessions with figures; tyre grip: 1.17 ±0.05 at first"));
    EXPECT_FALSE(view().plot().course().marks.front().sure); // the prior decided
    view().part_box().setFocus();
    press(Qt::Key_End);
    EXPECT_EQ(view().plot().course().title, QStringLiteral("power at the wheels, kW"));
    EXPECT_EQ(view().plot().course().marks.front().low, 172e3);
    view().name_box().setCurrentIndex(view().name_box().findText(QStringLiteral("Dunlin")));
    ASSERT_TRUE(wait_for_rows(0));
    EXPECT_THAT(view().said().toStdString(), StartsWith("Nothing is fitted to the laps of Dunlin yet: compare"));
    EXPECT_TRUE(view().plot().course().marks.empty());
}

// From all its sessions: worked out in the background from the samples, with and without part of their wing.
TEST_F(Season, ACarIsToldFromAllItsSessions) {
    {
        auto opened = book::Book::open(book_file());
        ASSERT_TRUE(opened.ok());
        book::Book book = std::move(opened).value();
        const std::string samples = SAMPLE_SESSIONS;
        for (const char* name : {"/plover-saturday-2", "/plover-saturday-3-less-wing"}) {
            const std::string stem = samples + name;
            const std::string file = stem + (std::filesystem::exists(stem + ".csv") ? ".csv" : ".tsv");
            const auto session = analysis::load_session(file);
            const auto setup = car::read_setup_sheet(stem + ".setup.json");
            const auto source = book::source_of_file(file);
            ASSERT_TRUE(session.ok() && setup.ok() && source.ok());
            ASSERT_TRUE(analysis::keep_session(book, *source, {.session = session->get(), .said_setup = *setup}).ok());
        }
    }
    ASSERT_TRUE(show_ternbank());
    view().of_box().setFocus();
    press(Qt::Key_End);
    ASSERT_EQ(view().of(), models::SeasonOf::car_together);
    const auto choose = [&](const char* car) {
        ASSERT_TRUE(fixture::wait_for([&] { return view().name_box().findText(QString::fromUtf8(car)) >= 0; }));
        view().name_box().setCurrentIndex(view().name_box().findText(QString::fromUtf8(car)));
    };
    choose("Plover, white hatch with splitter and wing");
    EXPECT_TRUE(view().stop_button().isVisible());
    EXPECT_THAT(view().said().toStdString(), StartsWith("Every session of Plover, white hatch"));
    ASSERT_TRUE(fixture::wait_for([&] { return view().model().rowCount() == 2; }, 20'000))
        << view().said().toStdString();
    EXPECT_FALSE(view().stop_button().isVisible());
    EXPECT_THAT(view().said().toStdString(), HasSubstr("tyre grip: "));
    EXPECT_THAT(view().said().toStdString(), HasSubstr("Wing angle 3 deg → 7 deg: drag area +0.1"));
    EXPECT_EQ(view().part_box().count(), 8);
    const auto half_width = [&] { return view().model().courses().at(1).points.back().high; };
    const double together = half_width();
    view().part_box().setCurrentIndex(5);
    EXPECT_EQ(view().model().rowCount(), 2);
    EXPECT_EQ(half_width(), together) << "after the last session both are the same";
    choose("Dunlin"); // whose sessions hold nothing but a name
    ASSERT_TRUE(fixture::wait_for(
        [&] { return view().said().startsWith(QStringLiteral("no session of Dunlin tells anything of the car")); }));
    EXPECT_EQ(view().model().rowCount(), 0);
    EXPECT_FALSE(view().stop_button().isVisible());
}

TEST_F(Season, WorkOnACarIsStopped) {
    ASSERT_TRUE(show_ternbank());
    view().of_box().setCurrentIndex(2);
    ASSERT_TRUE(fixture::wait_for([&] { return view().name_box().count() > 0; }));
    view().name_box().setCurrentIndex(view().name_box().findText(QStringLiteral("silver hatch, splitter and wing")));
    QTest::mouseClick(&view().stop_button(), Qt::LeftButton);
    EXPECT_THAT(view().said().toStdString(), StartsWith("Stopped."));
    EXPECT_FALSE(view().stop_button().isVisible());
    fixture::settle();
    EXPECT_THAT(view().said().toStdString(), StartsWith("Stopped."));
    view().of_box().setCurrentIndex(0); // and the laps are there as before
    EXPECT_TRUE(fixture::wait_for([&] { return view().model().rowCount() > 0; }));
}

TEST_F(Season, WhatTheCausesPageFittedIsInTheSeason) {
    key(Qt::Key_3, Qt::ControlModifier);
    ASSERT_TRUE(fixture::wait_for([&] { return window->causes_page().explanation() != nullptr; }));
    window.reset();
    auto book = book::Book::open(book_file());
    ASSERT_TRUE(book.ok());
    book::Book mine = std::move(book).value();
    const auto season = book::season_of_car(mine, "silver hatch, splitter and wing");
    ASSERT_EQ(season->size(), 1U);
    EXPECT_THAT(season->at(0).figures, testing::Contains(testing::Field(&book::KeptFigure::name, "grip")));
}

TEST_F(Season, TheKeyLeadsThereAndBack) {
    key(Qt::Key_L);
    ASSERT_EQ(panel().part(), Part::sessions);
    press(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(panel().part(), Part::season);
    EXPECT_TRUE(view().list().hasFocus());
    press(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(panel().part(), Part::sessions);
    EXPECT_TRUE(panel().sessions().words().hasFocus());
    press(Qt::Key_Escape);
    EXPECT_FALSE(panel().isVisible());
}
