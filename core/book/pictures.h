// SPDX-License-Identifier: GPL-3.0-or-later
// Small pictures of what the book lists: the gap over the lap of two laps that were compared (seconds, evenly over the
// lap, positive: A is ahead), and the way around the track that a session drove (metres east and north of any place).
// They are kept as 32-bit floats (IEEE 754, the lowest byte first); one that cannot be read is as good as none.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace lapwright::book {

using GapCurve = std::vector<float>;
using Outline = std::vector<std::pair<float, float>>;

// Of two laps, whose sessions are told by their sources; nothing is put where the book has not both.
struct ComparedLaps {
    Checksum source_a;
    int lap_a = 0;
    Checksum source_b;
    int lap_b = 0;
};
[[nodiscard]] base::Result<void> put_gap_curve(Book& book, const ComparedLaps& laps, const GapCurve& gaps_s);
[[nodiscard]] base::Result<void> put_outline(Book& book, SessionId id, const Outline& places_m);
[[nodiscard]] base::Result<bool> has_outline(Book& book, SessionId id);

struct Pictures {
    std::map<PairingId, GapCurve> gaps;
    std::map<SessionId, Outline> outlines;
};
// Those that there are.
[[nodiscard]] base::Result<Pictures> pictures(Book& book, const std::vector<PairingId>& pairings,
                                              const std::vector<SessionId>& sessions);

} // namespace lapwright::book
