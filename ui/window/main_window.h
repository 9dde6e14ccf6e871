// SPDX-License-Identifier: GPL-3.0-or-later
// The workstation's window: pages, menus, files coming in, work going out to the worker, settings.
#pragma once

#include "core/book/pairings.h"
#include "core/workspace/present_pairing.h"
#include "core/workspace/setups.h"
#include "ui/bridge/worker.h"
#include "ui/models/notes.h"
#include "ui/models/open_sessions.h"
#include "ui/theme/palette.h"
#include "ui/window/preferences.h"

#include <QMainWindow>
#include <array>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

class QLabel;
class QProgressBar;
class QSettings;
class QStackedWidget;
class QToolButton;
class QUndoStack;

namespace lapwright::bridge {
class BookQueue;
} // namespace lapwright::bridge

namespace lapwright::pages {
class CausesPage;
class ComparePage;
class DebriefPage;
class SessionsPage;
} // namespace lapwright::pages

namespace lapwright::window {

struct Actions;
class Debriefing;
class Explaining;
class Exporting;
class Importing;
class BookCare;
class BookEditing;
class BookLooking;
class BookWaiting;
class Keeping;
class MyCar;
class Notices;
class Noting;
class Trying;

class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    // `settings` outlives the window.
    MainWindow(bridge::Stages stages, QSettings& settings, QWidget* parent = nullptr);
    ~MainWindow() override;

    // Two or more files: straight to the comparison of the first two.  None: the pairing of the last time.
    void start(const QStringList& files);
    void open(const QStringList& files);

    [[nodiscard]] models::Notes& notes() { return *notes_; }
    [[nodiscard]] bridge::BookQueue& book() { return *book_; }
    [[nodiscard]] Noting& noting() { return *noting_; }
    [[nodiscard]] QUndoStack& edits() { return *edits_; }
    [[nodiscard]] models::OpenSessions& sessions() { return *sessions_; }
    [[nodiscard]] const workspace::PresentPairing& pairing() const { return pairing_; }
    [[nodiscard]] pages::ComparePage& compare_page() { return *compare_page_; }
    [[nodiscard]] pages::CausesPage& causes_page() { return *causes_page_; }
    [[nodiscard]] pages::DebriefPage& debrief_page() { return *debrief_page_; }
    [[nodiscard]] Importing& importing() { return *importing_; }
    [[nodiscard]] Trying& trying() { return *trying_; }
    [[nodiscard]] Explaining& explaining() { return *explaining_; }
    [[nodiscard]] Debriefing& debriefing() { return *debriefing_; }
    [[nodiscard]] Exporting& exporting() { return *exporting_; }
    [[nodiscard]] pages::SessionsPage& sessions_page() { return *sessions_page_; }
    [[nodiscard]] const Actions& actions() const { return *actions_; }
    [[nodiscard]] const Notices& notices() const { return *notices_; }
    [[nodiscard]] bool on_compare_page() const;

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

  private:
    using Plan = workspace::PresentPairing::Plan;
    using WantedLaps = std::array<std::optional<workspace::PresentPairing::WantedLap>, 2>;

    QWidget* make_strip();
    void make_pages();
    void connect_worker();
    void connect_actions();
    void connect_compare_actions();
    void connect_why_and_sheet();
    void connect_exporting();
    void connect_importing();
    void connect_editing();
    void connect_book();
    void open_pairing(const book::PairingSummary& pairing);
    void reopen(const WantedLaps& laps);
    // Where it is open, or else the book.
    [[nodiscard]] workspace::Origin origin_of(const book::SessionSummary& session) const;
    void rename_open(const workspace::SessionKey& key, const book::SessionDetails& details);
    void connect_book_care();
    void load(const std::vector<workspace::Origin>& origins, const Plan& plan);
    // Takes track files (*.json) out of `files` and uses the last of them; true when the track changed.
    bool take_track(QStringList& files);
    bool use_track(const QString& path);
    // Whether it was a setup sheet, which then waits for its session; `together`: session files that came with it.
    bool take_setup(const QString& path, const QStringList& together);
    void give_setups();                                   // the waiting ones to their sessions
    void name_by_setup(const workspace::SessionKey& key); // driver and car of the session
    void forget_track();
    [[nodiscard]] std::string known_track() const; // of the track file, else what the book knew of an open session
    void reload_all();
    void session_read(const workspace::Origin& origin, const workspace::SessionPointer& session);
    void came(const workspace::Origin& origin);
    void go_on_with_plan();
    void read_again(const QString& path);
    void fulfil_plan();
    void compare();
    void take_compared(const workspace::ComparedPointer& compared);
    void follow_edit(); // on a page of the pairing: what it shows is made anew
    void show_page(QWidget* page);
    void follow_page();
    void fill_channels_menu();
    void apply_units();
    void apply_look();
    void ask_for_files();
    void find();
    void save();
    void edit_picks(const QString& name, const std::function<void(workspace::OpenSessions&)>& change);
    [[nodiscard]] const workspace::Picks& picks() const { return sessions_->now().picks(); }
    // Where a picked lap would be read again.
    [[nodiscard]] std::optional<workspace::PresentPairing::WantedLap>
    wanted_again(const std::optional<workspace::LapPick>& pick) const;

    QSettings& settings_;
    QString book_file_; // empty: no book
    Preferences preferences_;
    QPalette desktop_;
    workspace::PresentPairing pairing_;
    models::OpenSessions* sessions_;
    models::Notes* notes_;
    QUndoStack* edits_;
    bridge::Worker* worker_;
    bridge::BookQueue* book_;
    Importing* importing_;
    std::unique_ptr<Actions> actions_;
    QStackedWidget* stack_;
    pages::SessionsPage* sessions_page_;
    pages::ComparePage* compare_page_;
    pages::CausesPage* causes_page_;
    pages::DebriefPage* debrief_page_;
    Explaining* explaining_;
    Debriefing* debriefing_;
    Exporting* exporting_;
    Trying* trying_;
    Noting* noting_;
    Keeping* keeping_;
    MyCar* my_car_;
    BookLooking* book_looking_;
    BookEditing* book_editing_;
    BookCare* book_care_;
    BookWaiting* book_waiting_;
    QWidget* page_wanted_ = nullptr; // to be shown when the comparison is there
    Notices* notices_;
    QLabel* stage_;
    QProgressBar* progress_;
    QToolButton* cancel_;
    QToolButton* waiting_sign_;
    QToolButton* damage_sign_;
    QToolButton* units_button_;
    std::optional<track::TrackRecord> track_;
    std::vector<workspace::GivenSetup> setups_; // until the files that are being read have come
};

} // namespace lapwright::window
