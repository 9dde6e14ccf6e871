// SPDX-License-Identifier: GPL-3.0-or-later
// Notes in the settings, by the session: where they are kept while there is no book.
#pragma once

#include "core/workspace/notes.h"

#include <QString>
#include <vector>

class QSettings;

namespace lapwright::window {

// By which the settings know a session, and two laps.
[[nodiscard]] QString settings_name(const workspace::SessionKey& session);
[[nodiscard]] QString settings_name(const workspace::TwoLaps& laps);

[[nodiscard]] std::vector<workspace::Note> notes_in_settings(const QSettings& settings,
                                                             const workspace::SessionKey& session);
// All notes of the session take the place of those that are there; none: nothing is left there.
void keep_in_settings(QSettings& settings, const workspace::SessionKey& session,
                      const std::vector<workspace::Note>& notes);

} // namespace lapwright::window
