// SPDX-License-Identifier: GPL-3.0-or-later
// The Sessions page while no session is open: a place to drop files, the sample sessions to try, files that came in and
// were not opened yet, and what the book has last: pairings with what came out, sessions.  Return or a double click
// opens one; of the new files all that are chosen.  A pairing has the gap over its lap beside it, a session its track.
#pragma once

#include "core/book/entries.h"
#include "core/book/pairings.h"
#include "core/workspace/new_files.h"
#include "ui/pages/sessions/picture_cell.h"

#include <QStringList>
#include <QWidget>
#include <map>
#include <vector>

class QLabel;
class QPushButton;

namespace lapwright::models {
class BookList;
class NewFileList;
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
    void show_pictures(const book::Pictures& pictures); // of what is shown
    // What an earlier run had open, in a sentence; empty: nothing.
    void offer_again(const QString& sentence);
    void show_new_files(const std::vector<workspace::NewFile>& files);
    void set_samples(bool there); // there are some to be tried
    void begin();                 // to the new files, else to what was compared last, else to the button

    [[nodiscard]] const std::vector<book::PairingSummary>& shown_pairings() const;
    [[nodiscard]] const std::vector<book::SessionSummary>& shown_sessions() const;
    [[nodiscard]] BookTable& new_files() { return *new_files_; }
    [[nodiscard]] BookTable& pairings() { return *pairings_; }
    [[nodiscard]] BookTable& sessions() { return *sessions_; }
    [[nodiscard]] QPushButton& restore() { return *restore_; }
    [[nodiscard]] QPushButton& samples() { return *samples_; }

  Q_SIGNALS:
    void open_asked();
    void samples_asked();
    void restore_asked();
    void restore_declined();
    void files_asked(const QStringList& paths);
    void pairing_asked(const lapwright::book::PairingSummary& pairing);
    void session_asked(const lapwright::book::SessionSummary& session);

  private:
    QWidget* make_drop_area();
    QWidget* make_offer();
    void give_pictures();
    static void fit(BookTable& list, QLabel& title);
    void open_new_files();

    models::NewFileList* new_file_list_;
    models::PairingList* pairing_list_;
    models::BookList* session_list_;
    std::map<book::PairingId, SmallPicture> gaps_;
    std::map<book::SessionId, SmallPicture> outlines_;
    QWidget* offer_ = nullptr;
    QLabel* offered_ = nullptr;
    QPushButton* restore_ = nullptr;
    QPushButton* open_;
    QPushButton* samples_;
    QLabel* new_files_title_;
    BookTable* new_files_;
    QLabel* pairings_title_;
    BookTable* pairings_;
    QLabel* sessions_title_;
    BookTable* sessions_;
};

} // namespace lapwright::pages
