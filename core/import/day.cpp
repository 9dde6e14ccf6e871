// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/day.h"

#include "core/import/moment.h"

namespace lapwright::import {
namespace {

constexpr double day_s = 86400.0;

base::Result<std::optional<double>> moment_of(const std::string& day, double later_s) {
    if (day.empty()) return std::optional<double>();
    const auto date = read_date(day);
    if (!date)
        return base::Error{
            base::ErrorCode::value_not_readable, {}, "\"" + day + "\" is no date", "write it as 2026-05-16"};
    return std::optional(static_cast<double>(date->days) * day_s + later_s);
}

} // namespace

base::Result<std::optional<double>> first_moment_of(const std::string& day) {
    return moment_of(day, 0.0);
}

base::Result<std::optional<double>> last_moment_of(const std::string& day) {
    return moment_of(day, day_s - 1e-3);
}

} // namespace lapwright::import
