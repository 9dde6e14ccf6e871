// SPDX-License-Identifier: GPL-3.0-or-later
// Files, work and pages; how menus and strip are put together is in main_window_parts.cpp.
#include "ui/window/main_window.h"

#include "core/analysis/short_text.h"
#include "core/base/error.h"
#include "core/base/number_text.h"
#include "ui/bridge/book_queue.h"
#include "ui/models/file_name.h"
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

using models::text;
using workspace::Side;

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

QString absolute_name(const std::string& book_file) {
    return book_file.empty() ? QString() : QFileInfo(QFile::decodeName(book_file.c_str())).absoluteFilePath();
}

} // namespace

MainWindow::MainWindow(bridge::Stages stages, QSettings& settings, QWidget* parent)
    : QMainWindow(parent), settings_(settings), book_file_(absolute_name(stages.book_file)),
      preferences_(load_preferences(settings)), desktop_(QApplication::palette()),
      sessions_(new models::OpenSessions(this)), notes_(new models::Notes(this)), edits_(new QUndoStack(this)),
      worker_(new bridge::Worker(stages, this)), book_(new bridge::BookQueue(stages.book_file, this)),
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
    if (const auto origins = models::origins_of(paths); !origins.empty()) {
        Plan plan;
        for (std::size_t side = 0; side < std::min<std::size_t>(origins.size(), 2); ++side)
            plan.laps[side] = {origins[side], {}};
        plan.compare = paths.size() >= 2;
        load(origins, plan);
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
        load(models::origins_of(paths), {});
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
    if (files.isEmpty() && !pairing_.reading()) give_setups();
    return changed;
}

bool MainWindow::use_track(const QString& path) {
    const auto record = track::read_track_record(models::file_name(path));
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
    for (const auto& entry : sessions_->now().entries())
        if (entry.session->known_track) return entry.session->known_track->name;
    return {};
}

void MainWindow::load(const std::vector<workspace::Origin>& origins, const Plan& plan) {
    pairing_.read(origins, plan);
    sessions_->edit([&](workspace::OpenSessions& open) { open.expect(origins); });
    worker_->load(origins, track_);
}

void MainWindow::session_read(const workspace::Origin& origin, const workspace::SessionPointer& session) {
    const workspace::SessionKey key = workspace::key_of(*session);
    const auto* file = std::get_if<std::string>(&origin);
    sessions_->edit([&](workspace::OpenSessions& open) { open.add(origin, session); });
    explaining_->session_opened(key);
    keeping_->session_opened(origin, session, track_);
    name_by_setup(key);
    if (file) {
        notices_->withdraw(models::path(*file));
        importing_->note_session(models::path(*file), *session);
    }
    came(origin);
}

void MainWindow::came(const workspace::Origin& origin) {
    pairing_.came(origin);
    go_on_with_plan();
}

// Files that ask are answered for before their laps are compared.
void MainWindow::go_on_with_plan() {
    if (pairing_.reading()) return;
    give_setups();
    if (!importing_->ask_next()) fulfil_plan();
}

// Its columns mean something else now; a comparison that shows it is made anew when it is looked at.
void MainWindow::read_again(const QString& path) {
    const workspace::Origin origin = models::file_name(path);
    if (const auto* open = sessions_->now().find(origin)) pairing_.outdate(open->key);
    pairing_.await(origin);
    keeping_->expect_anew(origin);
    sessions_->edit([&](workspace::OpenSessions& open) { open.expect({origin}); });
    worker_->load({origin}, track_);
}

void MainWindow::fulfil_plan() {
    bool compares = false;
    sessions_->edit([&](workspace::OpenSessions& open) { compares = pairing_.fulfil(open); });
    if (compares) compare();
}

void MainWindow::compare() {
    if (!picks().complete()) return;
    const workspace::Picks wanted = picks();
    pairing_.compare(wanted);
    const auto number = [](const workspace::LapPick& pick) {
        return pick.fastest ? std::nullopt : std::optional(pick.lap);
    };
    const workspace::OpenSessions& open = sessions_->now();
    worker_->compare({open.session(wanted.a->session), open.session(wanted.b->session), number(*wanted.a),
                      number(*wanted.b), track_});
}

void MainWindow::take_compared(const workspace::ComparedPointer& compared) {
    sessions_->edit([&](workspace::OpenSessions& open) { pairing_.take(compared, open); });
    preferences_.last_a = wanted_again(pairing_.shown().a);
    preferences_.last_b = wanted_again(pairing_.shown().b);
    preferences_.book = book_file_;
    compare_page_->show_pairing(compared);
    fill_channels_menu();
    setWindowTitle(tr("%1 against %2").arg(lap_of(compared->pairing->a), lap_of(compared->pairing->b)));
    noting_->follow_pairing();
    explaining_->follow_pairing();
    debriefing_->set_pairing(compared, pairing_.laps());
    my_car_->set_pairing(compared);
    keeping_->set_pairing(pairing_, track_);
    show_page(page_wanted_ != nullptr ? page_wanted_ : compare_page_);
    save();
}

std::optional<workspace::PresentPairing::WantedLap>
MainWindow::wanted_again(const std::optional<workspace::LapPick>& pick) const {
    const auto* open = pick ? sessions_->now().find(pick->session) : nullptr;
    if (!open) return std::nullopt;
    return workspace::PresentPairing::WantedLap{open->origin(), pick->lap};
}

bool MainWindow::on_compare_page() const {
    return stack_->currentWidget() == compare_page_;
}

// Laps that were picked since the last comparison are compared before a page of the pairing is shown.
void MainWindow::show_page(QWidget* page) {
    page_wanted_ = nullptr;
    if (page != sessions_page_) {
        if (picks().complete() && !pairing_.shows(picks())) {
            page_wanted_ = page;
            compare();
            follow_page();
            return;
        }
        if (!pairing_.compared()) {
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
    if (!pairing_.shows(picks()))
        show_page(page);
    else if (page == causes_page_ || page == debrief_page_)
        explaining_->want();
}

void MainWindow::follow_page() {
    const QWidget* page = stack_->currentWidget();
    const bool comparing = on_compare_page();
    const bool any = picks().complete() || pairing_.compared();
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
    actions_->trial->setEnabled(sessions_->now().entries().size() > 1);
    actions_->compare->setEnabled(page == sessions_page_ && picks().complete());
    actions_->setup->setEnabled(pairing_.compared() != nullptr);
    for (QAction* action : {actions_->save_sheet, actions_->save_html})
        action->setEnabled(pairing_.compared() != nullptr);
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
    theme::apply(palette);
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
