// SPDX-License-Identifier: GPL-3.0-or-later
// How far a recording can be trusted, in figures a channel and in warnings in words.
#pragma once

#include "core/recording/recording.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lapwright::import {

struct ChannelTrust {
    double rate_hz = 0.0;
    double least = 0.0; // of the values, SI
    double most = 0.0;
    std::size_t gaps = 0; // pauses of more than gap_steps usual steps
    double longest_gap_s = 0.0;
    double longest_gap_at_s = 0.0; // where it begins
};

// A pause of more than so many usual steps is a gap (and longer than min_gap_s).
inline constexpr double gap_steps = 3.5;
inline constexpr double min_gap_s = 0.05;

// One entry a channel, in their order.
[[nodiscard]] std::vector<ChannelTrust> judge_channels(const recording::Recording& recording);

// Median of wheel speed over satellite speed above 10 m/s, of the channels that find() answers; nothing where the
// recording lacks one of them or never goes that fast.
[[nodiscard]] std::optional<double> wheel_speed_scale(const recording::Recording& recording);

struct Trust {
    std::vector<ChannelTrust> channels; // one a channel, in their order
    std::optional<double> wheel_speed_scale;
};

[[nodiscard]] Trust judge(const recording::Recording& recording);

// Gaps, positions that stand still between repeats of a faster table, wheel speed against satellite speed.
[[nodiscard]] std::vector<recording::Warning> tell_trust(const recording::Recording& recording);

// Whether the import had to guess where a person could say: what the columns are, which comma is a decimal mark.
[[nodiscard]] bool asks(const recording::Recording& recording);

// Whether anything at all of its columns was guessed: what to look at where a recording makes no sense.
[[nodiscard]] bool guessed_columns(const recording::Recording& recording);

} // namespace lapwright::import
