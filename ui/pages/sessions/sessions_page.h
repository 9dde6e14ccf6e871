// SPDX-License-Identifier: GPL-3.0-or-later
// The open sessions, a place to drop files, and the pairing that is being made of two laps.
#pragma once

#include "core/base/display.h"
#include "core/book/search.h"
#include "core/workspace/lap_scale.h"
#include "core/workspace/new_files.h"
#include "core/workspace/session_names.h"
#include "ui/models/notes.h"
#include "ui/models/open_sessions.h"
#include "ui/theme/palette.h"

#include <QStringList>
#include <QWidget>
#include <map>
#include <set>
#include <string>
#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;

namespace lapwright::theme {
class ElidedLabel;
}

namespace lapwright::pages {

class BookPanel;
class BookView;
class SessionCard;
class StartView;

class SessionsPage : public QWidget {
    Q_OBJECT

  public:
    SessionsPage(models::OpenSessions* sessions, const models::Notes* notes, QWidget* parent = nullptr);

    void set_palette(const theme::Palette& palette);
    [[nodiscard]] const theme::Palette& palette() const { return palette_; }
    void set_units(base::UnitSystem units);
    [[nodiscard]] base::UnitSystem units() const { return units_; }
    // The track file in use; empty: none.
    void set_track(const QString& name, const QString& file);
    // The lap with the focus becomes A or B; without one nothing happens.
    void pick_focused(workspace::Side side);
    void turn_further_focused(); // the same for laps behind A and B
    void close_focused();
    // All: of the session with the focus, or the only one.
    void ask_for_columns();
    void toggle_report();
    // The sessions of the book in the place of the open ones.
    void show_book(bool shown);
    void set_book_usable(bool usable); // without one nothing speaks of it
    [[nodiscard]] BookPanel& book_panel() { return *book_; }
    [[nodiscard]] BookView& book();                                    // its list of sessions
    void show_new_files(const std::vector<workspace::NewFile>& files); // on the start, else behind a button
    [[nodiscard]] StartView& start() { return *start_; }
    void begin(); // the page is shown: the laps of A's session have the focus
    void focus_session(const workspace::SessionKey& key);
    void offer(const book::Names& known); // while a name is typed on a card
    void type_names();                    // on the card with the focus, or the only one
    void judge_lap();                     // with the focus
    void set_lap_order(workspace::LapOrder order);
    void write_session_note();
    void write_lap_note();                                                  // on the lap with the focus
    void keep_notes();                                                      // what is being typed
    void show_video(const workspace::SessionKey& key, const QString& name); // on its card
    [[nodiscard]] SessionCard* card_in_hand() const; // with the focus, or the only one; else null
    [[nodiscard]] const std::vector<SessionCard*>& cards() const { return cards_; }

  Q_SIGNALS:
    void card_made(const lapwright::workspace::SessionKey& key, const std::string& recording_file);
    void pick_asked(lapwright::workspace::Side side, const lapwright::workspace::LapPick& pick);
    void further_asked(const lapwright::workspace::LapPick& lap); // behind A and B, or no more
    void swap_asked();
    void open_asked();
    void samples_asked();
    void files_asked(const QStringList& paths);
    void compare_asked();
    void trial_asked();
    void book_asked();
    void columns_asked(const lapwright::workspace::SessionKey& key);
    void names_given(const lapwright::workspace::SessionKey& key, const lapwright::workspace::SessionNames& names);
    void lap_judged(const lapwright::workspace::SessionKey& key, int lap,
                    const std::optional<lapwright::lap::JudgedByHand>& word);
    void order_asked(lapwright::workspace::LapOrder order);
    void note_kept(const lapwright::workspace::NoteAbout& about, const QString& note);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* make_pairing_bar();
    void rebuild();
    [[nodiscard]] bool rename_cards(); // where nothing but names is other than before
    [[nodiscard]] SessionCard* make_card(const workspace::OpenSessions::Entry& entry);
    void close_session(const workspace::SessionKey& key);
    void arrange();
    void show_picks();
    void show_part(); // book, start or cards
    void show_notes();
    [[nodiscard]] QString pick_words(workspace::Side side) const;
    [[nodiscard]] SessionCard* focused() const;
    void follow_scale();

    models::OpenSessions* sessions_;
    const models::Notes* notes_;
    theme::Palette palette_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    workspace::LapOrder lap_order_ = workspace::LapOrder::driven;
    book::Names known_;
    std::map<workspace::SessionKey, QString> videos_;
    std::set<workspace::SessionKey> reported_; // sessions whose whole report is shown
    QLabel* hint_;
    QPushButton* new_files_; // while sessions are open
    StartView* start_;       // while no session is open
    QScrollArea* scroll_;
    QWidget* cards_view_;
    QGridLayout* grid_;
    std::vector<SessionCard*> cards_;
    QWidget* pairing_bar_ = nullptr;
    theme::ElidedLabel* words_a_;
    theme::ElidedLabel* words_b_;
    QPushButton* swap_;
    QPushButton* compare_;
    QPushButton* trial_;
    QPushButton* book_button_;
    BookPanel* book_;
};

} // namespace lapwright::pages
