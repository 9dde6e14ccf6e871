// SPDX-License-Identifier: GPL-3.0-or-later
// The limits between one unit and another are common practice, no source: a road car's cornering stays below 2.5 g, a
// steering wheel turns by more than one revolution, a formula for every doubt is not to be had.
#include "core/import/columns/column_units.h"

#include "core/base/translation.h"

#include <algorithm>

namespace lapwright::import {
namespace {

using base::Quantity;
using base::Unit;
using recording::ColumnDoubt;
using recording::DoubtKind;
using recording::Meaning;

void settle(ColumnGuess& guess, Unit unit, double confidence, std::string reason, ColumnDoubt doubt = {}) {
    guess.unit = unit;
    guess.confidence = std::min(guess.confidence, confidence);
    guess.reason += "; " + std::move(reason);
    guess.doubt = std::move(doubt);
}

// No unit is written, and these are plausible; the first one is taken.
ColumnDoubt unit_open(std::vector<std::string> units) {
    return {DoubtKind::unit_open, std::move(units)};
}

void guess_position_unit(ColumnGuess& guess, const ColumnValues& values) {
    const double most = values.largest;
    const bool is_latitude = guess.meaning == Meaning::latitude;
    if (most > 1e6) {
        guess.scale = 1e-7;
        return settle(guess, Unit::degree, 0.85, base::said("whole ten-millionths of a degree by their size"));
    }
    if (looks_like_degrees_minutes(values.numbers) && most > (is_latitude ? 90.0 : 360.0)) {
        guess.form = CellForm::degrees_minutes;
        // Minutes of arc beyond 75° of latitude would be a track in the ice.
        const bool arc_minutes_too = is_latitude && most <= 75.0 * 60.0;
        return settle(
            guess, Unit::degree, 0.75, base::said("degrees and minutes without a mark (ddmm.mmmm) by their size"),
            arc_minutes_too ? ColumnDoubt{DoubtKind::form_open, {"ddmm.mmmm", "minutes of arc"}} : ColumnDoubt{});
    }
    if (most > 360.0) {
        guess.scale = 1.0 / 60.0;
        return settle(guess, Unit::degree, 0.55, base::said("minutes of arc by their size"),
                      {DoubtKind::minutes_by_size});
    }
    if (!guess.unit_written && most < (is_latitude ? 1.5708 : 3.1416) && most > 0.0)
        return settle(guess, Unit::degree, 0.5, base::said("no unit written, taken as degrees"),
                      unit_open({"degrees", "radians"}));
    if (!guess.unit_written) settle(guess, Unit::degree, 0.95, base::said("degrees by their values"));
}

// No engine stays below 20 turns a minute, and none below 20 a second.
bool counts_thousands(const ColumnValues& values) {
    return values.largest < 20.0 && values.decimals >= 2;
}

void guess_angle_unit(ColumnGuess& guess, double most) {
    // A course goes round: whole tenths, hundredths or hundred-thousandths of a degree end below 360 of them.
    if (guess.meaning == Meaning::course)
        for (const double scale : {0.1, 0.01, 1e-5})
            if (most * scale > 180.0 && most * scale <= 360.0) {
                guess.scale = scale;
                return settle(guess, Unit::degree, 0.8, base::said("whole parts of a degree by their size"));
            }
    if (most > 6.5) return settle(guess, Unit::degree, 0.9, base::said("no unit written, degrees by its values"));
    settle(guess, Unit::degree, 0.5, base::said("no unit written, taken as degrees"),
           unit_open({"degrees", "radians"}));
}

void guess_acceleration_unit(ColumnGuess& guess, double most) {
    if (most > 200.0)
        return settle(guess, Unit::milli_gravity, 0.7, base::said("no unit written, thousandths of g by its values"));
    if (most > 4.5)
        return settle(guess, Unit::metre_per_second_squared, 0.85, base::said("no unit written, m/s² by its values"));
    if (most > 2.5)
        return settle(guess, Unit::standard_gravity, 0.5, base::said("no unit written, taken as g"),
                      unit_open({"g", "m/s²"}));
    settle(guess, Unit::standard_gravity, 0.8, base::said("no unit written, g by its values"));
}

void guess_share_unit(ColumnGuess& guess, double most) {
    if (most <= 1.02)
        return settle(guess, Unit::fraction, 0.85, base::said("no unit written, parts of one by its values"));
    if (most > 110.0) {
        guess.meaning = Meaning::other;
        return settle(guess, Unit::none, 0.4, base::said("no unit written, beyond 100"), {DoubtKind::beyond_percent});
    }
    if (guess.meaning == Meaning::brake)
        return settle(guess, Unit::percent, 0.5, base::said("no unit written, taken as percent"),
                      unit_open({"percent of the pedal", "bar"}));
    settle(guess, Unit::percent, most > 20.0 ? 0.9 : 0.6, base::said("no unit written, percent by its values"));
}

void guess_pressure_unit(ColumnGuess& guess, double most) {
    if (guess.meaning == Meaning::air_pressure) {
        if (most > 50'000.0) return settle(guess, Unit::pascal, 0.9, base::said("no unit written, Pa by its values"));
        if (most > 500.0)
            return settle(guess, Unit::hectopascal, 0.9, base::said("no unit written, hPa by its values"));
        if (most > 50.0) return settle(guess, Unit::kilopascal, 0.9, base::said("no unit written, kPa by its values"));
        return settle(guess, Unit::bar, 0.7, base::said("no unit written, bar by its values"));
    }
    // No brake works at 300 bar, nor at 6000 psi.
    if (most > 6000.0) return settle(guess, Unit::kilopascal, 0.7, base::said("no unit written, kPa by its values"));
    if (most > 300.0)
        return settle(guess, Unit::pound_per_square_inch, 0.5, base::said("no unit written, taken as psi"),
                      unit_open({"psi", "kPa"}));
    settle(guess, Unit::bar, 0.5, base::said("no unit written, taken as bar"), unit_open({"bar", "psi", "kPa"}));
}

} // namespace

void guess_unit(ColumnGuess& guess, const ColumnValues& values) {
    const double most = values.largest;
    switch (recording::quantity(guess.meaning)) {
    case Quantity::angle:
        if (guess.meaning == Meaning::latitude || guess.meaning == Meaning::longitude)
            return guess_position_unit(guess, values);
        return guess_angle_unit(guess, most);
    case Quantity::speed:
        return settle(guess, Unit::kilometre_per_hour, 0.4, base::said("no unit written, taken as km/h"),
                      most > 110.0 ? unit_open({"km/h", "mph"}) : unit_open({"km/h", "mph", "m/s"}));
    case Quantity::acceleration:
        return guess_acceleration_unit(guess, most);
    case Quantity::angular_rate:
        if (most > 4.0)
            return settle(guess, Unit::degree_per_second, 0.85, base::said("no unit written, °/s by its values"));
        return settle(guess, Unit::radian_per_second, 0.5, base::said("no unit written, taken as rad/s"),
                      unit_open({"rad/s", "°/s"}));
    case Quantity::share:
        return guess_share_unit(guess, most);
    case Quantity::rotation:
        if (counts_thousands(values))
            return settle(guess, Unit::thousand_revolutions_per_minute, 0.8,
                          base::said("no unit written, thousands a minute by its values"));
        if (most > 400.0)
            return settle(guess, Unit::revolution_per_minute, 0.9, base::said("no unit written, rpm by its values"));
        return settle(guess, Unit::revolution_per_minute, 0.5, base::said("no unit written, taken as rpm"),
                      unit_open({"rpm", "revolutions per second"}));
    case Quantity::length:
        if (recording::is_suspension_travel(guess.meaning) && most > 0.5)
            return settle(guess, Unit::millimetre, 0.8, base::said("no unit written, mm by its values"));
        return settle(guess, Unit::metre, 0.6, base::said("no unit written, taken as metres"));
    case Quantity::temperature:
        if (most > 55.0 && most < 120.0)
            return settle(guess, Unit::celsius, 0.4, base::said("no unit written, taken as °C"),
                          unit_open({"°C", "°F"}));
        return settle(guess, Unit::celsius, 0.7, base::said("no unit written, taken as °C"));
    case Quantity::time:
        if (most > 1000.0)
            return settle(guess, Unit::millisecond, 0.7, base::said("no unit written, ms by its values"));
        return settle(guess, Unit::second, 0.7, base::said("no unit written, seconds by its values"));
    case Quantity::pressure:
        return guess_pressure_unit(guess, most);
    default:
        guess.unit = Unit::none;
    }
}

void guess_time_unit(ColumnGuess& guess, const ColumnValues& values, double step) {
    const double most = values.largest;
    if (most > 1e17) return settle(guess, Unit::nanosecond, 0.85, base::said("nanoseconds since 1970 by their size"));
    if (most > 1e14) return settle(guess, Unit::microsecond, 0.85, base::said("microseconds since 1970 by their size"));
    if (most > 1e11) return settle(guess, Unit::millisecond, 0.9, base::said("milliseconds since 1970 by their size"));
    if (most > 1e8 && values.decimals == 0 && step > 1000.0)
        return settle(guess, Unit::microsecond, 0.7, base::said("no unit written, µs by its steps"));
    // Nobody logged before 1990: a week holds 604,800,000 ms.
    const bool whole = values.decimals == 0;
    if (most > 6.3e8 || (most > 1e8 && !whole))
        return settle(guess, Unit::second, 0.9, base::said("seconds since 1970 by their size"));
    // Receivers count the milliseconds of the week, at one fix a second in thousands.
    const bool in_week = step == 1000.0 && most <= 604'800'000.0;
    // Half a day of milliseconds is no session.
    if (whole && step >= 1000.0 && most > 43'200'000.0 && !in_week)
        return settle(guess, Unit::microsecond, 0.85, base::said("no unit written, µs by its size"));
    if (whole && step >= 1000.0)
        return settle(guess, Unit::millisecond, 0.5, base::said("no unit written, taken as ms"),
                      unit_open({"milliseconds", "microseconds"}));
    if (whole && step >= 2.0)
        return settle(guess, Unit::millisecond, 0.85, base::said("no unit written, ms by its steps"));
    if (whole && step > 0.0)
        return settle(guess, Unit::second, 0.5, base::said("no unit written, taken as seconds"),
                      unit_open({"seconds", "milliseconds"}));
    // Nothing logs fifty thousand rows a second.
    if (step > 0.0 && step < 2e-5 && most < 1.0)
        return settle(guess, Unit::day, 0.5, base::said("parts of a day by its steps"), unit_open({"days", "hours"}));
    if (step >= 5.0) return settle(guess, Unit::millisecond, 0.8, base::said("no unit written, ms by its steps"));
    settle(guess, Unit::second, 0.9, base::said("seconds by its steps"));
}

void doubt_written_unit(ColumnGuess& guess, const ColumnValues& values) {
    const double most = values.largest;
    const auto doubt = [&guess](const char* written, const char* plausible) {
        guess.doubt = {DoubtKind::written_unit_taken, {written, plausible}};
        guess.confidence = std::min(guess.confidence, 0.5);
    };
    if (guess.unit == Unit::percent && most > 0.0 && most <= 1.02)
        doubt("percent", "a part of one");
    else if (guess.unit == Unit::revolution_per_minute && guess.meaning == Meaning::engine_speed &&
             counts_thousands(values)) {
        // "RPM" is a name as much as a unit.
        guess.unit_written = false;
        guess.unit_text.clear();
        guess_unit(guess, values);
    } else if (guess.unit == Unit::fraction && most > 1.5)
        doubt("a part of one", "percent");
    else if (guess.unit == Unit::standard_gravity && most > 8.0 && guess.meaning != Meaning::vertical_acceleration)
        doubt("g", "m/s²");
    else if (guess.unit == Unit::radian && most > 20.0)
        doubt("rad", "°");
    else if (guess.unit == Unit::degree && guess.scale == 1.0 &&
             (guess.meaning == Meaning::latitude || guess.meaning == Meaning::longitude))
        guess_position_unit(guess, values);
}

} // namespace lapwright::import
