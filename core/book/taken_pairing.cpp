// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/taken_pairing.h"

#include "core/book/notes.h"
#include "core/book/pairings.h"

#include <utility>

namespace lapwright::book {

using base::Result;

Result<TakenPairing> take_pairing(Book& book, PairingId id) {
    auto pairing = read_pairing(book, id);
    if (!pairing) return pairing.error();
    auto notes = notes_of_pairing(book, id);
    if (!notes) return notes.error();
    if (auto problem = remove_pairing(book, id)) return *problem;
    return TakenPairing{std::move(pairing).value(), std::move(notes).value()};
}

Result<PairingId> bring_back_pairing(Book& book, const TakenPairing& taken) {
    const auto id = put_pairing(book, taken.pairing);
    if (!id) return id.error();
    for (Note note : taken.notes) {
        note.about.pairing = *id;
        if (const auto put = put_note(book, note); !put) return put.error();
    }
    return *id;
}

} // namespace lapwright::book
