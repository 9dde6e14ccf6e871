// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/book_connection.h"

#include "core/analysis/keep_session.h"
#include "core/base/translation.h"
#include "core/book/judged_by_hand.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/season.h"
#include "core/book/sessions.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace lapwright::workspace {
namespace {

using base::Error;
using base::Result;
using base::said;
using Done = BookConnection::Done;

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
    return {base::ErrorCode::book_not_usable, {}, said("this session is not in the book"), said("open its file again")};
}

} // namespace

BookConnection::AboutWhat BookConnection::about_what(const NoteAbout& about) {
    return {about.session, about.lap, about.segment};
}

Done BookConnection::open() {
    if (book_) return {};
    std::error_code ignored; // the book then says that it cannot be opened
    std::filesystem::create_directories(std::filesystem::absolute(file_).parent_path(), ignored);
    auto opened = book::Book::open(file_);
    if (!opened) return opened.error();
    book_.emplace(std::move(opened).value());
    return {};
}

Result<book::SessionId> BookConnection::put(const SessionToKeep& wanted) {
    if (const auto* own = std::get_if<book::SessionId>(&wanted.origin)) {
        const auto renewed = analysis::renew_session(*book_, *own, to_keep(wanted));
        return renewed ? Result<book::SessionId>(*own) : renewed.error();
    }
    const auto kept = analysis::keep_session(*book_, wanted.session->source, to_keep(wanted));
    return kept ? Result<book::SessionId>(kept->added.id) : kept.error();
}

Result<book::SessionId> BookConnection::id_of(const SessionKey& key) const {
    const auto found = sessions_.find(key);
    return found == sessions_.end() ? Result<book::SessionId>(not_in_the_book()) : found->second;
}

BookConnection::Done BookConnection::keep_prediction(const SessionKey& of, const SessionKey& there,
                                                     book::Prediction prediction) {
    const auto session = id_of(of);
    if (!session) return session.error();
    const auto at = id_of(there);
    if (!at) return at.error();
    prediction.session = *session;
    prediction.there = *at;
    const auto kept = book::keep_prediction(*book_, prediction);
    return kept ? Done{} : kept.error();
}

Result<std::vector<Note>> BookConnection::read_notes(book::SessionId id, const SessionKey& key) {
    const auto kept = book::notes_of_session(*book_, id);
    if (!kept) return kept.error();
    std::vector<Note> notes;
    std::map<AboutWhat, std::vector<std::string>> uids;
    for (const book::Note& note : *kept) {
        if (note.about.pairing) continue;
        const NoteAbout about{key, note.about.lap, note.about.segment, note.about.at_m};
        uids[about_what(about)].push_back(note.uid);
        const auto same = std::ranges::find_if(notes, [&](const Note& n) { return n.about.same_thing(about); });
        if (same == notes.end())
            notes.push_back({about, note.text});
        else
            same->text += '\n' + note.text;
    }
    for (auto& [about, all] : uids)
        note_uids_[about] = std::move(all);
    return notes;
}

Result<KeptSession> BookConnection::keep(const SessionToKeep& wanted) {
    const auto id = put(wanted);
    if (!id) return id.error();
    const SessionKey key = key_of(*wanted.session);
    sessions_[key] = *id;
    if (const auto before = read_notes(*id, key); !before) return before.error(); // their uids
    for (const Note& note : wanted.notes)
        if (const auto put = put_note(note); !put) return put.error();
    return know(*id, key);
}

Result<KeptSession> BookConnection::know(book::SessionId id, const SessionKey& key) {
    sessions_[key] = id;
    auto notes = read_notes(id, key);
    if (!notes) return notes.error();
    auto details = book::read_details(*book_, id);
    if (!details) return details.error();
    return KeptSession{std::move(notes).value(), std::move(details).value()};
}

Result<std::optional<KeptSession>> BookConnection::look_up(const SessionToKeep& wanted) {
    const SessionKey key = key_of(*wanted.session);
    const auto id = book::find_session(*book_, key.checksum);
    if (!id) return id.error();
    if (!*id) return std::optional<KeptSession>();
    auto kept = know(**id, key);
    if (!kept) return kept.error();
    return std::optional(std::move(kept).value());
}

Done BookConnection::put_note(const Note& note) {
    const auto id = id_of(note.about.session);
    if (!id) return id.error();
    std::vector<std::string>& uids = note_uids_[about_what(note.about)];
    for (std::size_t i = note.text.empty() ? 0 : 1; i < uids.size(); ++i)
        if (auto removed = book::remove_note(*book_, uids[i]); !removed) return removed;
    if (uids.size() > 1) uids.resize(1);
    if (note.text.empty()) return {};
    book::Note kept;
    if (!uids.empty()) kept.uid = uids.front();
    kept.about = {*id, {}, note.about.lap, note.about.segment, note.about.at_m};
    kept.text = note.text;
    auto put = book::put_note(*book_, kept);
    if (!put) return put.error();
    uids = {std::move(put).value()};
    return {};
}

Done BookConnection::put_setup(const SessionKey& key, const car::SetupSheet& sheet) {
    const auto id = id_of(key);
    if (!id) return id.error();
    auto details = book::read_details(*book_, *id);
    if (!details) return details.error();
    book::SessionDetails wished = *details;
    analysis::put_setup(wished, sheet);
    return book::change_details(*book_, *id, wished);
}

Done BookConnection::put_names(const SessionKey& key, const SessionNames& names) {
    const auto id = id_of(key);
    if (!id) return id.error();
    const auto details = book::read_details(*book_, *id);
    if (!details) return details.error();
    return book::change_details(
        *book_, *id, {names.driver, names.car, names.track, names.start_unix_s, names.conditions, details->setup});
}

Done BookConnection::judge_laps(const analysis::Session& session) {
    const auto id = id_of(key_of(session));
    return id ? book::judge_by_hand(*book_, *id, session.by_hand, session.laps) : id.error();
}

Result<std::string> BookConnection::keep_pairing(const PairingToKeep& wanted) {
    const auto& laps = wanted.laps;
    const auto a = id_of(laps.session_a);
    if (!a) return a.error();
    const auto b = id_of(laps.session_b);
    if (!b) return b.error();
    // Without a title: the book would find both sessions by the words of either.
    const auto id = book::put_pairing(*book_, {*a, laps.lap_a, *b, laps.lap_b, "", wanted.sentence, 0.0});
    if (!id) return id.error();
    OwnPairing& kept = pairings_[laps];
    kept.id = *id;
    const auto notes = book::notes_of_pairing(*book_, *id);
    if (!notes) return notes.error();
    std::string words;
    for (const book::Note& note : *notes) {
        if (!note.about.segment.empty() || note.about.lap) continue;
        kept.note_uid = note.uid;
        words = note.text;
    }
    if (wanted.note.empty() || wanted.note == words) return words;
    if (const auto put = put_pairing_note(laps, wanted.note); !put) return put.error();
    return wanted.note;
}

Done BookConnection::put_pairing_note(const TwoLaps& laps, const std::string& note) {
    const auto found = pairings_.find(laps);
    if (found == pairings_.end()) return not_in_the_book();
    OwnPairing& kept = found->second;
    if (note.empty()) return kept.note_uid.empty() ? Done() : book::remove_note(*book_, kept.note_uid);
    book::Note wished;
    wished.uid = kept.note_uid;
    wished.about.pairing = kept.id;
    wished.text = note;
    auto put = book::put_note(*book_, wished);
    if (!put) return put.error();
    kept.note_uid = std::move(put).value();
    return {};
}

Done BookConnection::put_track(const track::TrackRecord& record, const std::optional<book::KeptLine>& line) {
    const PutTrack now{track::track_record_json(record), line.has_value()};
    PutTrack& before = tracks_put_[record.name];
    if (before.record == now.record && (before.with_line || !now.with_line)) return {};
    if (auto put = book::put_track(*book_, record, line); !put) return put;
    before = now;
    return {};
}

Done BookConnection::put_missing_line(const std::string& track, const book::KeptLine& line) {
    const auto kept = book::read_line(*book_, track);
    if (!kept) return kept.error();
    const auto record = book::read_track(*book_, track);
    if (!record) return record.error();
    return *kept || !*record ? Done() : book::put_track(*book_, **record, line);
}

Done BookConnection::put_figures(const SessionKey& key, const std::vector<book::KeptFigure>& figures) {
    const auto id = id_of(key);
    return id ? book::put_figures(*book_, *id, figures) : id.error();
}

Done BookConnection::forget_track(int number, const std::string& name) {
    tracks_put_.erase(name);
    auto gone = book::forget_track(*book_, name);
    if (!gone) return gone.error();
    forgotten_[number] = std::move(gone).value();
    return {};
}

Done BookConnection::change_track(int number, const track::TrackRecord& record) {
    tracks_put_.erase(record.name);
    auto before = book::change_track(*book_, record);
    if (!before) return before.error();
    forgotten_[number] = std::move(before).value();
    return {};
}

Done BookConnection::bring_back_track(int number, const std::string& name) {
    tracks_put_.erase(name);
    const auto gone = forgotten_.extract(number);
    return gone.empty() ? Done() : book::bring_back_track(*book_, name, gone.mapped());
}

Done BookConnection::rename(const Renaming& wanted) {
    auto renamed =
        book::rename(*book_, wanted.table, wanted.from, wanted.to, wanted.unites ? book::Unite::yes : book::Unite::no);
    if (!renamed) return renamed.error();
    renamed_[wanted.number] = std::move(renamed).value();
    return {};
}

Done BookConnection::undo_rename(int number) {
    const auto renamed = renamed_.extract(number);
    return renamed.empty() ? Done() : book::undo_rename(*book_, renamed.mapped());
}

Done BookConnection::take_pairing(int number, book::PairingId id) {
    const auto before = taken_.find(number);
    const book::PairingId now = before == taken_.end() ? id : before->second.id;
    auto taken = book::take_pairing(*book_, now);
    if (!taken) return taken.error();
    taken_[number] = {now, std::move(taken).value()};
    return {};
}

Done BookConnection::bring_back_pairing(int number) {
    const auto taken = taken_.find(number);
    if (taken == taken_.end()) return {};
    const auto id = book::bring_back_pairing(*book_, taken->second.pairing);
    if (!id) return id.error();
    for (auto& [laps, kept] : pairings_)
        if (kept.id == taken->second.id) kept.id = *id;
    taken->second.id = *id;
    return {};
}

std::map<SessionKey, book::SessionDetails> BookConnection::details() {
    std::map<SessionKey, book::SessionDetails> all;
    for (const auto& [key, id] : sessions_) {
        // One that was removed has none.
        if (auto details = book::read_details(*book_, id)) all[key] = std::move(details).value();
    }
    return all;
}

} // namespace lapwright::workspace
