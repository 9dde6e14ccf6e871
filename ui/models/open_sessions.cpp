// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/open_sessions.h"

namespace lapwright::models {

void OpenSessions::edit(const std::function<void(workspace::OpenSessions&)>& change) {
    const workspace::OpenSessions before = now_;
    change(now_);
    const bool other_picks = now_.picks() != before.picks();
    const bool other_further = now_.further() != before.further();
    if (now_.entries() != before.entries()) Q_EMIT sessions_changed();
    if (other_picks) Q_EMIT picks_changed();
    if (other_further) Q_EMIT further_changed();
}

} // namespace lapwright::models
