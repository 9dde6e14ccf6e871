// SPDX-License-Identifier: GPL-3.0-or-later
// The window and its book: what opens it, and what a session out of it cannot do.
#include "ui/bridge/book_keeper.h"
#include "ui/bridge/book_path.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/book_looking.h"
#include "ui/window/importing.h"
#include "ui/window/main_window.h"
#include "ui/window/notices.h"

#include <QFileInfo>

namespace lapwright::window {

void MainWindow::connect_book() {
    actions_->book->setEnabled(book_->usable());
    connect(book_, &bridge::BookKeeper::unusable, actions_->book, [this] { actions_->book->setEnabled(false); });
    connect(actions_->book, &QAction::triggered, this, [this] {
        show_page(sessions_page_);
        book_looking_->show();
    });
    connect(sessions_page_, &pages::SessionsPage::book_asked, actions_->book, &QAction::trigger);
    connect(book_looking_, &BookLooking::open_asked, this, [this](const QString& path) { load({path}, {}); });
    connect(sessions_page_, &pages::SessionsPage::columns_asked, this, [this](const QString& path) {
        if (bridge::session_of_book_path(path)) {
            notices_->add(tr("%1 came out of the book: open its file to change what its columns mean.")
                              .arg(QFileInfo(path).fileName()));
        } else {
            importing_->ask(path);
        }
    });
}

} // namespace lapwright::window
