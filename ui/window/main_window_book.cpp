// SPDX-License-Identifier: GPL-3.0-or-later
// The window and its book: what opens it, and what a session out of it cannot do.
#include "core/book/salvage.h"
#include "core/workspace/reading.h"
#include "ui/bridge/book_queue.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
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
        connect(book_, &bridge::BookQueue::unusable, action, [action] { action->setEnabled(false); });
        connect(book_, &bridge::BookQueue::opened_again, action, [action] { action->setEnabled(true); });
        connect(action, &QAction::triggered, this, [this, part] {
            show_page(sessions_page_);
            book_looking_->show(part);
        });
    }
    connect_book_care();
    connect(book_, &bridge::BookQueue::details_changed, this, &MainWindow::rename_open);
    connect(keeping_, &Keeping::kept_there, this,
            [this](const workspace::SessionKey& key, const workspace::KeptSession& kept) {
                rename_open(key, kept.details);
            });
    connect(sessions_page_, &pages::SessionsPage::book_asked, actions_->book, &QAction::trigger);
    connect(book_looking_, &BookLooking::open_asked, this, [this](const book::SessionSummary& session) {
        const workspace::SessionKey key{session.source.checksum};
        if (sessions_->now().find(key))
            sessions_page_->focus_session(key);
        else
            load({session.id}, {});
    });
    connect(book_, &bridge::BookQueue::tracks_changed, this, &MainWindow::reload_all);
    connect(book_looking_, &BookLooking::pairing_asked, this, &MainWindow::open_pairing);
    connect(sessions_page_, &pages::SessionsPage::columns_asked, this, [this](const workspace::SessionKey& key) {
        const auto* open = sessions_->now().find(key);
        if (!open) return;
        if (open->file())
            importing_->ask(models::path(*open->file()));
        else
            notices_->add(tr("%1 came out of the book: open its file to change what its columns mean.")
                              .arg(models::text(open->file_name())));
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
    connect(book_, &bridge::BookQueue::unusable, this,
            [enable](const base::Error& error) { enable(false, book::is_damage(error)); });
    connect(book_, &bridge::BookQueue::opened_again, this, [this, enable] {
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
    connect(book_care_, &BookCare::changed, book_, &bridge::BookQueue::changed);
    connect(book_care_, &BookCare::salvaged, book_, &bridge::BookQueue::open_again);
}

// What the book calls a session now, on every page that shows it.
void MainWindow::rename_open(const workspace::SessionKey& key, const book::SessionDetails& details) {
    const workspace::SessionPointer session = sessions_->now().session(key);
    if (!session) return;
    const workspace::SessionPointer renamed = workspace::named(session, details);
    if (renamed == session) return;
    sessions_->edit([&](workspace::OpenSessions& open) { open.rename(key, renamed); });
    pairing_.outdate(key);
    if (pairing_.comes_with(key))
        compare();
    else
        follow_edit();
}

workspace::Origin MainWindow::origin_of(const book::SessionSummary& session) const {
    const auto* open = sessions_->now().find(workspace::SessionKey{session.source.checksum});
    return open ? open->origin() : workspace::Origin(session.id);
}

// Another gate times other laps: every open session is understood again, and the pairing compared again.
void MainWindow::reload_all() {
    std::vector<workspace::Origin> origins;
    for (const auto& entry : sessions_->now().entries())
        origins.push_back(entry.origin());
    if (origins.empty()) return;
    Plan plan;
    plan.laps = {wanted_again(picks().a), wanted_again(picks().b)};
    for (auto& wanted : plan.laps)
        if (wanted) wanted->lap.reset();
    plan.compare = on_compare_page();
    load(origins, plan);
}

void MainWindow::open_pairing(const book::PairingSummary& pairing) {
    using Wanted = workspace::PresentPairing::WantedLap;
    reopen({Wanted{origin_of(pairing.a), pairing.kept.pairing.lap_a},
            Wanted{origin_of(pairing.b), pairing.kept.pairing.lap_b}});
}

// Both sessions, out of the book where they are not open, and straight to the comparison of their laps.
void MainWindow::reopen(const WantedLaps& laps) {
    std::vector<workspace::Origin> missing;
    for (const auto& wanted : laps)
        if (!sessions_->now().find(wanted->origin) && std::ranges::find(missing, wanted->origin) == missing.end())
            missing.push_back(wanted->origin);
    load(missing, {laps, true});
    if (missing.empty()) go_on_with_plan();
}

} // namespace lapwright::window
