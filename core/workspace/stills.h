// SPDX-License-Identifier: GPL-3.0-or-later
// Frames of both drivers' videos at the moments of one corner, for the sheet.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/sheet/sheet.h"
#include "core/video/frame_reader.h"
#include "core/video/in_step.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::workspace {

enum class StillMoment { turn_in, slowest, full_throttle };
inline constexpr std::array every_still_moment{StillMoment::turn_in, StillMoment::slowest, StillMoment::full_throttle};
// "turn-in", "slowest", "full-throttle".
[[nodiscard]] std::string_view name(StillMoment moment);
[[nodiscard]] std::optional<StillMoment> parse_still_moment(std::string_view name);

struct StillsWanted {
    std::string corner; // empty: the one that decides
    std::vector<StillMoment> moments{every_still_moment.begin(), every_still_moment.end()};
};

// A video whose offset is known.
struct VideoInStep {
    std::vector<std::string> paths;
    video::InStep step;
};

// The named corner; without a name the segment that the headline names, where it is a corner, else the corner in which
// most is won or lost.  Null where there is none such.
[[nodiscard]] const comparison::SegmentComparison* corner_of_stills(const analysis::Pairing& pairing,
                                                                    const std::string& name);

// A pair for each moment, in the order of every_still_moment; none where neither lap has the moment, or neither a
// video. Error: of a video that cannot be read, cannot_be_computed where the pairing has no such corner, or cancelled.
[[nodiscard]] base::Result<std::vector<sheet::StillPair>>
stills(const analysis::Pairing& pairing, const StillsWanted& wanted, const std::optional<VideoInStep>& video_a,
       const std::optional<VideoInStep>& video_b, base::UnitSystem units, const video::GoOn& go_on = {});

} // namespace lapwright::workspace
