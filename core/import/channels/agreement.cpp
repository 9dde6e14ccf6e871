// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source: wheels slip by a few percent, receivers agree with themselves to one.
#include "core/import/channels/agreement.h"

#include "core/base/translation.h"
#include "core/import/channels/axis_check.h"
#include "core/import/columns/speed_check.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::Channel;
using recording::DoubtKind;
using recording::Meaning;
using recording::Recording;
using recording::Warning;
using recording::WarningKind;

constexpr double chord_s = 1.0;
constexpr double longest_chord_s = 3.0;
constexpr std::size_t max_places = 5000;
constexpr std::size_t enough_places = 30;
constexpr double agrees = 0.2;       // off by less, a speed is believed
constexpr double good_fit = 0.05;    // mph and knots are 15 % apart
constexpr double same_motion = 0.15; // spread of the ratios of two speeds of one motion
// Two speeds over the ground agree this well: then knots are told from mph.
constexpr double close_motion = 0.05;
constexpr double close_fit = 0.02;
constexpr double unrelated = 0.2;
constexpr double shortest_lap_s = 5.0;
constexpr double min_turning_mps = 4.0;

// The sample next to that time, not smoothed with its neighbour; NaN outside the channel.
double nearest_value(const Channel& channel, double time_s) {
    const auto& stamps = *channel.time_s;
    const auto behind = std::ranges::lower_bound(stamps, time_s);
    if (behind == stamps.end() || behind == stamps.begin()) return std::numeric_limits<double>::quiet_NaN();
    const auto i = static_cast<std::size_t>(behind - stamps.begin());
    return channel.values[stamps[i] - time_s < time_s - stamps[i - 1] ? i : i - 1];
}

struct Place {
    std::vector<double> east_m;
    std::vector<double> north_m;
    const std::vector<double>* time_s = nullptr;
};

std::optional<Place> places_of(const Recording& recording) {
    const Channel* const latitude = recording.find(Meaning::latitude);
    const Channel* const longitude = recording.find(Meaning::longitude);
    const Channel* const east = recording.find(Meaning::east);
    const Channel* const north = recording.find(Meaning::north);
    if (latitude && longitude && latitude->time_s == longitude->time_s) {
        Place place{longitude->values, latitude->values, latitude->time_s.get()};
        const double around_m = mean_earth_radius_m * std::cos(latitude->values.front());
        for (double& angle : place.east_m)
            angle *= around_m;
        for (double& angle : place.north_m)
            angle *= mean_earth_radius_m;
        return place;
    }
    if (east && north && east->time_s == north->time_s) return Place{east->values, north->values, east->time_s.get()};
    return std::nullopt;
}

void rescale(Channel& channel, ColumnGuess& guess, Unit unit) {
    const double factor = base::definition(unit).factor / base::definition(guess.unit).factor;
    for (double& value : channel.values)
        value *= factor;
    channel.source_unit = unit;
    guess.unit = unit;
    guess.doubt.clear();
    guess.confidence = std::max(guess.confidence, 0.85);
}

// The speed over the ground by the file's columns, with the wording of a doubt.
class Speeds {
  public:
    Speeds(Recording& recording, std::vector<ColumnGuess>& guesses, std::span<const std::size_t> columns)
        : recording_(recording), guesses_(guesses), columns_(columns), ground_(ground_speed(recording)) {}

    void settle(std::vector<Warning>& warnings) {
        if (ground_.time_s.size() < enough_places) return;
        for (std::size_t k = 0; k < columns_.size(); ++k) {
            const Meaning meaning = recording_.channels[k].meaning;
            if (meaning == Meaning::speed || meaning == Meaning::wheel_speed) settle_one(k, warnings);
        }
    }

  private:
    void settle_one(std::size_t k, std::vector<Warning>& warnings) {
        Channel& channel = recording_.channels[k];
        ColumnGuess& guess = guesses_[columns_[k]];
        std::vector<double> beside;
        for (const double time_s : ground_.time_s)
            beside.push_back(nearest_value(channel, time_s));
        const auto ratio = ratio_to_speed(beside, ground_.speed_mps);
        if (!ratio || !std::isfinite(ratio->middle)) return;
        const bool steady = ratio->spread <= same_motion;
        const double off = std::abs(ratio->middle - 1.0);
        const UnitFit fit = unit_of_ratio(ratio->middle / base::definition(guess.unit).factor);
        const bool same = ratio->spread <= close_motion && fit.misfit < close_fit && off > 5.0 * close_fit;
        if (off < agrees && ratio->spread <= unrelated && !same) return settle_doubt(guess, *ratio);
        const auto unit = steady && fit.misfit < good_fit ? std::optional(fit.unit) : std::nullopt;
        const bool as_written = unit && guess.unit_text == base::symbol(*unit); // the samples alone spoke against it
        if (unit && (!guess.unit_written || as_written) && !guess.settled) return rescale(channel, guess, *unit);
        Warning warning{.kind = WarningKind::speed_contradicts, .of = guess.name};
        if (unit)
            warning.texts = {guess.settled ? std::string(base::symbol(guess.unit)) : guess.unit_text,
                             std::string(base::symbol(*unit))};
        else if (steady)
            warning.figures = {ratio->middle};
        if (guess.settled) {
            warning.kind = WarningKind::speed_said;
            return warnings.push_back(std::move(warning));
        }
        warnings.push_back(std::move(warning));
        if (unit) rescale(channel, guess, *unit);
        if (!unit) guess.meaning = channel.meaning = Meaning::other;
        guess.doubt.clear();
    }

    static void settle_doubt(ColumnGuess& guess, const Ratio& ratio) {
        const bool of_meaning =
            guess.doubt.kind == DoubtKind::taken_by_motion || guess.doubt.kind == DoubtKind::part_of_unit;
        if (guess.unit_written || of_meaning || std::abs(ratio.middle - 1.0) > good_fit) return;
        guess.doubt.clear();
        guess.confidence = std::max(guess.confidence, 0.85);
    }

    Recording& recording_;
    std::vector<ColumnGuess>& guesses_;
    std::span<const std::size_t> columns_;
    GroundSpeed ground_;
};

// Changes of a lap number, and how many of them go down.
void settle_laps(Channel& channel, ColumnGuess& guess, double duration_s, std::vector<Warning>& warnings) {
    std::size_t changes = 0;
    std::size_t down = 0;
    for (std::size_t i = 1; i < channel.size(); ++i) {
        if (channel.values[i] != channel.values[i - 1]) ++changes;
        if (channel.values[i] < channel.values[i - 1]) ++down;
    }
    if (changes > 3 && static_cast<double>(changes) * shortest_lap_s > duration_s) {
        guess.doubt = {DoubtKind::laps_too_short, {}, {duration_s / static_cast<double>(changes)}};
        guess.meaning = Meaning::other;
        channel.meaning = Meaning::other;
    } else if (down > 0) {
        warnings.push_back({.kind = WarningKind::lap_numbers_backwards, .seen = {down, {}}});
    }
}

// Without a written unit the one in which the axis reads as much as the positions say; another than the written one
// only where that is far off and the other close.
void settle_size(Channel& channel, ColumnGuess& guess, double read_over_driven) {
    const double factor = base::definition(guess.unit).factor;
    const auto misfit = [&](Unit unit) {
        return std::abs(std::log(read_over_driven * base::definition(unit).factor / factor));
    };
    if (guess.unit_written && misfit(guess.unit) < std::log(4.0)) return;
    for (const Unit unit : {Unit::metre_per_second_squared, Unit::standard_gravity, Unit::milli_gravity}) {
        if (unit == guess.unit || misfit(unit) > std::log(guess.unit_written ? 1.4 : 2.0)) continue;
        rescale(channel, guess, unit);
        if (guess.unit_written)
            guess.doubt = {DoubtKind::written_unit_wrong, {guess.unit_text, std::string(base::symbol(unit))}};
        return;
    }
}

// A name of an axis is believed where the positions say the same; without them it is a guess.
// Where they say the opposite it is turned: some loggers count to the right, or braking.
void settle_axis(const Recording& recording, Channel& channel, ColumnGuess& guess, std::vector<Warning>& warnings) {
    constexpr double named_by_axis = 0.8;
    constexpr double follows = 0.5;
    constexpr double points_there = 1.5; // so many times as much along its own direction as across it: within 34°
    constexpr double follows_well = 0.8;
    const bool unsure = guess.confidence < named_by_axis && !guess.settled;
    const bool lateral = guess.meaning == Meaning::lateral_acceleration;
    const std::string direction = lateral ? base::word("lateral") : base::word("longitudinal");
    if (const auto size = guess.settled ? std::nullopt : size_of_axis(recording, channel, lateral))
        settle_size(channel, guess, *size);
    const auto fit = fit_axis(recording, channel);
    if (!fit) {
        if (unsure && guess.doubt.empty()) guess.doubt = {DoubtKind::axis_without_direction, {direction}};
        return;
    }
    const double own = std::abs(lateral ? fit->left : fit->along);
    const double other = std::abs(lateral ? fit->along : fit->left);
    const bool points = fit->correlation >= follows && own >= points_there * other;
    if (points && fit->correlation >= follows_well && (lateral ? fit->left : fit->along) < 0.0) {
        for (double& value : channel.values)
            value = -value;
        warnings.push_back({.kind = WarningKind::axis_turned, .of = guess.name});
    }
    if (unsure && !points) {
        guess.doubt = {DoubtKind::axis_elsewhere, {direction}};
        guess.meaning = channel.meaning = Meaning::other;
    }
}

} // namespace

GroundSpeed ground_speed(const Recording& recording) {
    GroundSpeed ground;
    const auto place = places_of(recording);
    if (!place) return ground;
    const auto& time_s = *place->time_s;
    const std::size_t stride = std::max<std::size_t>(1, time_s.size() / max_places);
    std::size_t to = 0;
    for (std::size_t from = 0; from < time_s.size(); from += stride) {
        to = std::max(to, from + 1);
        while (to < time_s.size() && time_s[to] - time_s[from] < chord_s)
            ++to;
        if (to >= time_s.size()) break;
        const double step_s = time_s[to] - time_s[from];
        const auto split = std::ranges::upper_bound(recording.splits_s, time_s[from]);
        const bool across = split != recording.splits_s.end() && *split <= time_s[to];
        if (step_s > longest_chord_s || across) continue;
        ground.time_s.push_back(0.5 * (time_s[from] + time_s[to]));
        ground.speed_mps.push_back(
            std::hypot(place->east_m[to] - place->east_m[from], place->north_m[to] - place->north_m[from]) / step_s);
    }
    return ground;
}

std::vector<GroundAcceleration> ground_accelerations(const Recording& recording) {
    std::vector<GroundAcceleration> driven;
    const auto place = places_of(recording);
    if (!place) return driven;
    const auto& time_s = *place->time_s;
    const std::size_t stride = std::max<std::size_t>(1, time_s.size() / max_places);
    const auto behind = [&](std::size_t from) {
        return static_cast<std::size_t>(std::ranges::lower_bound(time_s, time_s[from] + chord_s) - time_s.begin());
    };
    for (std::size_t from = 0; from < time_s.size(); from += stride) {
        const std::size_t middle = behind(from);
        const std::size_t to = middle < time_s.size() ? behind(middle) : middle;
        if (to >= time_s.size()) break;
        const auto split = std::ranges::upper_bound(recording.splits_s, time_s[from]);
        const bool across = split != recording.splits_s.end() && *split <= time_s[to];
        if (time_s[to] - time_s[from] > 2.0 * longest_chord_s || across) continue;
        const double step_s = 0.5 * (time_s[to] - time_s[from]);
        const auto velocity = [&](const std::vector<double>& at, std::size_t a, std::size_t b) {
            return (at[b] - at[a]) / (time_s[b] - time_s[a]);
        };
        const double east = velocity(place->east_m, from, to);
        const double north = velocity(place->north_m, from, to);
        const double speed = std::hypot(east, north);
        if (!(speed > min_turning_mps)) continue;
        const double gain_east = velocity(place->east_m, middle, to) - velocity(place->east_m, from, middle);
        const double gain_north = velocity(place->north_m, middle, to) - velocity(place->north_m, from, middle);
        driven.push_back({time_s[from], time_s[to], (gain_east * east + gain_north * north) / (speed * step_s),
                          (gain_north * east - gain_east * north) / (speed * step_s)});
    }
    return driven;
}

std::vector<Warning> hold_together(Recording& recording, std::vector<ColumnGuess>& guesses,
                                   std::span<const std::size_t> columns) {
    std::vector<Warning> warnings;
    Speeds(recording, guesses, columns).settle(warnings);
    for (std::size_t k = 0; k < columns.size(); ++k) {
        Channel& channel = recording.channels[k];
        ColumnGuess& guess = guesses[columns[k]];
        const bool turned =
            channel.meaning == Meaning::lateral_acceleration || channel.meaning == Meaning::longitudinal_acceleration;
        if (turned) settle_axis(recording, channel, guess, warnings);
        if (channel.meaning == Meaning::lap_number && !guess.settled)
            settle_laps(channel, guess, recording.duration_s, warnings);
    }
    return warnings;
}

} // namespace lapwright::import
