// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown of a pairing, kept in the book so that it is on the screen before its sessions have been read and
// worked out anew.  A view that is read is to the last bit what this program would work out from the book now: it is
// marked with the program (computation_version.h), both sessions' samples and names, the laps and the tracks that they
// could be of, and is passed over when one of them is another.
#pragma once

#include "core/analysis/pairing_view.h"
#include "core/base/error.h"
#include "core/book/book.h"
#include "core/book/views.h"
#include "core/track/track_record.h"

#include <optional>

namespace lapwright::analysis {

// Keeps the view of a pairing that was worked out from samples.  Nothing is kept where the book has other samples or
// names for one of its sessions than those it was worked out from, or does not keep the pairing.
[[nodiscard]] std::optional<base::Error> keep_view(book::Book& book, const book::TwoLaps& laps,
                                                   const PairingView& view);
// Nothing where there is none that holds now.  `record`: of the track file, where one was given.
[[nodiscard]] std::optional<PairingView> kept_view(book::Book& book, const book::TwoLaps& laps,
                                                   const std::optional<track::TrackRecord>& record);

} // namespace lapwright::analysis
