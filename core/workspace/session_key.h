// SPDX-License-Identifier: GPL-3.0-or-later
// Which session, and which of its laps: values by which both front ends know them.  A session is the bytes of its file:
// the same under every name of the file, and out of the book.
#pragma once

#include "core/analysis/analysis.h"
#include "core/book/entries.h"

#include <compare>
#include <optional>
#include <string>
#include <variant>

namespace lapwright::workspace {

using SessionPointer = std::shared_ptr<const analysis::Session>;

struct SessionKey {
    book::Checksum checksum{};

    auto operator<=>(const SessionKey&) const = default;
};

[[nodiscard]] inline SessionKey key_of(const analysis::Session& session) {
    return {session.source.checksum};
}

// From where a session can be read: the path of a file, or the book.
using Origin = std::variant<std::string, book::SessionId>;

enum class Side { a, b };

struct LapPick {
    SessionKey session;
    int lap = 0; // its number
    // Nobody chose this lap: a comparison takes the fastest clean one on the line of both, which may be another.
    bool fastest = false;

    // The same lap, however it came to be picked.
    friend bool operator==(const LapPick& a, const LapPick& b) { return a.session == b.session && a.lap == b.lap; }
};

// The laps that are A and B.
struct Picks {
    std::optional<LapPick> a = {};
    std::optional<LapPick> b = {};

    bool operator==(const Picks&) const = default;
    [[nodiscard]] bool complete() const { return a && b; }
    [[nodiscard]] const std::optional<LapPick>& of(Side side) const { return side == Side::a ? a : b; }
    [[nodiscard]] bool have(const SessionKey& key) const {
        return (a && a->session == key) || (b && b->session == key);
    }
};

// Two laps that are compared, by which their notes are found.
struct TwoLaps {
    SessionKey session_a;
    int lap_a = 0;
    SessionKey session_b;
    int lap_b = 0;

    auto operator<=>(const TwoLaps&) const = default;
};

[[nodiscard]] inline TwoLaps two_laps(const LapPick& a, const LapPick& b) {
    return {a.session, a.lap, b.session, b.lap};
}

} // namespace lapwright::workspace
