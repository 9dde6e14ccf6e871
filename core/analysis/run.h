// SPDX-License-Identifier: GPL-3.0-or-later
// The stages in their order: file -> recording -> motion -> laps, and two sessions -> pairing.  The only place that
// knows the whole way.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/car/setup_sheet.h"
#include "core/import/formats/import.h"
#include "core/motion/estimate_motion.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

struct SessionOptions {
    import::Options import;
    motion::Options motion;
    car::SetupSheet setup;                   // of the file's session: names its driver and car before the file does
    std::optional<track::TrackRecord> track; // its gate times the laps
    // Without it: tracks that are known already, from which the one that was driven is taken (see known_track.h).
    std::vector<track::TrackRecord> known_tracks;
};

struct PairingOptions {
    std::optional<int> lap_a; // lap numbers; nothing: the fastest clean lap
    std::optional<int> lap_b;
    std::optional<track::TrackRecord> track; // none: the known one of both sessions, else their own gates
    double step_m = 1.0;                     // grid of the traces, 0.2..20 m
};

// An Error only where the file cannot be read or the work was called off; a recording without laps is a Session.
[[nodiscard]] base::Result<std::shared_ptr<const Session>>
load_session(const std::string& path, const SessionOptions& options = {}, const base::Progress& progress = {});

// From a recording that is already in memory (the book's, or a test's).
[[nodiscard]] base::Result<std::shared_ptr<const Session>>
understand(recording::Recording recording, const SessionOptions& options = {}, const base::Progress& progress = {});

// A and B may be the same session with two laps.
[[nodiscard]] base::Result<std::shared_ptr<const Pairing>> compare(std::shared_ptr<const Session> a,
                                                                   std::shared_ptr<const Session> b,
                                                                   const PairingOptions& options = {},
                                                                   const base::Progress& progress = {});

// The same two laps the other way round, as compare() would have them but for the order of the warnings: without
// placing both sessions again.
[[nodiscard]] std::shared_ptr<const Pairing> swapped(const Pairing& pairing);

} // namespace lapwright::analysis
