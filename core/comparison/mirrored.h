// SPDX-License-Identifier: GPL-3.0-or-later
// The same comparison with A and B changed: signs and letters, nothing is computed again.
#pragma once

#include "core/comparison/comparison.h"

#include <vector>

namespace lapwright::comparison {

[[nodiscard]] Comparison mirrored(Comparison comparison);
[[nodiscard]] std::vector<SegmentComparison> mirrored(std::vector<SegmentComparison> segments);

} // namespace lapwright::comparison
