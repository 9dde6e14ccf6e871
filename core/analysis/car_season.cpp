// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/car_season.h"

#include "core/analysis/car_laps.h"
#include "core/analysis/common_track.h"
#include "core/analysis/kept_recording.h"
#include "core/base/constants.h"
#include "core/base/plain_text.h"
#include "core/book/search.h"
#include "core/book/sessions.h"
#include "core/book/tracks.h"
#include "core/lap/trace_lap.h"
#include "core/season/outing.h"

#include <algorithm>
#include <limits>
#include <map>
#include <optional>

namespace lapwright::analysis {
namespace {

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

Result<season::Outing> read_outing(book::Book& book, const book::SessionSummary& summary, KnownTracks& tracks,
                                   const base::Progress& progress) {
    const auto details = book::read_details(book, summary.id);
    if (!details) return details.error();
    const auto record = tracks.of(details->track);
    if (!record) return record.error();
    SessionOptions options;
    options.motion.draws = draws;
    options.track = record.value();
    const auto first_half = [&](std::string_view stage, double part) {
        return base::go_on(progress, stage, 0.5 * part);
    };
    const auto second_half = [&](std::string_view stage, double part) {
        return base::go_on(progress, stage, 0.5 + 0.5 * part);
    };
    const auto kept = kept_session(book, summary.id, options, first_half);
    if (!kept) return kept.error();
    const auto& session = *kept;
    if (session->why_no_laps) return *session->why_no_laps;
    const auto common = place_together({session}, record.value(), second_half);
    if (!common) return common.error();
    const Placed& placed = common->sessions.front();
    CarLaps laps;
    for (const lap::Lap& lap : placed.laps) {
        if (!lap.clean) continue;
        const auto trace = lap::trace_lap(placed.motion->best, lap.start_s, lap.end_s, common->track.line, grid_m);
        if (trace) laps.take(*session, *placed.motion, *trace, lap.start_s);
    }
    const bool shares_corners = record.value().has_value();
    return season::outing(laps.data(*session, details->setup, common->track.segments, common->length_sd),
                          details->setup, base::lower_case(base::trimmed(details->driver)),
                          shares_corners ? base::lower_case(base::trimmed(details->track)) : std::string());
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
        season.notes.emplace_back("one session alone: what another setup changes is told from two on");
    else if (season.effects.empty())
        season.notes.emplace_back(
            "every session has the same setup sheet: write down what is changed, and what it does "
            "is told here");
    if (std::ranges::any_of(outings, [](const season::Outing& one) { return one.track.empty(); }))
        season.notes.emplace_back("the book does not know the track of every session: there, corners are not held "
                                  "against those of other sessions");
    if (on_a_tonne) season.notes.emplace_back("not every session has the car's mass: areas and power are on a tonne");
}

} // namespace

Result<CarSeason> car_season(book::Book& book, const std::string& car, const base::Progress& progress) {
    auto found = sessions_of(book, car);
    if (!found) return found.error();
    CarSeason season;
    std::vector<season::Outing> outings;
    KnownTracks tracks(book);
    const auto count = static_cast<double>(found->size());
    for (std::size_t i = 0; i < found->size(); ++i) {
        const book::SessionSummary& summary = found.value()[i];
        const double before = read_part * static_cast<double>(i) / count;
        const base::Progress within = [&](std::string_view, double part) {
            return base::go_on(progress, "reading " + summary.source.file_name, before + read_part / count * part);
        };
        if (!within({}, 0.0)) return base::cancelled();
        auto one = read_outing(book, summary, tracks, within);
        if (one) {
            season.sessions.push_back({.session = summary, .median_clean_s = {}, .setup = one->setup, .figures = {}});
            outings.push_back(std::move(one).value());
        } else if (one.error().code == base::ErrorCode::cancelled) {
            return one.error();
        } else {
            season.left_out.push_back({summary, one.error().what});
        }
    }
    if (outings.empty())
        return base::Error{base::ErrorCode::cannot_be_computed,
                           {},
                           found->empty()
                               ? "the book has no session of a car \"" + car + "\""
                               : "no session of " + car + " tells anything of the car: " + season.left_out.front().why,
                           "keep sessions with clean laps of that car in the book"};
    season.so_far = season.sessions;
    for (std::size_t i = 0; i < outings.size(); ++i) {
        const double done =
            read_part + (1.0 - read_part) * static_cast<double>(i) / static_cast<double>(outings.size());
        if (!base::go_on(progress, "putting the sessions together", done)) return base::cancelled();
        const auto until = outings.begin() + static_cast<std::ptrdiff_t>(i) + 1;
        const season::CarOverOutings known = season::car_over_outings({outings.begin(), until});
        season.so_far[i].figures = kept(known.figures.back(), known.on_a_tonne);
        if (i + 1 < outings.size()) continue;
        season.effects = known.effects;
        for (std::size_t k = 0; k < outings.size(); ++k)
            season.sessions[k].figures = kept(known.figures[k], known.on_a_tonne);
        add_notes(season, outings, known.on_a_tonne);
    }
    return season;
}

} // namespace lapwright::analysis
