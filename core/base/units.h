// SPDX-License-Identifier: GPL-3.0-or-later
// Exact units at the edges (import, display); inside everything is SI.  Factors: NIST SP 811 (2008), appendix B, from
// memory, recomputed from the definitions; the tests recompute them again.
#pragma once

#include <optional>
#include <string_view>

namespace lapwright::base {

enum class Unit {
    none,
    // time
    second,
    millisecond,
    microsecond,
    nanosecond,
    minute,
    hour,
    day,
    // length
    metre,
    kilometre,
    centimetre,
    millimetre,
    foot,
    mile,
    inch,
    // speed
    metre_per_second,
    centimetre_per_second,
    millimetre_per_second,
    kilometre_per_hour,
    mile_per_hour,
    knot,
    foot_per_second,
    // acceleration
    metre_per_second_squared,
    standard_gravity,
    milli_gravity,
    foot_per_second_squared,
    // angle and its rate
    radian,
    degree,
    radian_per_second,
    degree_per_second,
    // rotation
    revolution_per_minute,
    thousand_revolutions_per_minute,
    hertz,
    // mass, force, power, pressure, torque
    kilogram,
    pound,
    newton,
    pound_force,
    watt,
    kilowatt,
    horsepower,
    metric_horsepower,
    pascal,
    kilopascal,
    hectopascal,
    megapascal,
    bar,
    technical_atmosphere,
    pound_per_square_inch,
    newton_metre,
    pound_force_foot,
    // temperature
    kelvin,
    celsius,
    fahrenheit,
    // shares and electricity
    fraction,
    percent,
    volt,
    millivolt,
    ampere,
};

enum class Quantity {
    none,
    time,
    length,
    speed,
    acceleration,
    angle,
    angular_rate,
    rotation,
    mass,
    force,
    power,
    pressure,
    torque,
    temperature,
    share,
    voltage,
    current,
};

// SI value = value * factor + offset.
struct UnitDefinition {
    Unit unit{};
    Quantity quantity{};
    double factor = 1.0;
    double offset = 0.0;
    std::string_view symbol; // as shown: "km/h"
};

[[nodiscard]] const UnitDefinition& definition(Unit unit);
[[nodiscard]] double to_si(double value, Unit unit);
[[nodiscard]] double from_si(double value_si, Unit unit);
[[nodiscard]] std::string_view symbol(Unit unit);
[[nodiscard]] Quantity quantity(Unit unit);

// The SI unit in which values of this quantity are kept ("rotation" in revolutions per second, "share" as 0..1).
[[nodiscard]] Unit si_unit(Quantity quantity);

} // namespace lapwright::base
