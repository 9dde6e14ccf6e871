// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/keeping.h"

#include "core/analysis/known_track.h"
#include "ui/models/text.h"
#include "ui/window/debriefing.h"
#include "ui/window/explaining.h"
#include "ui/window/kept_notes.h"
#include "ui/window/notices.h"

#include <QSettings>
#include <array>

namespace lapwright::window {

using bridge::BookKeeper;
using models::text;

Keeping::Keeping(BookKeeper& book, const Parts& parts, QObject* parent) : QObject(parent), book_(book), parts_(parts) {
    connect(&parts_.notes, &models::NoteShelf::edited, this, &Keeping::note_edited);
    connect(&parts_.explaining, &Explaining::setup_entered, &book_, &BookKeeper::put_setup);
    connect(&parts_.explaining, &Explaining::car_known, this,
            [this](const QString& path, const car::CarFigures& figures) {
                book_.put_figures(path, book::kept_figures(figures));
            });
    connect(&parts_.debriefing, &Debriefing::notes_edited, &book_, &BookKeeper::put_pairing_note);
    connect(&book_, &BookKeeper::session_kept, this, &Keeping::session_kept);
    connect(&book_, &BookKeeper::pairing_kept, &parts_.debriefing, &Debriefing::take_from_book);
    connect(&book_, &BookKeeper::refused, this,
            [this](const base::Error& error) { parts_.notices.add(text(base::one_line(error))); });
    connect(&book_, &BookKeeper::note_refused, this, &Keeping::keep_notes_in_settings);
    connect(&book_, &BookKeeper::unusable, this, &Keeping::go_on_without);
    connect(&book_, &BookKeeper::opened_read_only, this, [this](const QString& file) {
        parts_.notices.add(tr("%1: this book can only be read here. Notes that you write stay in your settings, other "
                              "changes of the book are not made — to edit it, copy it to a folder that you may write, "
                              "and open the copy")
                               .arg(file));
    });
    connect(&book_, &BookKeeper::opened_again, this, [this] { parts_.notices.withdraw_sentence(without_book_); });
    // Kept twice while it waits: what is not in the book is not lost with the window.
    connect(&book_, &BookKeeper::waits, this, &Keeping::keep_all_notes_in_settings);
    connect(&book_, &BookKeeper::caught_up, this, [this] {
        for (const QString& session : sessions_)
            keep_in_settings(parts_.settings, session, {});
    });
}

void Keeping::session_opened(const QString& path, const bridge::SessionPointer& session,
                             const std::optional<track::TrackRecord>& track) {
    sessions_.insert(path);
    const auto waiting = notes_in_settings(parts_.settings, path);
    parts_.notes.take_in(path, waiting);
    book_.keep({path, session, track ? track->name : std::string(), parts_.explaining.known_setup(path), waiting,
                anew_.remove(path)});
    if (track && !track->name.empty()) book_.put_track(*track, {});
}

void Keeping::set_pairing(const models::ComparedPointer& compared, const models::LapPick& a, const models::LapPick& b,
                          const QString& name, const std::optional<track::TrackRecord>& track) {
    const analysis::Pairing& pairing = *compared->pairing;
    keep_line(pairing, track);
    // Without a title: the book would find both sessions by the words of either.
    book_.keep_pairing({name, a, b, pairing.headline.verdict + ". " + pairing.headline.sentence,
                        parts_.debriefing.notes_in_settings()});
}

// A reference line belongs to the record whose gate it begins at.
void Keeping::keep_line(const analysis::Pairing& pairing, const std::optional<track::TrackRecord>& track) {
    if (!book_.usable()) return;
    const std::array sessions{pairing.a.session, pairing.b.session};
    const auto record = track ? track : analysis::known_to_all(sessions);
    if (!record || record->name.empty()) return;
    const auto line = analysis::line_to_keep(pairing.track, sessions);
    if (!line) return;
    if (track)
        book_.put_track(*record, line);
    else
        book_.put_missing_line(record->name, *line);
}

void Keeping::note_edited(const models::NoteAbout& about) {
    if (book_.takes_edits())
        book_.put_note({about, parts_.notes.text(about)});
    else
        keep_notes_in_settings(about.session);
}

void Keeping::session_kept(const QString& path, const bridge::KeptSession& kept) {
    if (book_.takes_edits()) keep_in_settings(parts_.settings, path, {}); // they are in the book now
    parts_.notes.take_in(path, kept.notes);
    parts_.explaining.take_from_book(path, kept.details.setup);
    ids_[path] = kept.id;
    Q_EMIT kept_there(path, kept);
}

QStringList Keeping::paths_of(book::SessionId id) const {
    QStringList paths;
    for (const auto& [path, own] : ids_)
        if (own == id) paths << path;
    return paths;
}

void Keeping::keep_notes_in_settings(const QString& session) {
    keep_in_settings(parts_.settings, session, parts_.notes.of_session(session));
}

void Keeping::go_on_without(const base::Error& error) {
    without_book_ = tr("The window goes on without its book. %1").arg(text(base::one_line(error)));
    parts_.notices.add(without_book_);
    keep_all_notes_in_settings();
}

void Keeping::keep_all_notes_in_settings() {
    for (const QString& session : sessions_)
        keep_notes_in_settings(session);
}

} // namespace lapwright::window
