// SPDX-License-Identifier: GPL-3.0-or-later
// Why the gap is what it is: the measured gain of each segment, split into causes.  An immutable value with all that
// the Causes page and the command line show.
//
// Signs as everywhere: seconds, positive favours A.  In every row  gain = Σ causes + driver & rest,  exactly, where all
// of them can be told.  A cause is what changes when that figure of the car is exchanged, the driver staying the same:
// Shapley's value over all mixtures of both cars, simulated on A's line with A's driver and on B's with B's, half and
// half, so that swapping A and B turns signs and changes nothing else.  Power is what comes to the wheels at a speed:
// the engine with its gears.  Drag is all that resists motion, rolling included.
#pragma once

#include "core/car/car_figures.h"
#include "core/car/joint_region.h"
#include "core/car/lap_simulation.h"
#include "core/comparison/comparison.h"
#include "core/track/track.h"

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::causes {

enum class Cause { tyre_grip, downforce, drag, power, mass };
inline constexpr std::size_t cause_count = 5;
inline constexpr std::array<Cause, cause_count> all_causes{Cause::tyre_grip, Cause::downforce, Cause::drag,
                                                           Cause::power, Cause::mass};

[[nodiscard]] std::string_view key(Cause cause);     // as in JSON: "tyre_grip"
[[nodiscard]] const char* english_name(Cause cause); // "tyre grip": of a column for other programs
[[nodiscard]] std::string name(Cause cause);         // the same in the language of the window

// The causes in their order, then sums of two, and cornering with the drivers' share in it.
enum class Term { tyre_grip, downforce, drag, power, mass, cornering, aero, straights, cornering_as_driven };

[[nodiscard]] constexpr Term term(Cause cause) {
    return static_cast<Term>(cause);
}

using Seconds = base::Estimate;

struct Row {
    Seconds gain;
    std::array<Seconds, cause_count> causes; // index: Cause
    // Sums that are known better than their parts.
    // Tyre grip, downforce and how much of the grip either driver uses all in all: what corners show.  The causes and
    // driver and rest share it.
    Seconds cornering_as_driven;
    Seconds cornering; // tyre grip and downforce together
    Seconds aero;      // downforce and drag together
    Seconds straights; // drag and power together
    Seconds driver_and_rest;

    [[nodiscard]] const Seconds& of(Cause cause) const { return causes[static_cast<std::size_t>(cause)]; }
};

struct SegmentRow {
    track::Segment segment;
    Row row;
    // Share of the car that each driver uses here: of the tyres in a corner, of the engine on a straight; simulating
    // the car with it gives back the measured time.  NaN where no share that a car can give does.
    double use_a = 1.0;
    double use_b = 1.0;
    // What each driver does here, so that "rest" can be read.
    comparison::SegmentFigures driving_a;
    comparison::SegmentFigures driving_b;
    double time_a_s = 0.0; // measured
    double time_b_s = 0.0;
    double misfit_s = 0.0; // of the worse side's simulated time

    [[nodiscard]] double longer_s() const { return time_a_s > time_b_s ? time_a_s : time_b_s; }
    // Empty, or why the model cannot be trusted here: "the simulated car cannot be made to take 3.2 s here".
    std::string does_not_fit;
};

enum class Side { a, b };

// Something that could be measured of a car, see next_test.h.
enum class Test {
    enter_springs, // travel was recorded, the rates were not given
    weigh,
    coast_down,
    dynamometer,
    wing_trial, // there and back: core/comparison/trial.h
};

[[nodiscard]] std::string_view key(Test test); // as in JSON: "enter_springs"

// Half-widths of 95 % intervals; NaN where nothing was known before.
struct Width {
    double before = 0.0;
    double after = 0.0;

    [[nodiscard]] double information() const; // ln(before / after), nats; infinite where nothing was known
};

struct NextTest {
    Test test = Test::weigh;
    Side side = Side::a;
    Term figure = Term::mass; // what it measures: kg, m² of downforce or drag, W; seconds a lap in a wing trial
    double reading_sd = 0.0;  // of what it measures
    Width of_figure;
    Width of_question; // seconds a lap
    double effort_h = 0.0;
    double from_mps = 0.0; // of a coast-down
    double to_mps = 0.0;
};

struct NextTests {
    Term question = Term::tyre_grip; // the cause that is known worst
    std::vector<NextTest> tests;     // the most information on it for the effort first; none that tells next to nothing
};

// A change of one car, relative for shares: +0.1 is 10 % more.
struct Change {
    double grip_share = 0.0;
    double downforce_share = 0.0;
    double drag_share = 0.0;
    double power_w = 0.0; // ignored where figures are per kilogram
    double mass_kg = 0.0; // likewise
};

struct Prediction {
    Seconds lap; // change of the lap time, negative: quicker
    std::vector<Seconds> segments;
};

struct Sensitivity {
    std::string what; // "10 % more downforce"
    Cause of{};       // that is changed
    Change change;
    Prediction prediction;
};

// One car on its own driver's line, ready to be simulated again: what-if uses it.
struct CarModel {
    car::Course course;
    std::vector<car::SimulatedCar> draws;
    std::vector<car::DriverUse> uses;           // one a draw
    std::vector<std::vector<double>> segment_s; // simulated with them, one vector a draw
    bool per_kilogram = false;
    // Empty, or why a change of that figure cannot be predicted; index: Cause.
    std::array<std::string, cause_count> untold;
};

struct Explanation {
    car::CarFigures car_a;
    car::CarFigures car_b;
    bool same_car = false;     // two laps of one session: no cause lies in the car
    bool per_kilogram = false; // a mass is missing: the cause "mass" is absent, in the others it is included
    std::vector<SegmentRow> segments;
    Row total;
    std::vector<Sensitivity> sensitivities_a;
    std::vector<Sensitivity> sensitivities_b;
    std::shared_ptr<const CarModel> model_a;
    std::shared_ptr<const CarModel> model_b;
    // What lies behind the evidence plots, up to the faster car's top speed.
    car::Curve limit_a, limit_b;
    car::Curve driving_a, driving_b;
    car::JointRegion grip_downforce_a, grip_downforce_b; // areas on a tonne where figures are per kilogram
    double force_speed_mps = 50.0;                       // at which forces are stated
    car::ForceFigures forces_a, forces_b;
    NextTests next_tests; // none for two laps of one car
    std::vector<std::string> warnings;
};

} // namespace lapwright::causes
