// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/judged_by_hand.h"

#include "core/base/translation.h"

#include <algorithm>
#include <cmath>
#include <ranges>

namespace lapwright::lap {
namespace {

using base::said;

bool is_on(const JudgedByHand& word, const Lap& lap) {
    return lap.start_s <= word.at_s && word.at_s < lap.end_s;
}

std::string words_of(const JudgedByHand& word) {
    if (word.clean) return {};
    return word.reason.empty() ? said("set aside by hand") : said("set aside by hand: %1", {word.reason});
}

} // namespace

double middle_s(const Lap& lap) {
    return 0.5 * (lap.start_s + lap.end_s);
}

const JudgedByHand* word_on(const Lap& lap, std::span<const JudgedByHand> words) {
    for (const JudgedByHand& word : std::views::reverse(words))
        if (is_on(word, lap)) return &word;
    return nullptr;
}

std::vector<JudgedByHand> with_word(std::vector<JudgedByHand> words, const Lap& lap,
                                    const std::optional<JudgedByHand>& word) {
    std::erase_if(words, [&](const JudgedByHand& before) { return is_on(before, lap); });
    if (word) words.push_back({std::round(1e6 * middle_s(lap)) / 1e6, word->clean, word->reason});
    return words;
}

std::vector<Lap> judged_by_hand(std::vector<Lap> laps, std::span<const JudgedByHand> words) {
    for (Lap& lap : laps) {
        const JudgedByHand* word = lap.kind == LapKind::flying ? word_on(lap, words) : nullptr;
        if (!word) continue;
        lap.clean = word->clean;
        lap.why_not_clean = words_of(*word);
    }
    return laps;
}

} // namespace lapwright::lap
