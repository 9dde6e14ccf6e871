// SPDX-License-Identifier: GPL-3.0-or-later
// What came out of a world against its truth: rules that hold in every world, and stated intervals that hold the truth
// as often as they say.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "tests/worlds/run_world.h"

namespace worlds {

// One stated 95 % interval.
struct Interval {
    std::string kind;        // "lap time", "gap", "drag cause" …
    std::string of;          // the kind of recording: "positions and speed", "positions alone", "no positions"
    double error = 0.0;      // stated value less truth
    double half_width = 0.0; // of the interval
    bool inside = false;
};

// A rule that was broken.
struct Breach {
    std::string rule;
    std::string words;
};

struct Score {
    std::uint64_t seed = 0;
    std::string in_words;
    bool compared = false;
    std::vector<Interval> intervals;
    std::vector<Breach> breaches;
    std::map<std::string, std::size_t> untold; // kinds of figure of which the program said that it cannot tell
    std::string headline;
    std::string refusal; // why there is no comparison
};

[[nodiscard]] Score score_world(const World& world, const Outcome& outcome);

// The parts of it.
void score_session(const Entry& entry, const lapwright::analysis::Session& session, Score& score);
void score_pairing(const World& world, const lapwright::analysis::Pairing& pairing, Score& score);
void score_symmetry(const Outcome& outcome, Score& score);
void score_causes(const World& world, const Outcome& outcome, Score& score);
void score_words(const World& world, const Outcome& outcome, Score& score);

// The true fastest lap that nothing spoiled, from the timing line at that true station; nothing where there is none.
[[nodiscard]] std::optional<double> fastest_clean_s(const Entry& entry, double station_m);
[[nodiscard]] bool any_clean_lap(const Entry& entry);

[[nodiscard]] std::string kind_of(const LoggerPlan& logger);

} // namespace worlds
