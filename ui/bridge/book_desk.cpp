// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/book_desk.h"

#include "core/analysis/keep_session.h"
#include "core/book/my_car.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/season.h"
#include "core/book/sessions.h"
#include "core/book/tracks.h"
#include "ui/bridge/book_path.h"
#include "ui/models/text.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <utility>

namespace lapwright::bridge {
namespace {

using base::Error;
using base::Result;
using models::text;

// The key of what a note is about.
QString key_of(const models::NoteAbout& about) {
    const QString lap = about.lap ? QString::number(*about.lap) : QString();
    return about.session + QLatin1Char('\n') + lap + QLatin1Char('\n') + about.segment;
}

analysis::SessionToKeep to_keep(const SessionToKeep& wanted) {
    analysis::SessionToKeep kept;
    kept.session = wanted.session.get();
    if (wanted.session->known_track) kept.known_track = wanted.session->known_track->name;
    kept.setup = wanted.setup;
    if (!wanted.track.empty()) kept.said_track = wanted.track;
    kept.read_anew = wanted.read_anew;
    return kept;
}

Error not_in_the_book() {
    return {base::ErrorCode::book_not_usable, {}, "this session is not in the book", "open its file again"};
}

} // namespace

std::optional<Error> BookDesk::open() {
    if (book_) return std::nullopt;
    QDir().mkpath(QFileInfo(QFile::decodeName(file_.c_str())).absolutePath());
    auto opened = book::Book::open(file_);
    if (!opened.ok()) return opened.error();
    book_.emplace(std::move(opened).value());
    return std::nullopt;
}

Result<book::SessionId> BookDesk::put(const SessionToKeep& wanted) {
    if (const auto own = session_of_book_path(wanted.path)) {
        const auto renewed = analysis::renew_session(*book_, *own, to_keep(wanted));
        return renewed.ok() ? Result<book::SessionId>(*own) : renewed.error();
    }
    const auto source = book::source_of_file(QFile::encodeName(wanted.path).toStdString());
    if (!source.ok()) return source.error();
    const auto kept = analysis::keep_session(*book_, source.value(), to_keep(wanted));
    return kept.ok() ? Result<book::SessionId>(kept->added.id) : kept.error();
}

Result<book::SessionId> BookDesk::id_of(const QString& path) const {
    const auto found = sessions_.find(path);
    if (found == sessions_.end()) return not_in_the_book();
    return found->second;
}

Result<std::vector<models::Note>> BookDesk::read_notes(book::SessionId id, const QString& path) {
    const auto kept = book::notes_of_session(*book_, id);
    if (!kept.ok()) return kept.error();
    std::vector<models::Note> notes;
    std::map<QString, std::vector<std::string>> uids;
    for (const book::Note& note : kept.value()) {
        if (note.about.pairing) continue;
        const models::NoteAbout about{path, note.about.lap, text(note.about.segment), note.about.at_m};
        uids[key_of(about)].push_back(note.uid);
        const auto same = std::ranges::find_if(notes, [&](const auto& n) { return n.about.same_thing(about); });
        if (same == notes.end())
            notes.push_back({about, text(note.text)});
        else
            same->text += QLatin1Char('\n') + text(note.text);
    }
    for (auto& [key, all] : uids)
        note_uids_[key] = std::move(all);
    return notes;
}

Result<KeptSession> BookDesk::keep(const SessionToKeep& wanted) {
    const auto id = put(wanted);
    if (!id.ok()) return id.error();
    sessions_[wanted.path] = id.value();
    if (const auto before = read_notes(id.value(), wanted.path); !before.ok()) return before.error(); // their uids
    for (const models::Note& note : wanted.notes) {
        if (const auto problem = put_note(note)) return *problem;
    }
    return know(id.value(), wanted.path);
}

Result<std::optional<book::SessionId>> BookDesk::find_session(const QString& path) {
    if (const auto own = session_of_book_path(path)) return own;
    if (const auto known = sessions_.find(path); known != sessions_.end()) return std::optional(known->second);
    const auto source = book::source_of_file(QFile::encodeName(path).toStdString());
    if (!source.ok()) return source.error();
    return book::find_session(*book_, source->checksum);
}

Result<KeptSession> BookDesk::know(book::SessionId id, const QString& path) {
    sessions_[path] = id;
    const auto notes = read_notes(id, path);
    if (!notes.ok()) return notes.error();
    const auto details = book::read_details(*book_, id);
    if (!details.ok()) return details.error();
    return KeptSession{id, notes.value(), details.value()};
}

Result<std::optional<KeptSession>> BookDesk::look_up(const SessionToKeep& wanted) {
    const auto id = find_session(wanted.path);
    if (!id.ok()) return id.error();
    if (!id.value()) return std::optional<KeptSession>();
    const auto kept = know(*id.value(), wanted.path);
    if (!kept.ok()) return kept.error();
    return std::optional(kept.value());
}

std::optional<Error> BookDesk::put_note(const models::Note& note) {
    const auto id = id_of(note.about.session);
    if (!id.ok()) return id.error();
    std::vector<std::string>& uids = note_uids_[key_of(note.about)];
    for (std::size_t i = note.text.isEmpty() ? 0 : 1; i < uids.size(); ++i) {
        if (auto problem = book::remove_note(*book_, uids[i])) return problem;
    }
    if (uids.size() > 1) uids.resize(1);
    if (note.text.isEmpty()) return std::nullopt;
    book::Note kept;
    if (!uids.empty()) kept.uid = uids.front();
    kept.about.session = id.value();
    kept.about.lap = note.about.lap;
    kept.about.segment = note.about.segment.toStdString();
    kept.about.at_m = note.about.at_m;
    kept.text = note.text.toStdString();
    auto put = book::put_note(*book_, kept);
    if (!put.ok()) return put.error();
    uids = {std::move(put).value()};
    return std::nullopt;
}

std::optional<Error> BookDesk::put_setup(const QString& path, const car::SetupSheet& sheet) {
    const auto id = id_of(path);
    if (!id.ok()) return id.error();
    auto details = book::read_details(*book_, id.value());
    if (!details.ok()) return details.error();
    book::SessionDetails wished = details.value();
    analysis::put_setup(wished, sheet);
    return book::change_details(*book_, id.value(), wished);
}

Result<QString> BookDesk::keep_pairing(const PairingToKeep& wanted) {
    const auto a = id_of(wanted.a.path);
    if (!a.ok()) return a.error();
    const auto b = id_of(wanted.b.path);
    if (!b.ok()) return b.error();
    const auto id =
        book::put_pairing(*book_, {a.value(), wanted.a.lap, b.value(), wanted.b.lap, "", wanted.sentence, 0.0});
    if (!id.ok()) return id.error();
    KeptPairing& kept = pairings_[wanted.name];
    kept.id = id.value();
    const auto notes = book::notes_of_pairing(*book_, id.value());
    if (!notes.ok()) return notes.error();
    QString words;
    for (const book::Note& note : notes.value()) {
        if (!note.about.segment.empty() || note.about.lap) continue;
        kept.note_uid = note.uid;
        words = text(note.text);
    }
    if (wanted.note.isEmpty() || wanted.note == words) return words;
    if (const auto problem = put_pairing_note(wanted.name, wanted.note)) return *problem;
    return wanted.note;
}

std::optional<Error> BookDesk::put_pairing_note(const QString& name, const QString& note) {
    const auto found = pairings_.find(name);
    if (found == pairings_.end()) return not_in_the_book();
    KeptPairing& kept = found->second;
    if (note.isEmpty()) return kept.note_uid.empty() ? std::nullopt : book::remove_note(*book_, kept.note_uid);
    book::Note wished;
    wished.uid = kept.note_uid;
    wished.about.pairing = kept.id;
    wished.text = note.toStdString();
    auto put = book::put_note(*book_, wished);
    if (!put.ok()) return put.error();
    kept.note_uid = std::move(put).value();
    return std::nullopt;
}

std::optional<Error> BookDesk::put_track(const track::TrackRecord& record, const std::optional<book::KeptLine>& line) {
    const PutTrack now{track::track_record_json(record), line.has_value()};
    PutTrack& before = tracks_put_[record.name];
    if (before.record == now.record && (before.with_line || !now.with_line)) return std::nullopt;
    if (auto problem = book::put_track(*book_, record, line)) return problem;
    before = now;
    return std::nullopt;
}

std::optional<Error> BookDesk::put_missing_line(const std::string& track, const book::KeptLine& line) {
    const auto kept = book::read_line(*book_, track);
    if (!kept.ok()) return kept.error();
    const auto record = book::read_track(*book_, track);
    if (!record.ok()) return record.error();
    if (*kept || !*record) return std::nullopt;
    return book::put_track(*book_, **record, line);
}

std::optional<Error> BookDesk::put_figures(const QString& path, const std::vector<book::KeptFigure>& figures) {
    const auto id = id_of(path);
    if (!id.ok()) return id.error();
    return book::put_figures(*book_, id.value(), figures);
}

std::optional<Error> BookDesk::forget_track(int number, const std::string& name) {
    tracks_put_.erase(name);
    auto gone = book::forget_track(*book_, name);
    if (!gone.ok()) return gone.error();
    forgotten_[number] = std::move(gone).value();
    return std::nullopt;
}

std::optional<Error> BookDesk::bring_back_track(int number, const std::string& name) {
    const auto gone = forgotten_.extract(number);
    return gone.empty() ? std::nullopt : book::bring_back_track(*book_, name, gone.mapped());
}

std::optional<Error> BookDesk::rename(const Renaming& wanted) {
    auto renamed =
        book::rename(*book_, wanted.table, wanted.from, wanted.to, wanted.unites ? book::Unite::yes : book::Unite::no);
    if (!renamed.ok()) return renamed.error();
    renamed_[wanted.number] = std::move(renamed).value();
    return std::nullopt;
}

std::optional<Error> BookDesk::undo_rename(int number) {
    const auto done = renamed_.extract(number);
    return done.empty() ? std::nullopt : book::undo_rename(*book_, done.mapped());
}

std::optional<Error> BookDesk::take_pairing(int number, book::PairingId id) {
    const auto before = taken_.find(number);
    const book::PairingId now = before == taken_.end() ? id : before->second.id;
    auto taken = book::take_pairing(*book_, now);
    if (!taken.ok()) return taken.error();
    taken_[number] = {now, std::move(taken).value()};
    return std::nullopt;
}

std::optional<Error> BookDesk::bring_back_pairing(int number) {
    const auto taken = taken_.find(number);
    if (taken == taken_.end()) return std::nullopt;
    const auto id = book::bring_back_pairing(*book_, taken->second.pairing);
    if (!id.ok()) return id.error();
    for (auto& [name, kept] : pairings_)
        if (kept.id == taken->second.id) kept.id = id.value();
    taken->second.id = id.value();
    return std::nullopt;
}

Result<std::optional<car::Names>> BookDesk::my_car() {
    return book::my_car(*book_);
}

std::optional<Error> BookDesk::put_my_car(const std::optional<car::Names>& mine) {
    return book::put_my_car(*book_, mine);
}

Result<std::map<QString, book::SessionDetails>> BookDesk::details() {
    std::map<QString, book::SessionDetails> all;
    for (const auto& [path, id] : sessions_) {
        // One that was removed has none.
        if (auto details = book::read_details(*book_, id); details.ok()) all[path] = std::move(details).value();
    }
    return all;
}

} // namespace lapwright::bridge
