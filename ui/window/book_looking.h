// SPDX-License-Identifier: GPL-3.0-or-later
// The book's sessions on the Sessions page: what is looked for is asked of the book, what is chosen is opened.
#pragma once

#include "core/book/entries.h"
#include "ui/bridge/book_keeper.h"

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
    BookLooking(bridge::BookKeeper& book, pages::SessionsPage& page, QObject* parent = nullptr);

    void show(); // the page is shown already

  Q_SIGNALS:
    void open_asked(const QString& path); // as book_path.h has it

  private:
    void look();

    bridge::BookKeeper& book_;
    pages::SessionsPage& page_;
};

} // namespace lapwright::window
