// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/presentation/figures.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::presentation {
namespace {

using base::said;
using base::word;

constexpr int max_decimals = 1;

std::string figure_text(const comparison::MaybeFigure& figure, base::Quantity quantity, base::UnitSystem units,
                        Margin margin) {
    if (!figure) return "—";
    return base::known_figure(figure->value, figure->sd, quantity, units, figure->sd ? max_decimals : 0,
                              margin == Margin::with);
}

} // namespace

std::string speed_text(const comparison::MaybeFigure& speed_mps, base::UnitSystem units, Margin margin) {
    return figure_text(speed_mps, base::Quantity::speed, units, margin);
}

std::string place_text(const comparison::MaybeFigure& place_m, base::UnitSystem units, Margin margin) {
    return figure_text(place_m, base::Quantity::length, units, margin);
}

std::string both_speeds(const comparison::MaybeFigure& a, const comparison::MaybeFigure& b, base::UnitSystem units) {
    return speed_text(a, units, Margin::without) + " · " + speed_text(b, units, Margin::without);
}

std::string lap_time_text(const lap::LapTrace& trace, const lap::Lap& lap) {
    return base::lap_time_with_margin(trace.lap_time_s(), lap.time_sd_s);
}

namespace {

constexpr double little_sideways_m = 0.5; // nobody would drive otherwise for it; common practice, no source

bool within_error(double difference_m, std::optional<double> sd_m) {
    return sd_m && std::abs(difference_m) <= base::half_width_95(*sd_m);
}

std::string sideways(double difference_m, std::optional<double> sd_m, base::UnitSystem units, const char* positive,
                     const char* negative) {
    const double half_m = sd_m ? base::half_width_95(*sd_m) : 0.0;
    const int decimals = base::decimals_for(sd_m, 1);
    if (within_error(difference_m, sd_m))
        return said("line %1", {base::untold_text(difference_m, half_m, little_sideways_m)});
    const std::string margin =
        sd_m ? " ±" + base::figure_text(half_m, base::Quantity::length, units, decimals) : std::string();
    return said(difference_m > 0.0 ? positive : negative,
                {base::figure_text(std::abs(difference_m), base::Quantity::length, units, decimals) + margin + " " +
                 std::string(base::symbol(base::shown_unit(base::Quantity::length, units)))});
}

} // namespace

std::string line_text(const comparison::LineAt& line, double turned_rad, base::UnitSystem units) {
    const bool left_is_inside = turned_rad > 0.0;
    const char* inside = word("A %1 inside");
    const char* outside = word("A %1 outside");
    return sideways(line.difference_m, line.sd_m, units, left_is_inside ? inside : outside,
                    left_is_inside ? outside : inside);
}

std::string sideways_text(double difference_m, std::optional<double> sd_m, base::UnitSystem units) {
    if (!std::isfinite(difference_m)) return "—";
    const std::string text = sideways(difference_m, sd_m, units, word("A %1 left"), word("A %1 right"));
    if (!within_error(difference_m, sd_m)) return text;
    const double half_m = base::half_width_95(*sd_m);
    return text + " (±" + base::figure_with_unit(half_m, base::Quantity::length, units, base::decimals_for(sd_m, 1)) +
           ")";
}

std::string signed_with_margin(double difference, std::optional<double> sd, int most_decimals) {
    if (!std::isfinite(difference)) return "—";
    const int decimals = sd ? base::decimals_for(base::half_width_95(*sd), most_decimals) : std::min(2, most_decimals);
    std::string text = base::shown_text(std::abs(difference), decimals);
    if (!base::shows_zero(text)) text.insert(0, difference > 0.0 ? "+" : "−");
    return sd ? text + " " + base::plus_minus_text(base::half_width_95(*sd), most_decimals) : text;
}

std::string chance_text(const comparison::Repeatability& repeatability) {
    if (!repeatability.chance_a_wins) return "—";
    const double chance = *repeatability.chance_a_wins;
    return (chance >= 0.5 ? "A " : "B ") + base::share_text(std::max(chance, 1.0 - chance));
}

} // namespace lapwright::presentation
