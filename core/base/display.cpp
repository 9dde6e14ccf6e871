// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/display.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace lapwright::base {

std::optional<UnitSystem> parse_unit_system(std::string_view text) {
    if (text == "metric") return UnitSystem::metric;
    if (text == "imperial") return UnitSystem::imperial;
    if (text == "us") return UnitSystem::us;
    return std::nullopt;
}

std::string_view name(UnitSystem system) {
    switch (system) {
    case UnitSystem::metric:
        return "metric";
    case UnitSystem::imperial:
        return "imperial";
    case UnitSystem::us:
        return "us";
    }
    return "metric";
}

Unit shown_unit(Quantity quantity, UnitSystem system) {
    const bool metric = system == UnitSystem::metric;
    const bool us = system == UnitSystem::us;
    switch (quantity) {
    case Quantity::speed:
        return metric ? Unit::kilometre_per_hour : Unit::mile_per_hour;
    case Quantity::length:
        return us ? Unit::foot : Unit::metre;
    case Quantity::mass:
        return us ? Unit::pound : Unit::kilogram;
    case Quantity::force:
        return metric ? Unit::newton : Unit::pound_force;
    case Quantity::power:
        return metric ? Unit::kilowatt : Unit::horsepower;
    case Quantity::pressure:
        return metric ? Unit::bar : Unit::pound_per_square_inch;
    case Quantity::torque:
        return metric ? Unit::newton_metre : Unit::pound_force_foot;
    case Quantity::temperature:
        return us ? Unit::fahrenheit : Unit::celsius;
    case Quantity::acceleration:
        return Unit::standard_gravity;
    case Quantity::angle:
        return Unit::degree;
    case Quantity::angular_rate:
        return Unit::degree_per_second;
    case Quantity::rotation:
        return Unit::revolution_per_minute;
    case Quantity::share:
        return Unit::percent;
    default:
        return si_unit(quantity);
    }
}

int decimals_for(std::optional<double> sd, int max_decimals) {
    if (!sd || !(*sd > 0.0) || !std::isfinite(*sd)) return max_decimals;
    const double exponent = std::floor(std::log10(*sd));
    const double leading = *sd / std::pow(10.0, exponent);
    const int decimals = static_cast<int>(-exponent) + (leading < 1.95 ? 1 : 0);
    return std::clamp(decimals, 0, max_decimals);
}

std::string lap_time_text(double time_s, int decimals) {
    if (!std::isfinite(time_s)) return "—";
    // Round first: 59.9996 must become 1:00.000, not 0:60.000.
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(std::abs(time_s) * scale) / scale;
    const std::string sign = time_s < 0.0 && rounded > 0.0 ? "−" : "";
    const auto minutes = static_cast<std::int64_t>(rounded / 60.0);
    const double seconds = rounded - 60.0 * static_cast<double>(minutes);
    if (minutes == 0) return sign + shown_text(seconds, decimals);
    std::string text = shown_text(seconds, decimals);
    if (seconds < 9.9999999999) text.insert(0, "0");
    return sign + integer_text(minutes) + ":" + text;
}

std::string plus_minus_text(double half_width, int max_decimals) {
    return "±" + shown_text(half_width, decimals_for(half_width, max_decimals));
}

std::string figure_text(double value_si, Quantity quantity, UnitSystem system, int decimals) {
    std::string text = shown_text(from_si(value_si, shown_unit(quantity, system)), decimals);
    if (text.starts_with('-')) text.replace(0, 1, "−"); // as in all that people read
    return text;
}

std::string figure_with_unit(double value_si, Quantity quantity, UnitSystem system, int decimals) {
    const std::string_view unit = symbol(shown_unit(quantity, system));
    std::string figure = figure_text(value_si, quantity, system, decimals);
    if (unit.empty()) return figure;
    const bool close = unit == symbol(Unit::degree); // the one symbol without a space before it (SI brochure, 5.4.3)
    return figure + (close ? "" : "\u00a0") + std::string(unit);
}

} // namespace lapwright::base
