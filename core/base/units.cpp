// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/units.h"

#include "core/base/check.h"
#include "core/base/constants.h"

#include <array>

namespace lapwright::base {
namespace {

constexpr double foot_m = 0.3048;
constexpr double mile_m = 1609.344;
constexpr double pound_kg = 0.45359237;
constexpr double pound_force_n = pound_kg * standard_gravity_mps2;
constexpr double inch_m = 0.0254;

constexpr std::array definitions{
    UnitDefinition{Unit::none, Quantity::none, 1.0, 0.0, ""},
    UnitDefinition{Unit::second, Quantity::time, 1.0, 0.0, "s"},
    UnitDefinition{Unit::millisecond, Quantity::time, 1e-3, 0.0, "ms"},
    UnitDefinition{Unit::microsecond, Quantity::time, 1e-6, 0.0, "µs"},
    UnitDefinition{Unit::nanosecond, Quantity::time, 1e-9, 0.0, "ns"},
    UnitDefinition{Unit::minute, Quantity::time, 60.0, 0.0, "min"},
    UnitDefinition{Unit::hour, Quantity::time, 3600.0, 0.0, "h"},
    UnitDefinition{Unit::day, Quantity::time, 86400.0, 0.0, "d"},
    UnitDefinition{Unit::metre, Quantity::length, 1.0, 0.0, "m"},
    UnitDefinition{Unit::kilometre, Quantity::length, 1000.0, 0.0, "km"},
    UnitDefinition{Unit::centimetre, Quantity::length, 0.01, 0.0, "cm"},
    UnitDefinition{Unit::millimetre, Quantity::length, 0.001, 0.0, "mm"},
    UnitDefinition{Unit::foot, Quantity::length, foot_m, 0.0, "ft"},
    UnitDefinition{Unit::mile, Quantity::length, mile_m, 0.0, "mi"},
    UnitDefinition{Unit::inch, Quantity::length, inch_m, 0.0, "in"},
    UnitDefinition{Unit::metre_per_second, Quantity::speed, 1.0, 0.0, "m/s"},
    UnitDefinition{Unit::centimetre_per_second, Quantity::speed, 0.01, 0.0, "cm/s"},
    UnitDefinition{Unit::millimetre_per_second, Quantity::speed, 0.001, 0.0, "mm/s"},
    UnitDefinition{Unit::kilometre_per_hour, Quantity::speed, 1.0 / 3.6, 0.0, "km/h"},
    UnitDefinition{Unit::mile_per_hour, Quantity::speed, mile_m / 3600.0, 0.0, "mph"},
    UnitDefinition{Unit::knot, Quantity::speed, 1852.0 / 3600.0, 0.0, "kn"},
    UnitDefinition{Unit::foot_per_second, Quantity::speed, foot_m, 0.0, "ft/s"},
    UnitDefinition{Unit::metre_per_second_squared, Quantity::acceleration, 1.0, 0.0, "m/s²"},
    UnitDefinition{Unit::standard_gravity, Quantity::acceleration, standard_gravity_mps2, 0.0, "g"},
    UnitDefinition{Unit::milli_gravity, Quantity::acceleration, standard_gravity_mps2 / 1000.0, 0.0, "mg"},
    UnitDefinition{Unit::foot_per_second_squared, Quantity::acceleration, foot_m, 0.0, "ft/s²"},
    UnitDefinition{Unit::radian, Quantity::angle, 1.0, 0.0, "rad"},
    UnitDefinition{Unit::degree, Quantity::angle, pi / 180.0, 0.0, "°"},
    UnitDefinition{Unit::radian_per_second, Quantity::angular_rate, 1.0, 0.0, "rad/s"},
    UnitDefinition{Unit::degree_per_second, Quantity::angular_rate, pi / 180.0, 0.0, "°/s"},
    UnitDefinition{Unit::revolution_per_minute, Quantity::rotation, 1.0 / 60.0, 0.0, "rpm"},
    UnitDefinition{Unit::thousand_revolutions_per_minute, Quantity::rotation, 1000.0 / 60.0, 0.0, "1000/min"},
    UnitDefinition{Unit::hertz, Quantity::rotation, 1.0, 0.0, "Hz"},
    UnitDefinition{Unit::kilogram, Quantity::mass, 1.0, 0.0, "kg"},
    UnitDefinition{Unit::pound, Quantity::mass, pound_kg, 0.0, "lb"},
    UnitDefinition{Unit::newton, Quantity::force, 1.0, 0.0, "N"},
    UnitDefinition{Unit::pound_force, Quantity::force, pound_force_n, 0.0, "lbf"},
    UnitDefinition{Unit::watt, Quantity::power, 1.0, 0.0, "W"},
    UnitDefinition{Unit::kilowatt, Quantity::power, 1000.0, 0.0, "kW"},
    UnitDefinition{Unit::horsepower, Quantity::power, 550.0 * foot_m* pound_force_n, 0.0, "hp"},
    UnitDefinition{Unit::metric_horsepower, Quantity::power, 75.0 * standard_gravity_mps2, 0.0, "PS"},
    UnitDefinition{Unit::pascal, Quantity::pressure, 1.0, 0.0, "Pa"},
    UnitDefinition{Unit::kilopascal, Quantity::pressure, 1000.0, 0.0, "kPa"},
    UnitDefinition{Unit::hectopascal, Quantity::pressure, 100.0, 0.0, "hPa"},
    UnitDefinition{Unit::megapascal, Quantity::pressure, 1e6, 0.0, "MPa"},
    UnitDefinition{Unit::bar, Quantity::pressure, 1e5, 0.0, "bar"},
    UnitDefinition{Unit::technical_atmosphere, Quantity::pressure, 1e4 * standard_gravity_mps2, 0.0, "kgf/cm²"},
    UnitDefinition{Unit::pound_per_square_inch, Quantity::pressure, pound_force_n / (inch_m * inch_m), 0.0, "psi"},
    UnitDefinition{Unit::newton_metre, Quantity::torque, 1.0, 0.0, "N·m"},
    UnitDefinition{Unit::pound_force_foot, Quantity::torque, pound_force_n* foot_m, 0.0, "lbf·ft"},
    UnitDefinition{Unit::kelvin, Quantity::temperature, 1.0, 0.0, "K"},
    UnitDefinition{Unit::celsius, Quantity::temperature, 1.0, 273.15, "°C"},
    UnitDefinition{Unit::fahrenheit, Quantity::temperature, 5.0 / 9.0, 273.15 - 32.0 * 5.0 / 9.0, "°F"},
    UnitDefinition{Unit::fraction, Quantity::share, 1.0, 0.0, ""},
    UnitDefinition{Unit::percent, Quantity::share, 0.01, 0.0, "%"},
    UnitDefinition{Unit::volt, Quantity::voltage, 1.0, 0.0, "V"},
    UnitDefinition{Unit::millivolt, Quantity::voltage, 1e-3, 0.0, "mV"},
    UnitDefinition{Unit::ampere, Quantity::current, 1.0, 0.0, "A"},
};

} // namespace

const UnitDefinition& definition(Unit unit) {
    const auto& found = definitions.at(static_cast<std::size_t>(unit));
    check(found.unit == unit, "the table of units is out of order");
    return found;
}

double to_si(double value, Unit unit) {
    const auto& d = definition(unit);
    return value * d.factor + d.offset;
}

double from_si(double value_si, Unit unit) {
    const auto& d = definition(unit);
    return (value_si - d.offset) / d.factor;
}

std::string_view symbol(Unit unit) {
    return definition(unit).symbol;
}

Quantity quantity(Unit unit) {
    return definition(unit).quantity;
}

Unit si_unit(Quantity wanted) {
    switch (wanted) {
    case Quantity::none:
        return Unit::none;
    case Quantity::time:
        return Unit::second;
    case Quantity::length:
        return Unit::metre;
    case Quantity::speed:
        return Unit::metre_per_second;
    case Quantity::acceleration:
        return Unit::metre_per_second_squared;
    case Quantity::angle:
        return Unit::radian;
    case Quantity::angular_rate:
        return Unit::radian_per_second;
    case Quantity::rotation:
        return Unit::hertz;
    case Quantity::mass:
        return Unit::kilogram;
    case Quantity::force:
        return Unit::newton;
    case Quantity::power:
        return Unit::watt;
    case Quantity::pressure:
        return Unit::pascal;
    case Quantity::torque:
        return Unit::newton_metre;
    case Quantity::temperature:
        return Unit::kelvin;
    case Quantity::share:
        return Unit::fraction;
    case Quantity::voltage:
        return Unit::volt;
    case Quantity::current:
        return Unit::ampere;
    }
    return Unit::none;
}

} // namespace lapwright::base
