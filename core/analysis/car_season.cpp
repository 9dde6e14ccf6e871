// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/car_season.h"

#include "core/analysis/car_laps.h"
#include "core/analysis/common_track.h"
#include "core/analysis/kept_recording.h"
#include "core/base/constants.h"
#include "core/base/parallel.h"
#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/book/search.h"
#include "core/book/sessions.h"
#include "core/book/tracks.h"
#include "core/lap/trace_lap.h"
#include "core/season/outing.h"

#include <algorithm>
#include <atomic>
#include <limits>
#include <map>
#include <mutex>
#include <optional>

namespace lapwright::analysis {
namespace {

using base::said;

constexpr double grid_m = 1.0;
constexpr double read_part = 0.8; // of the work is done when all sessions are read
constexpr unsigned draws = 8;     // only to see which holes are bridged: how far times are off is not asked here

using base::Result;

Result<std::vector<book::SessionSummary>> sessions_of(book::Book& book, const std::string& car) {
    book::Filter filter;
    filter.car = base::trimmed(car);
    if (filter.car.empty()) return std::vector<book::SessionSummary>();
    auto found = book::search(book, filter);
    if (!found) return found;
    std::vector<book::SessionSummary> sessions = std::move(found).value();
    std::ranges::stable_sort(sessions, {}, [](const book::SessionSummary& one) {
        return one.start_unix_s.value_or(std::numeric_limits<double>::infinity());
    });
    return sessions;
}

// Gate, line and segments of the book, so that a corner is the same corner in every session.
class KnownTracks {
  public:
    explicit KnownTracks(book::Book& book) : book_(&book) {}

    [[nodiscard]] Result<std::optional<track::TrackRecord>> of(const std::string& name) {
        if (name.empty()) return std::optional<track::TrackRecord>();
        const std::string key = base::lower_case(name);
        if (const auto known = tracks_.find(key); known != tracks_.end()) return known->second;
        auto record = book::read_track(*book_, name);
        if (record) tracks_.emplace(key, record.value());
        return record;
    }

  private:
    book::Book* book_;
    std::map<std::string, std::optional<track::TrackRecord>> tracks_;
};

// What the book has of one of them.
struct InBook {
    KeptRecording recording;
    book::SessionDetails details;
    std::optional<track::TrackRecord> track;
};

Result<InBook> read_from(book::Book& book, const book::SessionSummary& summary, KnownTracks& tracks) {
    auto details = book::read_details(book, summary.id);
    if (!details) return details.error();
    auto record = tracks.of(details->track);
    if (!record) return record.error();
    auto recording = read_kept(book, summary.id);
    if (!recording) return recording.error();
    return InBook{std::move(recording).value(), std::move(details).value(), std::move(record).value()};
}

Result<season::Outing> outing_of(InBook in_book, const base::Progress& progress) {
    const book::SessionDetails& details = in_book.details;
    SessionOptions options;
    options.motion.draws = draws;
    options.track = in_book.track;
    const auto understood = understand_kept(std::move(in_book.recording), options, progress);
    if (!understood) return understood.error();
    const auto& session = *understood;
    if (session->why_no_laps) return *session->why_no_laps;
    const auto common = place_together({session}, in_book.track, progress);
    if (!common) return common.error();
    const Placed& placed = common->sessions.front();
    CarLaps laps;
    for (const lap::Lap& lap : placed.laps) {
        if (!lap.clean) continue;
        const auto trace = lap::trace_lap(placed.motion->best, lap.start_s, lap.end_s, common->track.line, grid_m);
        if (trace) laps.take(*session, *placed.motion, *trace, lap.start_s);
    }
    const bool shares_corners = in_book.track.has_value();
    return season::outing(laps.data(*session, details.setup, common->track.segments, common->length_sd), details.setup,
                          base::lower_case(base::trimmed(details.driver)),
                          shares_corners ? base::lower_case(base::trimmed(details.track)) : std::string());
}

// Of each session, in their order.  The book is read by one thread at a time.
Result<std::vector<Result<season::Outing>>>
read_outings(book::Book& book, const std::vector<book::SessionSummary>& sessions, const base::Progress& progress) {
    std::vector<std::optional<Result<season::Outing>>> read(sessions.size());
    KnownTracks tracks(book);
    std::mutex reading;
    base::TaskProgress done(progress, said("reading the sessions"), sessions.size(), 0.0, read_part);
    std::atomic<bool> stopped = false;
    const base::Progress within = [&stopped](std::string_view, double) { return !stopped; };
    const bool all = base::parallel_for(sessions.size(), 0, [&](std::size_t i, std::size_t) {
        auto in_book = [&] {
            const std::lock_guard lock(reading);
            return read_from(book, sessions[i], tracks);
        }();
        if (in_book)
            read[i] = outing_of(std::move(in_book).value(), within);
        else
            read[i] = in_book.error();
        if (!done.done()) stopped = true;
        return !stopped;
    });
    if (!all) return base::cancelled();
    std::vector<Result<season::Outing>> outings;
    for (auto& one : read)
        outings.push_back(std::move(*one));
    return outings;
}

std::vector<book::KeptFigure> kept(const season::FiguresThen& then, bool on_a_tonne) {
    std::vector<book::KeptFigure> all;
    const auto add = [&all](const char* name, const base::Estimate& e, double factor) {
        if (e.told()) all.push_back({name, factor * e.value, factor * e.low, factor * e.high, "data"});
    };
    add("grip", then.grip, 1.0);
    // What is on a tonne is kept per kilogram, as a session's own figures without a mass are.
    const double factor = on_a_tonne ? 1.0 / base::tonne_kg : 1.0;
    add(on_a_tonne ? "downforce_area_m2_per_kg" : "downforce_area_m2", then.downforce_area_m2, factor);
    add(on_a_tonne ? "drag_area_m2_per_kg" : "drag_area_m2", then.drag_area_m2, factor);
    add(on_a_tonne ? "power_w_per_kg" : "power_w", then.power_w, factor);
    return all;
}

void add_notes(CarSeason& season, const std::vector<season::Outing>& outings, bool on_a_tonne) {
    if (outings.size() == 1)
        season.notes.push_back(said("one session alone: what another setup changes is told from two on"));
    else if (season.effects.empty())
        season.notes.push_back(
            said("every session has the same setup sheet: write down what is changed, and what it does is told here"));
    if (std::ranges::any_of(outings, [](const season::Outing& one) { return one.track.empty(); }))
        season.notes.push_back(said("the book does not know the track of every session: there, corners are not held "
                                    "against those of other sessions"));
    if (on_a_tonne)
        season.notes.push_back(said("not every session has the car's mass: areas and power are on a tonne"));
}

} // namespace

Result<CarSeason> car_season(book::Book& book, const std::string& car, const base::Progress& progress) {
    auto found = sessions_of(book, car);
    if (!found) return found.error();
    CarSeason season;
    auto read = read_outings(book, *found, progress);
    if (!read) return read.error();
    std::vector<season::Outing> outings;
    for (std::size_t i = 0; i < found->size(); ++i) {
        const book::SessionSummary& summary = found.value()[i];
        auto& one = read.value()[i];
        if (one) {
            season.sessions.push_back({.session = summary, .median_clean_s = {}, .setup = one->setup, .figures = {}});
            outings.push_back(std::move(one).value());
        } else {
            season.left_out.push_back({summary, one.error().what});
        }
    }
    if (outings.empty())
        return base::Error{
            base::ErrorCode::cannot_be_computed,
            {},
            found->empty() ? said("the book has no session of a car \"%1\"", {car})
                           : said("no session of %1 tells anything of the car: %2", {car, season.left_out.front().why}),
            said("keep sessions with clean laps of that car in the book")};
    season.so_far = season.sessions;
    base::TaskProgress done(progress, said("putting the sessions together"), outings.size(), read_part, 1.0);
    const bool all = base::parallel_for(outings.size(), 0, [&](std::size_t task, std::size_t) {
        const std::size_t count = outings.size() - task; // the longest first
        const auto until = outings.begin() + static_cast<std::ptrdiff_t>(count);
        season::CarOverOutings known = season::car_over_outings({outings.begin(), until});
        season.so_far[count - 1].figures = kept(known.figures.back(), known.on_a_tonne);
        if (count == outings.size()) {
            season.effects = std::move(known.effects);
            for (std::size_t k = 0; k < count; ++k)
                season.sessions[k].figures = kept(known.figures[k], known.on_a_tonne);
            add_notes(season, outings, known.on_a_tonne);
        }
        return done.done();
    });
    if (!all) return base::cancelled();
    return season;
}

} // namespace lapwright::analysis
