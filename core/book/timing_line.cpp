// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/timing_line.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/book/samples.h"

#include <algorithm>
#include <cmath>

namespace lapwright::book {
namespace {

using base::said;
using base::word;

constexpr double earth_radius_m = 6.371e6; // mean; the lines are less than some kilometres apart
constexpr std::size_t max_named = 3;

std::optional<double> value_at(const recording::Channel& channel, double time_s) {
    const std::vector<double>& stamps = *channel.time_s;
    const auto after = std::ranges::lower_bound(stamps, time_s);
    if (after == stamps.begin() || after == stamps.end()) return std::nullopt;
    const auto i = static_cast<std::size_t>(after - stamps.begin());
    const double part = (time_s - stamps[i - 1]) / (stamps[i] - stamps[i - 1]);
    const double value = channel.values[i - 1] + part * (channel.values[i] - channel.values[i - 1]);
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

std::optional<double> middle_at_starts(const recording::Channel& channel, std::span<const lap::Lap> laps) {
    std::vector<double> values;
    for (const lap::Lap& lap : laps)
        if (lap.kind == lap::LapKind::flying)
            if (const auto value = value_at(channel, lap.start_s)) values.push_back(*value);
    if (values.empty()) return std::nullopt;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

double apart_m(const motion::Geodetic& one, const motion::Geodetic& other) {
    return earth_radius_m * std::hypot(one.latitude_rad - other.latitude_rad,
                                       (one.longitude_rad - other.longitude_rad) * std::cos(one.latitude_rad));
}

std::string name_of(const SessionSummary& session) {
    if (!session.start_unix_s) return session.source.file_name;
    return said("%1 of %2", {session.source.file_name, base::date_text(*session.start_unix_s)});
}

} // namespace

std::optional<motion::Geodetic> place_of_line(Database& database, SessionId id, std::span<const lap::Lap> laps) {
    if (std::ranges::none_of(laps, [](const lap::Lap& lap) { return lap.kind == lap::LapKind::flying; }))
        return std::nullopt;
    const auto latitude = read_channel(database, id, recording::Meaning::latitude);
    if (!latitude) return std::nullopt;
    const auto longitude = read_channel(database, id, recording::Meaning::longitude);
    if (!longitude) return std::nullopt;
    const auto latitude_rad = middle_at_starts(*latitude, laps);
    const auto longitude_rad = middle_at_starts(*longitude, laps);
    if (!latitude_rad || !longitude_rad) return std::nullopt;
    return motion::Geodetic{*latitude_rad, *longitude_rad, 0.0};
}

std::vector<bool> timed_elsewhere(const std::vector<SeasonSession>& season) {
    struct Line {
        motion::Geodetic place;
        int sessions = 0;
    };
    std::vector<Line> lines;
    std::vector<std::optional<std::size_t>> line_of(season.size());
    std::optional<std::size_t> usual;
    for (std::size_t i = 0; i < season.size(); ++i) {
        const auto& place = season[i].timing_line;
        if (!place) continue;
        const auto known =
            std::ranges::find_if(lines, [&](const Line& line) { return apart_m(line.place, *place) <= same_line_m; });
        const auto index = static_cast<std::size_t>(known - lines.begin());
        if (known == lines.end()) lines.push_back({*place, 0});
        line_of[i] = index;
        if (++lines[index].sessions >= (usual ? lines[*usual].sessions : 0)) usual = index;
    }
    std::vector<bool> elsewhere(season.size());
    for (std::size_t i = 0; i < season.size(); ++i)
        elsewhere[i] = line_of[i] && line_of[i] != usual;
    return elsewhere;
}

std::string timed_elsewhere_text(const std::vector<SeasonSession>& season) {
    const std::vector<bool> elsewhere = timed_elsewhere(season);
    std::string names;
    std::size_t count = 0;
    for (std::size_t i = 0; i < season.size(); ++i) {
        if (!elsewhere[i]) continue;
        if (++count <= max_named) names += (count > 1 ? ", " : "") + name_of(season[i].session);
    }
    if (count == 0) return {};
    if (count > max_named)
        names = said("%1 and %2 more", {names, base::integer_text(static_cast<std::int64_t>(count - max_named))});
    return said(count == 1
                    ? word("One session was timed at another line of the track than the rest, so that lap times "
                           "differ a little without a reason: %2.")
                    : word("%1 sessions were timed at another line of the track than the rest, so that lap times "
                           "differ a little without a reason: %2."),
                {base::integer_text(static_cast<std::int64_t>(count)), names});
}

} // namespace lapwright::book
