// SPDX-License-Identifier: GPL-3.0-or-later
// The book on the Sessions page: what is looked for is asked of the book, what is chosen is opened.
#pragma once

#include "core/book/entries.h"
#include "ui/bridge/book_queue.h"
#include "ui/pages/sessions/book_panel.h"

#include <QObject>
#include <QString>

namespace lapwright::pages {
class SessionsPage;
}

namespace lapwright::window {

class BookLooking : public QObject {
    Q_OBJECT

  public:
    // Both outlive it.
    BookLooking(bridge::BookQueue& book, pages::SessionsPage& page, QObject* parent = nullptr);

    // The page is shown already.  A part that is shown gives way to the sessions: its key leads there and back.
    void show(pages::BookPanel::Part part);
    void look_for_start(); // what was compared and driven last

  Q_SIGNALS:
    void open_asked(const lapwright::book::SessionSummary& session);
    void pairing_asked(const lapwright::book::PairingSummary& pairing);

  private:
    void show_part(pages::BookPanel::Part part);
    void look();
    void find_pictures(); // of what the start shows
    void find();

    bridge::BookQueue& book_;
    pages::SessionsPage& page_;
};

} // namespace lapwright::window
