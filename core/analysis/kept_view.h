// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown of a pairing, kept in the book so that it is on the screen before its sessions have been read and
// worked out anew.  A view that is read is to the last bit what this program would work out from the book now: it is
// marked with the program (computation_version.h), both sessions' samples and names, the laps and the tracks that they
// could be of, and is passed over when one of them is another.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/error.h"
#include "core/book/book.h"
#include "core/book/views.h"
#include "core/comparison/comparison.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::analysis {

// Of a view that was read, sessions know their file and names alone, and traces have no draws: it can be shown, and
// nothing more can be worked out from it.
struct PairingView {
    std::shared_ptr<const Pairing> pairing;
    std::vector<comparison::SegmentComparison> summed; // each corner with its straight
};

[[nodiscard]] std::string view_bytes(const PairingView& view);
// Nothing where the bytes are no view, or one that does not fit together.
[[nodiscard]] std::optional<PairingView> view_of_bytes(std::string_view bytes);
// Whether both show the same, to the last bit.
[[nodiscard]] bool same_view(const PairingView& one, const PairingView& other);

// Keeps the view of a pairing that was worked out from samples.  Nothing is kept where the book has other samples or
// names for one of its sessions than those it was worked out from, or does not keep the pairing.
[[nodiscard]] std::optional<base::Error> keep_view(book::Book& book, const book::TwoLaps& laps,
                                                   const PairingView& view);
// Nothing where there is none that holds now.  `record`: of the track file, where one was given.
[[nodiscard]] std::optional<PairingView> kept_view(book::Book& book, const book::TwoLaps& laps,
                                                   const std::optional<track::TrackRecord>& record);

} // namespace lapwright::analysis
