// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/with_words.h"

#include <utility>

namespace lapwright::analysis {

std::shared_ptr<const Session> with_words(const std::shared_ptr<const Session>& session,
                                          std::vector<lap::JudgedByHand> words) {
    if (session->by_hand == words) return session;
    auto judged = std::make_shared<Session>(*session);
    if (session->by_hand.empty()) judged->laps_by_program = session->laps;
    judged->laps = lap::judged_by_hand(judged->laps_by_program, words);
    judged->by_hand = std::move(words);
    return judged;
}

} // namespace lapwright::analysis
