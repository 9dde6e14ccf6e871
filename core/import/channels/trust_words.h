// SPDX-License-Identifier: GPL-3.0-or-later
// The trust report in words: what each channel is, how often and how far it was sampled, where it pauses.  Window and
// command line show the same.
#pragma once

#include "core/base/display.h"
#include "core/import/channels/trust.h"
#include "core/recording/recording.h"

#include <string>
#include <vector>

namespace lapwright::import {

struct ChannelWords {
    std::string name;    // as the file called it
    std::string meaning; // "lateral acceleration"
    std::string written; // the unit in which the file wrote it: "km/h"
    std::string rate;    // "25 Hz"
    std::string range;   // "0 … 212 km/h"
    std::string gaps;    // "2, longest 0.8 s at 123.4 s"; "none"
};

// One entry a channel, in their order; rate, range and gaps are empty where `trust` does not know them.
[[nodiscard]] std::vector<ChannelWords> channel_words(const recording::Recording& recording, const Trust& trust,
                                                      base::UnitSystem system);

// How wheel speed and satellite speed agree; empty where they cannot be compared.
[[nodiscard]] std::string wheel_words(const Trust& trust);

} // namespace lapwright::import
