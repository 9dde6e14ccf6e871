// SPDX-License-Identifier: GPL-3.0-or-later
// Notes in the settings, by the path of the session's file: where they are kept while there is no book.
#pragma once

#include "ui/models/notes.h"

#include <vector>

class QSettings;

namespace lapwright::window {

[[nodiscard]] std::vector<models::Note> notes_in_settings(const QSettings& settings, const QString& session);
// All notes of the session take the place of those that are there; none: nothing is left there.
void keep_in_settings(QSettings& settings, const QString& session, const std::vector<models::Note>& notes);

} // namespace lapwright::window
