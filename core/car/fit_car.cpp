// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/fit_car.h"

#include "core/base/translation.h"
#include "core/car/known_figures.h"
#include "core/math/statistics.h"

namespace lapwright::car {
namespace {

using base::said;

KnownFigure downforce_area(const std::vector<GripDraw>& draws, double per_area) {
    std::vector<double> areas;
    for (const GripDraw& draw : draws)
        areas.push_back(draw.k / per_area);
    return {math::mean(areas), math::standard_deviation(areas)};
}

// First as if nothing were known of this car, so that laps and knowledge can be held against each other.
void fit_driving(CarFits& fits, const CarData& data, const FigureOptions& options, double half_density) {
    DrivingPrior prior;
    prior.drag_per_kg = half_density * usual_drag_area;
    prior.drag_sd = prior.drag_per_kg * drag_area_share_sd;
    fits.driving = fit_driving_force(data, prior, options.draws, options.seed);
    if (!fits.driving.outcome.converged() || !knows_driving(data)) return;
    const DrivingForce& laps = fits.driving;
    if (const auto& drag = data.known.drag_area_m2)
        fits.disagreements.push_back(disagreement(said("the drag area given"), *drag,
                                                  {laps.best.drag_per_kg / half_density, laps.drag_sd / half_density},
                                                  "m²", 2));
    if (const auto& power = data.known.power_w) {
        const double mean_w = data.mass->value_kg / 1000.0 * (laps.curve ? laps.curve->max_share : 1.0);
        fits.disagreements.push_back(disagreement(said("the power given"), {power->value / 1000.0, power->sd / 1000.0},
                                                  {mean_w * laps.best.power_per_kg, mean_w * laps.power_sd}, "kW", 0));
    }
    fits.driving = fit_driving_force(data, with_known(prior, data, laps.curve), options.draws, options.seed);
}

void fit_corners(CarFits& fits, const CarData& data, const FigureOptions& options, double half_density) {
    fits.grip_prior = {half_density * usual_downforce_area, half_density * downforce_area_sd};
    fits.suspension = suspension_downforce(data);
    fits.grip = fit_grip(fits.evidence, fits.grip_prior, options.draws, options.seed);
    if (!knows_downforce(data, fits.suspension)) return;
    const KnownFigure laps = downforce_area(fits.grip.draws, half_density);
    if (const auto& area = data.known.downforce_area_m2)
        fits.disagreements.push_back(disagreement(said("the downforce area given"), *area, laps, "m²", 2));
    if (fits.suspension && fits.suspension->told()) {
        const double per_area = 0.5 * data.air.value_kg_m3;
        fits.disagreements.push_back(
            disagreement(said("the suspension's downforce area"),
                         {fits.suspension->n_per_mps2 / per_area, fits.suspension->sd / per_area}, laps, "m²", 2));
    }
    fits.grip =
        fit_grip(fits.evidence, with_known(fits.grip_prior, data, fits.suspension), options.draws, options.seed);
}

} // namespace

base::Result<CarFits> fit_car(const CarData& data, const FigureOptions& options) {
    const auto cannot = [](const std::string& what) {
        return base::Error{
            base::ErrorCode::cannot_be_computed, {}, what, said("record more clean laps at full effort")};
    };
    const double mass = data.mass ? data.mass->value_kg : usual_mass_kg;
    const double half_density = 0.5 * data.air.value_kg_m3 / mass;
    CarFits fits;
    fit_driving(fits, data, options, half_density);
    if (fits.driving.outcome.status == base::FitStatus::failed)
        return cannot(said("no stretch at full throttle could be found"));
    fits.evidence = limit_evidence(data, fits.driving);
    if (fits.evidence.corners.empty()) return cannot(said("no corner could be found"));
    fit_corners(fits, data, options, half_density);
    return fits;
}

} // namespace lapwright::car
