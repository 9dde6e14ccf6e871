// SPDX-License-Identifier: GPL-3.0-or-later
// How the window is put together: strip, pages, and what each action and each answer of the worker does.
#include "ui/dialogs/about.h"
#include "ui/dialogs/finder.h"
#include "ui/dialogs/keys_help.h"
#include "ui/models/channels.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/plots/plot_stack.h"
#include "ui/theme/plain_label.h"
#include "ui/window/actions.h"
#include "ui/window/book_care.h"
#include "ui/window/book_editing.h"
#include "ui/window/book_looking.h"
#include "ui/window/book_waiting.h"
#include "ui/window/debriefing.h"
#include "ui/window/edit.h"
#include "ui/window/explaining.h"
#include "ui/window/exporting.h"
#include "ui/window/importing.h"
#include "ui/window/keeping.h"
#include "ui/window/main_window.h"
#include "ui/window/my_car.h"
#include "ui/window/notices.h"
#include "ui/window/noting.h"
#include "ui/window/trying.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QProgressBar>
#include <QStackedWidget>
#include <QToolButton>
#include <QUndoStack>
#include <QVBoxLayout>

namespace lapwright::window {
namespace {

using models::text;

constexpr double zoom_step = 0.7;
constexpr double pan_step = 0.25;
constexpr int far_steps = 10;

// In a menu a single & underlines a letter.
QString as_shown(QString words) {
    return words.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

QToolButton* button_for(QAction* action, const QString& kind, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setDefaultAction(action);
    button->setObjectName(kind);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::TabFocus);
    return button;
}

} // namespace

QWidget* MainWindow::make_strip() {
    auto* strip = new QFrame(this);
    strip->setObjectName(QStringLiteral("strip"));
    auto* bar = new QMenuBar(strip);
    bar->setNativeMenuBar(false);
    actions_ = std::make_unique<Actions>(*bar);
    stage_ = theme::plain_label(strip, theme::small());
    progress_ = new QProgressBar(strip);
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setFixedSize(120, 8);
    cancel_ = button_for(actions_->cancel, QStringLiteral("plain"), strip);
    cancel_->setText(tr("Stop"));
    waiting_sign_ = button_for(actions_->write_waiting, QStringLiteral("waiting"), strip);
    damage_sign_ = button_for(actions_->salvage_book, QStringLiteral("waiting"), strip);
    units_button_ = new QToolButton(strip);
    units_button_->setObjectName(QStringLiteral("plain"));
    units_button_->setMenu(actions_->units_menu);
    units_button_->setPopupMode(QToolButton::InstantPopup);
    units_button_->setToolTip(tr("Units"));
    auto* row = new QHBoxLayout(strip);
    row->setContentsMargins(6, 2, 12, 1);
    row->setSpacing(4);
    row->addWidget(bar);
    row->addSpacing(12);
    row->addWidget(button_for(actions_->show_sessions, QStringLiteral("page"), strip));
    row->addWidget(button_for(actions_->show_compare, QStringLiteral("page"), strip));
    row->addWidget(button_for(actions_->show_causes, QStringLiteral("page"), strip));
    row->addWidget(button_for(actions_->show_debrief, QStringLiteral("page"), strip));
    row->addStretch(1);
    row->addWidget(waiting_sign_);
    row->addWidget(damage_sign_);
    row->addWidget(stage_);
    row->addWidget(progress_);
    row->addWidget(cancel_);
    row->addSpacing(8);
    auto* find_button = button_for(actions_->find, QStringLiteral("plain"), strip);
    find_button->setText(tr("Go to…"));
    row->addWidget(find_button);
    row->addWidget(units_button_);
    for (QWidget* busy : std::initializer_list<QWidget*>{stage_, progress_, cancel_}) {
        busy->hide();
    }
    return strip;
}

void MainWindow::make_pages() {
    auto* centre = new QWidget(this);
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    notices_ = new Notices(centre);
    auto* notice_row = new QVBoxLayout;
    notice_row->setContentsMargins(12, 6, 12, 0);
    notice_row->addWidget(notices_);
    stack_ = new QStackedWidget(centre);
    sessions_page_ = new pages::SessionsPage(sessions_, notes_, stack_);
    compare_page_ = new pages::ComparePage(stack_);
    stack_->addWidget(sessions_page_);
    causes_page_ = new pages::CausesPage(stack_);
    debrief_page_ = new pages::DebriefPage(stack_);
    explaining_ = new Explaining({*worker_, *causes_page_, *edits_, settings_, *sessions_, pairing_}, this);
    debriefing_ = new Debriefing(*debrief_page_, settings_, this);
    exporting_ = new Exporting(*compare_page_, *causes_page_, settings_, this);
    my_car_ = new MyCar(*book_, *causes_page_, *debriefing_, *edits_, this);
    trying_ = new Trying(*worker_, *sessions_, *explaining_, this);
    noting_ = new Noting({*notes_, *sessions_page_, *compare_page_, *edits_, pairing_}, this);
    keeping_ = new Keeping(*book_, {*notes_, *explaining_, *debriefing_, *notices_, settings_}, this);
    book_waiting_ = new BookWaiting(*book_, *actions_->write_waiting, *waiting_sign_, *notices_, this);
    book_care_ = new BookCare(book_file_.isEmpty() ? std::string() : QFile::encodeName(book_file_).toStdString(),
                              *notices_, *this, this);
    book_looking_ = new BookLooking(*book_, *sessions_page_, this);
    book_editing_ = new BookEditing(*book_, *sessions_page_, *edits_, this);
    stack_->addWidget(compare_page_);
    stack_->addWidget(causes_page_);
    stack_->addWidget(debrief_page_);
    column->addLayout(notice_row);
    column->addWidget(stack_, 1);
    setCentralWidget(centre);
    connect(sessions_page_, &pages::SessionsPage::open_asked, this, &MainWindow::ask_for_files);
    connect(sessions_page_, &pages::SessionsPage::compare_asked, this, [this] { show_page(compare_page_); });
    connect(sessions_, &models::OpenSessions::picks_changed, this, &MainWindow::follow_page);
    connect(sessions_, &models::OpenSessions::sessions_changed, this, &MainWindow::follow_page);
}

void MainWindow::connect_worker() {
    using bridge::Worker;
    connect(worker_, &Worker::session_ready, this, &MainWindow::session_read);
    connect(worker_, &Worker::file_refused, this, [this](const workspace::Origin& origin, const base::Error& error) {
        notices_->add(text(base::one_line(error)));
        if (const auto* file = std::get_if<std::string>(&origin)) importing_->note_refusal(models::path(*file), error);
        came(origin);
    });
    connect(worker_, &Worker::pairing_ready, this, &MainWindow::take_compared);
    connect(worker_, &Worker::comparison_refused, this, [this](const base::Error& error) {
        pairing_.refuse();
        notices_->add(text(base::one_line(error)));
        follow_page();
    });
    connect(worker_, &Worker::progressed, this, [this](const QString& stage, double part_done) {
        stage_->setText(stage);
        progress_->setValue(static_cast<int>(1000.0 * part_done));
    });
    connect(worker_, &Worker::busy_changed, this, [this](bool busy) {
        stage_->setText(busy ? tr("Working") : QString());
        progress_->setValue(0);
        for (QWidget* part : std::initializer_list<QWidget*>{stage_, progress_, cancel_}) {
            part->setVisible(busy);
        }
        actions_->cancel->setEnabled(busy);
    });
    actions_->cancel->setEnabled(false);
}

void MainWindow::connect_actions() {
    const Actions& a = *actions_;
    const auto on = [this](QAction* action, auto work) { connect(action, &QAction::triggered, this, work); };
    on(a.open, [this] { ask_for_files(); });
    on(a.close_session, [this] { sessions_page_->close_focused(); });
    on(a.forget_track, [this] { forget_track(); });
    on(a.cancel, [this] {
        worker_->cancel();
        if (pairing_.call_off()) explaining_->called_off();
    });
    on(a.dismiss, [this] { notices_->dismiss(); });
    on(a.quit, [this] { close(); });
    on(a.take_a, [this] { sessions_page_->pick_focused(workspace::Side::a); });
    on(a.take_b, [this] { sessions_page_->pick_focused(workspace::Side::b); });
    on(a.swap, [this] {
        edit_picks(tr("swap of A and B"), [](workspace::OpenSessions& open) { open.swap(); });
        follow_edit();
    });
    on(a.compare, [this] { show_page(compare_page_); });
    on(a.show_sessions, [this] { show_page(sessions_page_); });
    on(a.show_compare, [this] { show_page(compare_page_); });
    on(a.show_causes, [this] { show_page(causes_page_); });
    on(a.show_debrief, [this] { show_page(debrief_page_); });
    on(a.find, [this] { find(); });
    on(a.keys, [this] { dialogs::KeysHelp(actions_->key_groups(), this).exec(); });
    on(a.about, [this] { dialogs::About(QStringLiteral(LAPWRIGHT_VERSION), this).exec(); });
    connect(a.units, &QActionGroup::triggered, this, [this](const QAction* action) {
        preferences_.units = static_cast<base::UnitSystem>(action->data().toInt());
        apply_units();
        save();
    });
    on(a.next_units, [this] {
        const auto& all = actions_->units->actions();
        const auto now = all.indexOf(actions_->units->checkedAction());
        all[(now + 1) % all.size()]->trigger();
    });
    connect(a.look, &QActionGroup::triggered, this, [this](const QAction* action) {
        preferences_.look = static_cast<theme::Choice>(action->data().toInt());
        apply_look();
        save();
    });
}

void MainWindow::connect_compare_actions() {
    const Actions& a = *actions_;
    plots::PlotStack* plots = &compare_page_->stack();
    const auto on = [this](QAction* action, auto work) { connect(action, &QAction::triggered, this, work); };
    on(a.zoom_in, [plots] { plots->zoom(zoom_step); });
    on(a.zoom_out, [plots] { plots->zoom(1.0 / zoom_step); });
    on(a.whole_lap, [plots] { plots->fit(); });
    on(a.close_up, [this] { compare_page_->show_chosen_stretch(); });
    on(a.view_back, [plots] { plots->pan(-pan_step); });
    on(a.view_on, [plots] { plots->pan(pan_step); });
    on(a.next_segment, [this] { compare_page_->choose_next(1); });
    on(a.previous_segment, [this] { compare_page_->choose_next(-1); });
    on(a.cursor_on, [plots] { plots->step_cursor(1); });
    on(a.cursor_back, [plots] { plots->step_cursor(-1); });
    on(a.cursor_far_on, [plots] { plots->step_cursor(far_steps); });
    on(a.cursor_far_back, [plots] { plots->step_cursor(-far_steps); });
    on(a.cursor_start, [plots] { plots->set_cursor(0.0); });
    on(a.cursor_end, [plots] { plots->set_cursor(plots->length_m()); });
    a.band->setChecked(preferences_.band_shown);
    a.summed->setChecked(preferences_.summed);
    a.values_filled->setChecked(preferences_.values_filled);
    on(a.values_filled, [this](bool filled) {
        preferences_.values_filled = filled;
        compare_page_->set_values_filled(filled);
        save();
    });
    on(a.band, [this](bool shown) {
        preferences_.band_shown = shown;
        compare_page_->set_band_shown(shown);
        save();
    });
    on(a.summed, [this](bool summed) {
        preferences_.summed = summed;
        compare_page_->set_summed(summed);
        save();
    });
}

void MainWindow::connect_why_and_sheet() {
    connect(actions_->setup, &QAction::triggered, this, [this] { explaining_->edit_setups(preferences_.units, this); });
    connect(actions_->save_sheet, &QAction::triggered, this, [this] {
        show_page(debrief_page_);
        debriefing_->ask_and_save(this, Debriefing::Form::pdf);
    });
    connect(actions_->save_html, &QAction::triggered, this, [this] {
        show_page(debrief_page_);
        debriefing_->ask_and_save(this, Debriefing::Form::html);
    });
    connect(actions_->trial, &QAction::triggered, this, [this] { trying_->show(track_); });
    connect(sessions_page_, &pages::SessionsPage::trial_asked, actions_->trial, &QAction::trigger);
    connect(causes_page_, &pages::CausesPage::setup_asked, actions_->setup, &QAction::trigger);
    connect(debrief_page_, &pages::DebriefPage::save_asked, actions_->save_sheet, &QAction::trigger);
    connect(debrief_page_, &pages::DebriefPage::html_asked, actions_->save_html, &QAction::trigger);
    connect(causes_page_, &pages::CausesPage::place_asked, this, [this](double start_m, double end_m) {
        show_page(compare_page_);
        compare_page_->go_to(0.5 * (start_m + end_m));
        compare_page_->show_chosen_stretch();
    });
    connect(explaining_, &Explaining::setup_changed, this, &MainWindow::name_by_setup);
    connect(explaining_, &Explaining::changed, this, [this] {
        debriefing_->set_explanation(explaining_->explanation(), explaining_->setup_a(), explaining_->setup_b());
    });
}

void MainWindow::connect_exporting() {
    const auto view = [this] { return on_compare_page() ? Exporting::View::compare : Exporting::View::causes; };
    connect(actions_->save_table, &QAction::triggered, this,
            [this, view] { exporting_->ask_and_save_table(view(), windowTitle(), this); });
    connect(actions_->save_picture, &QAction::triggered, this,
            [this, view] { exporting_->ask_and_save_picture(view(), windowTitle(), this); });
    connect(exporting_, &Exporting::said, notices_, &Notices::add);
}

void MainWindow::connect_importing() {
    connect(actions_->columns, &QAction::triggered, this, [this] { sessions_page_->ask_for_columns(); });
    connect(actions_->report, &QAction::triggered, this, [this] { sessions_page_->toggle_report(); });
    connect(actions_->recipes, &QAction::triggered, this, [this] { importing_->show_recipes(); });
    connect(importing_, &Importing::read_again, this, &MainWindow::read_again);
    connect(importing_, &Importing::answered, this, &MainWindow::go_on_with_plan);
    connect(importing_, &Importing::refused, notices_, &Notices::add);
}

void MainWindow::connect_editing() {
    const Actions& a = *actions_;
    const auto on = [this](QAction* action, auto work) { connect(action, &QAction::triggered, this, work); };
    on(a.undo, [this] {
        edits_->undo();
        follow_edit();
    });
    on(a.redo, [this] {
        edits_->redo();
        follow_edit();
    });
    connect(sessions_page_, &pages::SessionsPage::swap_asked, a.swap, &QAction::trigger);
    connect(sessions_page_, &pages::SessionsPage::pick_asked, this,
            [this](workspace::Side side, const workspace::LapPick& pick) {
                const QString name = side == workspace::Side::a ? tr("choice of lap A") : tr("choice of lap B");
                edit_picks(name, [&](workspace::OpenSessions& open) { open.pick(side, pick); });
            });
    connect(edits_, &QUndoStack::canUndoChanged, a.undo, &QAction::setEnabled);
    connect(edits_, &QUndoStack::canRedoChanged, a.redo, &QAction::setEnabled);
    connect(edits_, &QUndoStack::undoTextChanged, this,
            [this](const QString& what) { actions_->undo->setText(tr("&Undo %1").arg(as_shown(what)).trimmed()); });
    connect(edits_, &QUndoStack::redoTextChanged, this,
            [this](const QString& what) { actions_->redo->setText(tr("&Redo %1").arg(as_shown(what)).trimmed()); });
    on(a.note_a, [this] { compare_page_->write_note(workspace::Side::a); });
    on(a.note_b, [this] { compare_page_->write_note(workspace::Side::b); });
    on(a.note_lap, [this] { sessions_page_->write_lap_note(); });
    on(a.note_session, [this] { sessions_page_->write_session_note(); });
    connect(noting_, &Noting::lines_changed, this, [this] { debriefing_->set_noted(noting_->lines()); });
}

// Done at once; an edit that changes nothing is not one.
void MainWindow::edit_picks(const QString& name, const std::function<void(workspace::OpenSessions&)>& change) {
    const workspace::Picks before = picks();
    sessions_->edit(change);
    const workspace::Picks after = picks();
    if (after == before) return;
    const auto put = [sessions = sessions_](const workspace::Picks& laps) {
        sessions->edit([&](workspace::OpenSessions& open) { open.put_picks(laps); });
    };
    edits_->push(new Edit(name, [put, after] { put(after); }, [put, before] { put(before); }));
}

// Channels that this pairing does not have keep their place in the settings.
void MainWindow::fill_channels_menu() {
    QMenu& menu = *actions_->channels_menu;
    menu.clear();
    for (const auto& choice : models::channels_of(*compare_page_->compared()->pairing)) {
        QAction* action = menu.addAction(as_shown(choice.title));
        action->setCheckable(true);
        action->setChecked(preferences_.channels.contains(choice.id));
        connect(action, &QAction::triggered, this, [this, id = choice.id](bool shown) {
            preferences_.channels.removeAll(id);
            if (shown) preferences_.channels << id;
            compare_page_->set_channels(preferences_.channels);
            save();
        });
    }
}

void MainWindow::find() {
    std::vector<dialogs::Destination> places;
    if (on_compare_page()) {
        for (const auto& segment : compare_page_->compared()->pairing->track.segments) {
            places.push_back(
                {text(segment.name), tr("segment"),
                 [this, place = 0.5 * (segment.start_m + segment.end_m)] { compare_page_->go_to(place); }});
        }
    }
    const auto menus = actions_->menus();
    for (const QMenu* menu : menus) {
        for (QAction* action : menu->actions()) {
            if (action->isSeparator() || action->menu() != nullptr || !action->isEnabled()) continue;
            QString name = action->text();
            name.remove(QLatin1Char('&'));
            places.push_back(
                {name, action->shortcut().toString(QKeySequence::NativeText), [action] { action->trigger(); }});
        }
    }
    dialogs::Finder(std::move(places), this).exec();
}

} // namespace lapwright::window
