// SPDX-License-Identifier: GPL-3.0-or-later
// How a fit ended.  Nothing of a fit that is not `converged` may be shown as a number.
#pragma once

namespace lapwright::math {

enum class FitStatus { not_run, failed, not_converged, converged };

} // namespace lapwright::math
