// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/moment.h"

#include "core/base/number_text.h"
#include "core/import/text/cells.h"
#include "core/import/text/month_names.h"
#include "core/import/text/number_scan.h"
#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <string>
#include <vector>

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

bool is_letter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80U;
}

std::optional<Date> make_date(int year, int month, int day) {
    using namespace std::chrono;
    // chrono keeps no more than eight bits of a month or a day.
    if (month < 1 || month > 12 || day < 1 || day > 31) return std::nullopt;
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

// Words parted by blanks and marks: "Wed, 23-Feb-2022" to Wed, 23, Feb, 2022.
std::vector<std::string_view> date_words(std::string_view text) {
    constexpr std::string_view between = " -/.,_\t";
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(between), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

// Day, month by its name, year, or month first, or with a day of the week before them.
std::optional<Date> spelled_date(std::string_view text) {
    if (text.size() < 6 || text.size() > 40) return std::nullopt;
    auto words = date_words(text);
    // "el 23 de febrero de 2022": joining words say nothing.
    std::erase_if(words, [](std::string_view word) { return word == "de" || word == "del" || word == "den"; });
    const auto month = std::ranges::find_if(words, [](std::string_view word) { return month_of_name(word) > 0; });
    if (month == words.end()) return std::nullopt;
    std::vector<std::string_view> numbers;
    for (const std::string_view word : words) {
        std::string_view digits = word;
        // "1st", "1er", "23rd"
        const std::size_t end = std::min(digits.find_first_not_of("0123456789"), digits.size());
        if (end > 0 && digits.size() - end <= 2) numbers.push_back(digits.substr(0, end));
    }
    if (numbers.size() != 2 || words.size() > 4) return std::nullopt;
    const bool year_first = numbers[0].size() == 4;
    const std::string_view day = year_first ? numbers[1] : numbers[0];
    const std::string_view year = year_first ? numbers[0] : numbers[1];
    if (day.size() > 2 || (year.size() != 4 && year.size() != 2)) return std::nullopt;
    return make_date(year.size() == 4 ? small_number(year) : full_year(small_number(year)), month_of_name(*month),
                     small_number(day));
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
    // "CET" says nothing that holds all year: the reading stays without a zone.
    const std::size_t blank = text.find_last_of(' ');
    const bool named = blank != std::string_view::npos && text.size() - blank >= 4 && text.size() - blank <= 6 &&
                       std::ranges::all_of(text.substr(blank + 1), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (named) text = trimmed(text.substr(0, blank));
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

// "10h20m03.4s", "10 h 20 min 3.4 s" and "20m 03.4s" as "10:20:03.4" and "20:03.4"; empty for any other text.
std::string with_colons(std::string_view text) {
    const std::size_t h = text.find('h');
    const std::size_t m = text.find('m', h == std::string_view::npos ? 0 : h);
    if (m == std::string_view::npos || (h == std::string_view::npos && !text.ends_with('s'))) return "";
    std::string_view seconds = text.substr(text.substr(m).starts_with("min") ? m + 3 : m + 1);
    if (seconds.ends_with('s')) seconds.remove_suffix(1);
    const std::string_view minutes =
        trimmed(h == std::string_view::npos ? text.substr(0, m) : text.substr(h + 1, m - h - 1));
    const std::string_view hours = h == std::string_view::npos ? "" : trimmed(text.substr(0, h));
    if ((h != std::string_view::npos && (hours.empty() || !all_digits(hours))) || !all_digits(minutes)) return "";
    return std::string(hours) + (hours.empty() ? "" : ":") + std::string(minutes) + ":" + std::string(trimmed(seconds));
}

// "1'23.456", "1'23.456\"" and "1'23\"456" as "1:23.456"; empty for any other text.
std::string primes_as_colons(std::string_view text) {
    const std::size_t minutes = text.find_first_not_of("0123456789");
    if (minutes == 0 || minutes > 3 || minutes == std::string_view::npos) return "";
    std::string_view behind = text.substr(minutes);
    std::size_t mark = 0;
    for (const std::string_view prime : {"'", "’", "′"})
        if (behind.starts_with(prime)) mark = prime.size();
    if (mark == 0) return "";
    std::string seconds(behind.substr(mark));
    for (const std::string_view second : {"''", "’’", "″", "”", "\""}) {
        const std::size_t at = seconds.find(second);
        if (at == std::string::npos) continue;
        const bool last = at + second.size() == seconds.size();
        seconds.replace(at, second.size(), last ? "" : ".");
        break;
    }
    const bool two_digits = seconds.size() >= 2 && is_digit(seconds[0]) && is_digit(seconds[1]);
    return two_digits ? std::string(text.substr(0, minutes)) + ":" + seconds : "";
}

// "03:12" with 25 parts a second as "03.48"; with none the last part is thousandths.  Empty where it cannot be.
std::string with_point(std::string_view seconds, std::size_t colon, int parts_a_second) {
    const std::string_view last = seconds.substr(colon + 1);
    if (!all_digits(last) || last.size() > 3 || (parts_a_second == 0 && last.size() != 3)) return "";
    const int parts = last.size() == 3 ? 1000 : parts_a_second;
    if (small_number(last) >= parts) return "";
    const std::string fraction = base::fixed_text(static_cast<double>(small_number(last)) / parts, 9);
    return std::string(seconds.substr(0, colon)) + fraction.substr(1);
}

// "1 day, 00:20:03", "0 days 00:20:03.4", as programs for data analysis write what has elapsed: takes the days away.
int cut_days(std::string_view& text) {
    const std::size_t day = text.find(" day");
    if (day > 3 || !all_digits(text.substr(0, day))) return 0;
    const int days = small_number(text.substr(0, day));
    const std::size_t clock = text.find_first_of("0123456789", day);
    text = clock == std::string_view::npos ? std::string_view() : text.substr(clock);
    return days;
}

} // namespace

std::optional<double> read_clock(std::string_view text, int parts_a_second) {
    text = trimmed(text);
    const double days_s = 86400.0 * cut_days(text);
    std::string marked = with_colons(text);
    if (marked.empty()) marked = primes_as_colons(text);
    if (!marked.empty()) text = marked;
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
    if (const std::size_t third = rest.find(':'); third != std::string_view::npos) {
        joined = with_point(rest, third, parts_a_second);
        if (joined.empty()) return std::nullopt;
        rest = joined;
    }
    const auto seconds = read_seconds(rest);
    if (!seconds || *seconds >= 61.0 || leading > 99 || (half.known && leading > 12)) return std::nullopt;
    int hours = leading;
    if (half.known) hours = hours % 12 + (half.afternoon ? 12 : 0);
    return days_s + (hours * 60.0 + small_number(minutes)) * 60.0 + *seconds;
}

std::optional<Date> read_date(std::string_view text) {
    text = trimmed(text);
    if (std::ranges::any_of(text, is_letter)) return spelled_date(text);
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

namespace {

std::optional<Moment> moment_of_parts(std::string_view date_text, std::string_view clock_text) {
    const auto date = read_date(date_text);
    if (!date) return std::nullopt;
    std::string_view rest = trimmed(clock_text);
    const Zone zone = cut_zone(rest);
    auto clock = read_clock(rest);
    // "10:20" beside a date is hours and minutes.
    if (clock && std::ranges::count(rest, ':') == 1) clock = *clock * 60.0;
    if (!clock) return std::nullopt;
    return Moment{static_cast<double>(date->days) * 86400.0 + *clock - zone.offset_s, zone.known,
                  date->day_and_month_unsure};
}

// "Wed Feb 23 06:34:27 GMT+01:00 2022", as the C library's asctime and its like write it: the year stands last.
std::optional<Moment> with_year_last(std::string_view text, std::size_t clock_at) {
    const std::size_t year_at = text.find_last_of(' ');
    if (year_at == std::string_view::npos || year_at < clock_at || text.size() - year_at != 5) return std::nullopt;
    const std::string date = std::string(text.substr(0, clock_at)) + std::string(text.substr(year_at + 1));
    return moment_of_parts(date, text.substr(clock_at, year_at - clock_at));
}

// A date in front of a clock reading, whatever parts them: "23-Feb-2022 06:34", "23.02.2022, 06:34",
// "2022/02/23-06:34".
std::optional<Moment> parted_at_clock(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos) return std::nullopt;
    std::size_t clock_at = colon;
    while (clock_at > 0 && is_digit(text[clock_at - 1]))
        --clock_at;
    std::string_view date = text.substr(0, clock_at);
    while (!date.empty() && std::string_view(" ,;_-Tt\t").find(date.back()) != std::string_view::npos)
        date.remove_suffix(1);
    if (auto moment = moment_of_parts(date, text.substr(clock_at))) return moment;
    return with_year_last(text, clock_at);
}

} // namespace

std::optional<Moment> read_moment(std::string_view text) {
    text = trimmed(text);
    if (text.size() < 11 || text.size() > 48) return std::nullopt;
    const std::size_t parting = text.find_first_of("Tt ");
    if (parting != std::string_view::npos && is_digit(text.front()))
        if (auto moment = moment_of_parts(text.substr(0, parting), text.substr(parting + 1))) return moment;
    return parted_at_clock(text);
}

} // namespace lapwright::import
