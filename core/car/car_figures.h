// SPDX-License-Identifier: GPL-3.0-or-later
// What clean laps say of the car: grip, downforce, drag, power, each with a 95 % interval and with who decided it, the
// data or the prior.  Positions and speeds show forces per kilogram only; a mass makes areas and watts of them.
//
// Two fits: driving force against speed (driving_force.h) gives power and drag; the acceleration limit over corners and
// braking zones (grip_model.h) gives grip and downforce.  Draws of both together carry all uncertainty on.
#pragma once

#include "core/base/estimate.h"
#include "core/base/fit_outcome.h"
#include "core/base/result.h"
#include "core/car/air.h"
#include "core/car/lap_simulation.h"
#include "core/lap/lap.h"
#include "core/track/track.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::car {

enum class DecidedBy { data, prior, setup };

[[nodiscard]] std::string_view name(DecidedBy decided_by); // "data", "prior", "setup"

struct CarFigure : base::Estimate {
    DecidedBy decided_by = DecidedBy::data;
};

// With driver and fuel; standard uncertainty.
struct Mass {
    double value_kg = 0.0;
    double sd_kg = 10.0;
};

// Load of one wheel over the travel that is recorded (at the wheel; at the damper the spring's rate times how far the
// damper goes over how far the wheel goes), with its relative standard uncertainty.
struct Springs {
    double front_n_per_m = 0.0;
    double rear_n_per_m = 0.0;
    double relative_sd = 0.05;
};

// One downforce area for all speeds and attitudes is true to so much (common practice, no source); a figure of one
// attitude, as springs on straights or a tunnel show it, is that far from the corners'.
inline constexpr double attitude_sd = 0.08;

// What is known from elsewhere: a coast-down, a tunnel, a flow simulation, a dynamometer; standard uncertainty.
struct KnownFigure {
    double value = 0.0;
    double sd = 0.0;
};

struct KnownFigures {
    std::optional<KnownFigure> downforce_area_m2;
    std::optional<KnownFigure> drag_area_m2;
    std::optional<KnownFigure> power_w; // at the wheels, the most over all engine speeds
};

struct CarData {
    std::vector<lap::LapTrace> laps; // clean laps on one grid; at least one, better eight
    std::vector<track::Segment> segments;
    AirDensity air;
    std::optional<Mass> mass;
    std::optional<Springs> springs;
    KnownFigures known; // counts where the mass is given
    // d height / d path at each grid point; empty: flat.
    std::vector<double> slope;
    // Share by which all lengths and speeds may be off together, the other car's too: where only wheels tell them.
    double length_sd = 0.0;
};

struct FigureOptions {
    std::size_t draws = 200;
    std::uint64_t seed = 1;
};

// One car that the data allow.
struct CarDraw {
    SimulatedCar car; // mass 1 where the mass is unknown
    double density_kg_m3 = 1.2;
    // Of the tyres' grip that this driver's limit corners use; as-used grip = car.grip × this.
    double driver_share = 0.95;
};

// A corner's evidence on the limit, mean over laps.
struct CornerEvidence {
    std::string corner;
    double speed_mps = 0.0;
    double lateral_mps2 = 0.0; // magnitude
    std::vector<double> lap_speed_mps;
    std::vector<double> lap_lateral_mps2;
    bool flat = false; // driven at full throttle: bounds the grip from below and says no more
    double chance_at_limit = 1.0;
};

struct BrakingEvidence {
    std::string corner;     // that the zone leads to
    double speed_mps = 0.0; // of the slower and the faster half
    double tyre_mps2 = 0.0; // deceleration that the tyres gave, drag removed
    bool faster_half = false;
};

struct DrivingEvidence {
    double speed_mps = 0.0;
    double drive_mps2 = 0.0; // push of the engine per kilogram, resistance of drag not yet removed
    bool used = true;        // false: a shift, a lift, or an outlier
};

// How the draws of a fit came out (core/math/convergence.h).
struct SamplingState {
    base::FitOutcome outcome;
    double r_hat = 0.0;
    double effective_draws = 0.0;
    double acceptance = 0.0;
};

// Travel without spring rates: the same springs all round are taken, as stiff as usual braking makes them.  The scale
// is good to `untold_travel_sd`, so it is an idea of the downforce for promises and no evidence.
struct UntoldTravel {
    double downforce_per_kg = 0.0; // N/(m/s)² per kilogram
    double sd = 0.0;               // of the fit, in the same scale
};
inline constexpr double untold_travel_sd = 0.25; // relative (common practice, no source)

struct CarFigures {
    bool per_kilogram = false;                  // no mass was given: areas, watts and newtons are absent
    CarFigure grip;                             // of the tyres, at the car's own weight
    CarFigure grip_as_used;                     // what the driver's limit corners show
    std::optional<CarFigure> downforce_area_m2; // corrected for the tyres' load exponent; negative: lift
    std::optional<CarFigure> drag_area_m2;
    std::optional<CarFigure> power_w; // at the wheels, mean over the engine speeds of the straights
    std::optional<CarFigure> mass_kg;
    // The same per kilogram, always there.
    CarFigure downforce_area_m2_per_kg;
    CarFigure drag_area_m2_per_kg;
    CarFigure power_w_per_kg;
    // Downforce area that a tyre without load sensitivity would need for the same grip: what the grip behaves like.
    CarFigure apparent_downforce_area_m2_per_kg;
    CarFigure load_exponent;
    CarFigure braking_share;
    double traction_share = 0.6;
    double fastest_mps = 0.0;

    // Of the draws of grip, downforce area, drag area and power, in that order, the last three per kilogram; NaN where
    // one does not vary.
    std::array<std::array<double, 4>, 4> correlations{};

    CarDraw typical; // medians of the draws
    std::vector<CarDraw> draws;
    std::vector<CornerEvidence> corners;
    std::vector<BrakingEvidence> braking;
    std::vector<DrivingEvidence> driving;
    std::optional<UntoldTravel> springs_would_tell; // where travel was recorded and no springs were given
    SamplingState corner_fit;                       // of grip, downforce and load exponent
    base::FitOutcome straight_fit;                  // of drag and power
    std::vector<std::string> notes;                 // in words: what the data could not tell
};

// Error cannot_be_computed when no stretch at full throttle or no corner can be found.
[[nodiscard]] base::Result<CarFigures> car_figures(const CarData& data, const FigureOptions& options = {});

// Value and 95 % interval of something that each draw gives.
struct ForceFigures {
    double speed_mps = 0.0;
    std::optional<CarFigure> downforce_n; // absent without a mass
    std::optional<CarFigure> drag_n;
};
[[nodiscard]] ForceFigures forces_at(const CarFigures& figures, double speed_mps);

// Curves behind the evidence: at each speed the median of the draws and their 95 % band.
struct Curve {
    std::vector<double> speed_mps;
    std::vector<double> value;
    std::vector<double> low;
    std::vector<double> high;
};
[[nodiscard]] Curve limit_curve(const CarFigures& figures, double to_mps);   // acceleration limit as used, m/s²
[[nodiscard]] Curve driving_curve(const CarFigures& figures, double to_mps); // push less drag, m/s²

} // namespace lapwright::car
