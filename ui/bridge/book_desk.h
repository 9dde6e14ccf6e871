// SPDX-License-Identifier: GPL-3.0-or-later
// A book with what has to be remembered about the window's sessions: which of the book's they are, and the uids of
// their notes, so that a note that was undone comes back as the same one.  Used by one thread.
#pragma once

#include "core/base/error.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
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

    [[nodiscard]] base::Result<KeptSession> keep(const SessionToKeep& wanted);
    [[nodiscard]] std::optional<base::Error> put_note(const models::Note& note);
    [[nodiscard]] std::optional<base::Error> put_setup(const QString& path, const car::SetupSheet& sheet);
    // The note that is in the book afterwards.
    [[nodiscard]] base::Result<QString> keep_pairing(const PairingToKeep& wanted);
    [[nodiscard]] std::optional<base::Error> put_pairing_note(const QString& name, const QString& note);

  private:
    struct KeptPairing {
        book::PairingId id{};
        std::string note_uid;
    };

    [[nodiscard]] base::Result<book::SessionId> id_of(const SessionToKeep& wanted);
    [[nodiscard]] base::Result<book::SessionId> id_of(const QString& path) const;
    [[nodiscard]] std::optional<base::Error> follow(book::SessionId id, const SessionToKeep& wanted);
    [[nodiscard]] base::Result<std::vector<models::Note>> read_notes(book::SessionId id, const QString& path);

    std::string file_;
    std::optional<book::Book> book_;
    std::map<QString, book::SessionId> sessions_; // by the path that the window knows
    // By what they are about; a book that was merged with another may have several, which are one note here.
    std::map<QString, std::vector<std::string>> note_uids_;
    std::map<QString, KeptPairing> pairings_; // by name
};

} // namespace lapwright::bridge
