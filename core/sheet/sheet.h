// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet as a document: what it says, in words and shown units, not how it is painted.  One page for the
// wall and for the friend.
#pragma once

#include "core/findings/headline.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::sheet {

// Colour and letter of whoever a line favours.
using findings::Favours;

inline constexpr std::size_t max_findings = 3;

struct Finding {
    std::string claim;    // one sentence
    std::string evidence; // the figures behind it
    std::string try_next; // may be empty
    std::string worth;    // "A 0.44 ±0.03"
    Favours favours = Favours::neither;
    double start_m = 0.0; // the place on the lap, to be marked in the plot
    double end_m = 0.0;
};

// One row of the segment table; the cells are in the order of Sheet::columns.
struct Row {
    std::vector<std::string> cells = {};
    double gain_s = 0.0;
    bool corner = false;
    Favours favours = Favours::neither; // beyond its error
    bool matters = false;               // beyond its error and more than a little
};

// The segment that the headline names.
struct DecidingPlace {
    std::string name;
    double start_m = 0.0;
    double end_m = 0.0;
};

// Curves in shown units on the grid of the reference line (metres).
struct Plot {
    std::vector<double> distance_m;
    std::vector<double> speed_a;
    std::vector<double> speed_b;
    std::vector<double> gap_s;
    std::vector<double> low_s; // 95 % band; empty without error bars
    std::vector<double> high_s;
    std::string speed_unit;
    std::optional<DecidingPlace> deciding;
    std::vector<std::string> segment_names = {}; // as many as distances: where each lies; empty: not known
};

// The reference line from above, from the gate on and around; empty where there is none.  All of one length.
struct Map {
    std::vector<double> distance_m;
    std::vector<double> east_m;
    std::vector<double> north_m;
};

struct Pair {
    std::string name;
    std::string text;
    Favours favours = Favours::neither;
};

// One driver's frame: the bytes of a JPEG file, none where there is no picture of that moment; the words say which
// moment it is, or why there is none.
struct Still {
    std::string jpeg;
    int width = 0; // pixels
    int height = 0;
    std::string words;
};

// Both drivers at the same moment of a corner, each at the own place.
struct StillPair {
    std::string moment; // "Lantern, turn-in"
    Still a;
    Still b;
};

inline constexpr std::size_t max_still_pairs = 3;

struct Sheet {
    std::string headline;
    std::string sentence;
    std::string place; // track, length, date
    std::string side_a;
    std::string side_b;
    Map map;
    Plot plot;
    std::vector<Finding> findings; // at most max_findings
    std::vector<std::string> columns;
    std::vector<Row> corners;
    std::vector<Row> segments;              // all of them, for a second page
    std::vector<Pair> driving;              // the deciding segments that no finding is about, and how they were driven
    std::vector<std::string> segment_words; // how each of `segments` was driven
    std::string file_name;                  // proposed, without an ending
    std::vector<Pair> causes;
    std::vector<Pair> setup;
    std::vector<std::string> notes;
    std::vector<std::string> remarks; // what to keep in mind: warnings of the pairing
    std::vector<StillPair> stills;    // at most max_still_pairs; then they have a page of their own
    std::string cautions;
    std::string made_from; // files, laps, settings, version
};

} // namespace lapwright::sheet
