// SPDX-License-Identifier: GPL-3.0-or-later
// A book with what has to be remembered about the window's sessions: which of the book's they are, and the uids of
// their notes, so that a note that was undone comes back as the same one.  Used by one thread.
#pragma once

#include "core/base/error.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/book/rename.h"
#include "core/book/taken_pairing.h"
#include "ui/bridge/book_keeper.h"

#include <QString>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::bridge {

class BookDesk {
  public:
    explicit BookDesk(std::string file) : file_(std::move(file)) {}

    // Opens it where that has not been done; what is wrong, or nothing.
    [[nodiscard]] std::optional<base::Error> open();
    [[nodiscard]] book::Book* book() { return book_ ? &*book_ : nullptr; }

    [[nodiscard]] const std::string& file() const { return file_; }
    [[nodiscard]] bool read_only() const { return book_ && book_->read_only(); }

    // Of a book that can only be read: what it knows, where it knows the session.
    [[nodiscard]] base::Result<std::optional<KeptSession>> look_up(const SessionToKeep& wanted);
    [[nodiscard]] base::Result<KeptSession> keep(const SessionToKeep& wanted);
    [[nodiscard]] std::optional<base::Error> put_note(const models::Note& note);
    [[nodiscard]] std::optional<base::Error> put_setup(const QString& path, const car::SetupSheet& sheet);
    // The note that is in the book afterwards.
    [[nodiscard]] base::Result<QString> keep_pairing(const PairingToKeep& wanted);
    [[nodiscard]] std::optional<base::Error> put_pairing_note(const QString& name, const QString& note);

    // What was put in this run is not written again.
    [[nodiscard]] std::optional<base::Error> put_track(const track::TrackRecord& record,
                                                       const std::optional<book::KeptLine>& line);
    // Of a track that the book knows without its line.
    [[nodiscard]] std::optional<base::Error> put_missing_line(const std::string& track, const book::KeptLine& line);
    [[nodiscard]] std::optional<base::Error> put_figures(const QString& path,
                                                         const std::vector<book::KeptFigure>& figures);
    [[nodiscard]] std::optional<base::Error> forget_track(int number, const std::string& name);
    [[nodiscard]] std::optional<base::Error> bring_back_track(int number, const std::string& name);
    [[nodiscard]] std::optional<base::Error> rename(const Renaming& wanted);
    [[nodiscard]] std::optional<base::Error> undo_rename(int number); // one that was refused: nothing
    [[nodiscard]] std::optional<base::Error> take_pairing(int number, book::PairingId id);
    [[nodiscard]] std::optional<base::Error> bring_back_pairing(int number);
    [[nodiscard]] base::Result<std::optional<car::Names>> my_car();
    [[nodiscard]] std::optional<base::Error> put_my_car(const std::optional<car::Names>& mine);
    // Of the window's sessions, by their paths.
    [[nodiscard]] base::Result<std::map<QString, book::SessionDetails>> details();

  private:
    struct KeptPairing {
        book::PairingId id{};
        std::string note_uid;
    };

    struct PutTrack {
        std::string record;
        bool with_line = false;
    };

    [[nodiscard]] base::Result<book::SessionId> put(const SessionToKeep& wanted);
    [[nodiscard]] base::Result<book::SessionId> id_of(const QString& path) const;
    // Of a session that this run has not opened, too: by its place in the book or its file's checksum.
    [[nodiscard]] base::Result<std::optional<book::SessionId>> find_session(const QString& path);
    [[nodiscard]] base::Result<KeptSession> know(book::SessionId id, const QString& path);
    [[nodiscard]] base::Result<std::vector<models::Note>> read_notes(book::SessionId id, const QString& path);

    std::string file_;
    std::optional<book::Book> book_;
    std::map<QString, book::SessionId> sessions_; // by the path that the window knows
    // By what they are about; a book that was merged with another may have several, which are one note here.
    std::map<QString, std::vector<std::string>> note_uids_;
    std::map<QString, KeptPairing> pairings_; // by name
    std::map<std::string, PutTrack> tracks_put_;
    std::map<int, book::Renamed> renamed_; // by number
    std::map<int, book::TrackParts> forgotten_;
    struct Taken {
        book::PairingId id{}; // as it was last
        book::TakenPairing pairing;
    };
    std::map<int, Taken> taken_;
};

} // namespace lapwright::bridge
