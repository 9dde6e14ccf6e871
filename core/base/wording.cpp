// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/wording.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <array>
#include <chrono>
#include <cmath>
#include <string_view>

namespace lapwright::base {
namespace {

constexpr double normal_975 = 1.959963984540054; // the 97.5 % point of the standard normal
constexpr double latest_unix_s = 2.5e11;         // the year 9892: a calendar goes no further
constexpr std::string_view space = "\u00a0";     // keeps a figure and its unit on one line

int gain_decimals(std::optional<double> sd) {
    return sd ? decimals_for(half_width_95(*sd), 3) : 2;
}

bool rounds_to_zero(double value, int decimals) {
    return std::abs(value) * std::pow(10.0, decimals) < 0.5;
}

} // namespace

double half_width_95(double sd) {
    return normal_975 * sd;
}

std::string gain_text(double gain_s, std::optional<double> sd) {
    const int decimals = gain_decimals(sd);
    if (!std::isfinite(gain_s)) return "—";
    if (rounds_to_zero(gain_s, decimals)) return shown_text(0.0, decimals);
    return (gain_s > 0.0 ? "A" : "B") + std::string(space) + shown_text(std::abs(gain_s), decimals);
}

std::string gain_margin_text(std::optional<double> sd) {
    return sd ? plus_minus_text(half_width_95(*sd), 3) : "";
}

std::string gain_with_margin(double gain_s, std::optional<double> sd) {
    return gain_text(gain_s, sd) + (sd ? " " + gain_margin_text(sd) : "");
}

bool stands_out(double gain_s, std::optional<double> sd) {
    return !sd || std::abs(gain_s) > half_width_95(*sd);
}

std::string gap_text(double gap_s, std::optional<double> sd) {
    const int decimals = gain_decimals(sd);
    if (!std::isfinite(gap_s)) return "—";
    if (rounds_to_zero(gap_s, decimals) || !stands_out(gap_s, sd)) return said("level");
    return said("%1 ahead %2",
                {gap_s > 0.0 ? "A" : "B", shown_text(std::abs(gap_s), decimals) + std::string(space) + "s"});
}

std::string lap_time_with_margin(double time_s, std::optional<double> sd) {
    if (!sd) return lap_time_text(time_s);
    const double half_width = half_width_95(*sd);
    return lap_time_text(time_s, decimals_for(half_width, 3)) + " " + plus_minus_text(half_width, 3);
}

std::string behind_text(double time_s, double fastest_s) {
    const double behind_s = time_s - fastest_s;
    if (!std::isfinite(behind_s) || behind_s == 0.0) return "";
    return "+" + shown_text(behind_s, 2);
}

std::string known_figure(double value_si, std::optional<double> sd, Quantity quantity, UnitSystem system,
                         int max_decimals, bool with_margin) {
    if (!sd || !with_margin) {
        const Unit unit = shown_unit(quantity, system);
        const int decimals =
            sd ? decimals_for(half_width_95(*sd) / definition(unit).factor, max_decimals) : max_decimals;
        return figure_text(value_si, quantity, system, decimals);
    }
    const double half_width = half_width_95(*sd) / definition(shown_unit(quantity, system)).factor;
    return figure_text(value_si, quantity, system, decimals_for(half_width, max_decimals)) + " " +
           plus_minus_text(half_width, max_decimals);
}

std::string untold_text(double difference, double half_width, double little) {
    return std::abs(difference) + half_width <= little ? said("level") : said("cannot be told");
}

std::optional<double> told_later_m(double place_a_m, std::optional<double> sd_a_m, double place_b_m,
                                   std::optional<double> sd_b_m) {
    const double later = place_a_m - place_b_m;
    const double sd = std::hypot(sd_a_m.value_or(0.0), sd_b_m.value_or(0.0));
    const bool told = std::abs(later) >= 0.5 && !(sd > 0.0 && !stands_out(later, sd));
    return std::isfinite(later) && told ? std::optional(later) : std::nullopt;
}

std::string later_text(double place_a_m, std::optional<double> sd_a_m, double place_b_m, std::optional<double> sd_b_m,
                       UnitSystem system) {
    const double later = place_a_m - place_b_m;
    if (!std::isfinite(later)) return "—";
    const double sd = std::hypot(sd_a_m.value_or(0.0), sd_b_m.value_or(0.0));
    if (sd > 0.0 && !stands_out(later, sd)) return untold_text(later, half_width_95(sd), little_m);
    if (!told_later_m(place_a_m, sd_a_m, place_b_m, sd_b_m)) return said("level");
    return said("%1 %2 later",
                {later > 0.0 ? "A" : "B", figure_with_unit(std::abs(later), Quantity::length, system, 0)});
}

std::string date_text(double unix_s) {
    static constexpr std::array months{word("Jan"), word("Feb"), word("Mar"), word("Apr"), word("May"), word("Jun"),
                                       word("Jul"), word("Aug"), word("Sep"), word("Oct"), word("Nov"), word("Dec")};
    using namespace std::chrono;
    if (!(std::abs(unix_s) < latest_unix_s)) return "—";
    const sys_seconds moment{seconds{static_cast<std::int64_t>(std::floor(unix_s))}};
    const sys_days midnight = floor<days>(moment);
    const year_month_day date{midnight};
    const hh_mm_ss clock{moment - midnight};
    const std::string minutes = integer_text(clock.minutes().count());
    const std::string time = integer_text(clock.hours().count()) + ":" + (minutes.size() < 2 ? "0" : "") + minutes;
    // day, month, year, time of day
    return said("%1 %2 %3, %4 UTC", {integer_text(static_cast<unsigned>(date.day())),
                                     said(months.at(static_cast<unsigned>(date.month()) - 1)),
                                     integer_text(static_cast<int>(date.year())), time});
}

std::string duration_text(double duration_s) {
    if (!std::isfinite(duration_s)) return "—";
    if (duration_s < 99.5) return shown_text(duration_s, 0) + std::string(space) + "s";
    return shown_text(duration_s / 60.0, 0) + std::string(space) + "min";
}

std::string rate_text(double rate_hz) {
    if (!(rate_hz >= 0.1)) return "—";
    const bool whole = rate_hz >= 9.5 || std::abs(rate_hz - std::round(rate_hz)) < 0.05;
    return shown_text(rate_hz, whole ? 0 : 1) + std::string(space) + "Hz";
}

std::string share_text(double share) {
    if (!std::isfinite(share)) return "—";
    const double percent = 100.0 * share;
    if (share > 0.0 && percent < 0.5) return said("under %1", {"1\u00a0%"});
    if (share < 1.0 && percent >= 99.5) return said("over %1", {"99\u00a0%"});
    return shown_text(percent, 0) + "\u00a0%";
}

std::string listed(std::span<const std::string> names) {
    if (names.empty()) return {};
    std::string text = names.front();
    for (std::size_t i = 1; i + 1 < names.size(); ++i)
        text = said("%1, %2", {text, names[i]});
    return names.size() == 1 ? text : said("%1 and %2", {text, names.back()});
}

} // namespace lapwright::base
