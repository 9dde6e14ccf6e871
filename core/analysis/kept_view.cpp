// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/kept_view.h"

#include "core/analysis/computation_version.h"
#include "core/analysis/kept_recording.h"
#include "core/analysis/known_track.h"
#include "core/analysis/reckoned_session.h"
#include "core/analysis/view_archive.h"
#include "core/book/sha256.h"
#include "core/book/tracks.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace lapwright::analysis {
namespace {

struct Origin {
    book::Checksum session_a;
    book::Checksum session_b;
    std::string choice_a; // of tracks
    std::string choice_b;
    std::string choice; // for both together
};

std::optional<Origin> origin_in(book::Book& book, const book::TwoLaps& laps) {
    const auto a = book::mark_of_session(book, laps.session_a);
    const auto b = book::mark_of_session(book, laps.session_b);
    return a && b ? std::optional(Origin{a.value(), b.value(), {}, {}, {}}) : std::nullopt;
}

book::Checksum made_from(const Origin& origin, const book::TwoLaps& laps) {
    Gather gather;
    gather(std::string(computation_version()), book::hex_text(origin.session_a), laps.lap_a, origin.choice_a,
           book::hex_text(origin.session_b), laps.lap_b, origin.choice_b, origin.choice);
    return book::sha256_of(bytes_of(gather.gathered()));
}

// Whether it would be understood and compared alike under the track's name that the book has for it.  A file that tells
// none gets the name of the track that it was found to be of.
bool alike_under(const std::string& name, const Session& session, const Pairing& pairing) {
    const std::string& own = session.recording->track;
    if (name == own) return true;
    if (!own.empty() || name != pairing.track.name) return false;
    return session.known_track ? session.known_track->name == name : !is_reckoned(*session.motion);
}

// Its recording alone; null where a part of that is damaged, without which it would be understood otherwise.
std::shared_ptr<const Session> session_in(book::Book& book, book::SessionId id) {
    auto recording = kept_recording(book, id);
    if (!recording) return nullptr;
    const auto damaged = [](const recording::Warning& warning) { return warning.code == "channel_damaged"; };
    if (std::ranges::any_of(recording->warnings, damaged)) return nullptr;
    auto session = std::make_shared<Session>();
    session->recording = std::make_shared<const recording::Recording>(std::move(recording).value());
    return session;
}

} // namespace

std::optional<base::Error> keep_view(book::Book& book, const book::TwoLaps& laps, const PairingView& view) {
    auto origin = origin_in(book, laps); // before the samples are read: what changes later is then another origin
    if (!origin) return std::nullopt;
    const Pairing& pairing = *view.pairing;
    const auto comes_from = [&](const Session& session, book::SessionId id) {
        const auto kept = kept_recording(book, id);
        return kept && same_recording(kept.value(), *session.recording) && alike_under(kept->track, session, pairing);
    };
    if (!comes_from(*pairing.a.session, laps.session_a) || !comes_from(*pairing.b.session, laps.session_b))
        return std::nullopt;
    origin->choice_a = pairing.a.session->track_choice;
    origin->choice_b = pairing.b.session->track_choice;
    origin->choice = pairing.track_choice;
    return book::put_view(book, laps, made_from(*origin, laps), view_bytes(view));
}

std::optional<PairingView> kept_view(book::Book& book, const book::TwoLaps& laps,
                                     const std::optional<track::TrackRecord>& record) {
    auto origin = origin_in(book, laps);
    const auto known = book::tracks(book);
    if (!origin || !known) return std::nullopt;
    origin->choice_a = origin->choice_b = track_choice(record, known.value());
    origin->choice = track_choice(record, {});
    const auto bytes = book::read_view(book, laps, made_from(*origin, laps));
    if (!bytes) return std::nullopt;
    const auto a = session_in(book, laps.session_a);
    const auto b = laps.session_b == laps.session_a ? a : session_in(book, laps.session_b);
    return a && b ? view_of_bytes(*bytes, a, b) : std::nullopt;
}

} // namespace lapwright::analysis
