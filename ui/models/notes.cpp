// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/notes.h"

#include "ui/models/text.h"

namespace lapwright::models {

QString Notes::text(const workspace::NoteAbout& about) const {
    return models::text(now_.text(about));
}

void Notes::put(const workspace::NoteAbout& about, const QString& text) {
    if (!now_.put(about, text.toStdString())) return;
    Q_EMIT edited(about);
    Q_EMIT changed();
}

void Notes::take_in(const workspace::SessionKey& session, const std::vector<workspace::Note>& kept) {
    if (now_.take_in(session, kept)) Q_EMIT changed();
}

} // namespace lapwright::models
