// SPDX-License-Identifier: GPL-3.0-or-later
// A person's word on a lap: it counts, or it is set aside, with the reason.  It stands above the program's own
// judgement (find_laps.h) and is tied to a moment of the recording, so that another timing line or another count of the
// laps does not move it to another lap.
#pragma once

#include "core/lap/lap.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::lap {

struct JudgedByHand {
    double at_s = 0.0; // of the recording: half way through the lap that was meant, to the microsecond (text keeps it)
    bool clean = false;
    std::string reason = {}; // plain text, one line; empty: none was given

    bool operator==(const JudgedByHand&) const = default;
};

[[nodiscard]] double middle_s(const Lap& lap);

// The word on this lap; null: there is none.  Of several the last.
[[nodiscard]] const JudgedByHand* word_on(const Lap& lap, std::span<const JudgedByHand> words);

// The same words with this one on the lap in the place of what was said of it before; nothing: it is taken back.
[[nodiscard]] std::vector<JudgedByHand> with_word(std::vector<JudgedByHand> words, const Lap& lap,
                                                  const std::optional<JudgedByHand>& word);

// The same laps, flying ones as the words have them.  A lap that does not fly is not judged.
[[nodiscard]] std::vector<Lap> judged_by_hand(std::vector<Lap> laps, std::span<const JudgedByHand> words);

} // namespace lapwright::lap
