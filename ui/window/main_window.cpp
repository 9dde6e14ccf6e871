// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/main_window.h"

#include "ui/bridge/book_queue.h"
#include "ui/dialogs/about.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/theme/fonts.h"
#include "ui/window/beginning.h"
#include "ui/window/book_actions.h"
#include "ui/window/book_care.h"
#include "ui/window/book_editing.h"
#include "ui/window/book_looking.h"
#include "ui/window/book_waiting.h"
#include "ui/window/comparing.h"
#include "ui/window/context_menus.h"
#include "ui/window/copying.h"
#include "ui/window/debriefing.h"
#include "ui/window/dropped_files.h"
#include "ui/window/explaining.h"
#include "ui/window/exporting.h"
#include "ui/window/find_places.h"
#include "ui/window/given_files.h"
#include "ui/window/importing.h"
#include "ui/window/judging.h"
#include "ui/window/keeping.h"
#include "ui/window/keys.h"
#include "ui/window/laps_behind.h"
#include "ui/window/learning.h"
#include "ui/window/logging.h"
#include "ui/window/my_car.h"
#include "ui/window/naming.h"
#include "ui/window/notices.h"
#include "ui/window/noting.h"
#include "ui/window/page_stack.h"
#include "ui/window/predicting.h"
#include "ui/window/restoring.h"
#include "ui/window/session_actions.h"
#include "ui/window/settled_debrief.h"
#include "ui/window/sheet_actions.h"
#include "ui/window/still_making.h"
#include "ui/window/strip.h"
#include "ui/window/track_editing.h"
#include "ui/window/trying.h"
#include "ui/window/view_actions.h"
#include "ui/window/watching.h"
#include "ui/window/window_title.h"
#include "ui/window/wing_asking.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QScreen>
#include <QSettings>
#include <QToolButton>
#include <QUndoStack>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>

namespace lapwright::window {
namespace {

using models::text;

constexpr int title_bar_px = 40; // at most, as desktops draw it
constexpr int save_pause_ms = 400;

QString absolute_name(const std::string& book_file) {
    return book_file.empty() ? QString() : QFileInfo(models::path(book_file)).absoluteFilePath();
}

} // namespace

MainWindow::MainWindow(bridge::Stages stages, QSettings& settings, QWidget* parent)
    : QMainWindow(parent), settings_(settings), book_file_(absolute_name(stages.book_file)),
      preferences_(load_preferences(settings)), desktop_(QApplication::palette()),
      sessions_(new models::OpenSessions(this)), notes_(new models::Notes(this)), edits_(new QUndoStack(this)),
      worker_(new bridge::Worker(stages, this)), book_(new bridge::BookQueue(stages.book_file, this)),
      importing_(new Importing(*worker_, stages.recipe_folder, this)), strip_(new Strip(this)),
      actions_(strip_->actions()), notices_(&strip_->notices()) {
    setWindowTitle(QStringLiteral("Lapwright"));
    setAcceptDrops(true);
    setFont(theme::body());
    setMenuWidget(strip_);
    make_pages();
    connect_actions();
    connect_preferences();
    connect_view_actions({actions_, pages_->compare(), preferences_, [this] { save(); }});
    connect_session_actions({actions_, pages_->sessions(), preferences_, [this] { save(); }});
    connect_why();
    auto* settled = new SettledDebrief(*pages_, pairing_, *explaining_, this);
    connect_sheet_actions({actions_, *pages_, *settled, *debriefing_, *exporting_, *notices_, *this});
    connect_importing();
    connect_editing();
    connect_book();
    actions_.recipes->setEnabled(!stages.recipe_folder.empty());
    new Keys(actions_, preferences_, [this] { save(); }, this);
    restoring_ = new Restoring({actions_, *sessions_, pairing_, *pages_, *comparing_, *noting_, *notices_,
                                models::path(stages.state_folder), book_file_},
                               this);
    new Logging({actions_, *worker_, *book_, *pages_, stages.state_folder, restoring_->offers()}, this);
    save_soon_.setSingleShot(true);
    save_soon_.setInterval(save_pause_ms);
    connect(&save_soon_, &QTimer::timeout, this, &MainWindow::save);
    apply_look();
    apply_units();
    resize(QSize(1440, 860).boundedTo(screen()->availableSize() - QSize(0, title_bar_px)));
    restoreGeometry(preferences_.geometry);
    pages_->show_sessions();
}

// The edits are cleared after the actions that tell of them are gone.
MainWindow::~MainWindow() {
    edits_->disconnect();
}

void MainWindow::make_pages() {
    auto* centre = new QWidget(this);
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    pages_ = new PageStack(sessions_, notes_, centre);
    explaining_ = new Explaining({*worker_, pages_->causes(), *edits_, settings_, *sessions_, pairing_}, this);
    debriefing_ = new Debriefing(pages_->debrief(), settings_, this);
    exporting_ = new Exporting(pages_->compare(), pages_->causes(), settings_, this);
    my_car_ = new MyCar(*book_, pages_->causes(), *debriefing_, *edits_, this);
    trying_ = new Trying(*worker_, *sessions_, *explaining_, this);
    noting_ = new Noting({*notes_, pages_->sessions(), pages_->compare(), *edits_, pairing_}, this);
    keeping_ = new Keeping(*book_, {*notes_, *explaining_, *debriefing_, *notices_, settings_}, this);
    book_waiting_ = new BookWaiting(*book_, *actions_.write_waiting, strip_->waiting_sign(), *notices_, this);
    book_care_ =
        new BookCare(book_file_.isEmpty() ? std::string() : models::file_name(book_file_), *notices_, *this, this);
    book_looking_ = new BookLooking(*book_, pages_->sessions(), this);
    book_editing_ = new BookEditing(*book_, pages_->sessions(), *edits_, this);
    given_ = new GivenFiles({*sessions_, pairing_, pages_->sessions(), *explaining_, *notices_, preferences_}, this);
    learning_ = new Learning({actions_, *worker_, *sessions_, pages_->sessions(), *given_, *notices_}, this);
    comparing_ = new Comparing(
        {*worker_, *sessions_, pairing_, *edits_, *importing_, *given_, *explaining_, *keeping_, *notices_}, this);
    new LapsBehind({*worker_, *sessions_, pairing_, pages_->sessions(), pages_->compare(), *edits_, *notices_},
                   *comparing_, this);
    naming_ =
        new Naming({*book_, *sessions_, pages_->sessions(), *comparing_, *explaining_, *book_editing_, *edits_}, this);
    judging_ = new Judging({*book_, *sessions_, pages_->sessions(), *comparing_, *edits_}, this);
    track_editing_ = new TrackEditing(
        {actions_, *book_, *sessions_, pairing_, *pages_, *comparing_, *given_, *edits_, *notices_}, this);
    watching_ = new Watching({actions_, *pages_, *book_, *edits_, *this});
    still_making_ = new StillMaking({actions_, pages_->debrief(), *debriefing_, *watching_}, this);
    new Copying({actions_, *pages_, *exporting_, *this}, this);
    new ContextMenus(actions_, *pages_, this);
    pages_->follow({actions_, *sessions_, pairing_, *comparing_, *explaining_, *given_});
    column->addWidget(pages_, 1);
    setCentralWidget(centre);
    beginning_ = new Beginning({actions_, pages_->sessions(), *book_, preferences_,
                                std::bind_front(&MainWindow::open, this), std::bind_front(&MainWindow::start, this)},
                               this);
    connect(worker_, &bridge::Worker::progressed, strip_, &Strip::set_progress);
    connect(worker_, &bridge::Worker::busy_changed, strip_, &Strip::set_busy);
    connect(comparing_, &Comparing::compared, this, &MainWindow::show_compared);
}

void MainWindow::connect_actions() {
    const Actions& a = actions_;
    const auto on = [this](QAction* action, auto work) { connect(action, &QAction::triggered, this, work); };
    on(a.forget_track, [this] { forget_track(); });
    on(a.cancel, [this] {
        worker_->cancel();
        if (pairing_.call_off()) explaining_->called_off();
    });
    on(a.dismiss, [this] { notices_->dismiss(); });
    on(a.quit, [this] { close(); });
    on(a.swap, [this] {
        comparing_->edit_picks(tr("swap of A and B"), [](workspace::OpenSessions& open) { open.swap(); });
        pages_->follow_edit();
    });
    on(a.find,
       [this] { dialogs::Finder(find_places(actions_.menus(), *pages_, pairing_, sessions_->now()), this).exec(); });
    on(a.keys, [this] { dialogs::KeysHelp(actions_.key_groups(), this).exec(); });
    on(a.about, [this] { dialogs::About(QStringLiteral(LAPWRIGHT_VERSION), this).exec(); });
}

void MainWindow::connect_preferences() {
    const Actions& a = actions_;
    connect(a.units, &QActionGroup::triggered, this, [this](const QAction* action) {
        preferences_.units = static_cast<base::UnitSystem>(action->data().toInt());
        apply_units();
        save();
    });
    connect(a.next_units, &QAction::triggered, this, [this] {
        const auto& all = actions_.units->actions();
        const auto now = all.indexOf(actions_.units->checkedAction());
        all[(now + 1) % all.size()]->trigger();
    });
    for (QAction* action : a.language->actions())
        action->setChecked(action->data().toString() == preferences_.language);
    connect(a.language, &QActionGroup::triggered, this, [this](const QAction* action) {
        preferences_.language = action->data().toString();
        notices_->add(tr("The language changes when Lapwright is started the next time."));
        save();
    });
    connect(a.look, &QActionGroup::triggered, this, [this](const QAction* action) {
        preferences_.look = static_cast<theme::Choice>(action->data().toInt());
        apply_look();
        save();
    });
}

void MainWindow::connect_why() {
    connect(actions_.setup, &QAction::triggered, this, [this] { explaining_->edit_setups(preferences_.units, this); });
    connect(actions_.trial, &QAction::triggered, this, [this] { trying_->show(given_->track()); });
    auto* wing = new WingAsking(
        actions_, *explaining_, *sessions_, [this] { return theme::palette_for(preferences_.look, desktop_); }, this);
    new Predicting({actions_, *explaining_, pairing_, *pages_, *wing, *book_, *edits_, *notices_, *this});
    connect(&pages_->sessions(), &pages::SessionsPage::trial_asked, actions_.trial, &QAction::trigger);
    connect(&pages_->causes(), &pages::CausesPage::setup_asked, actions_.setup, &QAction::trigger);
    connect(&pages_->causes(), &pages::CausesPage::place_asked, this, [this](double start_m, double end_m) {
        pages_->show_compare();
        pages_->compare().go_to(0.5 * (start_m + end_m));
        pages_->compare().show_chosen_stretch();
    });
    connect(explaining_, &Explaining::changed, this, [this] {
        debriefing_->set_explanation(explaining_->explanation(), explaining_->setup_a(), explaining_->setup_b());
    });
}

void MainWindow::connect_importing() {
    connect(actions_.recipes, &QAction::triggered, importing_, &Importing::show_recipes);
    connect(importing_, &Importing::refused, notices_, &Notices::add);
    connect(&pages_->sessions(), &pages::SessionsPage::columns_asked, this, [this](const workspace::SessionKey& key) {
        if (const auto* open = sessions_->now().find(key)) importing_->ask_about(*open);
    });
}

void MainWindow::connect_editing() {
    const Actions& a = actions_;
    const auto on = [this](QAction* action, auto work) { connect(action, &QAction::triggered, this, work); };
    on(a.undo, [this] {
        edits_->undo();
        pages_->follow_edit();
    });
    on(a.redo, [this] {
        edits_->redo();
        pages_->follow_edit();
    });
    connect(&pages_->sessions(), &pages::SessionsPage::swap_asked, a.swap, &QAction::trigger);
    connect(&pages_->sessions(), &pages::SessionsPage::pick_asked, this,
            [this](workspace::Side side, const workspace::LapPick& pick) {
                const QString name = side == workspace::Side::a ? tr("choice of lap A") : tr("choice of lap B");
                comparing_->edit_picks(name, [&](workspace::OpenSessions& open) { open.pick(side, pick); });
            });
    a.name_edits(*edits_);
    on(a.note_a, [this] { pages_->compare().write_note(workspace::Side::a); });
    on(a.note_b, [this] { pages_->compare().write_note(workspace::Side::b); });
    connect(noting_, &Noting::lines_changed, this, [this] { debriefing_->set_noted(noting_->lines()); });
}

void MainWindow::connect_book() {
    connect_book_actions(
        {actions_, strip_->damage_sign(), *book_, *book_editing_, *book_care_,
         [this](pages::BookPanel::Part part) {
             pages_->show_sessions();
             book_looking_->show(part);
         },
         [this] { return QFileDialog::getOpenFileName(this, tr("A friend's book"), preferences_.folder); }});
    const auto reload = [this] { comparing_->reload_all(on_compare_page()); };
    connect(book_, &bridge::BookQueue::opened_again, this, reload); // and what is open goes into it
    connect(book_, &bridge::BookQueue::tracks_changed, this, reload);
    connect(book_, &bridge::BookQueue::details_changed, comparing_, &Comparing::rename);
    connect(&pages_->sessions(), &pages::SessionsPage::book_asked, actions_.book, &QAction::trigger);
    connect(book_looking_, &BookLooking::pairing_asked, comparing_, &Comparing::open_pairing);
    connect(book_looking_, &BookLooking::open_asked, this, [this](const book::SessionSummary& session) {
        const workspace::SessionKey key{session.source.checksum};
        if (sessions_->now().find(key))
            pages_->sessions().focus_session(key);
        else
            comparing_->load({session.id}, {});
    });
}

void MainWindow::start(const QStringList& files) {
    QStringList paths = absolute(files);
    const bool own_track = given_->take(paths);
    if (const auto origins = models::origins_of(paths); !origins.empty()) {
        Comparing::Plan plan;
        beginning_->note_opened(paths);
        for (std::size_t side = 0; side < std::min<std::size_t>(origins.size(), 2); ++side)
            plan.laps[side] = {origins[side], {}};
        plan.compare = paths.size() >= 2;
        comparing_->load(origins, plan);
        return;
    }
    book_looking_->look_for_start();
    if (restoring_->offers()) return; // what stopped the program may be what it would open
    // Another book, a friend's perhaps, is not to get the sessions of this one unasked.
    if (!preferences_.last_a || !preferences_.last_b || preferences_.book != book_file_) return;
    if (!own_track && !preferences_.track_file.isEmpty()) given_->use_track(preferences_.track_file);
    comparing_->reopen({preferences_.last_a, preferences_.last_b});
}

void MainWindow::open(const QStringList& files) {
    QStringList paths = absolute(files);
    paths.removeDuplicates();
    if (paths.isEmpty()) return;
    preferences_.folder = QFileInfo(paths.front()).absolutePath();
    const bool reload = given_->take(paths);
    if (!paths.isEmpty()) {
        pages_->show_sessions();
        beginning_->note_opened(paths);
        comparing_->load(models::origins_of(paths), {});
    }
    if (reload) comparing_->reload_all(on_compare_page());
}

void MainWindow::forget_track() {
    const std::string name = given_->track_name();
    given_->forget_track();
    save();
    if (book_->usable() && !name.empty())
        book_editing_->forget_track(name); // then all is read again
    else
        comparing_->reload_all(on_compare_page());
    pages_->follow_state();
}

void MainWindow::show_compared(const workspace::ComparedPointer& compared) {
    preferences_.last_a = comparing_->wanted_again(pairing_.shown().a);
    preferences_.last_b = comparing_->wanted_again(pairing_.shown().b);
    preferences_.book = book_file_;
    pages_->compare().show_pairing(compared);
    fill_channels_menu({actions_, pages_->compare(), preferences_, [this] { save(); }});
    setWindowTitle(title_of(*compared->pairing));
    watching_->set_pairing(compared, pairing_.laps());
    noting_->follow_pairing();
    explaining_->follow_pairing();
    debriefing_->set_pairing(compared, pairing_.laps());
    still_making_->set_pairing(compared);
    my_car_->set_pairing(compared);
    keeping_->set_pairing(pairing_, given_->track());
    pages_->show_wanted();
    save_soon_.start();
}

void MainWindow::apply_units() {
    strip_->set_units(preferences_.units);
    pages_->compare().set_units(preferences_.units);
    pages_->causes().set_units(preferences_.units);
    debriefing_->set_units(preferences_.units);
    still_making_->set_units(preferences_.units);
    exporting_->set_units(preferences_.units);
    importing_->set_units(preferences_.units);
    pages_->sessions().set_units(preferences_.units);
}

void MainWindow::apply_look() {
    for (QAction* action : actions_.look->actions())
        action->setChecked(action->data().toInt() == static_cast<int>(preferences_.look));
    const theme::Palette& palette = theme::palette_for(preferences_.look, desktop_);
    theme::apply(palette);
    setStyleSheet(theme::style_sheet(palette));
    pages_->set_palette(palette);
    importing_->set_palette(palette);
    watching_->set_palette(palette);
}

void MainWindow::save() {
    preferences_.geometry = saveGeometry();
    save_preferences(settings_, preferences_);
    settings_.sync();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!files_in(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    open(watching_->take_dropped(files_in(*event->mimeData()), event->position().x() < width() / 2.0));
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
