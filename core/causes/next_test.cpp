// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/next_test.h"

#include "core/base/check.h"
#include "core/base/constants.h"
#include "core/base/wording.h"
#include "core/math/distributions.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace lapwright::causes {
namespace {

constexpr double gravity_mps2 = base::standard_gravity_mps2;
constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

// Errors of the readings (common practice, no source, unless named).
constexpr double scales_sd_kg = 3.0;     // four wheel scales, and driver and fuel as driven
constexpr double dynamometer_sd = 0.03;  // at the wheels, relative
constexpr double wind_sd_mps = 1.8;      // along the straight, as the fit of the laps has it
constexpr double rolling_sd = 0.003;     // of the rolling resistance, likewise
constexpr double slope_sd = 0.001;       // of the straight
constexpr double speed_sd_mps = 0.1;     // of each end of the coasting
constexpr double coast_from_share = 0.9; // of the fastest speed
constexpr double coast_to_share = 0.7;   // of where it begins
constexpr int trial_laps = 3;            // of each of three runs: baseline, change, baseline
constexpr double effort_h[] = {0.25, 0.5, 0.5, 3.0, 1.5};
// Less than this is not worth doing: an interval narrower by an eighth.
constexpr double least_information = 0.13;

using Draws = std::vector<double>;

template <typename Get>
Draws of_draws(const car::CarFigures& figures, Get get) {
    Draws values;
    for (const car::CarDraw& draw : figures.draws)
        values.push_back(get(draw));
    return values;
}

double area(double n_per_mps2, const car::CarDraw& d) {
    return 2.0 * n_per_mps2 / d.density_kg_m3;
}

double half_width_after(double before, double variance, double left) {
    return before * std::sqrt(left / variance);
}

// What one test would read: the figure in each draw, and the error.
struct Reading {
    Test test;
    Term figure;
    Draws draws;
    double sd = 0.0;
    double seen = 1.0;
    double known_half_width = 0.0;
};

NextTest promised(const Reading& r, Side side, const Draws& question) {
    NextTest t;
    t.test = r.test;
    t.side = side;
    t.figure = r.figure;
    t.reading_sd = r.sd;
    t.effort_h = effort_h[static_cast<std::size_t>(r.test)];
    const auto variance = [](const Draws& draws) { return std::pow(math::standard_deviation(draws), 2); };
    t.of_figure = {r.known_half_width, half_width_after(r.known_half_width, variance(r.draws),
                                                        expected_variance(r.draws, r.draws, r.sd, r.seen))};
    const double before = base::half_width_95(math::standard_deviation(question));
    t.of_question = {before,
                     half_width_after(before, variance(question), expected_variance(question, r.draws, r.sd, r.seen))};
    return t;
}

// The downforce area that springs would show, from the laps' own idea of it and from the travel's, and how sure.
struct Expected {
    double area_m2 = 0.0;
    double fit_sd_m2 = 0.0;
};

Expected expected_of_springs(const car::CarFigures& f, double middle, double spread) {
    const double per_kg = 2.0 * f.typical.car.mass_kg / f.typical.density_kg_m3;
    const double seen = per_kg * f.springs_would_tell->downforce_per_kg;
    const double fit = per_kg * f.springs_would_tell->sd;
    const double seen_sd = std::hypot(fit, car::untold_travel_sd * seen);
    const double weight = spread * spread / (spread * spread + seen_sd * seen_sd);
    const double area = middle + weight * (seen - middle);
    return {area, fit * std::clamp(area / seen, 0.5, 2.0)};
}

// The springs carry the car on straights; how a car's attitude changes what it is given they do not see.
std::optional<Reading> springs_reading(const KnownSide& known) {
    const car::CarFigures& f = known.figures;
    if (!f.springs_would_tell || !f.downforce_area_m2) return std::nullopt;
    Reading r{Test::enter_springs, Term::downforce, {}};
    r.draws = of_draws(f, [](const car::CarDraw& d) { return area(d.car.downforce_n_per_mps2, d); });
    const double spread = math::standard_deviation(r.draws);
    const Expected e = expected_of_springs(f, math::mean(r.draws), spread);
    const double attitude = car::attitude_sd * e.area_m2;
    r.sd = std::hypot(e.area_m2 * std::hypot(car::Springs{}.relative_sd, car::attitude_sd), e.fit_sd_m2);
    r.seen = std::clamp(1.0 - attitude * attitude / (spread * spread), 0.0, 1.0);
    r.known_half_width = f.downforce_area_m2->half_width();
    return r;
}

std::optional<Reading> mass_reading(const KnownSide& known) {
    if (!known.figures.mass_kg) return std::nullopt;
    return Reading{
        Test::weigh,  Term::mass, of_draws(known.figures, [](const car::CarDraw& d) { return d.car.mass_kg; }),
        scales_sd_kg, 1.0,        known.figures.mass_kg->half_width()};
}

struct Coasting {
    double from_mps = 0.0;
    double to_mps = 0.0;
    double relative_sd = 0.0; // of the drag area that it gives
};

// One way, clutch down: deceleration = d v² + c g, d = D / m (practice of SAE J1263 and ISO 10521, which go both ways).
Coasting coasting_of(const car::CarFigures& f) {
    Coasting c;
    c.from_mps = coast_from_share * f.fastest_mps;
    c.to_mps = coast_to_share * c.from_mps;
    const double v = 0.5 * (c.from_mps + c.to_mps);
    const double air = f.typical.car.drag_n_per_mps2 / f.typical.car.mass_kg * v * v;
    const double all = air + f.typical.car.rolling_resistance * gravity_mps2;
    const double read = std::sqrt(2.0) * speed_sd_mps / (c.from_mps - c.to_mps) * all / air;
    c.relative_sd = std::hypot(2.0 * wind_sd_mps / v, std::hypot(rolling_sd, slope_sd) * gravity_mps2 / air, read);
    return c;
}

std::optional<Reading> coast_reading(const KnownSide& known) {
    const car::CarFigures& f = known.figures;
    if (!f.drag_area_m2 || !(f.fastest_mps > 0.0)) return std::nullopt;
    Reading r{Test::coast_down, Term::drag, {}};
    r.draws = of_draws(f, [](const car::CarDraw& d) { return area(d.car.drag_n_per_mps2, d); });
    r.sd = coasting_of(f).relative_sd * math::mean(r.draws);
    r.known_half_width = f.drag_area_m2->half_width();
    return r;
}

std::optional<Reading> power_reading(const KnownSide& known) {
    if (!known.figures.power_w) return std::nullopt;
    Reading r{Test::dynamometer, Term::power,
              of_draws(known.figures, [](const car::CarDraw& d) { return d.car.power_w; })};
    r.sd = dynamometer_sd * math::mean(r.draws);
    r.known_half_width = known.figures.power_w->half_width();
    return r;
}

// Without a mass nothing can be entered but the mass.
NextTest first_weighing(Side side) {
    NextTest t;
    t.side = side;
    t.reading_sd = scales_sd_kg;
    t.of_figure = {unknown, base::half_width_95(scales_sd_kg)};
    t.of_question = {unknown, unknown};
    t.effort_h = effort_h[static_cast<std::size_t>(Test::weigh)];
    return t;
}

// Baseline, change, baseline, a linear drift taken out: the change has variance s²/2 with three laps a run.
std::optional<NextTest> wing_trial(const KnownSide& known, Side side) {
    if (known.clean_laps.size() < 3) return std::nullopt;
    Draws times;
    for (const lap::LapTrace& lap : known.clean_laps)
        times.push_back(lap.lap_time_s());
    constexpr double freedom = 3.0 * trial_laps - 3.0; // level, drift and change are fitted
    constexpr double variance = 1.0 / trial_laps + 0.5 / trial_laps;
    NextTest t;
    t.test = Test::wing_trial;
    t.side = side;
    t.figure = Term::aero;
    t.of_figure = {unknown,
                   math::student_t_quantile(0.975, freedom) * std::sqrt(variance) * math::standard_deviation(times)};
    t.of_question = {unknown, unknown};
    t.effort_h = effort_h[static_cast<std::size_t>(Test::wing_trial)];
    return t;
}

Draws of_cause(std::span<const std::array<double, cause_count>> totals, Term term) {
    Draws values;
    for (const auto& total : totals)
        values.push_back(total[static_cast<std::size_t>(term)]);
    return values;
}

Term widest(std::span<const std::array<double, cause_count>> totals) {
    const auto width = [&](Cause cause) { return math::standard_deviation(of_cause(totals, term(cause))); };
    return term(*std::ranges::max_element(all_causes, {}, width));
}

bool tells_enough(const NextTest& t) {
    if (t.test == Test::wing_trial || std::isnan(t.of_figure.before)) return true;
    return t.of_question.information() > least_information;
}

// The missing mass first, then by information on the question for the effort, the trial of a change last.
double merit(const NextTest& t) {
    if (t.test == Test::wing_trial) return -1.0;
    if (std::isnan(t.of_figure.before)) return std::numeric_limits<double>::infinity();
    return t.of_question.information() / t.effort_h;
}

} // namespace

std::string_view key(Test test) {
    constexpr std::string_view keys[] = {"enter_springs", "weigh", "coast_down", "dynamometer", "wing_trial"};
    return keys[static_cast<std::size_t>(test)];
}

double Width::information() const {
    return std::isnan(before) ? std::numeric_limits<double>::infinity() : std::log(before / after);
}

double expected_variance(std::span<const double> target, std::span<const double> reading, double reading_sd,
                         double seen) {
    base::check(target.size() == reading.size() && target.size() > 1, "equally many draws");
    const double sd_t = math::standard_deviation(target);
    const double sd_y = math::standard_deviation(reading);
    if (!(sd_t > 0.0 && sd_y > 0.0)) return sd_t * sd_t;
    const double covariance = seen * math::correlation(target, reading) * sd_t * sd_y;
    return sd_t * sd_t - covariance * covariance / (seen * sd_y * sd_y + reading_sd * reading_sd);
}

std::vector<NextTest> tests_of(const KnownSide& known, Side side,
                               std::span<const std::array<double, cause_count>> totals, Term question) {
    std::vector<NextTest> all;
    const Draws seconds = of_cause(totals, question);
    if (known.figures.per_kilogram) all.push_back(first_weighing(side));
    for (const auto& reading :
         {springs_reading(known), mass_reading(known), coast_reading(known), power_reading(known)}) {
        if (!reading) continue;
        all.push_back(promised(*reading, side, seconds));
        if (reading->test != Test::coast_down) continue;
        const Coasting coasting = coasting_of(known.figures);
        all.back().from_mps = coasting.from_mps;
        all.back().to_mps = coasting.to_mps;
    }
    if (const auto trial = wing_trial(known, side)) all.push_back(*trial);
    return all;
}

NextTests next_tests(const KnownSide& a, const KnownSide& b, std::span<const std::array<double, cause_count>> totals) {
    NextTests result;
    result.question = widest(totals);
    for (const auto& [known, side] : {std::pair(&a, Side::a), std::pair(&b, Side::b)})
        for (const NextTest& t : tests_of(*known, side, totals, result.question))
            if (tells_enough(t)) result.tests.push_back(t);
    std::ranges::stable_sort(result.tests, std::greater<>{}, merit);
    return result;
}

} // namespace lapwright::causes
