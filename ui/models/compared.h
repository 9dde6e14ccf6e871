// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing with what its page shows besides: corners summed with the straights they feed, and who is winning time
// where.
#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/pairing_view.h"

#include <memory>
#include <vector>

namespace lapwright::models {

struct Compared {
    std::shared_ptr<const analysis::Pairing> pairing;
    std::vector<comparison::SegmentComparison> summed; // each corner with its straight
    std::vector<double> favour;                        // for each node of the line: −1 B wins most … 1 A wins most
    bool whole = true; // false: out of the book, to be shown; nothing more can be worked out from it
};

using ComparedPointer = std::shared_ptr<const Compared>;

// May take a while: off the UI thread.
[[nodiscard]] ComparedPointer compared(std::shared_ptr<const analysis::Pairing> pairing);
[[nodiscard]] ComparedPointer out_of_book(analysis::PairingView view);

[[nodiscard]] analysis::PairingView view_of(const Compared& compared);

} // namespace lapwright::models
