// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/keeping.h"

#include "core/analysis/known_track.h"
#include "core/analysis/pictures.h"
#include "ui/models/text.h"
#include "ui/window/debriefing.h"
#include "ui/window/explaining.h"
#include "ui/window/kept_notes.h"
#include "ui/window/notices.h"

#include <QSettings>
#include <array>

namespace lapwright::window {

using bridge::BookQueue;
using models::text;
using workspace::SessionKey;

Keeping::Keeping(BookQueue& book, const Parts& parts, QObject* parent) : QObject(parent), book_(book), parts_(parts) {
    connect(&parts_.notes, &models::Notes::edited, this, &Keeping::note_edited);
    connect(&parts_.explaining, &Explaining::setup_entered, this,
            [this](const SessionKey& key, const car::SetupSheet& sheet) {
                book_.edit_names([key, sheet](BookQueue::Book& own) { return own.put_setup(key, sheet); });
            });
    connect(&parts_.explaining, &Explaining::car_known, this,
            [this](const SessionKey& key, const car::CarFigures& figures) {
                book_.edit_unasked([key, kept = book::kept_figures(figures)](BookQueue::Book& own) {
                    return own.put_figures(key, kept);
                });
            });
    connect(&parts_.debriefing, &Debriefing::notes_edited, this,
            [this](const workspace::TwoLaps& laps, const QString& note) {
                book_.edit([laps, note = note.toStdString()](BookQueue::Book& own) {
                    return own.put_pairing_note(laps, note);
                });
            });
    connect(&book_, &BookQueue::session_kept, this, &Keeping::session_kept);
    connect(&book_, &BookQueue::pairing_kept, &parts_.debriefing, &Debriefing::take_from_book);
    connect(&book_, &BookQueue::refused, this,
            [this](const base::Error& error) { parts_.notices.add(text(base::one_line(error))); });
    connect(&book_, &BookQueue::note_refused, this, &Keeping::keep_notes_in_settings);
    connect(&book_, &BookQueue::unusable, this, &Keeping::go_on_without);
    connect(&book_, &BookQueue::opened_read_only, this, [this](const QString& file) {
        parts_.notices.add(tr("%1: this book can only be read here. Notes that you write stay in your settings, other "
                              "changes of the book are not made — to edit it, copy it to a folder that you may write, "
                              "and open the copy")
                               .arg(file));
    });
    connect(&book_, &BookQueue::opened_again, this, [this] { parts_.notices.withdraw_sentence(without_book_); });
    // Kept twice while it waits: what is not in the book is not lost with the window.
    connect(&book_, &BookQueue::waits, this, &Keeping::keep_all_notes_in_settings);
    connect(&book_, &BookQueue::caught_up, this, [this] {
        for (const SessionKey& session : sessions_)
            keep_in_settings(parts_.settings, session, {});
    });
}

void Keeping::session_opened(const workspace::Origin& origin, const workspace::SessionPointer& session,
                             const std::optional<track::TrackRecord>& track) {
    const SessionKey key = workspace::key_of(*session);
    sessions_.insert(key);
    const auto waiting = notes_in_settings(parts_.settings, key);
    parts_.notes.take_in(key, waiting);
    book_.keep({origin, session, track ? track->name : std::string(), parts_.explaining.known_setup(key), waiting,
                anew_.erase(origin) > 0});
    if (track && !track->name.empty())
        book_.edit_unasked([record = *track](BookQueue::Book& own) { return own.put_track(record, {}); });
}

void Keeping::set_pairing(const workspace::PresentPairing& present, const std::optional<track::TrackRecord>& track) {
    const analysis::Pairing& pairing = *present.compared()->pairing;
    keep_line(pairing, track);
    book_.keep_pairing({present.laps(), pairing.headline.verdict + ". " + pairing.headline.sentence,
                        parts_.debriefing.notes_in_settings().toStdString()});
    const workspace::TwoLaps& laps = present.laps();
    book_.edit_unasked(
        [of = book::ComparedLaps{laps.session_a.checksum, laps.lap_a, laps.session_b.checksum, laps.lap_b},
         gaps_s = analysis::gap_curve(pairing)](BookQueue::Book& own) {
            return book::put_gap_curve(own.book(), of, gaps_s);
        });
}

// A reference line belongs to the record whose gate it begins at.
void Keeping::keep_line(const analysis::Pairing& pairing, const std::optional<track::TrackRecord>& track) {
    if (!book_.usable()) return;
    const std::array sessions{pairing.a.session, pairing.b.session};
    const auto record = track ? track : analysis::known_to_all(sessions);
    if (!record || record->name.empty()) return;
    const auto line = analysis::line_to_keep(pairing.track, sessions);
    if (!line) return;
    book_.edit_unasked([record = *record, line = *line, given = track.has_value()](BookQueue::Book& own) {
        return given ? own.put_track(record, line) : own.put_missing_line(record.name, line);
    });
}

void Keeping::note_edited(const workspace::NoteAbout& about) {
    if (book_.takes_edits())
        book_.put_note({about, parts_.notes.now().text(about)});
    else
        keep_notes_in_settings(about.session);
}

void Keeping::session_kept(const SessionKey& key, const workspace::KeptSession& kept) {
    if (book_.takes_edits()) keep_in_settings(parts_.settings, key, {}); // they are in the book now
    parts_.notes.take_in(key, kept.notes);
    parts_.explaining.take_from_book(key, kept.details.setup);
    Q_EMIT kept_there(key, kept);
}

void Keeping::keep_notes_in_settings(const SessionKey& session) {
    keep_in_settings(parts_.settings, session, parts_.notes.now().of_session(session));
}

void Keeping::go_on_without(const base::Error& error) {
    without_book_ = tr("The window goes on without its book. %1").arg(text(base::one_line(error)));
    parts_.notices.add(without_book_);
    keep_all_notes_in_settings();
}

void Keeping::keep_all_notes_in_settings() {
    for (const SessionKey& session : sessions_)
        keep_notes_in_settings(session);
}

} // namespace lapwright::window
