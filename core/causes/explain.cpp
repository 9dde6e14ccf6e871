// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/explain.h"

#include "core/base/check.h"
#include "core/base/number_text.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/causes/course.h"
#include "core/causes/driver_use.h"
#include "core/causes/next_test.h"
#include "core/causes/shapley.h"
#include "core/causes/simulated_change.h"
#include "core/causes/spread.h"
#include "core/causes/what_if.h"
#include "core/causes/withhold.h"
#include "core/math/random.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace lapwright::causes {
namespace {

using base::said;
using base::word;

constexpr unsigned mixtures = 1U << cause_count;
constexpr int first_rounds = 25;  // to find the typical car's use
constexpr int refine_rounds = 3;  // from there for each draw
constexpr double misfit_s = 0.03; // more than this is said
// With the engine its gears are exchanged: other shifts, each of which costs time that is not simulated.  Of the time
// on straights, between two cars (measured likewise: 0.14 s a lap).
constexpr double shift_loss_sd = 0.003;

bool has(unsigned mask, Cause cause) {
    return (mask >> static_cast<unsigned>(cause) & 1U) != 0;
}

// Both cars on one footing: per kilogram when either mass is unknown.
car::SimulatedCar on_footing(car::SimulatedCar car, bool per_kilogram) {
    if (!per_kilogram) return car;
    car.downforce_n_per_mps2 /= car.mass_kg;
    car.drag_n_per_mps2 /= car.mass_kg;
    car.power_w /= car.mass_kg;
    car.mass_kg = 1.0;
    return car;
}

struct Prepared {
    std::shared_ptr<CarModel> model;
    FittedUse typical;
};

Prepared prepare(const KnownSide& side, const std::vector<track::Segment>& segments, bool per_kilogram, double step_m) {
    Prepared prepared;
    prepared.model = std::make_shared<CarModel>();
    CarModel& model = *prepared.model;
    model.per_kilogram = per_kilogram;
    model.course = course_of(side.clean_laps, segments, step_m);
    const car::SimulatedCar typical = on_footing(side.figures.typical.car, per_kilogram);
    prepared.typical = fit_use(typical, model.course, segments, side.segment_s, {}, first_rounds);
    const std::size_t draws = side.figures.draws.size();
    model.draws.resize(draws);
    for (std::size_t i = 0; i < draws; ++i)
        model.draws[i] = on_footing(side.figures.draws[i].car, per_kilogram);
    model.uses.resize(draws);
    model.segment_s.resize(draws);
    return prepared;
}

void fit_draw(Prepared& prepared, const std::vector<track::Segment>& segments, const std::vector<double>& measured,
              std::size_t i) {
    CarModel& model = *prepared.model;
    FittedUse fitted = fit_use(model.draws[i], model.course, segments, measured, prepared.typical.use, refine_rounds);
    model.uses[i] = std::move(fitted.use);
    model.segment_s[i] = std::move(fitted.segment_s);
}

using BySegment = std::vector<std::array<double, cause_count>>;

// Neither driver has more right than the other: what exchanging a figure does to A's lap and to B's, half and half.  So
// swapping A and B turns the sign and changes nothing else.
BySegment causes_for_both(const CarModel& a, const CarModel& b, const std::vector<track::Segment>& segments,
                          std::size_t draw, const ExplainOptions& options) {
    math::Random random(options.seed, 51 + draw);
    std::array<double, cause_count> factor{};
    for (std::size_t c = 0; c < cause_count; ++c)
        factor[c] = 1.0 + model_error_sd[c] * random.normal();
    // The sign goes with the cars, so that it turns when they are swapped.
    const double side = a.draws[draw].power_w < b.draws[draw].power_w ? -1.0 : 1.0;
    const double shift_loss = options.same_car ? 0.0 : side * shift_loss_sd * random.normal();
    BySegment causes = causes_by_segment(a.draws[draw], b.draws[draw], a.course, a.uses[draw]);
    const BySegment other = causes_by_segment(b.draws[draw], a.draws[draw], b.course, b.uses[draw]);
    for (std::size_t k = 0; k < causes.size(); ++k)
        for (std::size_t c = 0; c < cause_count; ++c)
            causes[k][c] = 0.5 * factor[c] * (causes[k][c] - other[k][c]);
    for (std::size_t k = 0; k < causes.size(); ++k)
        if (segments[k].kind == track::SegmentKind::straight)
            causes[k][static_cast<std::size_t>(Cause::power)] +=
                shift_loss * 0.5 * (a.segment_s[draw][k] + b.segment_s[draw][k]);
    return causes;
}

// ln of A's over B's, one a draw: of the tyres' grip, and of the share of it that the drivers use.
struct GripRatios {
    std::vector<double> tyres;
    std::vector<double> use;
};

GripRatios grip_ratios(const CarModel& a, const CarModel& b, const KnownSide& known_a, const KnownSide& known_b) {
    GripRatios ratios;
    for (std::size_t i = 0; i < a.draws.size(); ++i) {
        ratios.tyres.push_back(std::log(a.draws[i].grip / b.draws[i].grip));
        ratios.use.push_back(std::log(known_a.figures.draws[i].driver_share / known_b.figures.draws[i].driver_share));
    }
    return ratios;
}

// Using more of the grip is worth what more grip is: seconds per ln, from how the tyres' worth goes with their ratio
// over the draws.  What the drivers' use adds takes its uncertainty back out of the grip's.
double worth_of_grip(const std::vector<std::array<double, cause_count>>& draws, const GripRatios& ratios) {
    std::vector<double> worth(draws.size());
    for (std::size_t i = 0; i < draws.size(); ++i)
        worth[i] = draws[i][static_cast<std::size_t>(Cause::tyre_grip)];
    const double spread = math::standard_deviation(ratios.tyres);
    if (!(spread > 0.0)) return 0.0;
    return math::correlation(worth, ratios.tyres) * math::standard_deviation(worth) / spread;
}

// One row out of the draws of its causes.
Row row_of(double gain, double gain_sd, const std::vector<std::array<double, cause_count>>& draws,
           const GripRatios& ratios, std::uint64_t seed) {
    Row row;
    const double half_width = base::half_width_95(gain_sd);
    row.gain = {gain, gain - half_width, gain + half_width};
    std::vector<double> values(draws.size());
    const auto spread = [&](auto get) {
        for (std::size_t i = 0; i < draws.size(); ++i)
            values[i] = get(i);
        return spread_of(values);
    };
    double sum = 0.0;
    for (std::size_t c = 0; c < cause_count; ++c) {
        row.causes[c] = spread([&](std::size_t i) { return draws[i][c]; });
        sum += row.causes[c].value;
    }
    const auto both = [&](Cause x, Cause y) {
        return spread([&](std::size_t i) {
            return draws[i][static_cast<std::size_t>(x)] + draws[i][static_cast<std::size_t>(y)];
        });
    };
    row.cornering = both(Cause::tyre_grip, Cause::downforce);
    const double per_ln = worth_of_grip(draws, ratios);
    row.cornering_as_driven = spread([&](std::size_t i) {
        return draws[i][static_cast<std::size_t>(Cause::tyre_grip)] +
               draws[i][static_cast<std::size_t>(Cause::downforce)] + per_ln * ratios.use[i];
    });
    row.aero = both(Cause::downforce, Cause::drag);
    row.straights = both(Cause::drag, Cause::power);
    math::Random random(seed, 41);
    std::vector<double> rest;
    for (const auto& draw : draws) {
        double explained = 0.0;
        for (const double x : draw)
            explained += x;
        const double noise = gain_sd * random.normal();
        rest.push_back(gain - explained + noise); // and its mirror image, which has no preference for a side
        rest.push_back(gain - explained - noise);
    }
    row.driver_and_rest = spread_of(rest);
    // Exactly what is left, whatever noise the draws of the gain had.
    if (row.driver_and_rest.told()) row.driver_and_rest.value = gain - sum;
    return row;
}

double worst_misfit(const Prepared& a, const Prepared& b, const KnownSide& known_a, const KnownSide& known_b,
                    std::size_t k) {
    return std::max(std::abs(a.typical.segment_s[k] - known_a.segment_s[k]),
                    std::abs(b.typical.segment_s[k] - known_b.segment_s[k]));
}

std::string misfit_words(const Prepared& a, const Prepared& b, const KnownSide& known_a, const KnownSide& known_b,
                         std::size_t k) {
    const double off_a = a.typical.segment_s[k] - known_a.segment_s[k];
    const double off_b = b.typical.segment_s[k] - known_b.segment_s[k];
    const double off = std::abs(off_a) > std::abs(off_b) ? off_a : off_b;
    if (std::abs(off) <= misfit_s) return {};
    const std::string who = std::abs(off_a) > std::abs(off_b) ? "A" : "B";
    return said(off > 0.0 ? word("the simulated car of %1 is %2 s too slow here, whatever the driver does")
                          : word("the simulated car of %1 is %2 s too quick here, whatever the driver does"),
                {who, base::shown_text(std::abs(off), 2)});
}

double use_of(const FittedUse& fitted, const track::Segment& segment, std::size_t k) {
    return segment.kind == track::SegmentKind::corner ? fitted.use.grip[k] : fitted.use.drive[k];
}

void add_car_evidence(Explanation& e) {
    const double top = std::max(e.car_a.fastest_mps, e.car_b.fastest_mps);
    e.limit_a = car::limit_curve(e.car_a, top);
    e.limit_b = car::limit_curve(e.car_b, top);
    e.driving_a = car::driving_curve(e.car_a, top);
    e.driving_b = car::driving_curve(e.car_b, top);
    e.grip_downforce_a = car::grip_and_downforce(e.car_a, e.per_kilogram);
    e.grip_downforce_b = car::grip_and_downforce(e.car_b, e.per_kilogram);
    // A round speed that both cars reach.
    e.force_speed_mps = std::max(10.0, 10.0 * std::floor(std::min(e.car_a.fastest_mps, e.car_b.fastest_mps) / 10.0));
    e.forces_a = car::forces_at(e.car_a, e.force_speed_mps);
    e.forces_b = car::forces_at(e.car_b, e.force_speed_mps);
}

void add_warnings(Explanation& e) {
    for (const Cause cause : all_causes)
        if (const Seconds& s = e.total.of(cause); !s.told())
            e.warnings.push_back(said("what %1 is worth cannot be told: %2", {name(cause), s.untold}));
    if (!e.total.driver_and_rest.told())
        e.warnings.push_back(
            said("what driver and rest are worth cannot be told: %1", {e.total.driver_and_rest.untold}));
    for (const auto& [letter, figures] : {std::pair("A: ", &e.car_a), std::pair("B: ", &e.car_b)})
        for (const std::string& note : figures->notes)
            e.warnings.push_back(letter + note);
    if (e.per_kilogram)
        e.warnings.push_back(said(
            "without the mass of both cars power, drag and downforce count per kilogram, and mass is part of them"));
    for (const SegmentRow& row : e.segments)
        if (!row.does_not_fit.empty()) e.warnings.push_back(base::labelled(row.segment.name, row.does_not_fit));
}

// All mixtures without that bit, in the order in which their simulation shares the most.
std::vector<unsigned> neighbours_alike(unsigned unused) {
    constexpr unsigned drag = 1U << static_cast<unsigned>(Cause::drag);
    constexpr unsigned power = 1U << static_cast<unsigned>(Cause::power);
    std::vector<unsigned> masks;
    for (unsigned mask = 0; mask < mixtures; ++mask)
        if ((mask & unused) == 0) masks.push_back(mask);
    std::ranges::sort(masks, {},
                      [](unsigned mask) { return std::tuple(mask & ~(drag | power), mask & drag, mask & power); });
    return masks;
}

} // namespace

std::string_view key(Cause cause) {
    switch (cause) {
    case Cause::tyre_grip:
        return "tyre_grip";
    case Cause::downforce:
        return "downforce";
    case Cause::drag:
        return "drag";
    case Cause::power:
        return "power";
    case Cause::mass:
        return "mass";
    }
    return "";
}

const char* english_name(Cause cause) {
    switch (cause) {
    case Cause::tyre_grip:
        return word("tyre grip");
    case Cause::downforce:
        return word("downforce");
    case Cause::drag:
        return word("drag");
    case Cause::power:
        return word("power");
    case Cause::mass:
        return word("mass");
    }
    return "";
}

std::string name(Cause cause) {
    return said(english_name(cause));
}

car::SimulatedCar mixture(const car::SimulatedCar& a, const car::SimulatedCar& b, unsigned mask) {
    car::SimulatedCar car = a;
    if (has(mask, Cause::tyre_grip)) {
        car.grip = b.grip;
        car.load_exponent = b.load_exponent;
    }
    if (has(mask, Cause::downforce)) car.downforce_n_per_mps2 = b.downforce_n_per_mps2;
    if (has(mask, Cause::drag)) {
        car.drag_n_per_mps2 = b.drag_n_per_mps2;
        car.rolling_resistance = b.rolling_resistance;
    }
    if (has(mask, Cause::power)) {
        car.power_w = b.power_w;
        car.power_shares = b.power_shares;
        car.rotating_share = b.rotating_share;
    }
    if (has(mask, Cause::mass)) car.mass_kg = b.mass_kg;
    return car;
}

BySegment causes_by_segment(const car::SimulatedCar& a, const car::SimulatedCar& b, const car::Course& course,
                            const car::DriverUse& use) {
    const std::size_t segments = course.segments();
    std::vector<std::vector<double>> values(segments, std::vector<double>(mixtures));
    // Without a difference in mass its bit changes nothing.
    const unsigned unused = a.mass_kg == b.mass_kg ? 1U << static_cast<unsigned>(Cause::mass) : 0U;
    const std::vector<unsigned> masks = neighbours_alike(unused);
    std::vector<car::SimulatedCar> cars;
    for (const unsigned mask : masks)
        cars.push_back(mixture(a, b, mask));
    const std::vector<car::SimulatedLap> laps = car::simulate_laps(cars, course, use);
    for (std::size_t i = 0; i < masks.size(); ++i)
        for (std::size_t k = 0; k < segments; ++k)
            values[k][masks[i]] = values[k][masks[i] | unused] = laps[i].segment_time_s[k];
    BySegment causes(segments);
    for (std::size_t k = 0; k < segments; ++k)
        std::ranges::copy(shapley(values[k]), causes[k].begin());
    return causes;
}

base::Result<Explanation> explain(const KnownSide& a, const KnownSide& b, const comparison::Comparison& comparison,
                                  const ExplainOptions& options, const base::Progress& progress) {
    std::vector<track::Segment> segments;
    for (const auto& s : comparison.segments)
        segments.push_back(s.segment);
    base::check(a.segment_s.size() == segments.size() && b.segment_s.size() == segments.size(), "a time a segment");
    base::check(!a.figures.draws.empty() && a.figures.draws.size() == b.figures.draws.size(), "equally many draws");
    Explanation e;
    e.car_a = a.figures;
    e.car_b = b.figures;
    e.same_car = options.same_car;
    e.per_kilogram = a.figures.per_kilogram || b.figures.per_kilogram;
    if (!base::go_on(progress, said("learning how both drivers use their cars"), 0.0)) return base::cancelled();
    Prepared own_a = prepare(a, segments, e.per_kilogram, options.step_m);
    Prepared own_b = prepare(b, segments, e.per_kilogram, options.step_m);

    const std::size_t draws = a.figures.draws.size();
    std::vector<BySegment> causes(draws);
    base::TaskProgress told(progress, said("separating the causes"), draws);
    const bool done = base::parallel_for(draws, std::max(1U, options.threads), [&](std::size_t i, std::size_t) {
        fit_draw(own_a, segments, a.segment_s, i);
        fit_draw(own_b, segments, b.segment_s, i);
        causes[i] = causes_for_both(*own_a.model, *own_b.model, segments, i, options);
        return told.done();
    });
    if (!done) return base::cancelled();

    std::vector<std::array<double, cause_count>> total(draws, std::array<double, cause_count>{});
    const GripRatios ratios = grip_ratios(*own_a.model, *own_b.model, a, b);
    for (std::size_t k = 0; k < segments.size(); ++k) {
        std::vector<std::array<double, cause_count>> here(draws);
        for (std::size_t i = 0; i < draws; ++i) {
            here[i] = causes[i][k];
            for (std::size_t c = 0; c < cause_count; ++c)
                total[i][c] += here[i][c];
        }
        const comparison::Figure& gain = comparison.segments[k].gain_s;
        SegmentRow row;
        row.segment = segments[k];
        row.row = row_of(gain.value, gain.sd.value_or(0.0), here, ratios, options.seed + k);
        row.use_a = use_of(own_a.typical, segments[k], k);
        row.use_b = use_of(own_b.typical, segments[k], k);
        row.driving_a = comparison.segments[k].a;
        row.driving_b = comparison.segments[k].b;
        row.time_a_s = a.segment_s[k];
        row.time_b_s = b.segment_s[k];
        row.misfit_s = worst_misfit(own_a, own_b, a, b, k);
        row.does_not_fit = misfit_words(own_a, own_b, a, b, k);
        e.segments.push_back(std::move(row));
    }
    const comparison::Figure& gap = comparison.gap_at_end_s;
    e.total = row_of(gap.value, gap.sd.value_or(0.0), total, ratios, options.seed + 1000);
    if (!options.same_car) e.next_tests = next_tests(a, b, total);
    withhold_what_cannot_be_told(e);
    own_a.model->untold = why_not_what_if(e, Side::a);
    own_b.model->untold = why_not_what_if(e, Side::b);
    e.sensitivities_a = sensitivities(*own_a.model);
    e.sensitivities_b = sensitivities(*own_b.model);
    e.model_a = own_a.model;
    e.model_b = own_b.model;
    add_car_evidence(e);
    add_warnings(e);
    return e;
}

} // namespace lapwright::causes
