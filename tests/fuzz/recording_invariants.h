// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold of every recording that an import answers, whatever bytes it was given: stamps finite and strictly
// increasing from zero on, as many values as stamps, all finite, lines beside them, splits in order.  A breach ends the
// program, which is how a fuzzer learns of it.
#pragma once

#include "core/base/check.h"
#include "core/recording/recording.h"
#include "core/recording/warning_words.h"

#include <cmath>

namespace lapwright::fuzz {

inline void check_stamps(const std::vector<double>& time_s, double duration_s) {
    for (std::size_t i = 0; i < time_s.size(); ++i) {
        base::check(std::isfinite(time_s[i]) && time_s[i] >= 0.0 && time_s[i] <= duration_s,
                    "a stamp is outside the session");
        base::check(i == 0 || time_s[i] > time_s[i - 1], "stamps do not increase");
    }
}

inline void check_recording(const recording::Recording& recording) {
    for (const auto& channel : recording.channels) {
        base::check(channel.time_s != nullptr, "a channel has no stamps");
        base::check(channel.time_s->size() == channel.values.size(), "stamps and values differ in number");
        base::check(!channel.source_lines || channel.source_lines->size() == channel.values.size(),
                    "lines are missing");
        check_stamps(*channel.time_s, recording.duration_s);
        for (const double value : channel.values)
            base::check(std::isfinite(value), "a value is not finite");
    }
    for (std::size_t i = 1; i < recording.splits_s.size(); ++i)
        base::check(recording.splits_s[i] > recording.splits_s[i - 1], "splits are out of order");
    for (const auto& warning : recording.warnings)
        base::check(!recording::words(warning).empty(), "a warning says nothing");
}

} // namespace lapwright::fuzz
