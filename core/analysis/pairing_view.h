// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown of a pairing, without what more is worked out from; as bytes and back, to the last bit.
#pragma once

#include "core/analysis/analysis.h"
#include "core/comparison/comparison.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::analysis {

// Of a view that was read, sessions have their recording alone, and traces have no draws: it can be shown, and nothing
// more can be worked out from it.
struct PairingView {
    std::shared_ptr<const Pairing> pairing;
    std::vector<comparison::SegmentComparison> summed; // each corner with its straight
};

[[nodiscard]] std::string view_bytes(const PairingView& view);
// Of these two sessions, from whose samples its channels are.  Nothing where the bytes are no view, or one that does
// not fit together.
[[nodiscard]] std::optional<PairingView> view_of_bytes(std::string_view bytes, std::shared_ptr<const Session> a,
                                                       std::shared_ptr<const Session> b);
// Whether both show the same, to the last bit.
[[nodiscard]] bool same_view(const PairingView& one, const PairingView& other);

} // namespace lapwright::analysis
