// SPDX-License-Identifier: GPL-3.0-or-later
// A drawn table as text: delimiter, decimal mark, quotes, a preamble, a row of units, positions at a lower rate than
// the rows, and now and then no clock at all.
#pragma once

#include "core/import/drawn_manners.h"

namespace lapwright::import::drawn {

struct Style {
    char delimiter = ',';
    bool decimal_comma = false;
    bool quotes = false;
};

inline std::string written(std::string cell, const Style& style) {
    const bool number = cell.find_first_not_of("-0123456789.") == std::string::npos;
    if (style.decimal_comma && number) std::ranges::replace(cell, '.', ',');
    return style.quotes ? "\"" + cell + "\"" : cell;
}

inline Style draw_style(Pen& pen, std::size_t manner) {
    Style style;
    if (manner == 3) style.delimiter = pick<char>(pen.engine(), {',', ';', '\t'});
    style.decimal_comma = style.delimiter != ',' && pen.chance(0.4);
    style.quotes = pen.chance(0.15);
    return style;
}

// Receivers are slower than the sensors beside them: their cells are blank in between.
inline void slow_down_receiver(Pen& pen) {
    const std::size_t every = pick<std::size_t>(pen.engine(), {2, 5, 10});
    for (Column& column : pen.table().columns) {
        if (column.meaning != Meaning::latitude && column.meaning != Meaning::longitude) continue;
        column.every = every;
        column.cell = [cell = column.cell, every](std::size_t i) { return i % every == 0 ? cell(i) : std::string(); };
    }
}

inline Table draw(std::uint64_t seed) {
    Engine engine(seed);
    Table table;
    const std::size_t manner = engine() % 4;
    const double rate = manner == 2 ? pick<double>(engine, {1.0, 2.0, 5.0})
                                    : pick<double>(engine, {1.0, 5.0, 10.0, 20.0, 25.0, 50.0, 100.0});
    table.drive = drive(engine, rate, between(engine, 100.0, 240.0));
    const std::vector<std::vector<UnitStyle>> styles{{UnitStyle::brackets, UnitStyle::none},
                                                     {UnitStyle::none, UnitStyle::suffix},
                                                     {UnitStyle::brackets},
                                                     {UnitStyle::brackets, UnitStyle::square, UnitStyle::row}};
    Pen pen(engine, table, pick(engine, styles[manner]));
    if (manner == 2 && pen.chance(0.2)) pen.bear_units_in_cells();
    const std::vector<std::pair<std::string, void (*)(Pen&)>> manners{
        {"telephone", telephone}, {"data frame", data_frame}, {"diagnosis", diagnosis}, {"research", research}};
    table.manner = manners[manner].first;
    manners[manner].second(pen);
    if (manner == 1 && pen.chance(0.06)) {
        std::erase_if(table.columns, [](const Column& column) { return column.is_clock; });
        table.has_clock = false;
    }
    if (rate >= 20.0 && pen.chance(0.4)) slow_down_receiver(pen);
    const Style style = draw_style(pen, manner);
    const auto line = [&](auto&& cell_of) {
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            if (i > 0) table.text += style.delimiter;
            table.text += cell_of(table.columns[i]);
        }
        table.text += '\n';
    };
    if (manner == 3 && pen.chance(0.5)) {
        table.text += "Invented proving ground\nOperator: A. Invented\n\n";
        table.first_line += 3;
    }
    line([](const Column& column) { return column.header; });
    if (pen.style() == UnitStyle::row) {
        line([](const Column& column) { return column.unit_cell; });
        ++table.first_line;
    }
    for (std::size_t i = 0; i < table.drive.rows.size(); ++i)
        line([&](const Column& column) { return written(column.cell(i), style); });
    return table;
}

} // namespace lapwright::import::drawn
