// SPDX-License-Identifier: GPL-3.0-or-later
// The notes that belong to a comparison as lines for its sheet: on both sessions, on the two laps, on the corners in
// the order of the track.
#pragma once

#include "core/analysis/analysis.h"
#include "ui/models/notes.h"

#include <QStringList>

namespace lapwright::models {

[[nodiscard]] QStringList note_lines(const NoteShelf& notes, const analysis::Pairing& pairing, const QString& session_a,
                                     const QString& session_b);

} // namespace lapwright::models
