// SPDX-License-Identifier: GPL-3.0-or-later
// The workstation's window: its pages, which of them is shown, and what each action asks of the objects that do the
// work.
#pragma once

#include "core/workspace/present_pairing.h"
#include "ui/bridge/worker.h"
#include "ui/models/notes.h"
#include "ui/models/open_sessions.h"
#include "ui/window/page_stack.h"
#include "ui/window/preferences.h"

#include <QMainWindow>
#include <QTimer>

class QSettings;
class QUndoStack;

namespace lapwright::bridge {
class BookQueue;
} // namespace lapwright::bridge

namespace lapwright::window {

struct Actions;
class Debriefing;
class Explaining;
class Exporting;
class GivenFiles;
class Importing;
class Beginning;
class BookCare;
class BookEditing;
class BookLooking;
class BookWaiting;
class Comparing;
class Judging;
class Keeping;
class Learning;
class MyCar;
class Naming;
class Notices;
class Noting;
class Restoring;
class StillMaking;
class Strip;
class TrackEditing;
class Trying;
class Watching;

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
    [[nodiscard]] pages::ComparePage& compare_page() { return pages_->compare(); }
    [[nodiscard]] pages::CausesPage& causes_page() { return pages_->causes(); }
    [[nodiscard]] pages::DebriefPage& debrief_page() { return pages_->debrief(); }
    [[nodiscard]] Importing& importing() { return *importing_; }
    [[nodiscard]] Trying& trying() { return *trying_; }
    [[nodiscard]] Learning& learning() { return *learning_; }
    [[nodiscard]] Explaining& explaining() { return *explaining_; }
    [[nodiscard]] Debriefing& debriefing() { return *debriefing_; }
    [[nodiscard]] Exporting& exporting() { return *exporting_; }
    [[nodiscard]] pages::SessionsPage& sessions_page() { return pages_->sessions(); }
    [[nodiscard]] const Actions& actions() const { return actions_; }
    [[nodiscard]] Beginning& beginning() { return *beginning_; }
    [[nodiscard]] Restoring& restoring() { return *restoring_; }
    [[nodiscard]] Watching& watching() { return *watching_; }
    [[nodiscard]] const Notices& notices() const { return *notices_; }
    [[nodiscard]] bool on_compare_page() const { return pages_->on_compare(); }

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

  private:
    void make_pages();
    void connect_actions();
    void connect_preferences();
    void connect_why();
    void connect_importing();
    void connect_editing();
    void connect_book();
    void forget_track();
    void show_compared(const workspace::ComparedPointer& compared);
    void apply_units();
    void apply_look();
    void save();

    QSettings& settings_;
    QString book_file_; // empty: no book
    Preferences preferences_;
    QTimer save_soon_; // what a disk does is not waited for
    QPalette desktop_;
    workspace::PresentPairing pairing_;
    models::OpenSessions* sessions_;
    models::Notes* notes_;
    QUndoStack* edits_;
    bridge::Worker* worker_;
    bridge::BookQueue* book_;
    Importing* importing_;
    Strip* strip_;
    const Actions& actions_;
    Notices* notices_;
    PageStack* pages_;
    Explaining* explaining_;
    Debriefing* debriefing_;
    Exporting* exporting_;
    Learning* learning_;
    Trying* trying_;
    Noting* noting_;
    Keeping* keeping_;
    MyCar* my_car_;
    BookLooking* book_looking_;
    BookEditing* book_editing_;
    Naming* naming_;
    Judging* judging_;
    BookCare* book_care_;
    BookWaiting* book_waiting_;
    GivenFiles* given_;
    Comparing* comparing_;
    TrackEditing* track_editing_;
    Watching* watching_;
    Beginning* beginning_;
    StillMaking* still_making_;
    Restoring* restoring_;
};

} // namespace lapwright::window
