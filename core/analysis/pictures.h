// SPDX-License-Identifier: GPL-3.0-or-later
// What the small pictures of a list show, as few values: see core/book/pictures.h.
#pragma once

#include "core/analysis/analysis.h"
#include "core/book/pictures.h"

namespace lapwright::analysis {

[[nodiscard]] book::GapCurve gap_curve(const Pairing& pairing);
// Of the fastest lap; empty where the recording has no positions or no lap.
[[nodiscard]] book::Outline outline(const Session& session);

} // namespace lapwright::analysis
