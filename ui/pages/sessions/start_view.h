// SPDX-License-Identifier: GPL-3.0-or-later
// The Sessions page while no session is open: a place to drop files, the sample sessions to try, and what the book has
// last: pairings with what came out, sessions.  Return or a double click opens one.
#pragma once

#include "core/book/entries.h"
#include "core/book/pairings.h"

#include <QWidget>
#include <vector>

class QLabel;
class QPushButton;

namespace lapwright::models {
class BookList;
class PairingList;
} // namespace lapwright::models

namespace lapwright::pages {

class BookTable;

class StartView : public QWidget {
    Q_OBJECT

  public:
    explicit StartView(QWidget* parent = nullptr);

    void show_pairings(std::vector<book::PairingSummary> pairings); // the newest first, of which some are shown
    void show_sessions(std::vector<book::SessionSummary> sessions);
    void set_samples(bool there); // there are some to be tried
    void begin();                 // to what was compared last, else to the files

    [[nodiscard]] BookTable& pairings() { return *pairings_; }
    [[nodiscard]] BookTable& sessions() { return *sessions_; }
    [[nodiscard]] QPushButton& samples() { return *samples_; }

  Q_SIGNALS:
    void open_asked();
    void samples_asked();
    void pairing_asked(const lapwright::book::PairingSummary& pairing);
    void session_asked(const lapwright::book::SessionSummary& session);

  private:
    QWidget* make_drop_area();
    static void fit(BookTable& list, QLabel& title);

    models::PairingList* pairing_list_;
    models::BookList* session_list_;
    QPushButton* open_;
    QPushButton* samples_;
    QLabel* pairings_title_;
    BookTable* pairings_;
    QLabel* sessions_title_;
    BookTable* sessions_;
};

} // namespace lapwright::pages
