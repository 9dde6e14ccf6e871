// SPDX-License-Identifier: GPL-3.0-or-later
// Pairings that are kept.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <vector>

namespace lapwright::book {

// Puts it in, or renews title and sentence of the one with the same two laps.
[[nodiscard]] base::Result<PairingId> put_pairing(Book& book, const Pairing& pairing);
// Its notes go with it.
[[nodiscard]] base::Result<void> remove_pairing(Book& book, PairingId id);
// The newest first; without those of removed sessions.
[[nodiscard]] base::Result<std::vector<KeptPairing>> pairings(Book& book);
[[nodiscard]] base::Result<Pairing> read_pairing(Book& book, PairingId id);

// One row of a list of pairings.
struct PairingSummary {
    KeptPairing kept;
    SessionSummary a;
    SessionSummary b;
};
[[nodiscard]] base::Result<std::vector<PairingSummary>> pairing_list(Book& book); // the newest first

// One that is taken out of the book, with what it takes to bring it back.
struct TakenPairing {
    Pairing pairing;
    std::vector<Note> notes;
};

[[nodiscard]] base::Result<TakenPairing> take_pairing(Book& book, PairingId id);
// Under another id; its notes are the same ones.
[[nodiscard]] base::Result<PairingId> bring_back_pairing(Book& book, const TakenPairing& taken);

} // namespace lapwright::book
