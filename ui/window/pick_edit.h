// SPDX-License-Identifier: GPL-3.0-or-later
// Which laps are A and B, as an edit that can be undone.
#pragma once

#include "ui/models/session_shelf.h"

#include <QUndoStack>
#include <functional>

namespace lapwright::window {

// Does it at once; an edit that changes nothing is not one.
void edit_picks(models::SessionShelf& shelf, QUndoStack& edits, const QString& name,
                const std::function<void(models::SessionShelf&)>& change);

} // namespace lapwright::window
