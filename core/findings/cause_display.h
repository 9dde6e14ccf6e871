// SPDX-License-Identifier: GPL-3.0-or-later
// The Causes page's figures in words and shown units: cells of the matrix, both cars' figures, what-if.  Seconds that
// favour A are positive inside and carry the letter A here; changes of a lap time keep their sign, minus is quicker.
#pragma once

#include "core/base/display.h"
#include "core/causes/telling_order.h"
#include "core/findings/headline.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::findings {

// One cell: "A 0.33", "·" where it rounds to nothing, "—" where it cannot be told.
struct Cell {
    std::string text;
    Favours favours = Favours::neither;
    bool told = false; // the 95 % interval leaves no doubt about the sign
};

[[nodiscard]] Cell cell(const causes::Seconds& seconds);
// The head of a column of the matrix: "drag", "grip + downforce", "of it downforce".
[[nodiscard]] std::string column_name(const causes::Column& column);
// "±0.22": half of the 95 % interval.
[[nodiscard]] std::string interval_cell(const causes::Seconds& seconds);
// "A 0.33 s, 95 % between B 0.02 and A 0.41"
[[nodiscard]] std::string seconds_in_full(const causes::Seconds& seconds);

// One figure of both cars: "1479 ±160", who decided it ("data", "prior", "setup"); empty where it is not known.
struct FigureLine {
    std::string name; // with its unit: "power at the wheels, kW"
    std::string a;
    std::string b;
    std::string decided_a;
    std::string decided_b;
};

// Per kilogram where a mass is missing.
[[nodiscard]] std::vector<FigureLine> figure_lines(const causes::Explanation& explanation, base::UnitSystem units);

// "Cornering as driven (…): whole lap A 2.41 ±0.60 s."  Empty where grip and downforce are known as well without the
// drivers' use of them.
[[nodiscard]] std::string cornering_sentence(const causes::Explanation& explanation);
// "Downforce and drag together: A 1.32 ±0.25 s a lap; …" what aero earns and costs, each with its sign.
[[nodiscard]] std::string aero_sentence(const causes::Explanation& explanation);

// What the page says of masses that are not known; empty when both are.
[[nodiscard]] std::string missing_mass_sentence(const causes::Explanation& explanation);

// How much of the car each driver uses here: "Tyres used: A 97 %, B 93 %".
[[nodiscard]] std::string use_text(const causes::SegmentRow& row);

// What a control of what-if changes.
enum class Lever { grip, downforce, drag, power, mass };
inline constexpr std::array<Lever, 5> all_levers{Lever::grip, Lever::downforce, Lever::drag, Lever::power, Lever::mass};

[[nodiscard]] std::string name(Lever lever);
// One step of the control and how many there are to either side: 1 % of grip, 2 % of downforce or drag, 2 kW (hp), 5 kg
// (10 lb), in SI or shares.
struct LeverSteps {
    double step = 0.0;
    int most = 0;
};
[[nodiscard]] LeverSteps steps(Lever lever, base::UnitSystem units);
// Adds `amount` (SI or a share) of that lever.
void add(causes::Change& change, Lever lever, double amount);
// The one lever that a change moves, and by how much.
struct Moved {
    Lever lever = Lever::grip;
    double amount = 0.0;
};
[[nodiscard]] Moved moved(const causes::Change& change);
// "+10 %", "−20 kg", "as it is".
[[nodiscard]] std::string change_text(Lever lever, double amount, base::UnitSystem units);

// "−0.14 ±0.06 s": a change of the lap time.
[[nodiscard]] std::string lap_change_text(const causes::Seconds& change);
// "1:29.72": the lap after the change, rounded to what is known of the change.
[[nodiscard]] std::string predicted_lap_text(double lap_time_s, const causes::Seconds& change);
// What the change of one car brings whom, as a cell of the matrix has it: positive favours A.
[[nodiscard]] causes::Seconds favouring_a(const causes::Seconds& change, causes::Side changed);
// What predictions of one figure lean on where the laps tell only its sum with another; empty where they tell both.
[[nodiscard]] std::string what_if_leans(const causes::Explanation& explanation);
// "Most in Sweep −0.05 s and Bowl −0.03 s."; empty where nothing changes by a hundredth.
[[nodiscard]] std::string where_it_changes(const causes::Explanation& explanation,
                                           const causes::Prediction& prediction);

} // namespace lapwright::findings
