// SPDX-License-Identifier: GPL-3.0-or-later
// A kept pairing that is taken out of the book, with what it takes to bring it back.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <vector>

namespace lapwright::book {

struct TakenPairing {
    Pairing pairing;
    std::vector<Note> notes;
};

[[nodiscard]] base::Result<TakenPairing> take_pairing(Book& book, PairingId id);
// Under another id; its notes are the same ones.
[[nodiscard]] base::Result<PairingId> bring_back_pairing(Book& book, const TakenPairing& taken);

} // namespace lapwright::book
