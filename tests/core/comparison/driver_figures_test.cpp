// SPDX-License-Identifier: GPL-3.0-or-later
// What drivers do, against the simulator's truth (tests/truth): braking and throttle points, time with neither pedal,
// gear changes and what they cost; with pedal channels and from motion alone, with noise like that of a receiver.
#include "core/car/known_car.h"
#include "core/comparison/compare_laps.h"
#include "core/comparison/driver_difference.h"
#include "core/comparison/gears.h"
#include "core/comparison/segment_figures.h"
#include "core/comparison/shifts.h"
#include "truth/true_causes.h"
#include "truth/true_figures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace lapwright;
using namespace lapwright::comparison;

namespace {

truth::Session drive(const truth::CarTruth& car, const truth::DriverTruth& driver, std::uint64_t seed, int laps = 3) {
    truth::SessionPlan plan;
    plan.flying_laps = laps;
    return truth::drive_session(truth::ternbank(), car, driver, plan, seed);
}

// Distances and seconds of the truth of one lap between two stations.
double true_coasting_s(const truth::Session& session, int lap, double from_m, double to_m) {
    const double length = session.track().length_m();
    double seconds = 0.0;
    double last = session.at_unwrapped(length * lap + from_m).time_s;
    for (double s = from_m + 0.25; s <= to_m; s += 0.25) {
        const truth::TruthSample here = session.at_unwrapped(length * lap + s);
        if (here.throttle < 0.05 && here.brake < 0.05) seconds += here.time_s - last;
        last = here.time_s;
    }
    return seconds;
}

// Where the last braking before the slowest place begins: the pedal passes 5 %; breaks under 15 m do not end a braking.
std::optional<double> true_braking_m(const truth::Session& session, int lap, double from_m, double slowest_m) {
    const double start_m = session.track().length_m() * lap;
    std::optional<double> begins;
    for (double s = slowest_m; s > from_m; s -= 0.25) {
        if (session.at_unwrapped(start_m + s).brake >= 0.05)
            begins = s;
        else if (begins && *begins - s >= 15.0)
            break;
    }
    return begins;
}

// The first place from the slowest on where the throttle passes 95 %.
double true_full_throttle_m(const truth::Session& session, int lap, double slowest_m) {
    const double start_m = session.track().length_m() * lap;
    double s = slowest_m;
    while (session.at_unwrapped(start_m + s).throttle < 0.95)
        s += 0.25;
    return s;
}

// The last place before full throttle where the throttle is under 10 %, at most 300 m before the slowest.
double true_opening_m(const truth::Session& session, int lap, double full_m, double slowest_m) {
    const double start_m = session.track().length_m() * lap;
    double s = full_m;
    while (session.at_unwrapped(start_m + s).throttle > 0.10 && s > slowest_m - 300.0)
        s -= 0.25;
    return s;
}

double start_of_straight_before(const std::vector<track::Segment>& segments, std::size_t k) {
    const bool fed = k > 0 && segments[k - 1].kind == track::SegmentKind::straight;
    return fed ? segments[k - 1].start_m : segments[k].start_m;
}

struct Errors {
    double sum = 0.0;
    double squares = 0.0;
    int count = 0;
    std::vector<double> sizes;
    void add(double error) {
        sizes.push_back(std::abs(error));
        sum += error;
        squares += error * error;
        ++count;
    }
    [[nodiscard]] double mean() const { return sum / count; }
    [[nodiscard]] double rms() const { return std::sqrt(squares / count); }
    [[nodiscard]] double share_within(double size) const {
        return static_cast<double>(std::ranges::count_if(sizes, [&](double e) { return e <= size; })) / count;
    }
    void print(const char* what) const {
        std::printf("%s: %d, mean error %+.3f, RMS %.3f\n", what, count, mean(), rms());
    }
};

struct DriverErrors {
    Errors brake, full, opens, roll, coast;
};

// All corners of all flying laps.
DriverErrors errors_of(const truth::Session& session, const test::KnownNoise& noise, std::uint64_t seed) {
    const auto traces = test::known_traces(session, noise, seed, 1.0);
    const auto segments = test::true_segments(session.track());
    const auto corners = session.track().corners();
    DriverErrors errors;
    for (std::size_t lap = 0; lap < traces.size(); ++lap) {
        const int number = static_cast<int>(lap) + 1;
        std::size_t corner = 0;
        for (std::size_t k = 0; k < segments.size(); ++k) {
            if (segments[k].kind != track::SegmentKind::corner) continue;
            const double slowest_m = truth::corner_truth(session, number, corners[corner++]).min_at_m;
            const double from = start_of_straight_before(segments, k);
            const auto braking = true_braking_m(session, number, from, slowest_m);
            const SegmentFigures f = segment_figures(traces[lap], segments, k);
            EXPECT_EQ(braking.has_value(), f.braking_point_m.has_value()) << segments[k].name;
            if (!braking || !f.braking_point_m) continue;
            EXPECT_EQ(f.braking_point_m->derived, !noise.pedals);
            errors.brake.add(f.braking_point_m->value - *braking);
            const double full_m = true_full_throttle_m(session, number, slowest_m);
            if (f.full_throttle_m) errors.full.add(f.full_throttle_m->value - full_m);
            if (f.throttle_opens_m)
                errors.opens.add(f.throttle_opens_m->value - true_opening_m(session, number, full_m, slowest_m));
            if (!f.lift_to_brakes_s) {
                ADD_FAILURE() << segments[k].name;
                continue;
            }
            EXPECT_EQ(f.lift_to_brakes_s->derived, !noise.pedals);
            EXPECT_EQ(f.coasting_s.has_value(), noise.pedals);
            errors.roll.add(f.lift_to_brakes_s->value - true_coasting_s(session, number, from, *braking));
            if (f.coasting_s)
                errors.coast.add(f.coasting_s->value - true_coasting_s(session, number, from, segments[k].end_m));
        }
    }
    return errors;
}

} // namespace

TEST(DriverFigures, PedalsGiveThePlacesAsTheyAre) {
    const DriverErrors e = errors_of(drive(truth::light_aero_hatch(), {}, 51), {}, 52);
    e.brake.print("braking point with pedals, m");
    e.full.print("full throttle with pedals, m");
    e.opens.print("throttle opens with pedals, m");
    e.roll.print("lift to brakes with pedals, s");
    e.coast.print("neither pedal, s");
    EXPECT_GE(e.brake.count, 18);
    EXPECT_LT(e.brake.rms(), 1.0);
    EXPECT_LT(e.full.rms(), 1.0);
    EXPECT_EQ(e.full.count, e.brake.count);
    EXPECT_LT(e.opens.rms(), 1.0);
    EXPECT_EQ(e.opens.count, e.brake.count);
    EXPECT_LT(e.roll.rms(), 0.03);
    EXPECT_EQ(e.coast.count, e.roll.count);
    EXPECT_LT(e.coast.rms(), 0.03);
}

TEST(DriverFigures, MotionAloneGivesThemNearly) {
    test::KnownNoise noise;
    noise.pedals = false;
    for (const double rate : {25.0, 10.0}) {
        noise.rate_hz = rate;
        const DriverErrors e = errors_of(drive(truth::light_aero_hatch(), {}, 53), noise, 54);
        std::printf("%.0f Hz\n", rate);
        e.brake.print("braking point from motion, m");
        e.roll.print("lift to brakes from motion, s");
        EXPECT_LT(e.brake.rms(), 3.0);
        EXPECT_LT(e.roll.rms(), 0.08);
    }
}

TEST(DriverFigures, ThrottlePointsFromMotionLieInTheirIntervals) {
    // Three cars: one whose tyres hold it back a little, one much, one hardly; feet that go down quickly and slowly.
    truth::CarTruth weak = truth::light_aero_hatch();
    weak.power_w = 120e3;
    for (const truth::CarTruth& car : {truth::light_aero_hatch(), truth::heavy_powerful_coupe(), weak}) {
        DriverErrors all;
        for (int i = 0; i < 4; ++i) {
            const auto seed = static_cast<std::uint64_t>(i);
            truth::DriverTruth driver;
            driver.style_seed = 300 + seed;
            driver.throttle_ramp_s = 0.2 + 0.2 * i;
            test::KnownNoise noise;
            noise.pedals = false;
            noise.rate_hz = i % 2 == 0 ? 25.0 : 10.0;
            const DriverErrors e = errors_of(drive(car, driver, 310 + seed, 1), noise, 320 + seed);
            for (const double size : e.full.sizes)
                all.full.add(size);
            for (const double size : e.opens.sizes)
                all.opens.add(size);
            all.brake.count += e.brake.count;
        }
        std::printf("%.0f kW, %d corners that are braked for\n", 1e-3 * car.power_w, all.brake.count);
        all.full.print("full throttle from motion, m (size)");
        all.opens.print("throttle opens from motion, m (size)");
        EXPECT_GE(all.full.count, all.brake.count * 9 / 10);
        EXPECT_GE(all.opens.count, all.brake.count * 9 / 10);
        EXPECT_GE(all.full.share_within(1.96 * derived_full_throttle_sd_m), 0.9);
        EXPECT_GE(all.opens.share_within(1.96 * derived_opening_sd_m), 0.9);
        EXPECT_LT(all.full.rms(), 8.0);
        EXPECT_LT(all.opens.rms(), 8.0);
    }
}

TEST(DriverFigures, ADriverWhoRollsLongerIsSeen) {
    truth::DriverTruth quick;
    truth::DriverTruth slow = quick;
    slow.coast_s = 0.6;
    for (const bool pedals : {true, false}) {
        test::KnownNoise noise;
        noise.pedals = pedals;
        const auto segments = test::true_segments(truth::ternbank());
        const truth::Session session_a = drive(truth::light_aero_hatch(), quick, 61);
        const truth::Session session_b = drive(truth::light_aero_hatch(), slow, 61);
        const auto a = test::known_traces(session_a, noise, 62, 1.0);
        const auto b = test::known_traces(session_b, noise, 63, 1.0);
        double measured = 0.0;
        double truth = 0.0;
        int corners = 0;
        for (std::size_t k = 0; k < segments.size(); ++k) {
            if (segments[k].kind != track::SegmentKind::corner) continue;
            const DriverDifference d =
                driver_difference(segment_figures(a[0], segments, k), segment_figures(b[0], segments, k));
            if (!d.brakes_sooner_after_lift_s || !d.brakes_later_m) continue;
            const double from = start_of_straight_before(segments, k);
            const double brakes_a = segment_figures(a[0], segments, k).braking_point_m->value;
            const double brakes_b = segment_figures(b[0], segments, k).braking_point_m->value;
            truth += true_coasting_s(session_b, 1, from, brakes_b) - true_coasting_s(session_a, 1, from, brakes_a);
            measured += d.brakes_sooner_after_lift_s->value;
            ++corners;
        }
        EXPECT_EQ(corners, 8); // the ninth is flat out
        EXPECT_NEAR(measured, truth, 0.1 * truth);
        std::printf("%s: A rolls %.2f s less over %d corners, true %.2f s\n", pedals ? "pedals" : "motion", measured,
                    corners, truth);
    }
}

// Seconds that shifts of this length cost on each lap, as measured and as a lap of a car without them shows.
void expect_shift_cost(truth::CarTruth car, double shift_s) {
    car.shift_s = shift_s;
    truth::CarTruth seamless = car;
    seamless.shift_s = 0.0;
    const truth::DriverTruth driver = truth::without_spread({});
    truth::SessionPlan plan;
    plan.flying_laps = 2;
    plan.grid_step_m = 0.25; // a simulated shift lasts whole steps: of a metre they would be up to a third too long
    const truth::Session with = truth::drive_session(truth::ternbank(), car, driver, plan, 71);
    const truth::Session without = truth::drive_session(truth::ternbank(), seamless, driver, plan, 71);
    const double true_cost_s = with.lap(1).time_s() - without.lap(1).time_s();
    for (const double rate : {25.0, 10.0}) {
        test::KnownNoise noise;
        noise.rate_hz = rate;
        Errors errors;
        double count = 0.0;
        for (const std::uint64_t seed : {72U, 73U})
            for (const lap::LapTrace& lap : test::known_traces(with, noise, seed, 1.0)) {
                double cost = 0.0;
                count = 0.0;
                for (const track::Segment& segment : test::true_segments(with.track())) {
                    const auto shifts = shifts_between(lap, lap, segment.start_m, segment.end_m);
                    count += shifts->count;
                    cost += shifts->cost_s.value_or(0.0);
                }
                errors.add(cost / true_cost_s - 1.0);
            }
        std::printf("shifts of %.2f s at %.0f Hz: %.0f of them cost %.3f s a lap\n", shift_s, rate, count, true_cost_s);
        errors.print("  relative error");
        EXPECT_GE(count, 18.0);
        EXPECT_NEAR(errors.mean(), 0.0, 0.08);
    }
}

TEST(DriverFigures, ShiftsCostWhatALapWithoutThemSaves) {
    // The same driver and car, whose gears change with and without a break in the drive.
    for (const double shift_s : {0.10, 0.25}) {
        expect_shift_cost(truth::light_aero_hatch(), shift_s);
        expect_shift_cost(truth::heavy_powerful_coupe(), shift_s);
    }
}

TEST(DriverFigures, EngineSpeedTellsTheShiftsWhereNoGearWasRecorded) {
    for (const truth::CarTruth& car : {truth::light_aero_hatch(), truth::heavy_powerful_coupe()}) {
        const truth::Session session = drive(car, {}, 75, 2);
        for (const double rate : {25.0, 10.0}) {
            test::KnownNoise noise;
            noise.rate_hz = rate;
            noise.engine_speed = true;
            for (const lap::LapTrace& lap : test::known_traces(session, noise, 76, 1.0)) {
                EXPECT_FALSE(gears_from_engine_speed(lap)) << "a gear was recorded";
                lap::LapTrace without = lap;
                std::erase_if(without.channels, [](const auto& c) { return c.meaning == recording::Meaning::gear; });
                const auto gears = gears_from_engine_speed(without);
                ASSERT_TRUE(gears);
                without.channels.push_back(*gears);
                const double end_m = lap.distance_m.back();
                const auto recorded = shifts_between(lap, lap, 0.0, end_m);
                const auto told = shifts_between(without, without, 0.0, end_m);
                std::printf("%.0f Hz: %.0f shifts of %.0f, cost %.3f s of %.3f s\n", rate, told->count, recorded->count,
                            told->cost_s.value_or(0.0), recorded->cost_s.value_or(0.0));
                EXPECT_NEAR(told->count, recorded->count, 2.0); // downward ones under the brakes follow closely
                EXPECT_NEAR(*told->cost_s, *recorded->cost_s, 0.1 * *recorded->cost_s);
            }
        }
    }
}

TEST(DriverFigures, AStepplessDriveHasNoShifts) {
    test::KnownNoise noise;
    noise.engine_speed = true;
    lap::LapTrace lap = test::known_traces(drive(truth::light_aero_hatch(), {}, 75, 1), noise, 76, 1.0).front();
    std::erase_if(lap.channels, [](const auto& c) { return c.meaning == recording::Meaning::gear; });
    for (lap::TraceChannel& channel : lap.channels) {
        if (channel.meaning != recording::Meaning::engine_speed) continue;
        for (std::size_t i = 0; i < lap.size(); ++i)
            channel.values[i] = 60.0 + 0.8 * lap.speed_mps[i]; // its ratio follows the speed
    }
    EXPECT_FALSE(gears_from_engine_speed(lap));
}

TEST(DriverFigures, WithoutAGearChannelShiftsAreAbsent) {
    test::KnownNoise noise;
    noise.pedals = false;
    const auto trace = test::known_traces(drive(truth::light_aero_hatch(), {}, 81, 1), noise, 82).front();
    EXPECT_FALSE(shifts_between(trace, trace, 0.0, 500.0));
}

TEST(DriverDifference, IsPositiveWhereItUsuallyFavoursA) {
    SegmentFigures a;
    SegmentFigures b;
    a.braking_point_m = Figure{110.0, 3.0, false};
    b.braking_point_m = Figure{100.0, 4.0, true};
    a.full_throttle_m = Figure{200.0, std::nullopt, false};
    b.full_throttle_m = Figure{215.0, 1.0, false};
    a.coasting_s = Figure{0.1, std::nullopt, false};
    b.coasting_s = Figure{0.4, std::nullopt, false};
    a.min_speed_at_m = Figure{150.0, std::nullopt, false};
    const DriverDifference d = driver_difference(a, b);
    EXPECT_DOUBLE_EQ(d.brakes_later_m->value, 10.0);
    EXPECT_DOUBLE_EQ(*d.brakes_later_m->sd, 5.0);
    EXPECT_TRUE(d.brakes_later_m->derived);
    EXPECT_DOUBLE_EQ(d.full_earlier_m->value, 15.0);
    EXPECT_FALSE(d.full_earlier_m->sd);
    EXPECT_DOUBLE_EQ(d.coasts_less_s->value, 0.4 - 0.1);
    a.lift_to_brakes_s = Figure{0.1, std::nullopt, false};
    b.lift_to_brakes_s = Figure{0.2, std::nullopt, true};
    EXPECT_FALSE(driver_difference(a, b).brakes_sooner_after_lift_s) << "not of one kind";
    b.lift_to_brakes_s->derived = false;
    EXPECT_DOUBLE_EQ(driver_difference(a, b).brakes_sooner_after_lift_s->value, 0.2 - 0.1);
    EXPECT_FALSE(d.opens_earlier_m);
    EXPECT_FALSE(d.shifts_cost_less_s);
    EXPECT_DOUBLE_EQ(braking_before_slowest_m(a)->value, 40.0);
    EXPECT_FALSE(braking_before_slowest_m(b));
}
