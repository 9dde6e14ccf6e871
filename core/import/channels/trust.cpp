// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/trust.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::import {
namespace {

using recording::Channel;
using recording::Meaning;
using recording::Recording;
using recording::Warning;
using recording::WarningKind;

constexpr double scale_speed_mps = 10.0;
constexpr double scale_told_from = 0.01;

struct Gaps {
    std::size_t count = 0;
    double longest_s = 0.0;
    double longest_at_s = 0.0;
    std::size_t longest_index = 0; // of the stamp behind it
};

bool is_split(const Recording& recording, double time_s) {
    return std::ranges::binary_search(recording.splits_s, time_s);
}

Gaps find_gaps(const Recording& recording, const std::vector<double>& time_s, double rate_hz) {
    Gaps gaps;
    if (rate_hz <= 0.0) return gaps;
    const double limit_s = std::max(gap_steps / rate_hz, min_gap_s);
    for (std::size_t i = 1; i < time_s.size(); ++i) {
        const double step_s = time_s[i] - time_s[i - 1];
        if (step_s <= limit_s || is_split(recording, time_s[i])) continue;
        ++gaps.count;
        if (step_s <= gaps.longest_s) continue;
        gaps.longest_s = step_s;
        gaps.longest_at_s = time_s[i - 1];
        gaps.longest_index = i;
    }
    return gaps;
}

// The other channel's value at a time, by a straight line; nothing outside it.
std::optional<double> value_at(const Channel& channel, double time_s) {
    const auto& stamps = *channel.time_s;
    const auto behind = std::ranges::lower_bound(stamps, time_s);
    if (behind == stamps.end()) return std::nullopt;
    const auto i = static_cast<std::size_t>(behind - stamps.begin());
    if (stamps[i] == time_s) return channel.values[i];
    if (i == 0) return std::nullopt;
    const double part = (time_s - stamps[i - 1]) / (stamps[i] - stamps[i - 1]);
    return channel.values[i - 1] + part * (channel.values[i] - channel.values[i - 1]);
}

// The other channel's value at the stamp of the first one's sample i.
std::optional<double> value_beside(const Channel& channel, std::size_t i, const Channel& other) {
    return channel.time_s == other.time_s ? std::optional(other.values[i]) : value_at(other, (*channel.time_s)[i]);
}

// Every n-th of so many samples, so that a long recording takes no longer than a short one.
std::size_t stride(std::size_t samples) {
    constexpr std::size_t max_compared = 20'000;
    return std::max<std::size_t>(1, samples / max_compared);
}

// Channels of one table share their stamps: gaps are told once for all of them.
void tell_gaps(const Recording& recording, std::vector<Warning>& warnings) {
    std::map<const void*, bool> told;
    for (const Channel& channel : recording.channels) {
        if (!channel.time_s || std::exchange(told[channel.time_s.get()], true)) continue;
        const Gaps gaps = find_gaps(recording, *channel.time_s, channel.rate_hz());
        if (gaps.count == 0) continue;
        Warning warning{.kind = WarningKind::gaps,
                        .of = channel.name,
                        .seen = {gaps.count, {}},
                        .figures = {gaps.longest_s, gaps.longest_at_s}};
        if (channel.source_lines) warning.seen.first_lines = {(*channel.source_lines)[gaps.longest_index]};
        warnings.push_back(std::move(warning));
    }
}

void tell_repeats(const Recording& recording, std::vector<Warning>& warnings) {
    const Channel* const channel = recording.find(Meaning::latitude);
    if (!channel || channel->size() < 100) return;
    std::size_t moving = 0;
    std::size_t same = 0;
    const Channel* const speed = recording.find(Meaning::speed);
    for (std::size_t i = 1; i < channel->size(); i += stride(channel->size())) {
        if (speed && value_beside(*channel, i, *speed).value_or(0.0) < scale_speed_mps) continue;
        ++moving;
        if (channel->values[i] == channel->values[i - 1]) ++same;
    }
    if (moving < 100 || 2 * same < moving) return;
    const double rate = channel->rate_hz() * static_cast<double>(moving - same) / static_cast<double>(moving);
    warnings.push_back({.kind = WarningKind::positions_repeated, .figures = {channel->rate_hz(), rate}});
}

bool tells(const Recording& recording, std::initializer_list<WarningKind> kinds) {
    return std::ranges::any_of(recording.warnings, [&](const Warning& warning) {
        return std::ranges::find(kinds, warning.kind) != kinds.end();
    });
}

} // namespace

std::vector<ChannelTrust> judge_channels(const Recording& recording) {
    // Channels that were sampled together share their stamps: rate and gaps are found once for all of them.
    std::map<const void*, ChannelTrust> by_stamps;
    std::vector<ChannelTrust> trusts;
    for (const Channel& channel : recording.channels) {
        ChannelTrust trust;
        if (channel.time_s) {
            const auto [known, is_new] = by_stamps.try_emplace(channel.time_s.get());
            if (is_new) {
                known->second.rate_hz = channel.rate_hz();
                const Gaps gaps = find_gaps(recording, *channel.time_s, known->second.rate_hz);
                known->second.gaps = gaps.count;
                known->second.longest_gap_s = gaps.longest_s;
                known->second.longest_gap_at_s = gaps.longest_at_s;
            }
            trust = known->second;
        }
        if (!channel.values.empty()) {
            const auto [least, most] = std::ranges::minmax(channel.values);
            trust.least = least;
            trust.most = most;
        }
        trusts.push_back(trust);
    }
    return trusts;
}

Trust judge(const Recording& recording) {
    return {judge_channels(recording), wheel_speed_scale(recording)};
}

std::optional<double> wheel_speed_scale(const Recording& recording) {
    constexpr std::size_t enough = 50;
    const Channel* const wheels = recording.find(Meaning::wheel_speed);
    const Channel* const ground = recording.find(Meaning::speed);
    if (!wheels || !ground) return std::nullopt;
    std::vector<double> ratios;
    for (std::size_t i = 0; i < wheels->size(); i += stride(wheels->size())) {
        const auto speed = value_beside(*wheels, i, *ground);
        if (speed && *speed > scale_speed_mps) ratios.push_back(wheels->values[i] / *speed);
    }
    if (ratios.size() < enough) return std::nullopt;
    return math::median(ratios);
}

bool asks(const Recording& recording) {
    using enum WarningKind;
    return tells(recording, {column_unsure, column_left_out, speed_contradicts, decimal_mark_unsure, no_header});
}

bool guessed_columns(const Recording& recording) {
    return asks(recording) || tells(recording, {WarningKind::units_guessed, WarningKind::unit_unknown});
}

std::vector<Warning> tell_trust(const Recording& recording) {
    std::vector<Warning> warnings;
    tell_gaps(recording, warnings);
    tell_repeats(recording, warnings);
    const auto scale = wheel_speed_scale(recording);
    if (scale && std::abs(*scale - 1.0) >= scale_told_from)
        warnings.push_back({.kind = WarningKind::wheel_speed_scale, .figures = {*scale}});
    return warnings;
}

} // namespace lapwright::import
