// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/moment.h"

#include "core/base/number_text.h"
#include "core/import/cells.h"
#include "core/import/number_scan.h"
#include "core/import/words.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <string>

namespace lapwright::import {
namespace {

bool all_digits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, is_digit);
}

int small_number(std::string_view digits) {
    int value = 0;
    for (const char c : digits)
        value = value * 10 + (c - '0');
    return value;
}

std::optional<double> read_seconds(std::string_view text) {
    std::string plain(text);
    std::ranges::replace(plain, ',', '.');
    if (plain.empty() || !is_digit(plain.front()) || plain.size() > 24) return std::nullopt;
    if (plain.find_first_not_of("0123456789.") != std::string::npos) return std::nullopt;
    return base::parse_number(plain);
}

// 12 hours to add or take away for "PM" and "AM"; the mark is cut off.
struct HalfDay {
    bool known = false;
    bool afternoon = false;
};

HalfDay cut_half_day(std::string_view& text) {
    const std::string low = folded(text);
    HalfDay half;
    half.known = low.ends_with("am") || low.ends_with("pm");
    half.afternoon = low.ends_with("pm");
    if (half.known) text = trimmed(text.substr(0, text.size() - 2));
    return half;
}

std::optional<Date> make_date(int year, int month, int day) {
    using namespace std::chrono;
    const year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                              std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok() || year < 1970 || year > 2200) return std::nullopt;
    return Date{sys_days{date}.time_since_epoch().count(), false};
}

int full_year(int two_digits) {
    return two_digits >= 80 ? 1900 + two_digits : 2000 + two_digits;
}

std::optional<Date> date_of_parts(const std::array<std::string_view, 3>& parts, char mark) {
    if (!std::ranges::all_of(parts, all_digits)) return std::nullopt;
    if (parts[0].size() == 4) return make_date(small_number(parts[0]), small_number(parts[1]), small_number(parts[2]));
    const bool short_parts = parts[0].size() <= 2 && parts[1].size() <= 2;
    if (!short_parts || (parts[2].size() != 4 && parts[2].size() != 2)) return std::nullopt;
    const int year = parts[2].size() == 4 ? small_number(parts[2]) : full_year(small_number(parts[2]));
    const int first = small_number(parts[0]);
    const int second = small_number(parts[1]);
    if (second > 12) return make_date(year, first, second);
    auto date = make_date(year, second, first);
    // Points are only used with the day in front; strokes and dashes are used both ways.
    if (date && mark != '.' && first <= 12 && first != second) date->day_and_month_unsure = true;
    return date;
}

struct Zone {
    double offset_s = 0.0;
    bool known = false;
};

// The zone at the end of `text`, which is cut off.
Zone cut_zone(std::string_view& text) {
    const std::string low = folded(text);
    for (const std::string_view word : {"utc", "gmt", "z"}) {
        if (!low.ends_with(word)) continue;
        text = trimmed(text.substr(0, text.size() - word.size()));
        return {0.0, true};
    }
    const std::size_t sign = text.find_last_of("+-");
    const std::size_t colon = text.find(':');
    if (sign == std::string_view::npos || colon == std::string_view::npos || sign < colon) return {};
    std::string digits(text.substr(sign + 1));
    std::erase(digits, ':');
    if (!all_digits(digits) || (digits.size() != 2 && digits.size() != 4)) return {};
    const int hours = small_number(std::string_view(digits).substr(0, 2));
    const int minutes = digits.size() == 4 ? small_number(std::string_view(digits).substr(2)) : 0;
    if (hours > 14 || minutes > 59) return {};
    const double offset_s = (hours * 60.0 + minutes) * 60.0;
    const Zone zone{text[sign] == '-' ? -offset_s : offset_s, true};
    text = trimmed(text.substr(0, sign));
    for (const std::string_view word : {"utc", "gmt"})
        if (folded(text).ends_with(word)) text = trimmed(text.substr(0, text.size() - word.size()));
    return zone;
}

} // namespace

std::optional<double> read_clock(std::string_view text) {
    text = trimmed(text);
    if (text.size() < 4 || text.size() > 32 || !is_digit(text.front())) return std::nullopt;
    const HalfDay half = cut_half_day(text);
    const std::size_t first = text.find(':');
    if (first == std::string_view::npos || !all_digits(text.substr(0, first)) || first > 4) return std::nullopt;
    const std::size_t second = text.find(':', first + 1);
    const int leading = small_number(text.substr(0, first));
    if (second == std::string_view::npos) {
        const auto seconds = read_seconds(text.substr(first + 1));
        if (half.known || !seconds || *seconds >= 60.0) return std::nullopt;
        return leading * 60.0 + *seconds;
    }
    const std::string_view minutes = text.substr(first + 1, second - first - 1);
    if (!all_digits(minutes) || minutes.size() > 2 || small_number(minutes) > 59) return std::nullopt;
    std::string_view rest = text.substr(second + 1);
    std::string joined;
    // "10:20:03:400": the last part is milliseconds.
    if (const std::size_t third = rest.find(':'); third != std::string_view::npos) {
        const std::string_view thousandths = rest.substr(third + 1);
        if (!all_digits(thousandths) || thousandths.size() != 3) return std::nullopt;
        joined = std::string(rest.substr(0, third)) + "." + std::string(thousandths);
        rest = joined;
    }
    const auto seconds = read_seconds(rest);
    if (!seconds || *seconds >= 61.0 || leading > 99 || (half.known && leading > 12)) return std::nullopt;
    int hours = leading;
    if (half.known) hours = hours % 12 + (half.afternoon ? 12 : 0);
    return (hours * 60.0 + small_number(minutes)) * 60.0 + *seconds;
}

std::optional<Date> read_date(std::string_view text) {
    text = trimmed(text);
    if (text.size() == 8 && all_digits(text))
        return make_date(small_number(text.substr(0, 4)), small_number(text.substr(4, 2)),
                         small_number(text.substr(6)));
    if (text.size() < 6 || text.size() > 10) return std::nullopt;
    const std::size_t first = text.find_first_of("-/.");
    if (first == std::string_view::npos) return std::nullopt;
    const char mark = text[first];
    const std::size_t second = text.find(mark, first + 1);
    if (second == std::string_view::npos) return std::nullopt;
    return date_of_parts({text.substr(0, first), text.substr(first + 1, second - first - 1), text.substr(second + 1)},
                         mark);
}

std::optional<Date> read_ddmmyy(std::string_view text) {
    if (text.size() != 6 || !all_digits(text)) return std::nullopt;
    return make_date(full_year(small_number(text.substr(4))), small_number(text.substr(2, 2)),
                     small_number(text.substr(0, 2)));
}

std::optional<Moment> read_moment(std::string_view text) {
    text = trimmed(text);
    if (text.size() < 11 || text.size() > 48) return std::nullopt;
    const std::size_t parting = text.find_first_of("Tt ");
    if (parting == std::string_view::npos) return std::nullopt;
    const auto date = read_date(text.substr(0, parting));
    if (!date) return std::nullopt;
    std::string_view rest = trimmed(text.substr(parting + 1));
    const Zone zone = cut_zone(rest);
    auto clock = read_clock(rest);
    // "10:20" beside a date is hours and minutes.
    if (clock && std::ranges::count(rest, ':') == 1) clock = *clock * 60.0;
    if (!clock) return std::nullopt;
    return Moment{static_cast<double>(date->days) * 86400.0 + *clock - zone.offset_s, zone.known,
                  date->day_and_month_unsure};
}

} // namespace lapwright::import
