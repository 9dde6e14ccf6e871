// SPDX-License-Identifier: GPL-3.0-or-later
// Ternbank: an invented circuit. There is only water at its coordinates; no real circuit was its model. Nine corners
// from a 17 m hairpin to one fast sweep, which follows a straight and feeds the longest one.
#include <cmath>
#include <numbers>

#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

CircuitPlan ternbank_plan() {
    CircuitPlan plan;
    plan.name = "Ternbank";
    plan.first_straight_name = "Quay straight";
    plan.first_straight_m = 380.0;
    plan.length_m = 3860.0;
    plan.origin = {54.9, 2.35, 12.0};
    plan.start = {0.0, 0.0, 70.0 * std::numbers::pi / 180.0};
    plan.corners = {
        {"Harbour", 79.0, 74.0, 34.0, 330.0, "Harbour to Lantern"},
        {"Lantern", 57.0, 230.0, 50.0, 430.0, "Lantern straight"},
        {"Anchor", 132.0, 31.0, 24.0, 190.0, "Anchor to Rope"},
        {"Rope", 63.0, 60.0, 28.0, 45.0, "Rope to Knot"},
        {"Knot", -95.0, 48.0, 26.0, 250.0, "Knot to Basin"},
        {"Basin", 113.0, 92.0, 44.0, 170.0, "Basin to Winch"},
        {"Winch", -168.0, 18.0, 18.0, 480.0, "Back straight"},
        {"Buoy", 108.0, 52.0, 30.0, 120.0, "Buoy to Jetty"},
        {"Jetty", 71.0, 46.0, 26.0, 220.0, "Run home"},
    };
    return plan;
}

} // namespace

TrackShape ternbank() {
    return build_circuit(ternbank_plan());
}

TrackShape ternbank_with_hills() {
    CircuitPlan plan = ternbank_plan();
    plan.waves = {{3.0, 2, 0.4}, {1.2, 5, 2.1}};
    return build_circuit(plan);
}

} // namespace truth
