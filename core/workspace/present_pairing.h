// SPDX-License-Identifier: GPL-3.0-or-later
// The two laps that a person has before them, from the files that are asked for to the explanation of the gap, as a
// state machine.  It does no work itself: it says what is to be read, compared or explained next, and is told what came
// out; what comes too late, for laps that are no longer wanted, is passed over.
//
//     nothing_chosen -> reading -> comparing -> compared -> explaining -> explained
//                          |           |                        |
//                          +-----------+------> failed <--------+
//
// While other laps are read and compared the last pairing stays what is shown.
#pragma once

#include "core/car/setup_sheet.h"
#include "core/causes/explanation.h"
#include "core/workspace/compared.h"
#include "core/workspace/open_sessions.h"

#include <array>
#include <memory>
#include <optional>
#include <vector>

namespace lapwright::workspace {

using ExplanationPointer = std::shared_ptr<const causes::Explanation>;

class PresentPairing {
  public:
    enum class State { nothing_chosen, reading, comparing, compared, explaining, explained, failed };

    // A lap of what is read from there; no number: the fastest.
    struct WantedLap {
        Origin origin;
        std::optional<int> lap = {};
    };
    // What is to be done when all files have come.
    struct Plan {
        std::array<std::optional<WantedLap>, 2> laps = {}; // to be A and B, where they exist
        bool compare = false;
    };

    // Files of an earlier call may still be on their way: they are awaited too, for the newer plan.
    void read(const std::vector<Origin>& origins, const Plan& plan);
    void await(const Origin& origin) { awaited_.push_back(origin); } // for the plan that there is
    // One was read or refused.
    void came(const Origin& origin);
    [[nodiscard]] bool reading() const { return !awaited_.empty(); }
    // When none is awaited: picks what was planned, then what is fastest.  Whether these laps are to be compared.
    [[nodiscard]] bool fulfil(OpenSessions& sessions);

    // Two laps are on their way to be compared.
    void compare(const Picks& picks);
    // What came of it: from now on it is shown.  Where nobody chose a lap, the one that it took is picked.
    void take(const ComparedPointer& compared, OpenSessions& sessions);
    // What is shown has these laps the other way round.
    [[nodiscard]] bool shows_swapped(const Picks& picks) const {
        return shown_.complete() && shown_ == Picks{picks.b, picks.a};
    }
    void refuse(); // the comparison
    // What is shown of this session no longer holds: it is compared again when it is looked at.
    void outdate(const SessionKey& key);
    [[nodiscard]] bool comes_with(const SessionKey& key) const { return comparing_ && wanted_.have(key); }
    [[nodiscard]] bool shows(const Picks& picks) const { return shown_ == picks; }
    [[nodiscard]] const Picks& shown() const { return shown_; } // none when it is to be compared again

    // Whether the explanation of what is shown is to be made: not so when it is there, or on its way.
    [[nodiscard]] bool want_explanation();
    [[nodiscard]] bool take(const ExplanationPointer& explanation); // false: nobody waits for it any more
    [[nodiscard]] bool refuse_explanation();                        // the same
    void forget_explanation();                                      // a setup has changed
    // All that is on its way; whether an explanation was.
    [[nodiscard]] bool call_off();

    [[nodiscard]] State state() const;
    [[nodiscard]] const ComparedPointer& compared() const { return compared_; } // null: there is none
    [[nodiscard]] const ExplanationPointer& explanation() const { return explanation_; }
    [[nodiscard]] const TwoLaps& laps() const { return laps_; } // of what is shown

  private:
    std::vector<Origin> awaited_;
    Plan plan_;
    bool comparing_ = false;
    Picks wanted_; // being compared
    Picks shown_;  // empty when the shown laps are to be compared again
    TwoLaps laps_;
    ComparedPointer compared_;
    bool explaining_ = false;
    ExplanationPointer explanation_;
    bool failed_ = false; // the last that was wanted
};

} // namespace lapwright::workspace
