// SPDX-License-Identifier: GPL-3.0-or-later
// How a fit ended, and what it rests on.  Nothing of a fit that has not converged may be shown
// as a number or be used as if it were certain: what it would have said is absent, or stays as
// wide as it was beforehand, and a sentence says so where the figure is shown.
#pragma once

#include <cstddef>

namespace lapwright::base {

enum class FitStatus { not_run, failed, not_converged, converged };

struct FitOutcome {
    FitStatus status = FitStatus::not_run;
    int rounds = 0;           // of an iteration; moves of a chain; 0 where the answer is found at once
    std::size_t rests_on = 0; // independent pieces of evidence: samples, corners, laps, as the fit says

    [[nodiscard]] bool converged() const { return status == FitStatus::converged; }
};

} // namespace lapwright::base
