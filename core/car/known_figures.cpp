// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/known_figures.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

using base::said;

constexpr double min_relative_sd = 0.01; // nobody knows a figure of a car better

double sd_of(const KnownFigure& figure) {
    return std::max(figure.sd, min_relative_sd * std::abs(figure.value));
}

} // namespace

KnownFigure joined(const KnownFigure& one, const KnownFigure& other) {
    const double w = 1.0 / (one.sd * one.sd);
    const double u = 1.0 / (other.sd * other.sd);
    return {(w * one.value + u * other.value) / (w + u), 1.0 / std::sqrt(w + u)};
}

bool knows_downforce(const CarData& data, const std::optional<SuspensionDownforce>& suspension) {
    return (data.mass && data.known.downforce_area_m2) || (suspension && suspension->told());
}

bool knows_driving(const CarData& data) {
    return data.mass && (data.known.drag_area_m2 || data.known.power_w);
}

GripPrior with_known(const GripPrior& usual, const CarData& data,
                     const std::optional<SuspensionDownforce>& suspension) {
    if (!knows_downforce(data, suspension)) return usual;
    KnownFigure k{usual.k_mean, usual.k_sd};
    if (suspension && suspension->told())
        k = joined(k, {suspension->n_per_mps2 / data.mass->value_kg, suspension->sd / data.mass->value_kg});
    if (const auto& area = data.known.downforce_area_m2) {
        const double per_area = 0.5 * data.air.value_kg_m3 / data.mass->value_kg;
        k = joined(k, {per_area * area->value, per_area * std::hypot(sd_of(*area), attitude_sd * area->value)});
    }
    return {k.value, k.sd};
}

DrivingPrior with_known(const DrivingPrior& usual, const CarData& data, const std::optional<PowerCurveSeen>& curve) {
    DrivingPrior prior = usual;
    if (!knows_driving(data)) return prior;
    const double mass = data.mass->value_kg;
    if (const auto& drag = data.known.drag_area_m2) {
        const double per_area = 0.5 * data.air.value_kg_m3 / mass;
        const KnownFigure d =
            joined({usual.drag_per_kg, usual.drag_sd}, {per_area * drag->value, per_area * sd_of(*drag)});
        prior.drag_per_kg = d.value;
        prior.drag_sd = d.sd;
    }
    if (const auto& power = data.known.power_w) {
        const double per_mean = 1.0 / (mass * (curve ? curve->max_share : 1.0));
        const KnownFigure p =
            joined({usual.power_per_kg, usual.power_sd}, {per_mean * power->value, per_mean * sd_of(*power)});
        prior.power_per_kg = p.value;
        prior.power_sd = p.sd;
    }
    return prior;
}

std::string disagreement(const std::string& what, const KnownFigure& known, const KnownFigure& laps,
                         const std::string& unit, int decimals) {
    constexpr double surely = 2.0;
    const double z = std::abs(known.value - laps.value) / std::hypot(sd_of(known), laps.sd);
    if (!(z > surely)) return {};
    const auto text = [&](double x) { return base::shown_text(x, decimals); };
    return said("%1, %2, and the laps' %3 disagree by %4 standard errors",
                {what, text(known.value) + " ±" + text(base::half_width_95(sd_of(known))) + " " + unit,
                 text(laps.value) + " ±" + text(base::half_width_95(laps.sd)), base::shown_text(z, 1)});
}

} // namespace lapwright::car
