// SPDX-License-Identifier: GPL-3.0-or-later
// What the whole run produces: immutable values that the window shows and the command line prints.  Nobody behind this
// header computes anything of the trade again.
#pragma once

#include "core/base/error.h"
#include "core/book/entries.h"
#include "core/comparison/comparison.h"
#include "core/comparison/lap_spread.h"
#include "core/comparison/repeatability.h"
#include "core/findings/headline.h"
#include "core/import/channels/trust.h"
#include "core/lap/judged_by_hand.h"
#include "core/lap/lap.h"
#include "core/motion/motion_estimate.h"
#include "core/recording/recording.h"
#include "core/track/track.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

// One file, understood: its motion and its laps.  Laps found with the session's own gate (file's lap column, beacon,
// track record, or proposed).  Made by understand() alone: recording and trust are always there; where no lap was found
// `why_no_laps` says why, `laps` is empty, `gate` means nothing, and `motion` is null where nothing could be estimated.
struct Session {
    std::shared_ptr<const recording::Recording> recording;
    book::Source source = {}; // the file that it came from, where someone keeps sessions apart; else empty
    std::shared_ptr<const motion::MotionEstimate> motion;
    std::optional<base::Error> why_no_laps;
    track::Gate gate;        // in the motion's frame
    std::string gate_origin; // in words: "lap column of the file"
    // Of the tracks that were known already the one that was driven; the gate is its gate.
    std::optional<track::TrackRecord> known_track;
    std::vector<lap::Lap> laps;
    std::vector<lap::JudgedByHand> by_hand = {}; // what a person says of them, see with_words.h
    std::vector<lap::Lap> laps_by_program = {};  // as they were judged without that; empty where nothing was said
    std::vector<recording::Warning> warnings;    // of the stages behind the import
    std::string conditions = {};                 // as a person said: "dry, light wind"
    import::Trust trust;                         // how far the recording can be trusted

    [[nodiscard]] const lap::Lap* lap(int number) const;
    // The fastest clean lap, else the fastest flying one, else null.
    [[nodiscard]] const lap::Lap* fastest() const;
    [[nodiscard]] std::string title() const; // driver and car where known, else the file's name
};

// One half of a pairing.
struct Side {
    std::shared_ptr<const Session> session;
    lap::Lap lap; // timed with the pairing's gate
    lap::LapEnsemble trace;
    std::vector<lap::Lap> clean_laps;        // of the session, timed with the pairing's gate
    std::vector<lap::LapTrace> clean_traces; // as many, without channels
};

// "1:29.919 by its own line": the lap's time as the session alone has it, where it differs by a millisecond or more.  A
// session by itself is timed square to the line of its own laps, a pairing square to the line of both on one map, and
// with another gate where only the other file knows it.  Empty where they are the same, or the session has no such lap.
[[nodiscard]] std::string own_time_text(const Side& side);

// Two laps compared, with everything that the pages show.
struct Pairing {
    track::Track track;
    double length_sd = 0.0; // share by which the track's length, and with it all speeds, may be off
    Side a;
    Side b;
    comparison::Comparison comparison;
    std::vector<comparison::Repeatability> repeatability; // one a segment
    comparison::LapSpread spread_a;                       // of the clean laps
    comparison::LapSpread spread_b;
    comparison::IdealLap ideal_a;
    comparison::IdealLap ideal_b;
    findings::Headline headline;
    std::vector<recording::Warning> warnings;
};

} // namespace lapwright::analysis
