// SPDX-License-Identifier: GPL-3.0-or-later
// What the page of a kept pairing shows, as bytes beside the pairing, for those who know what it was made from.  They
// are made anew from the samples at any time: no export, merge or salvage takes them along.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::book {

// By which a pairing is found.
struct TwoLaps {
    SessionId session_a{};
    int lap_a = 0;
    SessionId session_b{};
    int lap_b = 0;
};

// Another value when the book knows other samples of the session, or other names for it, than before.  Error
// book_not_usable where there is no such session.
[[nodiscard]] base::Result<Checksum> mark_of_session(Book& book, SessionId id);

// Takes the place of an older one; nothing happens where these laps are no kept pairing.
[[nodiscard]] std::optional<base::Error> put_view(Book& book, const TwoLaps& laps, const Checksum& made_from,
                                                  std::string_view bytes);
// Nothing where there is none, it was made from something else, or it is damaged.
[[nodiscard]] std::optional<std::string> read_view(Book& book, const TwoLaps& laps, const Checksum& made_from);

} // namespace lapwright::book
