// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/tables.h"

#include "core/base/number_text.h"
#include "core/base/units.h"
#include "core/recording/meaning.h"

#include <array>
#include <cmath>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace lapwright::sheet {
namespace {

using base::Quantity;
using comparison::MaybeFigure;
using comparison::SegmentComparison;
using comparison::SegmentFigures;

constexpr int decimals = 4; // of seconds, and of any shown unit

Number seconds(std::optional<double> value) {
    return {value && std::isfinite(*value) ? base::fixed_text(*value, decimals) : ""};
}

Number figure(const MaybeFigure& value, Quantity quantity, base::UnitSystem units) {
    return {value ? base::fixed_text(base::from_si(value->value, base::shown_unit(quantity, units)), decimals) : ""};
}

struct Column {
    std::string_view name;
    Quantity quantity;
    MaybeFigure (*of)(const SegmentFigures&);
};

constexpr Column of_each_side[] = {
    {"entry speed", Quantity::speed, [](const SegmentFigures& f) -> MaybeFigure { return f.entry_speed_mps; }},
    {"slowest", Quantity::speed, [](const SegmentFigures& f) { return f.min_speed_mps; }},
    {"slowest at", Quantity::length, [](const SegmentFigures& f) { return f.min_speed_at_m; }},
    {"fastest", Quantity::speed, [](const SegmentFigures& f) { return f.top_speed_mps; }},
    {"exit speed", Quantity::speed, [](const SegmentFigures& f) -> MaybeFigure { return f.exit_speed_mps; }},
    {"braking point", Quantity::length, [](const SegmentFigures& f) { return f.braking_point_m; }},
    {"full throttle", Quantity::length, [](const SegmentFigures& f) { return f.full_throttle_m; }},
};

std::string heading(std::string_view name, const char* side, Quantity quantity, base::UnitSystem units) {
    return std::string(name) + " " + side + " (" + std::string(base::symbol(base::shown_unit(quantity, units))) + ")";
}

std::string kind_of(const track::Segment& segment) {
    return segment.kind == track::SegmentKind::corner ? "corner" : "straight";
}

std::vector<Cell> cells_of(const SegmentComparison& s, base::UnitSystem units) {
    const auto place = [&](double at_m) {
        return figure(comparison::Figure{at_m, {}, false}, Quantity::length, units);
    };
    std::vector<Cell> row{s.segment.name,         kind_of(s.segment),      place(s.segment.start_m),
                          place(s.segment.end_m), seconds(s.gain_s.value), seconds(s.gain_s.sd),
                          seconds(s.a.time_s),    seconds(s.b.time_s)};
    for (const Column& column : of_each_side)
        for (const SegmentFigures* side : {&s.a, &s.b})
            row.emplace_back(figure(column.of(*side), column.quantity, units));
    return row;
}

constexpr std::array sums{causes::Term::cornering, causes::Term::straights, causes::Term::aero};

// Without both masses that cause is absent, not 0.
std::vector<Cell> causes_row(const std::string& name, const std::string& kind, const causes::Row& row,
                             double causes::Seconds::* end, bool without_mass) {
    std::vector<Cell> cells{name, kind, seconds(row.gain.*end)};
    for (const causes::Cause cause : causes::all_causes) {
        const bool absent = without_mass && cause == causes::Cause::mass;
        cells.emplace_back(absent ? Number{} : seconds(row.of(cause).*end));
    }
    for (const causes::Term sum : sums)
        cells.emplace_back(seconds(causes::of(row, sum).*end));
    cells.emplace_back(seconds(row.driver_and_rest.*end));
    return cells;
}

} // namespace

Table segments_table(std::span<const SegmentComparison> segments, base::UnitSystem units) {
    const std::string length = " (" + std::string(base::symbol(base::shown_unit(Quantity::length, units))) + ")";
    Table table{{"segment", "kind", "start" + length, "end" + length, "gain of A (s)", "standard uncertainty (s)",
                 "time A (s)", "time B (s)"},
                {}};
    for (const Column& column : of_each_side)
        for (const char* side : {"A", "B"})
            table.columns.push_back(heading(column.name, side, column.quantity, units));
    for (const SegmentComparison& segment : segments)
        table.rows.push_back(cells_of(segment, units));
    return table;
}

Table causes_table(const causes::Explanation& explanation) {
    Table table{{"segment", "kind", "gain of A (s)"}, {}};
    for (const causes::Cause cause : causes::all_causes)
        table.columns.push_back(std::string(causes::english_name(cause)) + " (s)");
    for (const causes::Term sum : sums)
        table.columns.push_back("of it " + std::string(causes::english_name(sum)) + " (s)");
    table.columns.emplace_back("driver and rest (s)");
    const bool without_mass = explanation.per_kilogram;
    for (const causes::SegmentRow& segment : explanation.segments)
        table.rows.push_back(causes_row(segment.segment.name, kind_of(segment.segment), segment.row,
                                        &causes::Seconds::value, without_mass));
    const auto add_total = [&](const char* name, double causes::Seconds::* end) {
        table.rows.push_back(causes_row(name, "", explanation.total, end, without_mass));
    };
    add_total("whole lap", &causes::Seconds::value);
    add_total("whole lap, 95 % from", &causes::Seconds::low);
    add_total("whole lap, 95 % to", &causes::Seconds::high);
    return table;
}

Table trace_table(const lap::LapTrace& trace) {
    struct Named {
        std::string heading;
        const std::vector<double>* values;
        int decimals;
    };
    std::vector<Named> columns{{"distance (m)", &trace.distance_m, 3},
                               {"time (s)", &trace.time_s, 4},
                               {"speed (m/s)", &trace.speed_mps, 4},
                               {"longitudinal acceleration (m/s²)", &trace.longitudinal_mps2, 4},
                               {"lateral acceleration, left positive (m/s²)", &trace.lateral_mps2, 4},
                               {"offset from the reference line, left positive (m)", &trace.offset_m, 3}};
    for (const lap::TraceChannel& channel : trace.channels) {
        const std::string unit(base::symbol(base::si_unit(recording::quantity(channel.meaning))));
        columns.push_back({channel.name + (unit.empty() ? "" : " (" + unit + ")"), &channel.values, 6});
    }
    Table table;
    for (const Named& column : columns)
        table.columns.push_back(column.heading);
    for (std::size_t i = 0; i < trace.size(); ++i) {
        std::vector<Cell> row;
        for (const Named& column : columns) {
            const double value = (*column.values)[i];
            row.emplace_back(Number{std::isfinite(value) ? base::fixed_text(value, column.decimals) : ""});
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table laps_table(std::span<const lap::Lap> laps) {
    Table table{{"lap", "kind", "time (s)", "standard deviation (s)", "clean", "why not"}, {}};
    for (const lap::Lap& one : laps)
        table.rows.push_back({Number{base::integer_text(one.number)}, std::string(lap::name(one.kind)),
                              seconds(one.time_s()), seconds(one.time_sd_s), std::string(one.clean ? "yes" : "no"),
                              one.why_not_clean});
    return table;
}

} // namespace lapwright::sheet
