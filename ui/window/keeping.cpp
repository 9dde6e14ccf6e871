// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/keeping.h"

#include "ui/models/text.h"
#include "ui/window/debriefing.h"
#include "ui/window/explaining.h"
#include "ui/window/kept_notes.h"
#include "ui/window/notices.h"

#include <QSettings>

namespace lapwright::window {

using bridge::BookKeeper;
using models::text;

Keeping::Keeping(BookKeeper& book, const Parts& parts, QObject* parent) : QObject(parent), book_(book), parts_(parts) {
    connect(&parts_.notes, &models::NoteShelf::edited, this, &Keeping::note_edited);
    connect(&parts_.explaining, &Explaining::setup_entered, &book_, &BookKeeper::put_setup);
    connect(&parts_.debriefing, &Debriefing::notes_edited, &book_, &BookKeeper::put_pairing_note);
    connect(&book_, &BookKeeper::session_kept, this, &Keeping::session_kept);
    connect(&book_, &BookKeeper::pairing_kept, &parts_.debriefing, &Debriefing::take_from_book);
    connect(&book_, &BookKeeper::refused, this,
            [this](const base::Error& error) { parts_.notices.add(text(base::one_line(error))); });
    connect(&book_, &BookKeeper::note_refused, this, &Keeping::keep_notes_in_settings);
    connect(&book_, &BookKeeper::unusable, this, &Keeping::go_on_without);
}

void Keeping::session_opened(const QString& path, const bridge::SessionPointer& session, const std::string& track) {
    sessions_.insert(path);
    const auto waiting = notes_in_settings(parts_.settings, path);
    parts_.notes.take_in(path, waiting);
    book_.keep({path, session, track, parts_.explaining.known_setup(path), waiting, anew_.remove(path)});
}

void Keeping::set_pairing(const models::ComparedPointer& compared, const models::LapPick& a, const models::LapPick& b,
                          const QString& name) {
    const analysis::Pairing& pairing = *compared->pairing;
    // Without a title: the book would find both sessions by the words of either.
    book_.keep_pairing({name, a, b, pairing.headline.verdict + " " + pairing.headline.sentence,
                        parts_.debriefing.notes_in_settings()});
}

void Keeping::note_edited(const models::NoteAbout& about) {
    if (book_.usable())
        book_.put_note({about, parts_.notes.text(about)});
    else
        keep_notes_in_settings(about.session);
}

void Keeping::session_kept(const QString& path, const bridge::KeptSession& kept) {
    keep_in_settings(parts_.settings, path, {}); // they are in the book now
    parts_.notes.take_in(path, kept.notes);
    parts_.explaining.take_from_book(path, kept.setup);
}

void Keeping::keep_notes_in_settings(const QString& session) {
    keep_in_settings(parts_.settings, session, parts_.notes.of_session(session));
}

void Keeping::go_on_without(const base::Error& error) {
    parts_.notices.add(tr("The window goes on without its book. %1").arg(text(base::one_line(error))));
    for (const QString& session : sessions_)
        keep_notes_in_settings(session);
}

} // namespace lapwright::window
