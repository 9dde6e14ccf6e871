// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/worlds/score_world.h"

#include "core/base/error.h"

namespace worlds {

Score score_world(const World& world, const Outcome& outcome) {
    Score score;
    score.seed = world.seed;
    score.in_words = world.in_words;
    for (const auto& [entry, session] :
         {std::pair(&world.a, &outcome.session_a), std::pair(&world.b, &outcome.session_b)}) {
        if (*session)
            score_session(*entry, **session, score);
        else
            score.breaches.push_back({"a file is refused", lapwright::base::one_line(*outcome.refusal)});
    }
    if (!outcome.pairing || !outcome.swapped) {
        if (outcome.refusal) score.refusal = lapwright::base::one_line(*outcome.refusal);
        if (any_clean_lap(world.a) && any_clean_lap(world.b))
            score.breaches.push_back({"no comparison", score.refusal});
        return score;
    }
    score.compared = true;
    score.headline = outcome.pairing->headline.verdict + ". " + outcome.pairing->headline.sentence;
    score_pairing(world, *outcome.pairing, score);
    score_symmetry(outcome, score);
    score_causes(world, outcome, score);
    score_words(world, outcome, score);
    return score;
}

} // namespace worlds
