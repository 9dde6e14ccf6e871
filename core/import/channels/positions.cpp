// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/mend_values.h"

#include "core/base/constants.h"

#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

using recording::Meaning;

constexpr double absent = std::numeric_limits<double>::quiet_NaN();

void apply_letters(TableColumn* position, const TableColumn* letters) {
    if (!position || !letters) return;
    for (std::size_t i = 0; i < position->values.size(); ++i)
        if (letters->values[i] < 0.0) position->values[i] = -std::abs(position->values[i]);
}

struct Findings {
    recording::LineTally beyond;
    recording::LineTally zero;
    recording::LineTally half;
};

Findings check_pairs(TableColumn& latitude, TableColumn& longitude, const std::vector<std::uint32_t>& lines) {
    Findings findings;
    const double pole = base::pi / 2.0 * (1.0 + 1e-12);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        double& lat = latitude.values[i];
        double& lon = longitude.values[i];
        const bool both = !std::isnan(lat) && !std::isnan(lon);
        if (!both && std::isnan(lat) && std::isnan(lon)) continue;
        if (both && lat != 0.0 && std::abs(lat) <= pole && std::abs(lon) <= base::pi) continue;
        if (both && std::abs(lat) <= pole && lon > base::pi && lon <= 2.0 * base::pi) {
            lon -= 2.0 * base::pi;
            continue;
        }
        if (both && lat == 0.0 && lon != 0.0 && std::abs(lon) <= base::pi) continue;
        recording::LineTally& tally = !both                      ? findings.half
                                      : lat == 0.0 && lon == 0.0 ? findings.zero
                                                                 : findings.beyond;
        tally.add(lines[i]);
        lat = absent;
        lon = absent;
        ++latitude.absent;
        ++longitude.absent;
    }
    return findings;
}

} // namespace

TableColumn* find_column(Table& table, const std::vector<ColumnGuess>& guesses, Role role, recording::Meaning meaning) {
    for (std::size_t i = 0; i < guesses.size(); ++i)
        if (guesses[i].role == role && guesses[i].meaning == meaning && !table.columns[i].values.empty())
            return &table.columns[i];
    return nullptr;
}

std::vector<recording::Warning> mend_positions(Table& table, const std::vector<ColumnGuess>& guesses) {
    TableColumn* const latitude = find_column(table, guesses, Role::channel, Meaning::latitude);
    TableColumn* const longitude = find_column(table, guesses, Role::channel, Meaning::longitude);
    apply_letters(latitude, find_column(table, guesses, Role::north_south, Meaning::other));
    apply_letters(longitude, find_column(table, guesses, Role::east_west, Meaning::other));
    std::vector<recording::Warning> warnings;
    if (!latitude || !longitude) return warnings;
    const Findings findings = check_pairs(*latitude, *longitude, table.lines);
    const auto tell = [&](recording::WarningKind kind, const recording::LineTally& seen) {
        if (seen.count > 0) warnings.push_back({.kind = kind, .seen = seen});
    };
    tell(recording::WarningKind::positions_off_the_globe, findings.beyond);
    tell(recording::WarningKind::positions_zero, findings.zero);
    tell(recording::WarningKind::positions_half, findings.half);
    return warnings;
}

} // namespace lapwright::import
