// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/compose_sheet.h"

#include "core/base/check.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/presentation/figures.h"
#include "core/sheet/file_name.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace lapwright::sheet {
namespace {

using base::Quantity;
using base::said;
using base::UnitSystem;
using base::word;
using comparison::Figure;
using comparison::MaybeFigure;
using comparison::SegmentComparison;

constexpr const char* cautions_text = word(
    "Estimates from recorded data; intervals are 95 %. Motor sport is dangerous: the event's rules, scrutineering and "
    "licensed "
    "practice come first, and nothing here asks anyone to drive faster than they judge safe.");

Favours who(const Figure& gain) {
    if (gain.value == 0.0 || !base::stands_out(gain.value, gain.sd)) return Favours::neither;
    return gain.value > 0.0 ? Favours::a : Favours::b;
}

std::string letter(double seconds) {
    return seconds >= 0.0 ? "A" : "B";
}

std::string speed(const MaybeFigure& figure, UnitSystem units) {
    return presentation::speed_text(figure, units, presentation::Margin::without);
}

std::string both(const MaybeFigure& a, const MaybeFigure& b, UnitSystem units) {
    return a || b ? presentation::both_speeds(a, b, units) : "";
}

std::string side_text(const SideFacts& side, const char* name) {
    const std::string text = said(
        side.mine ? word("%1, my car: %2, lap %3, %4, %5 clean laps") : word("%1: %2, lap %3, %4, %5 clean laps"),
        {name, side.title, base::integer_text(side.lap->number), presentation::lap_time_text(*side.trace, *side.lap),
         base::integer_text(static_cast<std::int64_t>(side.clean_laps))});
    return side.conditions.empty() ? text : text + ", " + side.conditions;
}

std::vector<double> shown_speeds(const std::vector<double>& speeds_mps, UnitSystem units) {
    std::vector<double> shown;
    shown.reserve(speeds_mps.size());
    for (const double v : speeds_mps)
        shown.push_back(base::from_si(v, base::shown_unit(Quantity::speed, units)));
    return shown;
}

std::vector<std::string> names_along(const std::vector<double>& distance_m,
                                     const std::vector<SegmentComparison>& segments) {
    std::vector<std::string> names;
    std::size_t s = 0;
    for (const double place_m : distance_m) {
        while (s + 1 < segments.size() && place_m >= segments[s].segment.end_m)
            ++s;
        names.push_back(segments.empty() ? std::string() : segments[s].segment.name);
    }
    return names;
}

Plot plot_of(const Material& m, UnitSystem units) {
    const comparison::GapTrace& gap = m.comparison->gap;
    return {gap.distance_m,
            shown_speeds(m.a.trace->speed_mps, units),
            shown_speeds(m.b.trace->speed_mps, units),
            gap.gap_s,
            gap.low_s,
            gap.high_s,
            std::string(base::symbol(base::shown_unit(Quantity::speed, units))),
            {},
            names_along(gap.distance_m, m.comparison->segments)};
}

// Beyond its error, and more than a twentieth of a second: ours, no source.
bool matters(const SegmentComparison& s) {
    constexpr double least_s = 0.05;
    return who(s.gain_s) != Favours::neither && std::abs(s.gain_s.value) >= least_s;
}

Row row_of(const SegmentComparison& s, UnitSystem units) {
    const bool corner = s.segment.kind == track::SegmentKind::corner;
    return {{s.segment.name, base::gain_with_margin(s.gain_s.value, s.gain_s.sd),
             corner ? both(s.a.min_speed_mps, s.b.min_speed_mps, units)
                    : said("top %1", {both(s.a.top_speed_mps, s.b.top_speed_mps, units)}),
             both(s.a.exit_speed_mps, s.b.exit_speed_mps, units)},
            s.gain_s.value,
            corner,
            who(s.gain_s),
            matters(s)};
}

// "slowest 201 against 194 km/h, leaves it at 242 against 226".
std::string evidence(const SegmentComparison& s, UnitSystem units) {
    const std::string unit(base::symbol(base::shown_unit(Quantity::speed, units)));
    const auto of_b = [&](const MaybeFigure& figure) { return speed(figure, units) + " " + unit; };
    std::string text;
    if (s.a.min_speed_mps && s.b.min_speed_mps)
        text = said("Slowest %1 against %2", {speed(s.a.min_speed_mps, units), of_b(s.b.min_speed_mps)});
    else if (s.a.top_speed_mps && s.b.top_speed_mps)
        text = said("Fastest %1 against %2", {speed(s.a.top_speed_mps, units), of_b(s.b.top_speed_mps)});
    const std::string out = speed(s.a.exit_speed_mps, units);
    text = text.empty() ? said("Leaves it at %1 against %2", {out, of_b(s.b.exit_speed_mps)})
                        : said("%1, out at %2 against %3", {text, out, of_b(s.b.exit_speed_mps)});
    if (s.a.braking_point_m && s.b.braking_point_m) {
        const Figure& a = *s.a.braking_point_m;
        const Figure& b = *s.b.braking_point_m;
        if (const auto later_m = base::told_later_m(a.value, a.sd, b.value, b.sd))
            text =
                said("%1; %2 brakes %3 later",
                     {text, letter(*later_m), base::figure_with_unit(std::abs(*later_m), Quantity::length, units, 0)});
    }
    return said("%1.", {text});
}

std::string claim(const SegmentComparison& s, const comparison::Repeatability* repeats) {
    const bool settled =
        repeats && repeats->low_s && repeats->high_s && (*repeats->low_s > 0.0 || *repeats->high_s < 0.0);
    const bool measured = !s.gain_s.sd || std::abs(s.gain_s.value) > base::half_width_95(*s.gain_s.sd);
    const std::string who_wins = letter(s.gain_s.value);
    if (!measured) return said("%1: who wins time here cannot be told.", {s.segment.name});
    return said(settled ? word("%1 is %2's.") : word("%1 is probably %2's."), {s.segment.name, who_wins});
}

std::vector<Finding> deciding_segments(const Material& m, UnitSystem units) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < m.comparison->segments.size(); ++i)
        order.push_back(i);
    const auto size = [&](std::size_t i) { return -std::abs(m.comparison->segments[i].gain_s.value); };
    std::ranges::sort(order, {}, size);
    order.resize(std::min(order.size(), max_findings));
    std::vector<Finding> findings;
    for (const std::size_t i : order) {
        const SegmentComparison& s = m.comparison->segments[i];
        const comparison::Repeatability* repeats = i < m.repeatability->size() ? &(*m.repeatability)[i] : nullptr;
        findings.push_back({claim(s, repeats), evidence(s, units), "",
                            base::gain_with_margin(s.gain_s.value, s.gain_s.sd), who(s.gain_s), s.segment.start_m,
                            s.segment.end_m});
    }
    return findings;
}

std::string place_text(const Material& m, UnitSystem units) {
    std::string text = m.track->name.empty() ? said("Track without a name") : m.track->name;
    text += ", " + base::figure_with_unit(m.track->line.length_m, Quantity::length, units, 0);
    return m.date.empty() ? text : text + ", " + m.date;
}

Map map_of(const track::ReferenceLine& line) {
    constexpr std::size_t points = 400;
    Map map;
    if (line.size() < 3) return map;
    for (std::size_t i = 0; i < points; ++i) {
        const double station_m = line.length_m * static_cast<double>(i) / static_cast<double>(points);
        const track::Vec2 at = line.position(station_m);
        map.distance_m.push_back(station_m);
        map.east_m.push_back(at.east);
        map.north_m.push_back(at.north);
    }
    return map;
}

// Where most is won or lost, besides what the findings are about.
std::vector<Pair> driving_of(const std::vector<SegmentComparison>& segments, const std::vector<Finding>& findings,
                             UnitSystem units) {
    constexpr std::size_t most = 4;
    std::vector<const SegmentComparison*> order;
    for (const SegmentComparison& s : segments) {
        const bool found =
            std::ranges::any_of(findings, [&](const Finding& f) { return f.evidence == evidence(s, units); });
        if (!found && s.segment.kind == track::SegmentKind::corner && matters(s)) order.push_back(&s);
    }
    std::ranges::stable_sort(order, std::greater<>{}, [](const auto* s) { return std::abs(s->gain_s.value); });
    if (order.size() > most) order.resize(most);
    std::vector<Pair> pairs;
    for (const SegmentComparison* s : order)
        pairs.push_back({s->segment.name, evidence(*s, units), Favours::neither});
    return pairs;
}

std::string made_from(const Material& m) {
    const auto one = [](const SideFacts& side) {
        return said("%1 lap %2", {side.file, base::integer_text(side.lap->number)});
    };
    return said("Made from %1 (A) and %2 (B), grid %3 m. Lapwright %4.",
                {one(m.a), one(m.b), base::shown_text(m.comparison->gap.distance_m[1], 2), m.version});
}

} // namespace

Sheet compose_sheet(const Material& m, UnitSystem units) {
    base::check(m.track && m.comparison && m.repeatability && m.headline && m.a.lap && m.a.trace && m.b.lap &&
                    m.b.trace,
                "a sheet without its material");
    Sheet sheet;
    sheet.headline = m.headline->verdict;
    if (!m.headline->uncertainty.empty()) sheet.headline += " " + m.headline->uncertainty;
    sheet.sentence = m.headline->sentence;
    sheet.place = place_text(m, units);
    sheet.side_a = side_text(m.a, "A");
    sheet.side_b = side_text(m.b, "B");
    sheet.plot = plot_of(m, units);
    for (const SegmentComparison& s : m.comparison->segments)
        if (s.segment.name == m.headline->deciding_segment)
            sheet.plot.deciding = DecidingPlace{s.segment.name, s.segment.start_m, s.segment.end_m};
    sheet.findings = m.findings.empty() ? deciding_segments(m, units) : m.findings;
    if (sheet.findings.size() > max_findings) sheet.findings.resize(max_findings);
    const std::string unit(base::symbol(base::shown_unit(Quantity::speed, units)));
    sheet.columns = {"", said("won by, s"), said("slowest A · B, %1", {unit}), said("exit A · B")};
    for (const SegmentComparison& s : m.comparison->segments) {
        const Row row = row_of(s, units);
        if (row.corner) sheet.corners.push_back(row);
        sheet.segments.push_back(row);
        sheet.segment_words.push_back(evidence(s, units));
    }
    sheet.map = map_of(m.track->line);
    sheet.driving = driving_of(m.comparison->segments, sheet.findings, units);
    sheet.file_name = file_name_for(m.track->name, m.date, m.a.driver, m.b.driver);
    sheet.causes = m.causes;
    sheet.setup = m.setup;
    sheet.notes = m.notes;
    sheet.remarks = m.remarks;
    sheet.stills = m.stills;
    if (sheet.stills.size() > max_still_pairs) sheet.stills.resize(max_still_pairs);
    sheet.cautions = said(cautions_text);
    sheet.made_from = made_from(m);
    return sheet;
}

} // namespace lapwright::sheet
