// SPDX-License-Identifier: GPL-3.0-or-later
// What the lines before a table say of the session: driver, car, track, start.  Keys in six languages.
#pragma once

#include "core/import/text/cells.h"
#include "core/import/vocabulary/vocabulary.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lapwright::import {

using Facts = std::vector<std::pair<std::string, std::string>>;

// "key: value", "key = value", "key,value" or "key;value" to one fact; a line without a value is a fact without a key.
[[nodiscard]] std::pair<std::string, std::string> read_fact(std::string_view line, Delimiter delimiter);

struct SessionFacts {
    std::string driver;
    std::string car;
    std::string track;
    std::optional<double> date_unix_s;  // midnight UTC of the stated day
    std::optional<double> clock_s;      // stated start, seconds since midnight
    std::optional<double> start_unix_s; // a full moment, or day and clock together
    bool zone_known = false;
    bool day_and_month_unsure = false;
    std::optional<double> row_rate_hz;
};

[[nodiscard]] SessionFacts understand(const Facts& facts, const Vocabulary& known = built_in_vocabulary());

} // namespace lapwright::import
