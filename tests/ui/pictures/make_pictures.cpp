// SPDX-License-Identifier: GPL-3.0-or-later
// Grabs the window's pages as pictures, for people to look at and for the README:
//   make_pictures OUT_FOLDER WIDTH HEIGHT light|dark [FILE_A FILE_B]
// Without files it shows a pairing made by hand (tests/ui/fixture), and then all that the window can show, as tour-*;
// what stands too close in it is told on the way out.  QT_SCALE_FACTOR=2 doubles the pixels, PICTURES_IN=de is another
// language.
#include "tests/ui/fixture/invented_season.h"
#include "tests/ui/fixture/invented_stages.h"
#include "tests/ui/fixture/room_faults.h"
#include "tests/ui/fixture/waiting.h"
#include "tests/ui/fixture/window_tour.h"
#include "ui/dialogs/about.h"
#include "ui/dialogs/column_dialog.h"
#include "ui/dialogs/keys_help.h"
#include "ui/dialogs/recipe_list.h"
#include "ui/dialogs/trial_dialog.h"
#include "ui/models/book_list.h"
#include "ui/models/pairing_list.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/rename_form.h"
#include "ui/pages/sessions/season_view.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/window/actions.h"
#include "ui/window/debriefing.h"
#include "ui/window/exporting.h"
#include "ui/window/language.h"
#include "ui/window/main_window.h"
#include "ui/window/trying.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QLocale>
#include <QPixmap>
#include <QPushButton>
#include <QSettings>
#include <QSlider>
#include <QStyleFactory>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <iostream>

using namespace lapwright;

namespace {

struct Shoot {
    window::MainWindow& window;
    QString stem;

    void operator()(const char* name) const {
        fixture::settle();
        const QString file = stem + QLatin1String(name) + QStringLiteral(".png");
        if (!window.grab().save(file)) std::cerr << "cannot write " << file.toStdString() << '\n';
    }
};

void press(const QAction* action) {
    const_cast<QAction*>(action)->trigger();
}

// The book has an invented season besides what was opened.
void shoot_season(window::MainWindow& window, const Shoot& shoot) {
    pages::BookPanel& panel = window.sessions_page().book_panel();
    pages::SeasonView& season = panel.season();
    const auto look_at = [&](const char* name, const char* picture) {
        const int index = season.name_box().findText(QLatin1String(name));
        season.name_box().setCurrentIndex(index);
        if (index < 0 || !fixture::wait_for([&] { return season.said().startsWith(QLatin1String(name)); }, 20000))
            std::cerr << "no season of " << name << '\n';
        shoot(picture);
    };
    press(window.actions().season);
    if (!fixture::wait_for([&] { return season.name_box().count() > 1; }, 20000)) std::cerr << "no tracks\n";
    look_at("Ternbank", "season-track");
    season.part_box().setCurrentIndex(2);
    shoot("season-one-car");
    season.of_box().setCurrentIndex(1);
    look_at("Plover", "season-car");
    season.part_box().setCurrentIndex(2);
    shoot("season-drag");
    season.name_box().setCurrentIndex(season.name_box().findText(QStringLiteral("Dunlin")));
    if (!fixture::wait_for([&] { return !season.said().startsWith(QStringLiteral("Plover")); }, 20000))
        std::cerr << "no season of nothing\n";
    shoot("season-empty");
    press(window.actions().pairings);
    if (!fixture::wait_for([&] { return panel.pairings().model().rowCount() > 0; }, 20000))
        std::cerr << "no pairings\n";
    shoot("pairings");
    press(window.actions().pairings);
    panel.sessions().list().choose_row(3);
    QTest::keyClick(&panel.sessions().list(), Qt::Key_Delete);
    shoot("book-removal");
    panel.sessions().no().click();
    QTest::keyClick(&panel.sessions().list(), Qt::Key_F2);
    fixture::settle();
    auto* form = window.findChild<pages::RenameForm*>();
    form->line().setText(QStringLiteral("Gull Head"));
    fixture::settle();
    form->grab().save(shoot.stem + QStringLiteral("rename.png"));
    form->close();
}

void shoot_tour(window::MainWindow& window, const QString& stem) {
    const fixture::Visit visit = [&](const char* name, QWidget& shown) {
        for (const std::string& fault : fixture::room_faults(shown))
            std::cerr << name << ": " << fault << '\n';
        const QString file = stem + QStringLiteral("tour-") + QLatin1String(name) + QStringLiteral(".png");
        if (!shown.grab().save(file)) std::cerr << "cannot write " << file.toStdString() << '\n';
    };
    fixture::visit_compare(window, visit);
    fixture::visit_menus(window, visit);
    fixture::visit_dialogs(window, visit);
    fixture::visit_sessions(window, visit);
    fixture::visit_causes(window, visit);
    fixture::visit_start(window, visit);
}

} // namespace

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    QLocale::setDefault(QLocale::c());
    window::speak(qEnvironmentVariable("PICTURES_IN", "en"));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    const QStringList words = QApplication::arguments();
    if (words.size() < 5) {
        std::cerr << "make_pictures OUT_FOLDER WIDTH HEIGHT light|dark [FILE_A FILE_B]\n";
        return 2;
    }
    QDir().mkpath(words[1]);
    QTemporaryDir folder;
    QSettings settings(folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    settings.setValue(QStringLiteral("look"), words[4]);
    const QStringList files = words.mid(5);
    const bool crowded = files == QStringList{QStringLiteral("crowded")};
    const bool real = !files.isEmpty() && !crowded;
    const std::string recipe_folder = folder.filePath(QStringLiteral("recipes")).toStdString();
    fixture::PairingOptions options;
    options.crowded = crowded;
    const std::string book_file = folder.filePath(QStringLiteral("book.sqlite")).toStdString();
    bridge::Stages stages =
        real ? bridge::analysis_stages(recipe_folder, book_file) : fixture::invented_stages(options);
    stages.book_file = book_file;
    stages.recipe_folder = recipe_folder;
    fixture::fill_season(book_file);
    window::MainWindow window(stages, settings);
    window.resize(words[2].toInt(), words[3].toInt());
    window.show();
    QStringList invented;
    for (const char* name : {"one.csv", "two.txt"}) {
        QFile file(folder.filePath(QLatin1String(name)));
        if (file.open(QIODevice::WriteOnly)) file.write(name);
        invented << file.fileName();
    }
    window.start(real ? files : invented);
    const Shoot shoot{window, words[1] + QLatin1Char('/') + words[2] + QLatin1Char('-') + words[4] + QLatin1Char('-')};
    const auto asking = [&]() -> dialogs::ColumnDialog* {
        auto* dialog = window.findChild<dialogs::ColumnDialog*>();
        return dialog != nullptr && dialog->isVisible() ? dialog : nullptr;
    };
    const auto asks_or_compares = [&] { return window.on_compare_page() || asking() != nullptr; };
    while (fixture::wait_for(asks_or_compares, 20000) && asking() != nullptr) {
        fixture::settle();
        asking()->grab().save(shoot.stem + QStringLiteral("columns.png"));
        models::ColumnTable& columns = asking()->table();
        const int doubtful = columns.next_doubtful(-1);
        import::RecipeColumn column = columns.recipe().columns[static_cast<std::size_t>(doubtful)];
        column.unit = base::Unit::kilometre_per_hour;
        columns.set_column(doubtful, column);
        asking()->accept();
    }
    if (!fixture::wait_for([&] { return window.on_compare_page(); }, 20000)) {
        std::cerr << "no comparison came\n";
        return 1;
    }
    shoot("compare");
    press(window.actions().note_a);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("felt planted, could lift later"));
    shoot("note-typed");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    press(window.actions().note_b);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("brakes on the same board, but turns in twice"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    shoot("notes");
    using View = window::Exporting::View;
    const auto take = [&](View view, const char* name) {
        if (!window.exporting().save_picture(view, window.windowTitle(), shoot.stem + QLatin1String(name)))
            std::cerr << "no picture was written\n";
    };
    take(View::compare, "plots.svg");
    take(View::compare, "plots.png");
    press(window.actions().close_up);
    shoot("close-up");
    take(View::compare, "close-up-plots.svg");
    press(window.actions().whole_lap);
    press(window.actions().summed);
    window.compare_page().set_channels({QStringLiteral("motion:longitudinal"), QStringLiteral("meaning:throttle")});
    shoot("summed-channels");
    press(window.actions().show_sessions);
    window.sessions_page().cards().front()->laps().setFocus();
    press(window.actions().note_session);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("dry after the rain, new pads"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    press(window.actions().note_lap);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("clear track, tyres at their best"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    shoot("sessions");
    press(window.actions().book);
    if (!fixture::wait_for([&] { return window.sessions_page().book().model().rowCount() > 0; }, 20000))
        std::cerr << "the book has no sessions\n";
    shoot("book");
    shoot_season(window, shoot);
    window.sessions_page().show_book(false);
    window.sessions_page().cards().back()->show_report(true);
    shoot("report");
    press(window.actions().trial);
    fixture::settle();
    window.trying().dialog()->run().click();
    if (!fixture::wait_for([&] { return window.trying().dialog()->effects().rowCount() > 0; }, 20000))
        std::cerr << "no trial came\n";
    fixture::settle();
    window.trying().dialog()->grab().save(shoot.stem + QStringLiteral("trial.png"));
    window.trying().dialog()->close();
    dialogs::KeysHelp keys(window.actions().key_groups(), &window);
    keys.show();
    fixture::settle();
    keys.grab().save(shoot.stem + QStringLiteral("keys.png"));
    keys.close();
    dialogs::About about(QStringLiteral("0.1.0"), &window);
    about.show();
    fixture::settle();
    about.grab().save(shoot.stem + QStringLiteral("about.png"));
    if (real) {
        dialogs::RecipeList recipes{import::RecipeFolder(recipe_folder), base::UnitSystem::metric,
                                    theme::palette_for(theme::Choice::system, QApplication::palette()), &window};
        recipes.show();
        fixture::settle();
        recipes.grab().save(shoot.stem + QStringLiteral("recipes.png"));
    }
    press(window.actions().show_causes);
    if (!fixture::wait_for([&] { return window.causes_page().explanation() != nullptr; }, 60000)) {
        std::cerr << "no explanation came: " << window.causes_page().sentence().toStdString() << '\n';
        return 1;
    }
    pages::WhatIfCard& what_if = window.causes_page().what_if();
    what_if.slider(findings::Lever::downforce).setValue(5);
    what_if.slider(findings::Lever::drag).setValue(2);
    const QString before = what_if.prediction_text();
    if (!fixture::wait_for([&] { return what_if.prediction_text() != before; }, 20000))
        std::cerr << "no prediction came\n";
    pages::CausesView& matrix = window.causes_page().matrix();
    matrix.setCurrentIndex(matrix.model()->index(1, 1));
    shoot("causes");
    take(View::causes, "evidence.svg");
    take(View::causes, "evidence.png");
    window.debrief_page().set_notes(
        {QStringLiteral("Sweep: felt planted, could lift later"), QStringLiteral("Pin: missed the apex on lap 6")});
    press(window.actions().show_debrief);
    Q_EMIT window.debrief_page().notes_changed();
    shoot("debrief");
    if (!window.debriefing().save(shoot.stem + QStringLiteral("sheet.pdf"))) std::cerr << "no sheet was written\n";
    if (!real) shoot_tour(window, shoot.stem);
    return 0;
}
