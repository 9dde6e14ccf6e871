// SPDX-License-Identifier: GPL-3.0-or-later
// The window's book, off the UI thread: what is opened and edited goes into it in the order in which it was asked for,
// and what it knows comes back.  Questions have a thread of their own, so that none waits for a long session to be
// written.  A book that cannot be used is told once; after that every call does nothing.  One that can only be read is
// told once too: it answers, and takes what a person edits for refused.  An edit that the disk or another window did
// not let through waits, with all that come after it, until the next edit or try_again().  All signals arrive on the
// thread that owns the keeper.
#pragma once

#include "core/base/error.h"
#include "core/book/names.h"
#include "core/book/pairings.h"
#include "core/book/removed.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/tracks.h"
#include "core/car/names.h"
#include "core/car/setup_sheet.h"
#include "ui/bridge/worker.h"
#include "ui/models/notes.h"
#include "ui/models/season_list.h"
#include "ui/models/session_shelf.h"

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <atomic>
#include <cstddef>
#include <deque>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace lapwright::bridge {

class BookDesk;

// A session that was opened.  What the book knows of it already stays, but for notes, which are newer.
struct SessionToKeep {
    QString path;
    SessionPointer session;
    std::string track; // of the track file, where one was given
    car::SetupSheet setup;
    std::vector<models::Note> notes;
    bool read_anew = false; // the file means something else now: its samples take the place of those in the book
};

// What the book knows of a session.
struct KeptSession {
    book::SessionId id{};
    std::vector<models::Note> notes;
    book::SessionDetails details;
};

struct PairingToKeep {
    QString name; // of the two laps, the same whenever they are compared
    models::LapPick a;
    models::LapPick b;
    std::string sentence;
    QString note; // newer than the one in the book; empty: none
};

// Another name for a driver, car or track; the number is the caller's, to take it back by.
struct Renaming {
    int number = 0;
    book::NameTable table{};
    std::string from;
    std::string to;
    bool unites = false; // the new name may be another's
};

class BookKeeper : public QObject {
    Q_OBJECT

  public:
    // An empty name: there is no book.  Opens the file, or begins a book there with its folder.
    explicit BookKeeper(std::string file, QObject* parent = nullptr);
    ~BookKeeper() override; // after all that was asked for is in the book

    [[nodiscard]] bool usable() const { return usable_; } // until it turns out not to be
    [[nodiscard]] bool takes_edits() const { return usable_ && !read_only_; }
    void try_again();
    // Waits until all that was asked for was tried; so many edits still are not in the book.
    [[nodiscard]] std::size_t finish();

    void keep(const SessionToKeep& wanted);
    void put_note(const models::Note& note); // an empty text removes it
    void put_setup(const QString& path, const car::SetupSheet& sheet);
    void keep_pairing(const PairingToKeep& wanted);
    void put_pairing_note(const QString& name, const QString& note);

    void put_track(const track::TrackRecord& record, const std::optional<book::KeptLine>& line);
    void put_missing_line(const std::string& track, const book::KeptLine& line);
    void put_figures(const QString& path, const std::vector<book::KeptFigure>& figures);
    void rename(const Renaming& wanted);
    void undo_rename(int number);
    // What went is kept under the caller's number; both tell tracks_changed when it is done.
    void forget_track(int number, const std::string& name);
    void bring_back_track(int number, const std::string& name);
    void put_my_car(const std::optional<car::Names>& mine); // told by my_car_found
    void put_start(book::SessionId id, std::optional<double> start_unix_s);
    void remove_session(book::SessionId id);
    void restore_session(book::SessionId id);
    // What goes is kept under the caller's number.
    void take_pairing(int number, book::PairingId id);
    void bring_back_pairing(int number);

    // Of several only the newest is answered.
    void find(const book::Filter& filter);
    void find_season(models::SeasonOf of, const QString& name);
    void find_names();
    void find_my_car(); // in its order among the edits
    void find_pairings();
    void find_removed();
    void open_again(); // after it was not usable

  Q_SIGNALS:
    void session_kept(const QString& path, const lapwright::bridge::KeptSession& kept);
    void pairing_kept(const QString& name, const QString& note);
    void found(const std::vector<lapwright::book::SessionSummary>& sessions);
    void season_found(const std::vector<lapwright::book::SeasonSession>& season);
    void names_found(const lapwright::book::Names& names);
    void my_car_found(const std::optional<lapwright::car::Names>& mine);
    void pairings_found(const std::vector<lapwright::book::PairingSummary>& pairings);
    void removed_found(const std::vector<lapwright::book::RemovedSession>& sessions);
    void details_changed(const QString& path, const lapwright::book::SessionDetails& details); // of an open session
    void tracks_changed();
    void changed();                                     // by an edit of this window
    void refused(const lapwright::base::Error& error);  // one edit
    void note_refused(const QString& session);          // is not in the book
    void unusable(const lapwright::base::Error& error); // the whole book
    void opened_again();
    void opened_read_only(const QString& file);
    void waits(int edits, const lapwright::base::Error& reason); // are not in the book yet
    void caught_up();                                            // all that waited is

  private:
    using Answer = std::function<void()>;
    struct Done {
        std::optional<base::Error> refusal;
        Answer answer; // of both
    };
    using Edit = std::function<Done(BookDesk&)>;

    void edit(Edit work);
    [[nodiscard]] bool open_for_edits(); // on the edits' thread; tells when it cannot be, or only read
    void take_up();                      // on the edits' thread
    void ask(std::function<Answer(BookDesk&)> work);
    void tell(Answer answer);
    // Tells the answer by its signal, or the refusal.
    template <typename Value>
    void tell(const base::Result<Value>& answer, void (BookKeeper::*signal)(const Value&)) {
        if (answer.ok())
            Q_EMIT(this->*signal)(answer.value());
        else
            Q_EMIT refused(answer.error());
    }
    // An edit of which only a refusal is told.
    void edit_plainly(std::function<std::optional<base::Error>(BookDesk&)> work);
    // One that changes what sessions are called.
    void edit_names(std::function<std::optional<base::Error>(BookDesk&)> work);
    // One that nobody asked for: a book that can only be read does without it.
    void edit_unasked(std::function<std::optional<base::Error>(BookDesk&)> work);

    bool usable_;
    bool read_only_ = false;
    std::unique_ptr<BookDesk> edits_; // used by the thread of its pool alone, as the next one
    std::unique_ptr<BookDesk> questions_;
    std::deque<Edit> waiting_; // used by the edits' thread
    bool told_waiting_ = false;
    bool told_read_only_ = false;
    std::shared_ptr<std::atomic<int>> newest_find_;
    std::shared_ptr<std::atomic<int>> newest_season_;
    QThreadPool edit_pool_;
    QThreadPool question_pool_;
};

} // namespace lapwright::bridge
