// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/positions.h"

#include "core/base/constants.h"
#include "core/import/channels/find_column.h"
#include "core/import/text/wording.h"

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
    LineTally beyond;
    LineTally zero;
    LineTally half;
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
        LineTally& tally = !both ? findings.half : lat == 0.0 && lon == 0.0 ? findings.zero : findings.beyond;
        tally.add(lines[i]);
        lat = absent;
        lon = absent;
        ++latitude.absent;
        ++longitude.absent;
    }
    return findings;
}

void tell(std::vector<recording::Warning>& warnings, const LineTally& tally, const std::string& code,
          const std::string& why) {
    if (tally.count == 0) return;
    warnings.push_back(
        {code, counted(tally.count, "position", "positions") + " " + why + ": left out (" + lines_text(tally) + ")",
         tally.first_lines.front()});
}

} // namespace

std::vector<recording::Warning> mend_positions(Table& table, const std::vector<ColumnGuess>& guesses) {
    TableColumn* const latitude = find_column(table, guesses, Role::channel, Meaning::latitude);
    TableColumn* const longitude = find_column(table, guesses, Role::channel, Meaning::longitude);
    apply_letters(latitude, find_column(table, guesses, Role::north_south, Meaning::other));
    apply_letters(longitude, find_column(table, guesses, Role::east_west, Meaning::other));
    std::vector<recording::Warning> warnings;
    if (!latitude || !longitude) return warnings;
    const Findings findings = check_pairs(*latitude, *longitude, table.lines);
    tell(warnings, findings.beyond, "positions_off_the_globe", "beyond 90° of latitude or 360° of longitude");
    tell(warnings, findings.zero, "positions_zero", "of exactly 0, 0, as receivers write without a fix");
    tell(warnings, findings.half, "positions_half", "with only one of latitude and longitude");
    return warnings;
}

} // namespace lapwright::import
