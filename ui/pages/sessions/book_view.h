// SPDX-License-Identifier: GPL-3.0-or-later
// The book's sessions: words that narrow them down, and the list.  Down goes from the words into the list, Return or a
// double click opens the session, Escape goes back to the open sessions.
#pragma once

#include "core/book/entries.h"

#include <QWidget>
#include <vector>

class QLabel;
class QLineEdit;
class QTableView;

namespace lapwright::models {
class BookList;
}

namespace lapwright::pages {

class BookView : public QWidget {
    Q_OBJECT

  public:
    explicit BookView(QWidget* parent = nullptr);

    void show_sessions(std::vector<book::SessionSummary> sessions);
    void begin(); // to the words
    [[nodiscard]] QLineEdit& words() { return *words_; }
    [[nodiscard]] QTableView& list() { return *list_; }
    [[nodiscard]] const models::BookList& model() const { return *model_; }
    [[nodiscard]] QString said() const;

  Q_SIGNALS:
    void words_changed(const QString& words);
    void session_asked(const lapwright::book::SessionSummary& session);
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void open_current();
    bool key_pressed(int key, bool in_words);

    models::BookList* model_;
    QLineEdit* words_;
    QTableView* list_;
    QLabel* said_; // how many, or that there are none
};

} // namespace lapwright::pages
