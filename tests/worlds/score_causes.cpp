// SPDX-License-Identifier: GPL-3.0-or-later
// What was learned of the cars and of the causes, against the cars that were drawn.
#include <algorithm>
#include <cmath>

#include "core/math/statistics.h"
#include "tests/truth/drive.h"
#include "tests/truth/true_causes.h"
#include "tests/worlds/score_world.h"

namespace worlds {

using namespace lapwright;

namespace {

void add(Score& score, const std::string& kind, double value, double low, double high, double truly) {
    if (!std::isfinite(value) || low > value + 1e-9 || value > high + 1e-9)
        score.breaches.push_back({"value outside its own interval", kind});
    score.intervals.push_back({kind, "", value - truly, 0.5 * (high - low), low <= truly && truly <= high});
}

// What the data cannot tell states nothing that could be wrong, but has to say why.
void add(Score& score, const std::string& kind, const causes::Seconds& seconds, double truly) {
    if (seconds.told())
        add(score, kind, seconds.value, seconds.low, seconds.high, truly);
    else
        ++score.untold[kind];
}

void add(Score& score, const std::string& kind, const std::optional<car::CarFigure>& figure, double truly) {
    if (!figure) return;
    if (figure->told())
        add(score, kind, figure->value / truly, figure->low / truly, figure->high / truly, 1.0);
    else
        ++score.untold[kind];
}

// Mean power where the foot is down on the straights, as the program says it: over metres, each weighted by the speed
// that its power gives.
double mean_power_w(const Entry& entry) {
    const truth::CarTruth& car = entry.car;
    if (car.power_curve.empty()) return car.power_w;
    constexpr double open = 0.99;
    constexpr double slowest_share = 0.45;
    constexpr double rate_hz = 10.0;
    const auto samples = entry.session->dense(rate_hz);
    double fastest = 0.0;
    for (const auto& s : samples)
        fastest = std::max(fastest, s.speed_mps);
    double sum = 0.0;
    double weights = 0.0;
    for (const auto& s : samples) {
        if (s.throttle < open || s.speed_mps < slowest_share * fastest) continue;
        sum += truth::power_at(car, s.gear, s.speed_mps) / s.speed_mps;
        weights += 1.0 / s.speed_mps;
    }
    return sum / weights;
}

void score_car(const Entry& entry, const car::CarFigures& figures, Score& score) {
    const truth::CarTruth& car = entry.car;
    add(score, "grip", figures.grip, car.mu);
    if (car.downforce_area_m2 > 0.8)
        add(score, entry.stated.springs ? "downforce, with springs" : "downforce", figures.downforce_area_m2,
            car.downforce_area_m2);
    add(score, "drag", figures.drag_area_m2, car.drag_area_m2);
    add(score, "power", figures.power_w, mean_power_w(entry));
}

// Of the grip, over all corners.
double mean_use(const World& world, const Entry& entry) {
    return math::mean(truth::habitual_grip_shares(*world.track, entry.driver));
}

// Halves of both drivers' views, since neither car's driver has more right than the other's.  With `use_ratio`, A's
// mean use of the grip over B's, each car has the grip that its own driver uses of it.
truth::CauseSeconds true_totals(const World& world, double use_ratio = 1.0) {
    const double air = world.a.plan.air_density;
    truth::CarTruth b = world.b.car;
    b.mu /= use_ratio;
    truth::CarTruth a = world.a.car;
    a.mu *= use_ratio;
    const auto one = truth::true_causes(*world.track, world.a.car, b, world.a.driver, air, 2.0);
    const auto other = truth::true_causes(*world.track, world.b.car, a, world.b.driver, air, 2.0);
    truth::CauseSeconds total{};
    for (std::size_t c = 0; c < truth::kCauseCount; ++c)
        total[c] = 0.5 * (one.total[c] - other.total[c]);
    return total;
}

} // namespace

void score_causes(const World& world, const Outcome& outcome, Score& score) {
    if (!outcome.explanation) return;
    const causes::Explanation& e = *outcome.explanation;
    score_car(world.a, e.car_a, score);
    score_car(world.b, e.car_b, score);
    const truth::CauseSeconds truly = true_totals(world);
    const auto of = [&](causes::Cause cause) { return truly[static_cast<std::size_t>(cause)]; };
    const double gap = std::abs(outcome.pairing->comparison.gap_at_end_s.value);
    for (const causes::Cause cause : causes::all_causes) {
        const causes::Seconds& seconds = e.total.of(cause);
        add(score, std::string(causes::name(cause)) + " cause", seconds, of(cause));
        if (seconds.told() && std::abs(seconds.value) > 4.0 + 3.0 * (gap + std::abs(of(cause))))
            score.breaches.push_back(
                {"absurd cause", std::string(causes::name(cause)) + " " + std::to_string(seconds.value) + " s"});
    }
    using causes::Cause;
    const truth::CauseSeconds as_driven = true_totals(world, mean_use(world, world.a) / mean_use(world, world.b));
    add(score, "cornering as driven", e.total.cornering_as_driven, as_driven[0] + as_driven[1]);
    add(score, "cornering cause", e.total.cornering, of(Cause::tyre_grip) + of(Cause::downforce));
    add(score, "aero cause", e.total.aero, of(Cause::downforce) + of(Cause::drag));
    add(score, "straights cause", e.total.straights, of(Cause::drag) + of(Cause::power));
}

} // namespace worlds
