// SPDX-License-Identifier: GPL-3.0-or-later
// A book with what has to be remembered about the sessions that are open: which of the book's they are, and the uids of
// their notes, so that a note that was undone comes back as the same one.  Used by one thread.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/names.h"
#include "core/book/pairings.h"
#include "core/book/predictions.h"
#include "core/book/rename.h"
#include "core/book/tracks.h"
#include "core/workspace/notes.h"
#include "core/workspace/session_names.h"

#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace lapwright::workspace {

// A session that was opened.  What the book knows of it already stays, but for notes, which are newer.
struct SessionToKeep {
    Origin origin;
    SessionPointer session;
    std::string track = {}; // of the track file, where one was given
    car::SetupSheet setup = {};
    std::vector<Note> notes = {};
    bool read_anew = false; // the file means something else now: its samples take the place of those in the book
};

// What the book knows of a session.
struct KeptSession {
    std::vector<Note> notes;
    book::SessionDetails details;
};

struct PairingToKeep {
    TwoLaps laps;
    std::string sentence;
    std::string note; // newer than the one in the book; empty: none
};

// Another name for a driver, car or track; the number is the caller's, to take it back by.
struct Renaming {
    int number = 0;
    book::NameTable table{};
    std::string from;
    std::string to;
    bool unites = false; // the new name may be another's
};

class BookConnection {
  public:
    using Done = base::Result<void>;

    explicit BookConnection(std::string file) : file_(std::move(file)) {}

    // Opens it where that has not been done.
    [[nodiscard]] Done open();
    [[nodiscard]] book::Book& book() { return *book_; } // after open()
    [[nodiscard]] const std::string& file() const { return file_; }
    [[nodiscard]] bool read_only() const { return book_ && book_->read_only(); }

    // Of a book that can only be read: what it knows, where it knows the session.
    [[nodiscard]] base::Result<std::optional<KeptSession>> look_up(const SessionToKeep& wanted);
    [[nodiscard]] base::Result<KeptSession> keep(const SessionToKeep& wanted);
    [[nodiscard]] Done put_note(const Note& note); // an empty text removes it
    [[nodiscard]] Done put_setup(const SessionKey& key, const car::SetupSheet& sheet);
    [[nodiscard]] Done put_names(const SessionKey& key, const SessionNames& names); // all of them, empty ones too
    // What a person says of its laps, and how they count with it.
    [[nodiscard]] Done judge_laps(const analysis::Session& session);
    // The note that is in the book afterwards.
    [[nodiscard]] base::Result<std::string> keep_pairing(const PairingToKeep& wanted);
    [[nodiscard]] Done put_pairing_note(const TwoLaps& laps, const std::string& note);

    // of: whose car and driver; there: on whose track.
    [[nodiscard]] Done keep_prediction(const SessionKey& of, const SessionKey& there, book::Prediction prediction);

    // What was put in this run is not written again.
    [[nodiscard]] Done put_track(const track::TrackRecord& record, const std::optional<book::KeptLine>& line);
    // Of a track that the book knows without its line.
    [[nodiscard]] Done put_missing_line(const std::string& track, const book::KeptLine& line);
    [[nodiscard]] Done put_figures(const SessionKey& key, const std::vector<book::KeptFigure>& figures);
    // What goes or is renamed is remembered under the caller's number; what was refused is not taken back.
    [[nodiscard]] Done forget_track(int number, const std::string& name);
    [[nodiscard]] Done change_track(int number, const track::TrackRecord& record); // as a person edited it
    [[nodiscard]] Done bring_back_track(int number, const std::string& name);
    [[nodiscard]] Done rename(const Renaming& wanted);
    [[nodiscard]] Done undo_rename(int number);
    [[nodiscard]] Done take_pairing(int number, book::PairingId id);
    [[nodiscard]] Done bring_back_pairing(int number);
    // Of the sessions that are or were open.
    [[nodiscard]] std::map<SessionKey, book::SessionDetails> details();

  private:
    struct OwnPairing {
        book::PairingId id{};
        std::string note_uid; // of the note on it; empty: none
    };
    struct OwnTaken {
        book::PairingId id{}; // that it has now
        book::TakenPairing pairing;
    };
    struct PutTrack {
        std::string record;
        bool with_line = false;
    };
    using AboutWhat = std::tuple<SessionKey, std::optional<int>, std::string>; // session, lap, segment

    [[nodiscard]] static AboutWhat about_what(const NoteAbout& about);
    [[nodiscard]] base::Result<book::SessionId> id_of(const SessionKey& key) const;
    [[nodiscard]] base::Result<book::SessionId> put(const SessionToKeep& wanted);
    [[nodiscard]] base::Result<std::vector<Note>> read_notes(book::SessionId id, const SessionKey& key);
    [[nodiscard]] base::Result<KeptSession> know(book::SessionId id, const SessionKey& key);

    std::string file_;
    std::optional<book::Book> book_;
    std::map<SessionKey, book::SessionId> sessions_;
    // A book that was merged with another may have several notes about one thing, which are one here.
    std::map<AboutWhat, std::vector<std::string>> note_uids_;
    std::map<TwoLaps, OwnPairing> pairings_;
    std::map<std::string, PutTrack> tracks_put_;
    std::map<int, book::TrackParts> forgotten_;
    std::map<int, book::Renamed> renamed_;
    std::map<int, OwnTaken> taken_;
};

} // namespace lapwright::workspace
