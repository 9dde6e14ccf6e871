// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_looking.h"

#include "ui/bridge/book_path.h"
#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/sessions_page.h"

#include <QLineEdit>

namespace lapwright::window {

using bridge::BookKeeper;

BookLooking::BookLooking(BookKeeper& book, pages::SessionsPage& page, QObject* parent)
    : QObject(parent), book_(book), page_(page) {
    page_.set_book_usable(book_.usable());
    pages::BookView& view = page_.book();
    connect(&view, &pages::BookView::words_changed, this, &BookLooking::look);
    connect(&view, &pages::BookView::session_asked, this, [this](const book::SessionSummary& session) {
        const QString path = bridge::book_path(session.id, session.source.file_name);
        page_.show_book(false);
        Q_EMIT open_asked(path);
    });
    connect(&book_, &BookKeeper::found, &view, &pages::BookView::show_sessions);
    connect(&book_, &BookKeeper::changed, this, [this] {
        if (page_.book().isVisible()) look();
    });
    connect(&book_, &BookKeeper::unusable, this, [this] { page_.set_book_usable(false); });
}

void BookLooking::show() {
    if (!book_.usable()) return;
    page_.show_book(true);
    look();
}

void BookLooking::look() {
    book::Filter filter;
    filter.words = page_.book().words().text().toStdString();
    book_.find(filter);
}

} // namespace lapwright::window
