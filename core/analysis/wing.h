// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing either car wants, where both drove or on the track of another session.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/result.h"
#include "core/causes/aero_balance.h"

#include <memory>
#include <optional>
#include <string>

namespace lapwright::analysis {

struct Wing {
    struct OtherTrack {
        std::string of; // the session that was driven there
        double length_m = 0.0;
    };
    causes::AeroBalance a;
    causes::AeroBalance b;
    std::optional<OtherTrack> other_track; // none: where both drove
};

// there: null where both drove.  Errors: of course_of_session.
[[nodiscard]] base::Result<Wing> wing_of(const causes::Explanation& explanation,
                                         const std::shared_ptr<const Session>& there, const causes::DragCost& cost);

} // namespace lapwright::analysis
