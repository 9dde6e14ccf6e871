// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/presentation/figures.h"

#include "core/base/wording.h"

#include <algorithm>

namespace lapwright::presentation {
namespace {

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

std::string chance_text(const comparison::Repeatability& repeatability) {
    if (!repeatability.chance_a_wins) return "—";
    const double chance = *repeatability.chance_a_wins;
    return (chance >= 0.5 ? "A " : "B ") + base::share_text(std::max(chance, 1.0 - chance));
}

} // namespace lapwright::presentation
