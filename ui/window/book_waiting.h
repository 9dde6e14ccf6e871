// SPDX-License-Identifier: GPL-3.0-or-later
// Edits that could not be written into the book: every page says so until they are in it, they are tried again at the
// next edit and when the person asks for it, and the window does not close over them unasked.
#pragma once

#include "ui/bridge/book_queue.h"

#include <QObject>
#include <QString>

class QAction;
class QWidget;

namespace lapwright::window {

class Notices;

class BookWaiting : public QObject {
    Q_OBJECT

  public:
    // `try_again` is enabled, and `sign` shown, while something waits.  All outlive it.
    BookWaiting(bridge::BookQueue& book, QAction& try_again, QWidget& sign, Notices& notices,
                QObject* parent = nullptr);

    // Tries all of it once more, and asks where that does not help.
    [[nodiscard]] bool may_close(QWidget* window);

  private:
    void show(int edits, const QString& reason);

    bridge::BookQueue& book_;
    QAction& try_again_;
    QWidget& sign_;
    Notices& notices_;
    QString said_;
    QString reason_;
};

} // namespace lapwright::window
