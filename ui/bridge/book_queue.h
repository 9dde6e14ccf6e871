// SPDX-License-Identifier: GPL-3.0-or-later
// The window's book, off the UI thread: what is opened and edited goes into it in the order in which it was asked for,
// and what it knows comes back.  Questions have a thread of their own, so that none waits for a long session to be
// written.  A book that cannot be used is told once; after that every call does nothing.  One that can only be read is
// told once too: it answers, and takes what a person edits for refused.  An edit that the disk or another window did
// not let through waits, with all that come after it, until the next edit or try_again().  All signals arrive on the
// thread that owns the queue.
#pragma once

#include "core/analysis/car_season.h"
#include "core/analysis/held_predictions.h"
#include "core/book/my_car.h"
#include "core/book/names.h"
#include "core/book/pairings.h"
#include "core/book/pictures.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/sessions.h"
#include "core/book/videos.h"
#include "core/car/names.h"
#include "core/workspace/book_connection.h"
#include "ui/bridge/job_queue.h"
#include "ui/models/season_list.h"

#include <QObject>
#include <QString>
#include <cstddef>
#include <deque>
#include <functional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::bridge {

class BookQueue : public QObject {
    Q_OBJECT

  public:
    using Book = workspace::BookConnection;
    using Work = std::function<base::Result<void>(Book&)>;

    // An empty name: there is no book.  Opens the file, or begins a book there with its folder.
    explicit BookQueue(std::string file, QObject* parent = nullptr);
    ~BookQueue() override; // after all that was asked for is in the book

    [[nodiscard]] bool usable() const { return usable_; } // until it turns out not to be
    [[nodiscard]] bool takes_edits() const { return usable_ && !read_only_; }
    void try_again();
    // Waits until all that was asked for was tried; so many edits still are not in the book.
    [[nodiscard]] std::size_t finish();

    void keep(const workspace::SessionToKeep& wanted);
    void keep_pairing(const workspace::PairingToKeep& wanted);
    void put_note(const workspace::Note& note); // an empty text removes it
    // Any other edit; only a refusal is told.
    void edit(Work work);
    void edit_names(Work work);   // changes what sessions are called, or whose car is mine
    void edit_tracks(Work work);  // changes what times the laps
    void edit_unasked(Work work); // which nobody asked for: a book that can only be read does without it

    // Of several only the newest is answered.
    void find(const book::Filter& filter);
    void find_season(models::SeasonOf of, const QString& name);
    // Long work on a thread of its own; find_season() of anything else calls it off.
    void find_car_season(const QString& car);
    void stop_car_season() { finding_season_.cancel(); }
    // As the book has them, then held against what was driven since, which is long work; of several the newest.
    void find_predictions();
    void find_names();
    void find_my_car(); // in its order among the edits
    // In its order among the edits; looked for beside `recording_file` too.  No answer where the session has none.
    void find_video(const workspace::SessionKey& session, const std::string& recording_file);
    void find_pairings();
    void find_files();
    void find_pictures(const std::vector<book::PairingId>& pairings, const std::vector<book::SessionId>& sessions);
    void find_removed();
    void open_again(); // after it was not usable

  Q_SIGNALS:
    void session_kept(const lapwright::workspace::SessionKey& key, const lapwright::workspace::KeptSession& kept);
    void pairing_kept(const lapwright::workspace::TwoLaps& laps, const QString& note);
    void found(const std::vector<lapwright::book::SessionSummary>& sessions);
    void season_found(const std::vector<lapwright::book::SeasonSession>& season);
    void car_season_told(const QString& stage, double part_done);
    void car_season_found(const lapwright::analysis::CarSeason& season);
    void car_season_refused(const lapwright::base::Error& error);
    void predictions_found(const lapwright::analysis::HeldPredictions& predictions);
    void predictions_held(const lapwright::analysis::HeldPredictions& predictions);
    void names_found(const lapwright::book::Names& names);
    void my_car_found(const std::optional<lapwright::car::Names>& mine);
    // Where its files lie now, and how it stands to the recording.
    void video_found(const lapwright::workspace::SessionKey& session, const std::vector<std::string>& paths,
                     const std::optional<lapwright::book::KeptStep>& step);
    void video_missing(const lapwright::workspace::SessionKey& session, const lapwright::base::Error& error);
    void pairings_found(const std::vector<lapwright::book::PairingSummary>& pairings);
    void files_found(const std::set<std::pair<std::string, std::uint64_t>>& files); // name and size of each session's
    void pictures_found(const lapwright::book::Pictures& pictures);
    void removed_found(const std::vector<lapwright::book::RemovedSession>& sessions);
    // Of a session that is or was open; after several edits of names once, of the last.
    void details_changed(const lapwright::workspace::SessionKey& key, const lapwright::book::SessionDetails& details);
    void tracks_changed();
    void changed();                                                     // by an edit of this window
    void refused(const lapwright::base::Error& error);                  // one edit
    void note_refused(const lapwright::workspace::SessionKey& session); // is not in the book
    void unusable(const lapwright::base::Error& error);                 // the whole book
    void opened_again();
    void opened_read_only(const QString& file);
    void waits(int edits, const lapwright::base::Error& reason); // are not in the book yet
    void caught_up();                                            // all that waited is

  private:
    using Answer = JobQueue::Answer;
    struct Done {
        base::Result<void> result;
        Answer answer; // of both outcomes
    };
    using Edit = std::function<Done(Book&)>;

    void add(Edit edit);
    [[nodiscard]] bool open_for_edits(); // on the edits' thread; tells when it cannot be, or only read
    void take_up();                      // on the edits' thread
    void tell(Answer answer);
    void tell_edit(const base::Result<void>& result);
    // Tells the answer by its signal, or the refusal.
    template <typename Value>
    void tell(const base::Result<Value>& answer, void (BookQueue::*signal)(const Value&)) {
        if (answer)
            Q_EMIT(this->*signal)(*answer);
        else
            Q_EMIT refused(answer.error());
    }
    template <typename Ask, typename Value>
    void ask(const JobGroup& group, Ask question, void (BookQueue::*signal)(const Value&)) {
        if (!usable_) return;
        question_jobs_.add(group, [this, question, signal](const base::Progress&) -> Answer {
            if (!questions_.open()) return {}; // the edits' thread says so
            return [this, signal, answer = question(questions_.book())] { tell(answer, signal); };
        });
    }

    bool usable_;
    bool read_only_ = false;
    int name_edits_ = 0; // that were asked for
    Book edits_;         // used by the thread of its jobs alone, as the next one
    Book questions_;
    Book season_questions_;
    std::deque<Edit> waiting_; // used by the edits' thread
    bool told_waiting_ = false;
    bool told_read_only_ = false;
    JobGroup finding_;
    JobGroup finding_season_;
    JobGroup holding_;
    JobQueue edit_jobs_;
    JobQueue question_jobs_;
    JobQueue season_jobs_;
};

} // namespace lapwright::bridge
