// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions that are open, which of their laps are A and B, and which are to be seen behind these.
#pragma once

#include "core/lap/judged_by_hand.h"
#include "core/workspace/session_key.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lapwright::workspace {

class OpenSessions {
  public:
    struct Entry {
        SessionKey key;
        std::vector<Origin> origins; // all from which it was read; the first is where it is read anew
        SessionPointer session;

        [[nodiscard]] const Origin& origin() const { return origins.front(); }
        [[nodiscard]] const std::string* file() const { return std::get_if<std::string>(&origins.front()); }
        [[nodiscard]] const std::string& file_name() const { return session->source.file_name; }
        [[nodiscard]] bool came_from(const Origin& origin) const;
        bool operator==(const Entry&) const = default;
    };

    // What is being read, in the order in which it shall stand, whichever is ready first.
    void expect(const std::vector<Origin>& origins);
    // One that is open already, from wherever, takes its old place, and so does a file that has other bytes than
    // before; both keep picks that still exist.  It is read anew from the file that came last, else from the book. What
    // a person said of its laps in this run stays said.
    void add(const Origin& origin, SessionPointer session);
    void rename(const SessionKey& key, SessionPointer session); // the same under other names
    // What a person says of its laps, all of it.  A lap that nobody chose gives way to the one that is fastest now.
    void judge(const SessionKey& key, const std::vector<lap::JudgedByHand>& words);
    void remove(SessionKey key);

    [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }
    [[nodiscard]] const Entry* find(const SessionKey& key) const; // null when it is not open
    [[nodiscard]] const Entry* find(const Origin& origin) const;
    [[nodiscard]] SessionPointer session(const SessionKey& key) const;
    // The driven order, by the clock of their files where all have one.
    [[nodiscard]] std::vector<Entry> as_driven() const;

    void pick(Side side, const LapPick& pick); // a lap that does not exist is not picked
    void pick_fastest(Side side, const SessionKey& key);
    void swap();
    void put_picks(const Picks& picks); // both at once
    // Laps to be seen behind A and B, in the order in which they were chosen.
    static constexpr std::size_t most_further = 4;
    void put_further(std::vector<LapPick> laps);
    // With this lap, or without it where it is among them; nothing where there are most_further already.
    [[nodiscard]] std::optional<std::vector<LapPick>> further_turned(const LapPick& lap) const;
    [[nodiscard]] const std::vector<LapPick>& further() const { return further_; }
    // The laps that a comparison took where nobody chose one.
    void take_fastest(int lap_a, int lap_b);
    // Where a side is free: the fastest lap of the first session that the other side does not use.
    void pick_defaults();
    [[nodiscard]] const Picks& picks() const { return picks_; }

  private:
    [[nodiscard]] bool exists(const LapPick& pick) const;
    void stand_as_expected();
    void drop_lost_picks();

    std::vector<Origin> order_;
    std::vector<Entry> entries_;
    Picks picks_;
    std::vector<LapPick> further_;
};

} // namespace lapwright::workspace
