// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing with what its page shows besides: corners summed
// with the straights they feed, and who is winning time where.
#pragma once

#include "core/analysis/analysis.h"

#include <memory>
#include <vector>

namespace lapwright::workspace {

struct Compared {
    std::shared_ptr<const analysis::Pairing> pairing;
    std::vector<comparison::SegmentComparison> summed; // each corner with its straight
    std::vector<double> favour; // for each node of the line: −1 B wins most … 1 A wins most, 0 not told
};

using ComparedPointer = std::shared_ptr<const Compared>;

// May take a while: off the UI thread.
[[nodiscard]] ComparedPointer compared(std::shared_ptr<const analysis::Pairing> pairing);

// The other way round, at once.
[[nodiscard]] ComparedPointer swapped(const Compared& compared);

} // namespace lapwright::workspace
