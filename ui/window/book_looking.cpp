// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_looking.h"

#include "ui/models/text.h"
#include "ui/pages/sessions/book_filter.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/predictions_view.h"
#include "ui/pages/sessions/season_view.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/pages/sessions/start_view.h"

namespace lapwright::window {

using bridge::BookQueue;
using pages::BookPanel;
using Part = pages::BookPanel::Part;

BookLooking::BookLooking(BookQueue& book, pages::SessionsPage& page, QObject* parent)
    : QObject(parent), book_(book), page_(page) {
    page_.set_book_usable(book_.usable());
    BookPanel& panel = page_.book_panel();
    const auto open = [this](const book::SessionSummary& session) {
        page_.show_book(false);
        Q_EMIT open_asked(session);
    };
    connect(&panel, &BookPanel::part_asked, this, &BookLooking::show_part);
    connect(&panel.sessions(), &pages::BookView::filter_changed, this, &BookLooking::find);
    connect(&panel.sessions(), &pages::BookView::session_asked, this, open);
    connect(&panel.season(), &pages::SeasonView::season_asked, &book_, &BookQueue::find_season);
    connect(&panel.season(), &pages::SeasonView::stop_asked, &book_, &BookQueue::stop_car_season);
    connect(&book_, &BookQueue::car_season_told, &panel.season(), &pages::SeasonView::show_progress);
    connect(&book_, &BookQueue::car_season_found, &panel.season(), &pages::SeasonView::show_car_season);
    connect(&book_, &BookQueue::car_season_refused, &panel.season(), &pages::SeasonView::show_refusal);
    connect(&panel.season(), &pages::SeasonView::session_asked, this, open);
    connect(&panel.pairings(), &pages::PairingsView::pairing_asked, this, [this](const book::PairingSummary& pairing) {
        page_.show_book(false);
        Q_EMIT pairing_asked(pairing);
    });
    connect(&page_.start(), &pages::StartView::pairing_asked, this, &BookLooking::pairing_asked);
    connect(&page_.start(), &pages::StartView::session_asked, this, &BookLooking::open_asked);
    connect(&book_, &BookQueue::pairings_found, this, [this](const std::vector<book::PairingSummary>& pairings) {
        page_.start().show_pairings(pairings);
        find_pictures();
    });
    connect(&book_, &BookQueue::found, this, [this](const std::vector<book::SessionSummary>& sessions) {
        if (!page_.start().isVisible()) return;
        page_.start().show_sessions(sessions);
        find_pictures();
    });
    connect(&book_, &BookQueue::pictures_found, &page_.start(), &pages::StartView::show_pictures);
    connect(&book_, &BookQueue::found, &panel.sessions(), &pages::BookView::show_sessions);
    connect(&book_, &BookQueue::season_found, &panel.season(), &pages::SeasonView::show_season);
    connect(&book_, &BookQueue::pairings_found, &panel.pairings(), &pages::PairingsView::show_pairings);
    connect(&book_, &BookQueue::predictions_found, &panel.predictions(), &pages::PredictionsView::show_kept);
    connect(&book_, &BookQueue::predictions_held, &panel.predictions(), &pages::PredictionsView::show_held);
    connect(&book_, &BookQueue::names_found, this, [this](const book::Names& names) {
        page_.book_panel().sessions().set_names(names);
        page_.book_panel().season().set_names(names);
    });
    connect(&book_, &BookQueue::changed, this, [this] {
        if (page_.book_panel().isVisible())
            look();
        else if (page_.start().isVisible())
            look_for_start();
    });
    connect(&book_, &BookQueue::unusable, this, [this] { page_.set_book_usable(false); });
    connect(&book_, &BookQueue::opened_again, this, [this] { page_.set_book_usable(true); });
}

void BookLooking::look_for_start() {
    book_.find_pairings();
    book_.find({});
}

// Rows stand there before their pictures come.
void BookLooking::find_pictures() {
    if (!page_.start().isVisible()) return;
    std::vector<book::PairingId> pairings;
    for (const book::PairingSummary& one : page_.start().shown_pairings())
        pairings.push_back(one.kept.id);
    std::vector<book::SessionId> sessions;
    for (const book::SessionSummary& one : page_.start().shown_sessions())
        sessions.push_back(one.id);
    book_.find_pictures(pairings, sessions);
}

void BookLooking::show(Part part) {
    if (!book_.usable()) return;
    BookPanel& panel = page_.book_panel();
    show_part(panel.isVisible() && panel.part() == part ? Part::sessions : part);
}

void BookLooking::show_part(Part part) {
    BookPanel& panel = page_.book_panel();
    if (part == Part::season && panel.part() == Part::sessions) {
        if (const auto chosen = panel.sessions().chosen()) panel.season().want_track(models::text(chosen->track));
    }
    panel.show_part(part);
    page_.show_book(true);
    look();
}

// All parts: a removal and a new name touch every one of them.  Predictions cost work and are asked for when they are
// looked at.
void BookLooking::look() {
    if (page_.book_panel().part() == Part::predictions) book_.find_predictions();
    book_.find_names();
    book_.find_pairings();
    find();
}

void BookLooking::find() {
    pages::BookView& view = page_.book();
    const auto filter = view.filter().filter();
    if (filter.ok())
        book_.find(filter.value());
    else
        view.say(models::text(base::one_line(filter.error())));
}

} // namespace lapwright::window
