// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/day.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/import/text/moment.h"

namespace lapwright::import {
namespace {

using base::said;

constexpr double day_s = 86400.0;

base::Result<std::optional<double>> moment_of_day(const std::string& day, double later_s) {
    if (day.empty()) return std::optional<double>();
    const auto date = read_date(day);
    if (!date)
        return base::Error{
            base::ErrorCode::value_not_readable, {}, "\"" + day + "\" is no date", said("write it as 2026-05-16")};
    return std::optional(static_cast<double>(date->days) * day_s + later_s);
}

// Recordings count hours on past midnight; the time of day that a person writes ends before 24:00.
bool ends_before_midnight(const std::string& words) {
    const std::size_t colon = words.find(':');
    const std::size_t before = words.find_last_of("Tt ", colon);
    const auto hours = base::parse_integer(std::string_view(words).substr(before + 1, colon - before - 1));
    return hours && *hours < 24;
}

} // namespace

base::Result<std::optional<double>> first_moment_of(const std::string& day) {
    return moment_of_day(day, 0.0);
}

base::Result<std::optional<double>> last_moment_of(const std::string& day) {
    return moment_of_day(day, day_s - 1e-3);
}

base::Result<double> moment_of(const std::string& words) {
    if (const auto moment = read_moment(words)) {
        if (ends_before_midnight(words)) return moment->unix_s;
        return base::Error{base::ErrorCode::value_not_readable,
                           {},
                           "\"" + words + "\" has no time of day",
                           said("write it as 2026-05-16 10:20, with 0 to 23 hours")};
    }
    if (const auto date = read_date(words)) return static_cast<double>(date->days) * day_s;
    return base::Error{
        base::ErrorCode::value_not_readable, {}, "\"" + words + "\" is no date", said("write it as 2026-05-16 10:20")};
}

} // namespace lapwright::import
