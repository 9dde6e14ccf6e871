// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/car_figures.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/car/alike_errors.h"
#include "core/car/fit_car.h"
#include "core/car/full_throttle.h"
#include "core/car/grip_priors.h"
#include "core/car/settle.h"
#include "core/car/suspension.h"
#include "core/car/withhold_figures.h"
#include "core/math/random.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

using base::said;

constexpr double g = base::standard_gravity_mps2;
// Stated priors (common practice, no source).
constexpr double traction_sd = 0.07;       // relative, of the traction share: exits differ
constexpr double min_usual_traction = 0.5; // share of the grip: of a car that drives its lighter axle,
constexpr double max_usual_traction = 0.9; // and of one that drives its heavier, or all
constexpr double hardly_changes = 0.02;    // of power over the engine speeds used
constexpr double data_decides = 0.5;       // posterior over prior standard deviation

template <typename Get>
CarFigure figure_of(const std::vector<CarDraw>& draws, Get get, DecidedBy decided_by = DecidedBy::data) {
    std::vector<double> values;
    values.reserve(draws.size());
    for (const CarDraw& draw : draws)
        values.push_back(get(draw));
    std::ranges::sort(values);
    return {{math::sorted_quantile(values, 0.5), math::sorted_quantile(values, 0.025),
             math::sorted_quantile(values, 0.975)},
            decided_by};
}

std::vector<CarDraw> join(const CarFits& fits, const CarData& data, std::size_t draws, std::uint64_t seed) {
    std::vector<CarDraw> all;
    math::Random random(seed, 31);
    for (std::size_t i = 0; i < draws; ++i) {
        const DrivingForceDraw& push = fits.driving.draws[i];
        const GripDraw& limit = fits.grip.draws[i];
        CarDraw draw;
        draw.density_kg_m3 = std::max(0.7, data.air.value_kg_m3 + data.air.sd_kg_m3 * random.normal());
        draw.driver_share = driver_share(random.normal());
        const double mass = data.mass ? std::max(1.0, data.mass->value_kg + data.mass->sd_kg * random.normal()) : 1.0;
        SimulatedCar& car = draw.car;
        car.mass_kg = mass;
        car.grip = std::exp(limit.log_limit) / g / draw.driver_share;
        car.load_exponent = limit.load_exponent;
        car.downforce_n_per_mps2 = limit.k * mass * std::exp(attitude_sd * random.normal());
        car.drag_n_per_mps2 = push.drag_per_kg * mass;
        car.rolling_resistance = push.rolling_resistance;
        car.power_w = push.power_per_kg * mass;
        car.power_shares = push.power_shares;
        car.rotating_share = push.rotating_share;
        car.braking_share = std::exp(limit.log_braking);
        all.push_back(draw);
    }
    return all;
}

// Where the engine was the limit, the tyres put down anything from what was seen to what tyres can.
void add_traction(CarFigures& figures, const Traction& seen, std::uint64_t seed) {
    math::Random random(seed, 32);
    const double room = seen.bound ? std::max(0.0, max_usual_traction - seen.share) : 0.0;
    for (CarDraw& draw : figures.draws) {
        const double share = seen.share + room * random.uniform();
        draw.car.traction_share = std::clamp(share * std::exp(traction_sd * random.normal()), 0.2, 1.0);
    }
    figures.traction_share = seen.share + 0.5 * room;
}

DecidedBy judged(double sd, double prior_sd) {
    return sd < data_decides * prior_sd ? DecidedBy::data : DecidedBy::prior;
}

// Where a figure was given and the laps did not make it much surer, the setup sheet decided.
DecidedBy judged(double sd, double prior_sd, const std::optional<KnownFigure>& given, double per_given) {
    const DecidedBy laps = judged(sd, prior_sd);
    return given && !(sd < data_decides * given->sd * per_given) ? DecidedBy::setup : laps;
}

PowerShares typical_shares(const std::vector<CarDraw>& draws) {
    PowerShares typical;
    for (std::size_t i = 0; i < draws.front().car.power_shares.of_power.size(); ++i)
        typical.of_power.push_back(
            figure_of(draws, [i](const CarDraw& d) { return d.car.power_shares.of_power[i]; }).value);
    return typical;
}

CarDraw typical_of(const std::vector<CarDraw>& draws, double traction) {
    const auto middle = [&](auto get) { return figure_of(draws, get).value; };
    CarDraw t;
    t.density_kg_m3 = middle([](const CarDraw& d) { return d.density_kg_m3; });
    t.driver_share = middle([](const CarDraw& d) { return d.driver_share; });
    t.car.grip = middle([](const CarDraw& d) { return d.car.grip; });
    t.car.load_exponent = middle([](const CarDraw& d) { return d.car.load_exponent; });
    t.car.downforce_n_per_mps2 = middle([](const CarDraw& d) { return d.car.downforce_n_per_mps2; });
    t.car.drag_n_per_mps2 = middle([](const CarDraw& d) { return d.car.drag_n_per_mps2; });
    t.car.rolling_resistance = middle([](const CarDraw& d) { return d.car.rolling_resistance; });
    t.car.power_w = middle([](const CarDraw& d) { return d.car.power_w; });
    t.car.power_shares = typical_shares(draws);
    t.car.mass_kg = middle([](const CarDraw& d) { return d.car.mass_kg; });
    t.car.rotating_share = middle([](const CarDraw& d) { return d.car.rotating_share; });
    t.car.braking_share = middle([](const CarDraw& d) { return d.car.braking_share; });
    t.car.traction_share = traction;
    return t;
}

void add_evidence(CarFigures& figures, const CarFits& fits) {
    for (std::size_t i = 0; i < fits.evidence.corners.size(); ++i) {
        const LimitCorner& c = fits.evidence.corners[i];
        const double told_back = std::exp(fits.grip.peak_part * c.fall); // of the peak, as the fit takes it
        std::vector<double> laps = c.lap_lateral_mps2;
        for (double& lateral : laps)
            lateral *= told_back;
        figures.corners.push_back({c.corner, std::sqrt(c.speed_squared), told_back * std::exp(c.log_lateral),
                                   c.lap_speed_mps, std::move(laps), c.flat, fits.grip.chance_at_limit[i]});
    }
    for (const LimitZone& z : fits.evidence.zones) {
        figures.braking.push_back({z.corner, std::sqrt(z.slow_speed_squared), std::exp(z.slow_log), false});
        figures.braking.push_back({z.corner, std::sqrt(z.fast_speed_squared), std::exp(z.fast_log), true});
    }
    figures.driving = fits.driving.evidence;
}

std::string power_note(const std::optional<PowerCurveSeen>& curve) {
    if (!curve)
        return said(
            "engine speed was not recorded: how power changes with speed is hardly known, so it and the drag are "
            "known less well");
    const auto rpm = [](double rev_s) { return base::shown_text(100.0 * std::round(0.6 * rev_s), 0); };
    if (curve->max_share - curve->min_share < hardly_changes)
        return said(
            "power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it hardly changes",
            {rpm(curve->slowest_rev_s), rpm(curve->fastest_rev_s)});
    return said("power is the mean over the engine speeds of the straights, %1 to %2 rpm; over them it runs from %3 to "
                "%4 % of that",
                {rpm(curve->slowest_rev_s), rpm(curve->fastest_rev_s), base::shown_text(100.0 * curve->min_share, 0),
                 base::shown_text(100.0 * curve->max_share, 0)});
}

void add_notes(CarFigures& figures, const CarFits& fits, const CarData& data) {
    if (data.laps.size() < 3)
        figures.notes.push_back(said("few clean laps: what differs from lap to lap is hardly known"));
    if (figures.downforce_area_m2_per_kg.decided_by == DecidedBy::prior)
        figures.notes.push_back(said("the laps do not tell the downforce; it is mostly what such cars usually have"));
    if (figures.drag_area_m2_per_kg.decided_by == DecidedBy::prior)
        figures.notes.push_back(said("the laps do not tell the drag; it is mostly what such cars usually have"));
    figures.notes.push_back(power_note(fits.driving.curve));
    if (fits.suspension && !fits.suspension->told()) figures.notes.push_back(fits.suspension->untold);
    for (const std::string& note : fits.disagreements)
        if (!note.empty()) figures.notes.push_back(note);
    if (figures.per_kilogram) figures.notes.push_back(said("no mass was given: figures are per kilogram"));
    const KnownFigures& known = data.known;
    if (figures.per_kilogram && (known.downforce_area_m2 || known.drag_area_m2 || known.power_w))
        figures.notes.push_back(
            said("without the mass what the setup sheet knows of downforce, drag and power does not count"));
    for (const CornerEvidence& corner : figures.corners) {
        if (corner.flat)
            figures.notes.push_back(
                said("%1 is taken at full throttle: it bounds the grip from below only", {corner.corner}));
        else if (corner.chance_at_limit < 0.5)
            figures.notes.push_back(said("%1 looks to be taken below the limit", {corner.corner}));
    }
}

// Times are right where all lengths are off: what is simulated is so too, but not what is told of the car.  Both cars
// of a pairing are off by the same.
std::vector<CarDraw> with_length_errors(std::vector<CarDraw> draws, double length_sd) {
    if (!(length_sd > 0.0)) return draws;
    math::Random random(1, 33);
    for (CarDraw& draw : draws) {
        const double scale = std::exp(length_sd * random.normal());
        draw.car.grip *= scale;
        draw.car.downforce_n_per_mps2 /= scale * scale;
        draw.car.drag_n_per_mps2 /= scale;
        draw.car.power_w *= scale * scale;
    }
    return draws;
}

void add_figures(CarFigures& figures, const CarFits& fits, const CarData& data) {
    const std::vector<CarDraw> draws = with_length_errors(figures.draws, data.length_sd);
    const double mass = data.mass ? data.mass->value_kg : usual_mass_kg;
    figures.grip = figure_of(draws, [](const CarDraw& d) { return d.car.grip; });
    figures.grip_as_used = figure_of(draws, [](const CarDraw& d) { return d.car.grip * d.driver_share; });
    const double as_used_sd = 0.25 * (figures.grip_as_used.high - figures.grip_as_used.low);
    figures.grip.decided_by = judged(as_used_sd, 0.25 * figures.grip_as_used.value);
    figures.grip_as_used.decided_by = figures.grip.decided_by;

    const auto per_kg = [](double force, const CarDraw& d) { return 2.0 * force / d.density_kg_m3 / d.car.mass_kg; };
    figures.downforce_area_m2_per_kg =
        figure_of(draws, [&](const CarDraw& d) { return per_kg(d.car.downforce_n_per_mps2, d); });
    const KnownFigures known = data.mass ? data.known : KnownFigures{};
    figures.downforce_area_m2_per_kg.decided_by =
        judged(0.5 * figures.downforce_area_m2_per_kg.half_width(),
               2.0 * fits.grip_prior.k_sd_cut() / data.air.value_kg_m3, known.downforce_area_m2, 1.0 / mass);
    figures.apparent_downforce_area_m2_per_kg = figure_of(
        draws, [&](const CarDraw& d) { return d.car.load_exponent * per_kg(d.car.downforce_n_per_mps2, d); },
        figures.downforce_area_m2_per_kg.decided_by);
    figures.drag_area_m2_per_kg = figure_of(
        draws, [&](const CarDraw& d) { return per_kg(d.car.drag_n_per_mps2, d); },
        judged(fits.driving.drag_sd, drag_area_share_sd * 0.5 * data.air.value_kg_m3 * usual_drag_area / mass,
               known.drag_area_m2, 0.5 * data.air.value_kg_m3 / mass));
    figures.power_w_per_kg = figure_of(draws, [](const CarDraw& d) { return d.car.power_w / d.car.mass_kg; });
    figures.power_w_per_kg.decided_by =
        judged(fits.driving.power_sd, DrivingPrior{}.power_sd, known.power_w, 1.0 / mass);
    figures.load_exponent = figure_of(draws, [](const CarDraw& d) { return d.car.load_exponent; }, DecidedBy::prior);
    figures.braking_share = figure_of(draws, [](const CarDraw& d) { return d.car.braking_share; });
    figures.per_kilogram = !data.mass;
    if (!data.mass) return;
    const double half_width_kg = base::half_width_95(data.mass->sd_kg);
    figures.mass_kg =
        CarFigure{{data.mass->value_kg, data.mass->value_kg - half_width_kg, data.mass->value_kg + half_width_kg},
                  DecidedBy::setup};
    figures.downforce_area_m2 = figure_of(
        draws, [&](const CarDraw& d) { return per_kg(d.car.downforce_n_per_mps2, d) * d.car.mass_kg; },
        figures.downforce_area_m2_per_kg.decided_by);
    figures.drag_area_m2 = figure_of(
        draws, [&](const CarDraw& d) { return per_kg(d.car.drag_n_per_mps2, d) * d.car.mass_kg; },
        figures.drag_area_m2_per_kg.decided_by);
    figures.power_w =
        figure_of(draws, [](const CarDraw& d) { return d.car.power_w; }, figures.power_w_per_kg.decided_by);
}

void add_correlations(CarFigures& figures) {
    std::array<std::vector<double>, 4> values;
    for (const CarDraw& d : figures.draws) {
        const double per_kg = 1.0 / d.car.mass_kg;
        values[0].push_back(d.car.grip);
        values[1].push_back(per_kg * d.car.downforce_n_per_mps2 / d.density_kg_m3);
        values[2].push_back(per_kg * d.car.drag_n_per_mps2 / d.density_kg_m3);
        values[3].push_back(per_kg * d.car.power_w);
    }
    for (std::size_t i = 0; i < values.size(); ++i)
        for (std::size_t j = 0; j < values.size(); ++j)
            figures.correlations[i][j] = math::correlation(values[i], values[j]);
}

template <typename Get>
Curve curve_of(const CarFigures& figures, double to_mps, Get get) {
    Curve curve;
    for (double v = 8.0; v <= to_mps; v += 1.0) {
        const CarFigure at = figure_of(figures.draws, [&](const CarDraw& d) { return get(d, v); });
        curve.speed_mps.push_back(v);
        curve.value.push_back(at.value);
        curve.low.push_back(at.low);
        curve.high.push_back(at.high);
    }
    return curve;
}

} // namespace

std::string_view name(DecidedBy decided_by) {
    switch (decided_by) {
    case DecidedBy::data:
        return "data";
    case DecidedBy::prior:
        return "prior";
    case DecidedBy::setup:
        return "setup";
    }
    return "prior";
}

base::Result<CarFigures> car_figures(const CarData& recorded, const FigureOptions& options) {
    if (recorded.laps.empty() || recorded.segments.empty())
        return base::Error{base::ErrorCode::cannot_be_computed,
                           {},
                           said("there is no clean lap to learn the car from"),
                           said("record more clean laps at full effort")};
    CarData data = recorded;
    for (lap::LapTrace& lap : data.laps)
        lap = settled(std::move(lap));
    auto fitted = fit_car(data, options);
    if (!fitted) return fitted.error();
    CarFits fits = std::move(fitted).value();
    order_alike(fits.driving.draws, &DrivingForceDraw::drag_per_kg, options.seed, 34);
    order_alike(fits.grip.draws, &GripDraw::k, options.seed, 35);

    CarFigures figures;
    const math::Convergence& corners = fits.grip.convergence;
    figures.straight_fit = fits.driving.outcome;
    figures.corner_fit = {fits.grip.outcome, corners.r_hat, std::min(corners.effective_bulk, corners.effective_tail),
                          fits.grip.acceptance};
    figures.draws = join(fits, data, options.draws, options.seed);
    figures.fastest_mps = fastest_speed_mps(data);
    if (!data.springs) figures.springs_would_tell = springs_would_tell(data);
    const CarDraw middle = typical_of(figures.draws, 0.6);
    const double log_limit = std::log(middle.car.grip * middle.driver_share * g);
    const Traction seen = traction(data, fits.driving, log_limit, middle.car.downforce_n_per_mps2 / middle.car.mass_kg,
                                   middle.car.load_exponent)
                              .value_or(Traction{min_usual_traction, true});
    add_traction(figures, seen, options.seed);
    figures.typical = typical_of(figures.draws, figures.traction_share);
    add_figures(figures, fits, data);
    add_correlations(figures);
    add_evidence(figures, fits);
    add_notes(figures, fits, data);
    withhold_what_cannot_be_told(figures);
    return figures;
}

ForceFigures forces_at(const CarFigures& figures, double speed_mps) {
    ForceFigures forces;
    forces.speed_mps = speed_mps;
    if (figures.per_kilogram) return forces;
    const double w = speed_mps * speed_mps;
    const auto force = [&](const CarFigure& area, auto get) {
        return area.told() ? CarFigure{scaled(figure_of(figures.draws, get, area.decided_by), w), area.decided_by}
                           : area;
    };
    forces.downforce_n =
        force(figures.downforce_area_m2_per_kg, [](const CarDraw& d) { return d.car.downforce_n_per_mps2; });
    forces.drag_n = force(figures.drag_area_m2_per_kg, [](const CarDraw& d) { return d.car.drag_n_per_mps2; });
    return forces;
}

Curve limit_curve(const CarFigures& figures, double to_mps) {
    return curve_of(figures, to_mps, [](const CarDraw& d, double v) {
        const double load = std::max(0.05, 1.0 + d.car.downforce_n_per_mps2 * v * v / (d.car.mass_kg * g));
        return d.car.grip * d.driver_share * g * std::pow(load, d.car.load_exponent);
    });
}

Curve driving_curve(const CarFigures& figures, double to_mps) {
    return curve_of(figures, to_mps, [](const CarDraw& d, double v) {
        return (d.car.power_w * d.car.power_shares.at(v) / v - d.car.drag_n_per_mps2 * v * v) / d.car.mass_kg;
    });
}

} // namespace lapwright::car
