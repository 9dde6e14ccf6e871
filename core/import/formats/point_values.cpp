// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/point_values.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace lapwright::import {
namespace {

using recording::Meaning;

constexpr std::size_t rows_in_block = 60;
constexpr std::size_t max_blocks = 17;

struct StandardColumn {
    const char* header;
    double Fix::* place;
    double factor; // from SI
};

// What the standard itself names goes first: another speed beside it is another's.
constexpr std::array standard{StandardColumn{"time (s)", &Fix::time_s, 1.0},
                              StandardColumn{"latitude (deg)", &Fix::latitude, 180.0 / base::pi},
                              StandardColumn{"longitude (deg)", &Fix::longitude, 180.0 / base::pi},
                              StandardColumn{"speed over ground (m/s)", &Fix::speed_mps, 1.0},
                              StandardColumn{"course (deg)", &Fix::course, 180.0 / base::pi},
                              StandardColumn{"altitude (m)", &Fix::altitude_m, 1.0},
                              StandardColumn{"satellites", &Fix::satellites, 1.0},
                              StandardColumn{"hdop", &Fix::dilution, 1.0}};

std::string cell(double value) {
    return std::isfinite(value) ? base::exact_text(value) : std::string();
}

// Rows from a few places of the session, as of a table.
Samples samples_of(const std::vector<Fix>& fixes, const std::vector<FixColumn>& columns) {
    Samples samples;
    const std::size_t blocks = std::min(max_blocks, fixes.size() / rows_in_block + 1);
    for (std::size_t block = 0; block < blocks; ++block) {
        samples.block_starts.push_back(samples.rows.size());
        const std::size_t from = fixes.size() * block / blocks;
        const std::size_t to = std::min(from + rows_in_block, fixes.size() * (block + 1) / blocks);
        for (std::size_t i = from; i < to; ++i) {
            SampleRow row;
            for (const StandardColumn& column : standard)
                row.push_back(cell(fixes[i].*column.place * column.factor));
            for (const FixColumn& column : columns)
                row.push_back(cell(column.values[i]));
            samples.rows.push_back(std::move(row));
        }
    }
    return samples;
}

Layout layout_of(const std::vector<FixColumn>& columns) {
    Layout layout;
    for (const StandardColumn& column : standard)
        layout.names.emplace_back(column.header);
    for (const FixColumn& column : columns)
        layout.names.push_back(column.guess.name);
    layout.columns = layout.names.size();
    layout.units.resize(layout.columns);
    layout.has_names = true;
    return layout;
}

} // namespace

void PointValues::add(std::string_view name, double value, std::size_t fix) {
    auto known = values_.find(name);
    if (known == values_.end() && values_.size() < max_names)
        known = values_.emplace(std::string(name), std::vector<Value>{}).first;
    if (known != values_.end()) known->second.push_back({static_cast<std::uint32_t>(fix), value});
}

std::vector<FixColumn> PointValues::columns(const std::vector<Fix>& fixes) && {
    std::vector<FixColumn> columns;
    for (auto& [name, values] : std::exchange(values_, {})) {
        FixColumn column{{}, std::vector<double>(fixes.size(), Fix::absent)};
        column.guess.name = name;
        for (const Value& value : values)
            if (value.fix < fixes.size()) column.values[value.fix] = value.value;
        columns.push_back(std::move(column));
    }
    if (columns.empty()) return columns;
    const auto guesses = guess_columns(layout_of(columns), samples_of(fixes, columns));
    for (std::size_t i = 0; i < columns.size(); ++i) {
        columns[i].guess = guesses[standard.size() + i];
        ColumnGuess& guess = columns[i].guess;
        // A point has one time, and numbers alone are kept.
        if (guess.role != Role::channel) guess.meaning = Meaning::other;
        guess.role = Role::channel;
        const auto& unit = base::definition(guess.unit);
        for (double& value : columns[i].values)
            value = value * guess.scale * unit.factor + unit.offset;
    }
    return columns;
}

} // namespace lapwright::import
