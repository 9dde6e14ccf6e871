// SPDX-License-Identifier: GPL-3.0-or-later
// The window and its book: what opens it, and what a session out of it cannot do.
#include "core/book/salvage.h"
#include "ui/bridge/book_keeper.h"
#include "ui/bridge/book_path.h"
#include "ui/bridge/book_session.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/book_care.h"
#include "ui/window/book_editing.h"
#include "ui/window/book_looking.h"
#include "ui/window/explaining.h"
#include "ui/window/importing.h"
#include "ui/window/keeping.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QStackedWidget>
#include <QToolButton>
#include <algorithm>
#include <utility>

namespace lapwright::window {

void MainWindow::connect_book() {
    using Part = pages::BookPanel::Part;
    for (const auto& [action, part] :
         {std::pair(actions_->book, Part::sessions), std::pair(actions_->season, Part::season),
          std::pair(actions_->pairings, Part::pairings)}) {
        action->setEnabled(book_->usable());
        connect(book_, &bridge::BookKeeper::unusable, action, [action] { action->setEnabled(false); });
        connect(book_, &bridge::BookKeeper::opened_again, action, [action] { action->setEnabled(true); });
        connect(action, &QAction::triggered, this, [this, part] {
            show_page(sessions_page_);
            book_looking_->show(part);
        });
    }
    connect_book_care();
    connect(book_, &bridge::BookKeeper::details_changed, this, &MainWindow::rename_open);
    connect(keeping_, &Keeping::kept_there, this,
            [this](const QString& path, const bridge::KeptSession& kept) { rename_open(path, kept.details); });
    connect(sessions_page_, &pages::SessionsPage::book_asked, actions_->book, &QAction::trigger);
    connect(book_looking_, &BookLooking::open_asked, this, [this](const book::SessionSummary& session) {
        const QString path = path_of(session);
        if (shelf_->session(path))
            sessions_page_->focus_session(path);
        else
            load({path}, {});
    });
    connect(book_, &bridge::BookKeeper::tracks_changed, this, &MainWindow::reload_all);
    connect(keeping_, &Keeping::kept_there, this, &MainWindow::make_one);
    connect(book_looking_, &BookLooking::pairing_asked, this, &MainWindow::open_pairing);
    connect(sessions_page_, &pages::SessionsPage::columns_asked, this, [this](const QString& path) {
        if (bridge::session_of_book_path(path)) {
            notices_->add(tr("%1 came out of the book: open its file to change what its columns mean.")
                              .arg(QFileInfo(path).fileName()));
        } else {
            importing_->ask(path);
        }
    });
}

void MainWindow::connect_book_care() {
    const auto enable = [this](bool usable, bool damaged) {
        for (QAction* action : {actions_->removed, actions_->check_book, actions_->merge_book})
            action->setEnabled(usable);
        actions_->salvage_book->setEnabled(damaged);
        damage_sign_->setVisible(damaged);
    };
    enable(book_->usable(), false);
    connect(book_, &bridge::BookKeeper::unusable, this,
            [enable](const base::Error& error) { enable(false, book::is_damage(error)); });
    connect(book_, &bridge::BookKeeper::opened_again, this, [this, enable] {
        enable(true, false);
        reload_all(); // and what is open goes into it
    });
    connect(actions_->removed, &QAction::triggered, book_editing_, &BookEditing::show_removed);
    connect(actions_->check_book, &QAction::triggered, book_care_, &BookCare::check);
    connect(actions_->salvage_book, &QAction::triggered, book_care_, &BookCare::salvage);
    connect(actions_->merge_book, &QAction::triggered, this, [this] {
        const QString other = QFileDialog::getOpenFileName(this, tr("A friend's book"), preferences_.folder);
        if (!other.isEmpty()) book_care_->merge(other);
    });
    connect(book_care_, &BookCare::changed, book_, &bridge::BookKeeper::changed);
    connect(book_care_, &BookCare::salvaged, book_, &bridge::BookKeeper::open_again);
}

// What the book calls a session now, on every page that shows it.
void MainWindow::rename_open(const QString& path, const book::SessionDetails& details) {
    const bridge::SessionPointer session = shelf_->session(path);
    if (!session) return;
    const bridge::SessionPointer renamed = bridge::named(session, details);
    if (renamed == session) return;
    shelf_->add(path, renamed);
    const auto shows = [&](const Picks& picks) {
        return (picks.first && picks.first->path == path) || (picks.second && picks.second->path == path);
    };
    const bool on_its_way = wanted_ != compared_ && shows(wanted_);
    if (shows(compared_)) compared_ = {};
    if (on_its_way)
        compare();
    else
        follow_edit();
}

// Where it is open, or its name in the book.
QString MainWindow::path_of(const book::SessionSummary& session) const {
    const QStringList paths = keeping_->paths_of(session.id);
    const auto open =
        std::ranges::find_if(paths, [this](const QString& path) { return shelf_->session(path) != nullptr; });
    return open != paths.end() ? *open : bridge::book_path(session.id, session.source.file_name);
}

// A session that is open twice, from its file and from the book or under two names of its file, is one; the file that
// came last stays, because its columns can be read anew.
void MainWindow::make_one(const QString& path, const bridge::KeptSession& kept) {
    for (const QString& other : keeping_->paths_of(kept.id)) {
        if (other == path || !shelf_->session(other)) continue;
        const bool out_of_book = bridge::session_of_book_path(path).has_value();
        shelf_->unite(out_of_book ? other : path, out_of_book ? path : other);
        follow_edit();
    }
}

// Another gate times other laps: every open session is understood again, and the pairing compared again.
void MainWindow::reload_all() {
    QStringList paths;
    for (const auto& entry : shelf_->entries())
        paths << entry.path;
    if (paths.isEmpty()) return;
    Plan plan;
    for (const Side side : {Side::a, Side::b})
        if (shelf_->picked(side)) plan.sides << shelf_->picked(side)->path;
    plan.compare = on_compare_page();
    load(paths, std::move(plan));
}

void MainWindow::open_pairing(const book::PairingSummary& pairing) {
    reopen({models::LapPick{path_of(pairing.a), pairing.kept.pairing.lap_a},
            models::LapPick{path_of(pairing.b), pairing.kept.pairing.lap_b}});
}

// Both sessions, out of the book where they are not open, and straight to the comparison of their laps.
void MainWindow::reopen(const Picks& picks) {
    Plan plan;
    plan.picks = picks;
    plan.compare = true;
    QStringList missing;
    for (const QString& path : {picks.first->path, picks.second->path})
        if (!shelf_->session(path)) missing << path;
    load(missing, std::move(plan));
    if (missing.isEmpty()) go_on_with_plan();
}

void MainWindow::take_compared(const models::ComparedPointer& compared) {
    if (picks() == wanted_) {
        shelf_->take_fastest(compared->pairing->a.lap.number, compared->pairing->b.lap.number);
        wanted_ = picks();
    }
    show_compared(compared, wanted_);
}

} // namespace lapwright::window
