// SPDX-License-Identifier: GPL-3.0-or-later
// Files, work and pages; how menus and strip are put together is in main_window_parts.cpp.
#include "ui/window/main_window.h"

#include "core/analysis/short_text.h"
#include "core/base/error.h"
#include "core/base/number_text.h"
#include "ui/bridge/book_keeper.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/causes_view.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/theme/fonts.h"
#include "ui/window/actions.h"
#include "ui/window/book_editing.h"
#include "ui/window/book_waiting.h"
#include "ui/window/debriefing.h"
#include "ui/window/explaining.h"
#include "ui/window/exporting.h"
#include "ui/window/importing.h"
#include "ui/window/keeping.h"
#include "ui/window/my_car.h"
#include "ui/window/notices.h"
#include "ui/window/noting.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMimeData>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <QToolButton>
#include <QUndoStack>
#include <QUrl>
#include <algorithm>
#include <iterator>

namespace lapwright::window {
namespace {

using models::Side;
using models::text;

QStringList local_files(const QMimeData& data) {
    QStringList files;
    for (const QUrl& url : data.urls()) {
        if (url.isLocalFile()) files << url.toLocalFile();
    }
    return files;
}

QStringList absolute(const QStringList& files) {
    QStringList paths;
    for (const QString& file : files)
        paths << QFileInfo(file).absoluteFilePath();
    return paths;
}

constexpr int title_bar_px = 40; // at most, as desktops draw it
constexpr std::size_t longest_in_title = 40;

QString lap_of(const analysis::Side& side) {
    const std::string& driver = side.session->recording->driver;
    const std::string name = analysis::shortened(driver.empty() ? side.session->title() : driver, longest_in_title);
    return MainWindow::tr("%1 lap %2").arg(text(name), text(base::integer_text(side.lap.number)));
}

// The same whenever these two laps are compared.
QString name_of(const models::LapPick& pick) {
    return pick.path + QLatin1Char('#') + QString::number(pick.lap);
}

QString absolute_name(const std::string& book_file) {
    return book_file.empty() ? QString() : QFileInfo(QFile::decodeName(book_file.c_str())).absoluteFilePath();
}

} // namespace

MainWindow::MainWindow(bridge::Stages stages, QSettings& settings, QWidget* parent)
    : QMainWindow(parent), settings_(settings), book_file_(absolute_name(stages.book_file)),
      preferences_(load_preferences(settings)), desktop_(QApplication::palette()),
      shelf_(new models::SessionShelf(this)), notes_(new models::NoteShelf(this)), edits_(new QUndoStack(this)),
      worker_(new bridge::Worker(stages, this)), book_(new bridge::BookKeeper(stages.book_file, this)),
      importing_(new Importing(*worker_, stages.recipe_folder, this)) {
    setWindowTitle(QStringLiteral("Lapwright"));
    setAcceptDrops(true);
    setFont(theme::body());
    setMenuWidget(make_strip());
    make_pages();
    connect_worker();
    connect_actions();
    connect_compare_actions();
    connect_why_and_sheet();
    connect_exporting();
    connect_importing();
    connect_editing();
    connect_book();
    actions_->recipes->setEnabled(!stages.recipe_folder.empty());
    apply_look();
    apply_units();
    compare_page_->set_band_shown(preferences_.band_shown);
    compare_page_->set_values_filled(preferences_.values_filled);
    compare_page_->set_summed(preferences_.summed);
    compare_page_->set_channels(preferences_.channels);
    resize(QSize(1440, 860).boundedTo(screen()->availableSize() - QSize(0, title_bar_px)));
    restoreGeometry(preferences_.geometry);
    show_page(sessions_page_);
}

// The edits are cleared after the actions that tell of them are gone.
MainWindow::~MainWindow() {
    edits_->disconnect();
}

void MainWindow::start(const QStringList& files) {
    QStringList paths = absolute(files);
    const bool own_track = take_track(paths);
    if (!paths.isEmpty()) {
        Plan plan;
        plan.sides = paths.mid(0, 2);
        plan.compare = paths.size() >= 2;
        load(paths, std::move(plan));
        return;
    }
    // Another book, a friend's perhaps, is not to get the sessions of this one unasked.
    if (!preferences_.last_a || !preferences_.last_b || preferences_.book != book_file_) return;
    if (!own_track && !preferences_.track_file.isEmpty()) use_track(preferences_.track_file);
    reopen({preferences_.last_a, preferences_.last_b});
}

void MainWindow::open(const QStringList& files) {
    QStringList paths = absolute(files);
    paths.removeDuplicates();
    if (paths.isEmpty()) return;
    preferences_.folder = QFileInfo(paths.front()).absolutePath();
    const bool reload = take_track(paths);
    if (!paths.isEmpty()) {
        show_page(sessions_page_);
        load(paths, {});
    }
    if (reload) reload_all();
}

bool MainWindow::take_track(QStringList& files) {
    const QStringList all = std::exchange(files, {});
    const auto is_json = [](const QString& file) { return file.endsWith(QLatin1String(".json"), Qt::CaseInsensitive); };
    std::ranges::copy_if(all, std::back_inserter(files), [&](const QString& file) { return !is_json(file); });
    bool changed = false;
    for (const QString& file : all)
        if (is_json(file) && !take_setup(file, files)) changed = use_track(file) || changed;
    if (files.isEmpty() && plan_.awaited.isEmpty()) give_setups();
    return changed;
}

bool MainWindow::use_track(const QString& path) {
    const auto record = track::read_track_record(QFile::encodeName(path).toStdString());
    if (!record.ok()) {
        notices_->add(text(base::one_line(record.error())));
        return false;
    }
    track_ = record.value();
    preferences_.track_file = path;
    sessions_page_->set_track(text(track_->name), QFileInfo(path).fileName());
    follow_page();
    return true;
}

void MainWindow::forget_track() {
    const std::string name = known_track();
    track_.reset();
    preferences_.track_file.clear();
    sessions_page_->set_track({}, {});
    save();
    if (book_->usable() && !name.empty())
        book_editing_->forget_track(name); // then all is read again
    else
        reload_all();
    follow_page();
}

std::string MainWindow::known_track() const {
    if (track_) return track_->name;
    for (const auto& entry : shelf_->entries())
        if (entry.session->known_track) return entry.session->known_track->name;
    return {};
}

void MainWindow::load(const QStringList& files, Plan plan) {
    QStringList once = files;
    once.removeDuplicates();
    plan.awaited = plan_.awaited + once; // files of an earlier call may still be on their way
    plan_ = std::move(plan);
    shelf_->expect(once);
    worker_->load(once, track_);
}

void MainWindow::file_done(const QString& path) {
    plan_.awaited.removeOne(path);
    go_on_with_plan();
}

// Files that ask are answered for before their laps are compared.
void MainWindow::go_on_with_plan() {
    if (!plan_.awaited.isEmpty()) return;
    give_setups();
    if (!importing_->ask_next()) fulfil_plan();
}

// Its columns mean something else now; a comparison that shows it is made anew when it is looked at.
void MainWindow::read_again(const QString& path) {
    const auto shows = [&](const std::optional<models::LapPick>& pick) { return pick && pick->path == path; };
    if (shows(compared_.first) || shows(compared_.second)) compared_ = {};
    plan_.awaited << path;
    keeping_->expect_anew(path);
    shelf_->expect({path});
    worker_->load({path}, track_);
}

void MainWindow::fulfil_plan() {
    const Plan plan = std::exchange(plan_, {});
    if (plan.sides.size() > 0) shelf_->pick_fastest(Side::a, plan.sides[0]);
    if (plan.sides.size() > 1 && plan.sides[1] != plan.sides[0]) shelf_->pick_fastest(Side::b, plan.sides[1]);
    if (plan.picks.first) shelf_->pick(Side::a, *plan.picks.first);
    if (plan.picks.second) shelf_->pick(Side::b, *plan.picks.second);
    shelf_->pick_defaults();
    if (plan.compare) compare();
}

void MainWindow::compare() {
    if (!shelf_->complete()) return;
    const models::LapPick a = *shelf_->picked(Side::a);
    const models::LapPick b = *shelf_->picked(Side::b);
    wanted_ = {a, b};
    const auto number = [](const models::LapPick& pick) {
        return pick.fastest ? std::nullopt : std::optional(pick.lap);
    };
    worker_->compare({shelf_->session(a.path), shelf_->session(b.path), number(a), number(b), track_});
}

void MainWindow::show_compared(const models::ComparedPointer& compared, const Picks& picks) {
    compared_ = picks;
    preferences_.last_a = compared_.first;
    preferences_.last_b = compared_.second;
    preferences_.book = book_file_;
    compare_page_->show_pairing(compared);
    fill_channels_menu();
    setWindowTitle(tr("%1 against %2").arg(lap_of(compared->pairing->a), lap_of(compared->pairing->b)));
    noting_->set_pairing(compared, compared_.first->path, compared_.second->path);
    explaining_->set_pairing(compared, compared_.first->path, compared_.second->path);
    const QString name = name_of(*compared_.first) + QLatin1Char('\n') + name_of(*compared_.second);
    debriefing_->set_pairing(compared, name);
    my_car_->set_pairing(compared);
    keeping_->set_pairing(compared, *compared_.first, *compared_.second, name, track_);
    show_page(page_wanted_ != nullptr ? page_wanted_ : compare_page_);
    save();
}

MainWindow::Picks MainWindow::picks() const {
    return {shelf_->picked(Side::a), shelf_->picked(Side::b)};
}

bool MainWindow::on_compare_page() const {
    return stack_->currentWidget() == compare_page_;
}

// Laps that were picked since the last comparison are compared before a page of the pairing is shown.
void MainWindow::show_page(QWidget* page) {
    page_wanted_ = nullptr;
    if (page != sessions_page_) {
        if (shelf_->complete() && picks() != compared_) {
            page_wanted_ = page;
            compare();
            follow_page();
            return;
        }
        if (!compare_page_->compared()) {
            follow_page();
            return;
        }
    }
    stack_->setCurrentWidget(page);
    follow_page();
    if (page == compare_page_) compare_page_->stack().setFocus();
    if (page == causes_page_) causes_page_->matrix().setFocus();
    if (page == causes_page_ || page == debrief_page_) explaining_->want();
}

void MainWindow::follow_edit() {
    QWidget* page = stack_->currentWidget();
    if (page == sessions_page_) return;
    if (picks() != compared_)
        show_page(page);
    else if (page == causes_page_ || page == debrief_page_)
        explaining_->want();
}

void MainWindow::follow_page() {
    const QWidget* page = stack_->currentWidget();
    const bool comparing = on_compare_page();
    const bool any = shelf_->complete() || compare_page_->compared() != nullptr;
    actions_->show_sessions->setChecked(page == sessions_page_);
    for (const auto& [action, shown] : {std::pair<QAction*, QWidget*>(actions_->show_compare, compare_page_),
                                        std::pair<QAction*, QWidget*>(actions_->show_causes, causes_page_),
                                        std::pair<QAction*, QWidget*>(actions_->show_debrief, debrief_page_)}) {
        action->setChecked(page == shown);
        action->setEnabled(any);
    }
    for (QAction* action : actions_->of_compare_page())
        action->setEnabled(comparing);
    for (QAction* action : actions_->of_sessions_page())
        action->setEnabled(page == sessions_page_);
    actions_->forget_track->setEnabled(track_ || !known_track().empty());
    actions_->trial->setEnabled(shelf_->entries().size() > 1);
    actions_->compare->setEnabled(page == sessions_page_ && shelf_->complete());
    actions_->setup->setEnabled(compare_page_->compared() != nullptr);
    for (QAction* action : {actions_->save_sheet, actions_->save_html})
        action->setEnabled(compare_page_->compared() != nullptr);
    for (QAction* action : {actions_->save_table, actions_->save_picture})
        action->setEnabled(comparing || page == causes_page_);
    actions_->channels_menu->setEnabled(comparing);
}

void MainWindow::apply_units() {
    for (QAction* action : actions_->units->actions()) {
        action->setChecked(action->data().toInt() == static_cast<int>(preferences_.units));
    }
    const QString speed = text(base::symbol(base::shown_unit(base::Quantity::speed, preferences_.units)));
    const QString length = text(base::symbol(base::shown_unit(base::Quantity::length, preferences_.units)));
    units_button_->setText(speed + QStringLiteral(", ") + length);
    compare_page_->set_units(preferences_.units);
    causes_page_->set_units(preferences_.units);
    debriefing_->set_units(preferences_.units);
    exporting_->set_units(preferences_.units);
    importing_->set_units(preferences_.units);
    sessions_page_->set_units(preferences_.units);
}

void MainWindow::apply_look() {
    for (QAction* action : actions_->look->actions()) {
        action->setChecked(action->data().toInt() == static_cast<int>(preferences_.look));
    }
    const theme::Palette& palette = theme::palette_for(preferences_.look, desktop_);
    QApplication::setPalette(theme::qt_palette(palette));
    setStyleSheet(theme::style_sheet(palette));
    sessions_page_->set_palette(palette);
    compare_page_->set_palette(palette);
    causes_page_->set_palette(palette);
    debrief_page_->set_palette(palette);
    importing_->set_palette(palette);
}

void MainWindow::ask_for_files() {
    open(QFileDialog::getOpenFileNames(this, tr("Open logger files"), preferences_.folder));
}

void MainWindow::save() {
    preferences_.geometry = saveGeometry();
    save_preferences(settings_, preferences_);
    settings_.sync();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!local_files(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    open(local_files(*event->mimeData()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    noting_->end_typing();
    debriefing_->end_typing();
    if (!book_waiting_->may_close(this)) {
        event->ignore();
        return;
    }
    worker_->cancel();
    save();
    QMainWindow::closeEvent(event);
}

} // namespace lapwright::window
