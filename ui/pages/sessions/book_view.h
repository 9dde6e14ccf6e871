// SPDX-License-Identifier: GPL-3.0-or-later
// The book's sessions: what narrows them down, and the list.  Down goes from the words into the list; there Return or a
// double click opens the session, F2 changes its names or date, Delete takes it out of the book after asking.
// Escape goes back to the open sessions.
#pragma once

#include "core/book/entries.h"
#include "core/book/search.h"

#include <QWidget>
#include <optional>
#include <vector>

class QFrame;
class QLabel;
class QLineEdit;
class QPushButton;

namespace lapwright::models {
class BookList;
}

namespace lapwright::pages {

class BookFilter;
class BookTable;

class BookView : public QWidget {
    Q_OBJECT

  public:
    explicit BookView(QWidget* parent = nullptr);

    void show_sessions(std::vector<book::SessionSummary> sessions);
    void set_names(const book::Names& names);
    void begin(); // to the words
    // What goes with the session is asked of the caller; nothing happens before the person says yes.
    void ask_for_removal(const book::SessionSummary& session, int pairings);
    // A sentence in the place of how many there are.
    void say(const QString& sentence);

    [[nodiscard]] BookFilter& filter() { return *filter_; }
    [[nodiscard]] QLineEdit& words();
    [[nodiscard]] BookTable& list() { return *list_; }
    [[nodiscard]] const models::BookList& model() const { return *model_; }
    [[nodiscard]] const book::Names& names() const { return names_; }
    [[nodiscard]] std::optional<book::SessionSummary> chosen() const;
    [[nodiscard]] QString said() const;
    [[nodiscard]] QString question() const; // empty while nothing is asked
    [[nodiscard]] QPushButton& yes() { return *yes_; }
    [[nodiscard]] QPushButton& no() { return *no_; }

  Q_SIGNALS:
    void filter_changed();
    void session_asked(const lapwright::book::SessionSummary& session);
    void renaming_asked(const lapwright::book::SessionSummary& session);
    void removal_asked(const lapwright::book::SessionSummary& session);
    void removal_wanted(const lapwright::book::SessionSummary& session); // the person said yes
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QFrame* make_question();
    void answer(bool yes);
    void follow_row();

    models::BookList* model_;
    book::Names names_;
    BookFilter* filter_;
    BookTable* list_;
    QLabel* said_; // how many, or that there are none
    QPushButton* open_;
    QPushButton* rename_;
    QPushButton* remove_;
    QLabel* asked_;
    QPushButton* yes_;
    QPushButton* no_;
    QFrame* question_;
    std::optional<book::SessionSummary> asked_about_;
};

} // namespace lapwright::pages
