// SPDX-License-Identifier: GPL-3.0-or-later
// Clock readings, dates and moments as loggers write them.  Dates are days since 1970-01-01, clock readings seconds
// since midnight (or since the start, "1:23.456"); moments seconds since 1970-01-01 UTC, without leap seconds (POSIX).
// ISO 8601 as profiled by RFC 3339, which allows a blank for the T.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace lapwright::import {

// "10:20:03.4", "1:23.456", "1'23.456", "1'23\"456", "10h20m03.4s", "1 day, 10:20:03", "0:10:20:03.4" is none; comma or
// point before the fraction; "10:20:03 PM".  "10:20:03:012" has thousandths in its last part, and "10:20:03:12" so many
// parts of a second (frames, hundredths) as the caller says; 0: it is none.
[[nodiscard]] std::optional<double> read_clock(std::string_view text, int parts_a_second = 0);

struct Date {
    std::int64_t days = 0;
    bool day_and_month_unsure = false; // "05/04/2026": read as day, month
};

// "2026-05-16", "2026/05/16", "16.05.2026", "16/05/26", "05/16/2026", "20260516"; with the month's name in six
// languages "16-May-2026", "May 16, 2026", "16. Mai 2026", "16 de mayo de 2026".
[[nodiscard]] std::optional<Date> read_date(std::string_view text);
// Six digits ddmmyy as NMEA 0183 has them; years 80..99 are 1980..1999.
[[nodiscard]] std::optional<Date> read_ddmmyy(std::string_view text);

struct Moment {
    double unix_s = 0.0;
    bool zone_known = false; // else the reading was taken as UTC
    bool day_and_month_unsure = false;
};

// A date and a clock reading, parted by T, blanks or another mark ("Wed Feb 23 06:34:27 GMT+01:00 2022" too), with Z,
// ±hh:mm, ±hhmm, ±hh, UTC or GMT, or no zone.
[[nodiscard]] std::optional<Moment> read_moment(std::string_view text);

} // namespace lapwright::import
