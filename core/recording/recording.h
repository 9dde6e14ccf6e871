// SPDX-License-Identifier: GPL-3.0-or-later
// A recording is what one logger wrote in one session: channels, each on its own time stamps.  Import ends here;
// nothing behind it knows what a file looked like.
//
// Time is seconds since the session's first sample.  Values are SI (see Meaning); a channel whose meaning is `other`
// keeps its unit's SI value, or the number as written where the unit is unknown.
#pragma once

#include "core/recording/meaning.h"
#include "core/recording/warning.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::recording {

// Strictly increasing stamps, shared by all channels that were sampled together.
using Stamps = std::shared_ptr<const std::vector<double>>;
// For each sample the line of the file that it came from, counted from 1; shared like the stamps, may be null.
using SourceLines = std::shared_ptr<const std::vector<std::uint32_t>>;

struct Channel {
    std::string name; // as the file called it
    Meaning meaning = Meaning::other;
    base::Unit source_unit = base::Unit::none; // the unit in which the file wrote it
    std::string source_unit_text;              // as the file wrote it, for unknown units
    Stamps time_s;
    std::vector<double> values; // as many as stamps; all finite
    SourceLines source_lines;

    [[nodiscard]] std::size_t size() const { return values.size(); }
    // Median rate over the channel's stamps; 0 with fewer than two.
    [[nodiscard]] double rate_hz() const;
};

struct Recording {
    std::string source_file;
    std::string driver; // empty where unknown
    std::string car;
    std::string track;
    std::optional<double> start_unix_s;                     // UTC of the first sample
    std::vector<std::pair<std::string, std::string>> facts; // preamble, key and value as written
    std::vector<Channel> channels;
    std::vector<Warning> warnings;
    std::vector<double> splits_s; // times at which the clock jumped: nothing may be joined across them
    double duration_s = 0.0;

    // The channel with this meaning that has the most samples, or null.
    [[nodiscard]] const Channel* find(Meaning meaning) const;
};

// "2026-05-16T10:20:03.400Z"; milliseconds only where they are not zero; empty where that is no moment of a calendar.
[[nodiscard]] std::string utc_text(double unix_s);

} // namespace lapwright::recording
