// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to the whole book, beside the window's own edits: it is checked, a friend's book is merged into it, and
// what a damaged one still holds is saved.  Each runs off the UI thread with a book of its own, one at a time; what
// came of it is a notice.
#pragma once

#include "core/base/error.h"
#include "ui/bridge/job_queue.h"

#include <QObject>
#include <QString>
#include <string>

class QWidget;

namespace lapwright::window {

class Notices;

class BookCare : public QObject {
    Q_OBJECT

  public:
    // Both outlive it.  Its end calls off what can be called off, and waits.
    BookCare(std::string book_file, Notices& notices, QWidget& window, QObject* parent = nullptr);

    void check();
    void merge(const QString& other_book);
    void salvage(); // nobody may have the book open

  Q_SIGNALS:
    void changed();  // the book's sessions
    void salvaged(); // there is a whole book again

  private:
    void run(const QString& title, bool may_stop, bridge::JobQueue::Work work);
    void tell(const base::Error& error);
    void tell(const QString& sentence);

    std::string book_file_;
    Notices& notices_;
    QWidget& window_;
    bridge::JobGroup stoppable_;
    bridge::JobQueue jobs_;
};

} // namespace lapwright::window
