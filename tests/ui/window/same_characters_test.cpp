// SPDX-License-Identifier: GPL-3.0-or-later
// One figure has the same characters wherever it stands: in the window's table, card and header, in the table of the
// command line, on the sheet.  A table that is taken elsewhere (CSV) has more digits of the same figure, so that sums
// still hold.  Over drawn pairings: with and without draws, every unit, any size of error.
#include "app/commands/table_text.h"
#include "core/analysis/sheet_material.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/sheet/tables.h"
#include "tests/ui/fixture/pairing_fixture.h"
#include "ui/models/segment_table.h"
#include "ui/pages/compare/pairing_header.h"
#include "ui/pages/compare/segment_card.h"
#include "ui/theme/elided_label.h"

#include <QLabel>
#include <cmath>
#include <gmock/gmock.h>
#include <random>

using namespace lapwright;
using base::UnitSystem;
using models::SegmentTable;
using testing::Contains;
using testing::EndsWith;
using testing::HasSubstr;

namespace {

// The same pairing with other gains and errors, some unknown.
analysis::Pairing drawn_pairing(std::uint64_t seed) {
    std::mt19937_64 engine(seed);
    const auto uniform = [&engine](double low, double high) {
        return low + (high - low) * (static_cast<double>(engine() >> 11U) * 0x1p-53);
    };
    analysis::Pairing pairing = *fixture::pairing({.points = 601, .draws = false});
    const auto redraw = [&](comparison::Figure& figure, double swing) {
        figure.value += uniform(-swing, swing);
        figure.sd = uniform(0.0, 1.0) < 0.2 ? std::nullopt : std::optional(std::pow(10.0, uniform(-3.0, 0.5)));
    };
    for (lap::Lap* lap : {&pairing.a.lap, &pairing.b.lap})
        lap->time_sd_s = std::pow(10.0, uniform(-4.0, 0.0));
    for (comparison::SegmentComparison& segment : pairing.comparison.segments) {
        redraw(segment.gain_s, 0.3);
        for (comparison::SegmentFigures* side : {&segment.a, &segment.b}) {
            redraw(side->entry_speed_mps, 2.0);
            redraw(side->exit_speed_mps, 2.0);
            for (auto* figure : {&side->min_speed_mps, &side->top_speed_mps, &side->braking_point_m})
                if (*figure) redraw(**figure, 2.0);
        }
    }
    return pairing;
}

struct Shown {
    std::string gain, gain_margin, slow_a, slow_b, exit_a, exit_b;
};

Shown in_window(const SegmentTable& table, int row) {
    const auto cell = [&](int column, int role = Qt::DisplayRole) {
        return table.data(table.index(row, column), role).toString().toStdString();
    };
    return {cell(SegmentTable::gain_column),   cell(SegmentTable::gain_column, SegmentTable::MarginRole),
            cell(SegmentTable::slow_a_column), cell(SegmentTable::slow_b_column),
            cell(SegmentTable::exit_a_column), cell(SegmentTable::exit_b_column)};
}

std::vector<std::string> words_of(const QWidget& widget) {
    std::vector<std::string> words;
    for (const auto* label : widget.findChildren<QLabel*>())
        words.push_back(label->text().toStdString());
    for (const auto* label : widget.findChildren<theme::ElidedLabel*>())
        words.push_back(label->text().toStdString());
    return words;
}

std::string line_of(const std::string& text, const std::string& segment) {
    const auto start = text.find("\n" + segment + "  ");
    return start == std::string::npos ? "" : text.substr(start + 1, text.find('\n', start + 1) - start - 1);
}

// Both are the same figure, each rounded to its own decimals;
// `shown` has a letter instead of a sign where it is a gain.
void expect_roundings_of_one(const std::string& shown, double taken_elsewhere) {
    const std::string digits = shown.substr(shown.find_first_of("0123456789"));
    const auto point = digits.rfind('.');
    const double decimals = point == std::string::npos ? 0.0 : static_cast<double>(digits.size() - point - 1);
    const double half_digits = 0.5 * std::pow(10.0, -decimals) + 0.5e-4;
    EXPECT_NEAR(*base::parse_number(digits), std::abs(taken_elsewhere), half_digits + 1e-9);
    if (shown.starts_with("A") || shown.starts_with("B")) {
        EXPECT_EQ(shown[0], taken_elsewhere > 0.0 ? 'A' : 'B');
    }
}

double number_of(const sheet::Table& table, std::size_t row, const std::string& column) {
    const auto place = std::ranges::find_if(table.columns, [&](const auto& name) { return name.starts_with(column); });
    const auto& cell = table.rows[row][static_cast<std::size_t>(place - table.columns.begin())];
    return *base::parse_number(std::get<sheet::Number>(cell).text);
}

void expect_same(const analysis::Pairing& pairing, UnitSystem units) {
    const std::string table = commands::compare_table(pairing, units);
    const sheet::Sheet sheet = analysis::debrief_sheet(pairing, units, "test", {});
    const sheet::Table csv = sheet::segments_table(pairing.comparison.segments, units);
    pages::PairingHeader header;
    header.set_pairing(pairing);
    const auto head = words_of(header);
    for (const auto& [side, name] : {std::pair(&pairing.a, sheet.side_a), std::pair(&pairing.b, sheet.side_b)}) {
        const std::string time = base::lap_time_with_margin(side->trace.best.lap_time_s(), side->lap.time_sd_s);
        EXPECT_THAT(head, Contains(HasSubstr(time)));
        EXPECT_THAT(table, HasSubstr(time));
        EXPECT_THAT(name, HasSubstr(time));
    }
    EXPECT_THAT(head, Contains(pairing.headline.verdict));
    EXPECT_THAT(table, HasSubstr(pairing.headline.verdict));
    EXPECT_EQ(sheet.headline.substr(0, pairing.headline.verdict.size()), pairing.headline.verdict);
    SegmentTable window;
    window.set_units(units);
    window.set_segments(pairing.comparison.segments);
    for (std::size_t i = 0; i < pairing.comparison.segments.size(); ++i) {
        const comparison::SegmentComparison& segment = pairing.comparison.segments[i];
        SCOPED_TRACE(segment.segment.name);
        const Shown shown = in_window(window, static_cast<int>(i));
        const std::string gain = shown.gain + (shown.gain_margin.empty() ? "" : " " + shown.gain_margin);
        const std::string slow = shown.slow_a + " · " + shown.slow_b;
        const std::string exit = shown.exit_a + " · " + shown.exit_b;
        const std::string line = line_of(table, segment.segment.name);
        for (const std::string& part : {gain, slow, exit}) {
            EXPECT_THAT(line, HasSubstr(part));
            EXPECT_THAT(sheet.segments[i].cells, Contains(EndsWith(part))) << "a straight's says that it is the top";
        }
        pages::SegmentCard card;
        card.show_segment(segment, nullptr, units);
        const auto words = words_of(card);
        EXPECT_THAT(words, Contains(gain + " s"));
        const auto with_margin = [](const std::string& figure) {
            return testing::AnyOf(figure, testing::StartsWith(figure + " ±"));
        };
        for (const std::string& figure : {shown.slow_a, shown.slow_b, shown.exit_a, shown.exit_b})
            EXPECT_THAT(words, Contains(with_margin(figure)));
        // What is taken elsewhere.
        const bool corner = segment.segment.kind == track::SegmentKind::corner;
        const std::string slow_column = corner ? "slowest " : "fastest ";
        expect_roundings_of_one(shown.exit_a, number_of(csv, i, "exit speed A"));
        expect_roundings_of_one(shown.exit_b, number_of(csv, i, "exit speed B"));
        if (shown.slow_a != "—") expect_roundings_of_one(shown.slow_a, number_of(csv, i, slow_column + "A"));
        expect_roundings_of_one(shown.gain, number_of(csv, i, "gain of A"));
        if (segment.a.braking_point_m) {
            const std::string place =
                base::known_figure(segment.a.braking_point_m->value, segment.a.braking_point_m->sd,
                                   base::Quantity::length, units, segment.a.braking_point_m->sd ? 1 : 0, true);
            EXPECT_THAT(words, Contains(place));
            const std::string alone = place.substr(0, place.find(" ±"));
            expect_roundings_of_one(alone, number_of(csv, i, "braking point A"));
        }
    }
}

} // namespace

TEST(SameCharacters, OfAFigureWhereverItStands) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const analysis::Pairing pairing = drawn_pairing(seed);
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial, UnitSystem::us}) {
            SCOPED_TRACE("seed " + base::integer_text(static_cast<std::int64_t>(seed)) + ", " +
                         std::string(base::name(units)));
            expect_same(pairing, units);
        }
    }
    expect_same(*fixture::pairing(), UnitSystem::metric);
}
