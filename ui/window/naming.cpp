// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/naming.h"

#include "ui/bridge/book_queue.h"
#include "ui/models/open_sessions.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/book_editing.h"
#include "ui/window/comparing.h"
#include "ui/window/edit.h"
#include "ui/window/explaining.h"

#include <QUndoStack>

namespace lapwright::window {

using bridge::BookQueue;
using models::text;
using workspace::SessionKey;
using workspace::SessionNames;

Naming::Naming(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    connect(&parts_.page, &pages::SessionsPage::names_given, this, &Naming::take);
    connect(&parts_.book, &BookQueue::names_found, &parts_.page, &pages::SessionsPage::offer);
    connect(&parts_.book, &BookQueue::changed, &parts_.book, &BookQueue::find_names);
}

void Naming::take(const SessionKey& key, SessionNames names) {
    const auto session = parts_.sessions.now().session(key);
    if (!session) return;
    const SessionNames before = workspace::names_of(*session);
    const bool by_gate = session->known_track && before.track == session->known_track->name;
    if (by_gate && !names.track.empty() && names.track != before.track)
        parts_.book_editing.rename_track(before.track, std::exchange(names.track, before.track));
    if (names == before) return;
    parts_.edits.push(new Edit(
        tr("names of %1").arg(text(session->source.file_name)), [this, key, names] { put(key, names); },
        [this, key, before] { put(key, before); }));
}

void Naming::put(const SessionKey& key, const SessionNames& names) {
    parts_.explaining.rename(key, names);
    parts_.comparing.give_names(key, names);
    if (parts_.book.takes_edits())
        parts_.book.edit_names([key, names](BookQueue::Book& own) { return own.put_names(key, names); });
}

} // namespace lapwright::window
