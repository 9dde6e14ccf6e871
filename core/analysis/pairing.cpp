// SPDX-License-Identifier: GPL-3.0-or-later
// Two sessions -> one line, one gate, two laps on one distance, and what lies between them.
#include "core/analysis/chosen_lap.h"
#include "core/analysis/common_track.h"
#include "core/analysis/dead_reckoned_session.h"
#include "core/analysis/run.h"
#include "core/analysis/short_text.h"
#include "core/analysis/stages.h"
#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/comparison/compare_laps.h"
#include "core/comparison/mirrored.h"
#include "core/lap/trace_lap.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace lapwright::analysis {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;
using recording::WarningKind;

Result<Side> traced(const Placed& placed, std::optional<int> number, const track::Track& track, double step_m) {
    auto chosen = chosen_lap(placed, number);
    if (!chosen) return chosen.error();
    const recording::Recording& recording = *placed.session->recording;
    auto ensemble = lap::trace_ensemble(*placed.motion, *chosen, track.gate, track.line, step_m, recording);
    if (!ensemble)
        return Error{
            ErrorCode::different_tracks,
            {recording.source_file, {}, {}},
            said("lap %1 leaves the track on which the two are compared", {base::integer_text(chosen->number)}),
            said("choose another lap, or two sessions of the same track")};
    Side side{placed.session, *chosen, std::move(*ensemble), {}, {}};
    for (const lap::Lap& lap : placed.laps) {
        if (!lap.clean) continue;
        if (auto trace = lap::trace_lap(*placed.motion, lap.start_s, lap.end_s, track.line, step_m)) {
            side.clean_laps.push_back(lap);
            side.clean_traces.push_back(std::move(*trace));
        }
    }
    return side;
}

std::vector<std::vector<double>> boundaries(const Side& side, const track::Track& track) {
    std::vector<std::vector<double>> all;
    for (const lap::LapTrace& trace : side.clean_traces)
        all.push_back(comparison::boundary_times(trace, track.segments));
    return all;
}

// Another clean lap that may as well have been the fastest; nothing where the fastest is known to a hundredth.
const lap::Lap* perhaps_faster(const Side& side) {
    constexpr double min_told_s = 0.01;
    const lap::Lap* nearest = nullptr;
    for (const lap::Lap& lap : side.clean_laps) {
        if (std::abs(lap.start_s - side.lap.start_s) < 1.0 || !lap.time_sd_s || !side.lap.time_sd_s) continue;
        const double half = base::half_width_95(std::hypot(*lap.time_sd_s, *side.lap.time_sd_s));
        if (half < min_told_s || lap.time_s() - side.lap.time_s() > half) continue;
        if (!nearest || lap.time_s() < nearest->time_s()) nearest = &lap;
    }
    return nearest;
}

recording::Warning fastest_not_sure(const Side& side, const lap::Lap& other, const std::string& name) {
    return {.kind = WarningKind::fastest_not_sure,
            .of = name,
            .figures = {other.time_s() - side.lap.time_s(), std::hypot(*other.time_sd_s, *side.lap.time_sd_s)}};
}

// Said in the headline itself: an answer from a spoiled lap is another answer.
std::string not_clean_words(const Side& side, const std::string& letter) {
    if (side.lap.clean) return {};
    const std::string& why = side.lap.why_not_clean;
    if (why.empty()) return said("The lap of %1 is not clean.", {letter}) + " ";
    return said("The lap of %1 is not clean (%2).", {letter, why}) + " ";
}

// All that lies between the two sides.
void lay_side_by_side(Pairing& pairing, comparison::Comparison comparison) {
    pairing.comparison = std::move(comparison);
    const auto bounds_a = boundaries(pairing.a, pairing.track);
    const auto bounds_b = boundaries(pairing.b, pairing.track);
    pairing.repeatability = comparison::repeatability(bounds_a, bounds_b, pairing.track.segments.size());
    pairing.spread_a = comparison::lap_spread(pairing.a.clean_traces);
    pairing.spread_b = comparison::lap_spread(pairing.b.clean_traces);
    pairing.ideal_a = comparison::ideal_lap(bounds_a);
    pairing.ideal_b = comparison::ideal_lap(bounds_b);
    pairing.headline = findings::headline(pairing.comparison, pairing.repeatability);
    pairing.headline.sentence =
        not_clean_words(pairing.a, "A") + not_clean_words(pairing.b, "B") + pairing.headline.sentence;
}

std::vector<recording::Warning> warnings_of(const Pairing& pairing, const PairingOptions& options) {
    std::vector<recording::Warning> warnings;
    for (const Side* side : {&pairing.a, &pairing.b}) {
        const std::string name = shortened(side->session->title());
        const bool asked_for = (side == &pairing.a ? options.lap_a : options.lap_b).has_value();
        const lap::Lap* other = asked_for ? nullptr : perhaps_faster(*side);
        if (other) warnings.push_back(fastest_not_sure(*side, *other, name));
        if (!side->lap.clean)
            warnings.push_back({.kind = WarningKind::lap_not_clean,
                                .of = name,
                                .figures = {static_cast<double>(side->lap.number)},
                                .texts = {side->lap.why_not_clean}});
        if (side->clean_laps.size() < 3)
            warnings.push_back(
                {.kind = WarningKind::few_clean_laps, .of = name, .seen = {side->clean_laps.size(), {}}});
        if (is_dead_reckoned(*side->session->motion))
            warnings.push_back({.kind = WarningKind::no_positions, .of = name, .figures = {pairing.length_sd}});
        if (side->trace.draws.empty()) warnings.push_back({.kind = WarningKind::no_uncertainty, .of = name});
    }
    return warnings;
}

} // namespace

std::string own_time_text(const Side& side) {
    const lap::Lap* own = side.session ? side.session->lap(side.lap.number) : nullptr;
    if (!own || std::abs(own->start_s - side.lap.start_s) > 0.5 * side.lap.time_s()) return {};
    const std::string time = base::lap_time_text(own->time_s());
    return time == base::lap_time_text(side.lap.time_s()) ? std::string() : said("%1 by its own line", {time});
}

Result<std::shared_ptr<const Pairing>> compare(std::shared_ptr<const Session> a, std::shared_ptr<const Session> b,
                                               const PairingOptions& options, const base::Progress& progress) {
    if (!base::go_on(progress, said("placing both laps on one line"), 0.0)) return base::cancelled();
    auto together = place_together({std::move(a), std::move(b)}, options.track);
    if (!together) return together.error();
    CommonTrack common = std::move(together).value();
    auto pairing = std::make_shared<Pairing>();
    pairing->track = std::move(common.track);
    pairing->length_sd = common.length_sd;
    if (!base::go_on(progress, said("measuring both laps"), 0.4)) return base::cancelled();
    std::array<std::optional<Result<Side>>, 2> sides;
    base::parallel_for(2, 0, [&](std::size_t i) {
        sides[i] = traced(common.sessions[i], i == 0 ? options.lap_a : options.lap_b, pairing->track, options.step_m);
    });
    for (const auto& side : sides)
        if (!*side) return side->error();
    pairing->a = std::move(*sides[0]).value();
    pairing->b = std::move(*sides[1]).value();
    if (!base::go_on(progress, "comparing", 0.8)) return base::cancelled();
    lay_side_by_side(*pairing, comparison::compare_laps(pairing->a.trace, pairing->b.trace, pairing->track.segments));
    pairing->warnings = warnings_of(*pairing, options);
    for (Placed& placed : common.sessions)
        for (recording::Warning& warning : placed.warnings) {
            warning.of = shortened(placed.session->title());
            pairing->warnings.push_back(std::move(warning));
        }
    return std::shared_ptr<const Pairing>(std::move(pairing));
}

std::shared_ptr<const Pairing> swapped(const Pairing& pairing) {
    auto other = std::make_shared<Pairing>();
    other->track = pairing.track;
    other->length_sd = pairing.length_sd;
    other->a = pairing.b;
    other->b = pairing.a;
    lay_side_by_side(*other, comparison::mirrored(pairing.comparison));
    other->warnings = pairing.warnings;
    std::ranges::stable_partition(other->warnings, [name = shortened(other->a.session->title())](const auto& warning) {
        return warning.of == name;
    });
    return other;
}

} // namespace lapwright::analysis
