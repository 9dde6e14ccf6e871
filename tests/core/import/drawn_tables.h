// SPDX-License-Identifier: GPL-3.0-or-later
// Tables drawn in the manner of telephones, data frames, on-board-diagnosis loggers and research data: what the columns
// are called and in which unit they stand, how the clock is written, what stands for "no value", which columns are none
// of our business.  All people and roads are invented.
#pragma once

#include "core/base/number_text.h"
#include "core/base/units.h"
#include "core/import/drawn_drive.h"
#include "core/recording/recording.h"

#include <functional>
#include <string>
#include <vector>

namespace lapwright::import::drawn {

using base::Unit;
using recording::Meaning;

using Engine = std::mt19937_64;

struct Column {
    std::string header;
    std::string unit_cell; // for a row of units
    Meaning meaning = Meaning::other;
    std::function<double(const DriveRow&)> value; // SI; none: a column that means nothing here
    std::function<std::string(std::size_t)> cell; // of that row
    double tolerance = 0.0;                       // SI, of the rounding
    bool is_clock = false;
    std::size_t every = 1; // only each so many-th row has it
};

struct Table {
    std::string text;
    Drive drive;
    std::vector<Column> columns;
    std::size_t first_line = 2;
    double clock_step_s = 0.0; // of the written stamps
    bool has_clock = true;
    std::string manner;
};

template <typename T>
const T& pick(Engine& engine, const std::vector<T>& list) {
    return list[engine() % list.size()];
}

inline std::string fixed(double value, int decimals) {
    return base::fixed_text(value, decimals);
}

inline std::string whole(std::size_t value) {
    return base::integer_text(static_cast<std::int64_t>(value));
}

struct Civil {
    std::string year, month, day, clock; // clock with thousandths
    int month_number = 1;
};

inline Civil civil(double unix_s) {
    const std::string utc = recording::utc_text(std::floor(unix_s));
    const auto thousandths = static_cast<std::size_t>(std::llround((unix_s - std::floor(unix_s)) * 1000.0)) % 1000;
    const std::string fraction = whole(1000 + thousandths).substr(1);
    return {utc.substr(0, 4), utc.substr(5, 2), utc.substr(8, 2), utc.substr(11, 8) + "." + fraction,
            static_cast<int>(*base::parse_integer(utc.substr(5, 2)))};
}

// How a header writes a unit, "" where it writes none.
struct Spelled {
    Unit unit;
    std::string text;
};

enum class UnitStyle { brackets, square, suffix, blank, row, none };

inline std::string header_with(const std::string& name, const std::string& unit, UnitStyle style) {
    if (unit.empty()) return name;
    switch (style) {
    case UnitStyle::brackets:
        return name + " (" + unit + ")";
    case UnitStyle::square:
        return name + " [" + unit + "]";
    case UnitStyle::suffix:
        return name + "_" + unit;
    case UnitStyle::blank:
        return name + " " + unit;
    default:
        return name;
    }
}

// Draws columns of one table.
class Pen {
  public:
    Pen(Engine& engine, Table& table, UnitStyle style) : engine_(engine), table_(table), style_(style) {}

    void measured(Meaning meaning, double DriveRow::* place, const std::vector<std::string>& names,
                  const std::vector<Spelled>& units, int decimals, double invalid_share = 0.0,
                  const std::string& invalid = "") {
        const Spelled& unit = pick(engine_, units);
        Column column;
        column.header = header_with(name_of(meaning, unit, names), unit.text, style_);
        column.unit_cell = unit.text;
        column.meaning = meaning;
        column.value = [place](const DriveRow& row) { return row.*place; };
        const double step = std::pow(10.0, -decimals);
        column.tolerance = 0.51 * step * base::definition(unit.unit).factor + 1e-9;
        const Unit written = unit.unit;
        const bool units_in_cells = cells_bear_units_ && !unit.text.empty() && meaning != Meaning::latitude;
        const std::string behind = units_in_cells ? " " + unit.text : "";
        if (units_in_cells) column.header = column.header.substr(0, column.header.size() - unit.text.size() - 3);
        std::vector<bool> absent(table_.drive.rows.size());
        for (std::size_t i = 0; i < absent.size(); ++i)
            absent[i] = invalid_share > 0.0 && (i < 3 || between(engine_, 0.0, 1.0) < invalid_share);
        column.cell = [this, place, written, decimals, absent, invalid, behind](std::size_t i) {
            if (absent[i]) return invalid;
            return fixed(base::from_si(table_.drive.rows[i].*place, written), decimals) + behind;
        };
        table_.columns.push_back(std::move(column));
    }

    void free(const std::string& header, std::function<std::string(std::size_t)> cell, const std::string& unit = "") {
        table_.columns.push_back({header_with(header, unit, style_), unit, Meaning::other, {}, std::move(cell), 0.0});
    }

    void count(const std::vector<std::string>& names) {
        const std::size_t first = engine_() % 2;
        free(pick(engine_, names), [first](std::size_t i) { return whole(first + i); });
    }

    // A wandering reading between two values.
    void wander(const std::string& header, double low, double high, int decimals, const std::string& unit = "") {
        const double rate = between(engine_, 0.01, 0.5);
        const double phase = between(engine_, 0.0, 6.0);
        free(
            header,
            [=](std::size_t i) {
                return fixed(low + (high - low) * 0.5 * (1.0 + std::sin(rate * static_cast<double>(i) + phase)),
                             decimals);
            },
            unit);
    }

    void bear_units_in_cells() { cells_bear_units_ = true; }
    [[nodiscard]] bool chance(double share) { return between(engine_, 0.0, 1.0) < share; }
    [[nodiscard]] Engine& engine() { return engine_; }
    [[nodiscard]] const Drive& drive() const { return table_.drive; }
    [[nodiscard]] Table& table() { return table_; }
    [[nodiscard]] UnitStyle style() const { return style_; }

  private:
    // Now and then one that says nothing, beside a unit that says what it may be.
    std::string name_of(Meaning meaning, const Spelled& unit, const std::vector<std::string>& names) {
        const std::string said = pick(engine_, names);
        const bool may_be_told = meaning == Meaning::speed || meaning == Meaning::lateral_acceleration ||
                                 meaning == Meaning::longitudinal_acceleration;
        const bool written = style_ != UnitStyle::none && !unit.text.empty();
        // Beside a speed of the wheels the one of a receiver without a name is not told from it.
        const bool alone = table_.manner != "diagnosis" && !cells_bear_units_;
        if (!may_be_told || !written || !alone || engine_() % 8 != 0) return said;
        return pick<std::string>(engine_, {"Foo", "Kanal 7", "X17", "Wert b"}) + whole(table_.columns.size());
    }

    Engine& engine_;
    Table& table_;
    UnitStyle style_;
    bool cells_bear_units_ = false;
};

} // namespace lapwright::import::drawn
