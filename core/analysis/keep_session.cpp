// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/keep_session.h"

#include "core/analysis/pictures.h"
#include "core/base/plain_text.h"
#include "core/book/judged_by_hand.h"
#include "core/car/write_setup_sheet.h"

#include <algorithm>

namespace lapwright::analysis {
namespace {

using base::Result;

bool is_empty(const car::SetupSheet& sheet) {
    return car::setup_sheet_text(sheet) == car::setup_sheet_text({});
}

bool same_laps(const std::vector<lap::Lap>& one, const std::vector<lap::Lap>& other) {
    return std::ranges::equal(one, other, [](const lap::Lap& a, const lap::Lap& b) {
        return a.number == b.number && a.kind == b.kind && a.start_s == b.start_s && a.end_s == b.end_s &&
               a.clean == b.clean && a.time_sd_s == b.time_sd_s && a.why_not_clean == b.why_not_clean;
    });
}

bool same_details(const book::SessionDetails& one, const book::SessionDetails& other) {
    return one.driver == other.driver && one.car == other.car && one.track == other.track &&
           one.conditions == other.conditions && car::setup_sheet_text(one.setup) == car::setup_sheet_text(other.setup);
}

void fill_names(book::SessionDetails& details, const SessionToKeep& wanted) {
    const recording::Recording& recording = *wanted.session->recording;
    if (details.driver.empty()) details.driver = recording.driver;
    if (details.car.empty()) details.car = recording.car;
    if (details.track.empty()) details.track = recording.track.empty() ? wanted.known_track : recording.track;
}

// What was said, in words.
std::vector<std::string> take_said(book::SessionDetails& details, const SessionToKeep& wanted) {
    std::vector<std::string> said;
    if (wanted.said_track) {
        details.track = *wanted.said_track;
        said.emplace_back("track");
    }
    if (wanted.said_setup) {
        put_setup(details, *wanted.said_setup);
        said.emplace_back("setup");
    }
    if (!wanted.said_conditions.empty()) {
        details.conditions = wanted.said_conditions;
        said.emplace_back("conditions");
    }
    return said;
}

book::SessionDetails new_details(const SessionToKeep& wanted) {
    book::SessionDetails details = book::details_of(*wanted.session->recording);
    details.setup = wanted.setup;
    fill_names(details, wanted);
    take_said(details, wanted);
    return details;
}

// Laps that a person saw are not lost to a track file that does not fit.
Result<void> follow_laps(book::Book& book, book::SessionId id, const std::vector<lap::Lap>& laps) {
    if (laps.empty()) return {};
    const auto before = book::read_laps(book, id);
    if (!before) return before.error();
    return same_laps(*before, laps) ? Result<void>() : book::change_laps(book, id, laps);
}

// What a person said of its laps; words that the book alone has were read with the session.
Result<void> keep_words(book::Book& book, book::SessionId id, const Session& session) {
    if (session.by_hand.empty()) return {};
    const auto before = book::judged_by_hand(book, id);
    if (!before) return before.error();
    return *before == session.by_hand ? Result<void>() : book::judge_by_hand(book, id, session.by_hand, session.laps);
}

Result<void> keep_outline(book::Book& book, book::SessionId id, const SessionToKeep& wanted) {
    const auto there = book::has_outline(book, id);
    if (!there) return there.error();
    if (*there && !wanted.read_anew) return {};
    const book::Outline places_m = outline(*wanted.session);
    return places_m.empty() ? Result<void>() : book::put_outline(book, id, places_m);
}

} // namespace

void put_setup(book::SessionDetails& details, const car::SetupSheet& sheet) {
    details.setup = sheet;
    if (const std::string driver = base::plain_name(sheet.driver); !driver.empty()) details.driver = driver;
    if (const std::string car = base::plain_name(sheet.car); !car.empty()) details.car = car;
}

Result<std::vector<std::string>> renew_session(book::Book& book, book::SessionId id, const SessionToKeep& wanted) {
    if (wanted.read_anew)
        if (const auto put = book::replace_recording(book, id, *wanted.session->recording); !put) return put.error();
    if (const auto followed = follow_laps(book, id, wanted.session->laps); !followed) return followed.error();
    if (const auto kept = keep_words(book, id, *wanted.session); !kept) return kept.error();
    if (const auto drawn = keep_outline(book, id, wanted); !drawn) return drawn.error();
    const auto before = book::read_details(book, id);
    if (!before) return before.error();
    book::SessionDetails details = *before;
    if (is_empty(details.setup)) details.setup = wanted.setup;
    fill_names(details, wanted);
    std::vector<std::string> renewed = take_said(details, wanted);
    if (!same_details(details, *before))
        if (const auto changed = book::change_details(book, id, details); !changed) return changed.error();
    return renewed;
}

Result<KeptInBook> keep_session(book::Book& book, const book::Source& source, const SessionToKeep& wanted) {
    KeptInBook kept;
    const auto added =
        book::add_session(book, source, *wanted.session->recording, new_details(wanted), wanted.session->laps);
    if (!added) return added.error();
    kept.added = *added;
    if (!kept.added.was_there) {
        if (const auto drawn = keep_outline(book, kept.added.id, wanted); !drawn) return drawn.error();
        const auto words = keep_words(book, kept.added.id, *wanted.session);
        return words ? Result<KeptInBook>(kept) : words.error();
    }
    if (kept.added.removed_unix_s)
        if (const auto back = book::restore_session(book, kept.added.id); !back) return back.error();
    auto renewed = renew_session(book, kept.added.id, wanted);
    if (!renewed) return renewed.error();
    kept.renewed = std::move(renewed).value();
    return kept;
}

} // namespace lapwright::analysis
