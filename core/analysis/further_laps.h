// SPDX-License-Identifier: GPL-3.0-or-later
// Laps beside a pairing's two: of any session that drove the same track, each against A.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/comparison/comparison.h"

#include <memory>
#include <optional>
#include <vector>

namespace lapwright::analysis {

struct FurtherWanted {
    std::shared_ptr<const Session> session;
    std::optional<int> lap; // of the session's own count; nothing: the fastest clean one

    bool operator==(const FurtherWanted&) const = default;
};

// One lap, or why it cannot be laid beside the pairing.
struct FurtherLap {
    FurtherWanted wanted;
    std::optional<base::Error> refused; // then nothing of what follows
    lap::Lap lap;
    lap::LapTrace trace;                     // over the pairing's distance
    comparison::GapTrace gap;                // to A over the same distance: positive where A is ahead
    comparison::Figure gap_at_end_s;         // its lap time less A's
    std::vector<comparison::Figure> gains_s; // one a segment of the pairing: positive where A won time
};

// As many as are wanted, in their order.  Each session is placed with A's alone on a line of both, with the pairing's
// gate, so that a lap's figures do not hang on what else is shown; that line's length differs from the pairing's by
// decimetres, by which distances are stretched.  Nothing when called off.
[[nodiscard]] std::optional<std::vector<FurtherLap>>
further_laps(const Pairing& pairing, const std::vector<FurtherWanted>& wanted, const base::Progress& progress = {});

} // namespace lapwright::analysis
