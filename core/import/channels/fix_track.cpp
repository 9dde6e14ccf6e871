// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/fix_track.h"

#include "core/base/constants.h"
#include "core/import/channels/agreement.h"
#include "core/import/channels/channel_build.h"
#include "core/import/channels/column_warnings.h"
#include "core/import/channels/trust.h"
#include "core/import/columns/speed_check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::Channel;
using recording::Meaning;
using recording::Recording;

struct FixFigure {
    double Fix::* value;
    Meaning meaning;
    const char* name;
    Unit unit;
};

constexpr std::array quantities{
    FixFigure{&Fix::latitude, Meaning::latitude, "latitude", Unit::degree},
    FixFigure{&Fix::longitude, Meaning::longitude, "longitude", Unit::degree},
    FixFigure{&Fix::altitude_m, Meaning::altitude, "altitude", Unit::metre},
    FixFigure{&Fix::speed_mps, Meaning::speed, "speed", Unit::metre_per_second},
    FixFigure{&Fix::course, Meaning::course, "course", Unit::degree},
    FixFigure{&Fix::satellites, Meaning::satellites, "satellites", Unit::none},
    FixFigure{&Fix::dilution, Meaning::position_dilution, "dilution of precision", Unit::none},
    FixFigure{&Fix::accuracy_m, Meaning::position_accuracy, "position accuracy", Unit::metre},
};

// On a sphere: good to 0.3 %, which is more than a derived speed deserves.
double distance_m(double latitude_a, double longitude_a, double latitude_b, double longitude_b) {
    const double north = latitude_b - latitude_a;
    const double turn = std::remainder(longitude_b - longitude_a, 2.0 * base::pi);
    return std::hypot(north, turn * std::cos(0.5 * (latitude_a + latitude_b))) * mean_earth_radius_m;
}

// Central differences; at the ends and at splits one-sided.
std::vector<double> derived_speed(const Channel& latitude, const Channel& longitude,
                                  const std::vector<double>& splits_s) {
    const auto& time_s = *latitude.time_s;
    const auto joined = [&](std::size_t i) { return !std::ranges::binary_search(splits_s, time_s[i]); };
    std::vector<double> speed_mps(time_s.size(), 0.0);
    for (std::size_t i = 0; i < time_s.size(); ++i) {
        const std::size_t from = i > 0 && joined(i) ? i - 1 : i;
        const std::size_t to = i + 1 < time_s.size() && joined(i + 1) ? i + 1 : i;
        if (from == to) continue;
        speed_mps[i] =
            distance_m(latitude.values[from], longitude.values[from], latitude.values[to], longitude.values[to]) /
            (time_s[to] - time_s[from]);
    }
    return speed_mps;
}

void add_derived_speed(Recording& recording) {
    const Channel* const latitude = recording.find(Meaning::latitude);
    const Channel* const longitude = recording.find(Meaning::longitude);
    if (recording.find(Meaning::speed) || !latitude || !longitude || latitude->time_s != longitude->time_s) return;
    Channel speed;
    speed.name = "speed (derived from positions)";
    speed.meaning = Meaning::speed;
    speed.source_unit = Unit::metre_per_second;
    speed.time_s = latitude->time_s;
    speed.source_lines = latitude->source_lines;
    speed.values = derived_speed(*latitude, *longitude, recording.splits_s);
    recording.channels.push_back(std::move(speed));
    recording.warnings.push_back({.kind = recording::WarningKind::speed_derived});
}

ColumnGuess known(const Channel& channel) {
    ColumnGuess guess;
    guess.role = Role::channel;
    guess.name = channel.name;
    guess.meaning = channel.meaning;
    guess.unit = channel.source_unit;
    guess.unit_text = std::string(base::symbol(channel.source_unit));
    guess.unit_written = true;
    guess.confidence = 1.0;
    return guess;
}

// A speed in another unit than the standard's, or of another thing, shows beside the positions.
void hold_speed(Recording& recording, std::vector<ColumnGuess> guesses) {
    std::vector<std::size_t> columns(guesses.size());
    std::iota(columns.begin(), columns.end(), std::size_t{0});
    const auto warnings = hold_together(recording, guesses, columns);
    recording.warnings.insert(recording.warnings.end(), warnings.begin(), warnings.end());
    tell_doubts(recording, guesses);
}

} // namespace

bool add_fixes(Recording& recording, const std::vector<Fix>& fixes, ClockKind kind, double& first_reading_s,
               std::vector<FixColumn> columns) {
    std::vector<double> reading_s;
    std::vector<std::uint32_t> lines;
    for (const Fix& fix : fixes) {
        reading_s.push_back(fix.time_s);
        lines.push_back(fix.line);
    }
    TimeAxis axis = make_time_axis(reading_s, lines, kind);
    if (axis.time_s.size() < 2) return false;
    std::vector<Fix> kept = fixes;
    keep_rows(kept, axis.rows);
    keep_rows(lines, axis.rows);
    recording.warnings.insert(recording.warnings.end(), axis.warnings.begin(), axis.warnings.end());
    recording.splits_s = axis.splits_s;
    // A pause of reception is a gap, not a jump of the clock:
    // the file's own word makes it a split only when it is long.
    for (std::size_t i = 1; i < kept.size(); ++i)
        if (kept[i].new_segment && axis.time_s[i] - axis.time_s[i - 1] > 1.0)
            recording.splits_s.push_back(axis.time_s[i]);
    std::ranges::sort(recording.splits_s);
    recording.splits_s.erase(std::ranges::unique(recording.splits_s).begin(), recording.splits_s.end());
    recording.duration_s = axis.time_s.back();
    first_reading_s = axis.first_reading_s;

    SharedRows rows(std::move(axis.time_s), std::move(lines));
    std::vector<ColumnGuess> guesses; // of each channel
    for (const FixFigure& quantity : quantities) {
        std::vector<double> values;
        bool any = false;
        bool blanks = false;
        for (const Fix& fix : kept) {
            values.push_back(fix.*quantity.value);
            const bool finite = std::isfinite(values.back());
            any = any || finite;
            blanks = blanks || !finite;
        }
        if (!any) continue;
        Channel channel;
        channel.name = quantity.name;
        channel.meaning = quantity.meaning;
        channel.source_unit = quantity.unit;
        rows.attach(channel, std::move(values), blanks);
        guesses.push_back(known(channel));
        recording.channels.push_back(std::move(channel));
    }
    for (FixColumn& column : columns) {
        keep_rows(column.values, axis.rows);
        Channel channel;
        channel.name = column.guess.name;
        channel.meaning = column.guess.meaning;
        channel.source_unit = column.guess.unit;
        channel.source_unit_text = column.guess.unit_text;
        rows.attach(channel, std::move(column.values), true);
        if (channel.size() == 0) continue;
        guesses.push_back(std::move(column.guess));
        recording.channels.push_back(std::move(channel));
    }
    const Channel* const latitude = recording.find(Meaning::latitude);
    if (!latitude || latitude->size() < 2) return false;
    hold_speed(recording, std::move(guesses));
    add_derived_speed(recording);
    const auto trust = tell_trust(recording);
    recording.warnings.insert(recording.warnings.end(), trust.begin(), trust.end());
    return true;
}

} // namespace lapwright::import
