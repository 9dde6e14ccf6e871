// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_guess.h"

#include "core/base/translation.h"
#include "core/import/columns/column_relations.h"
#include "core/import/columns/column_units.h"
#include "core/import/columns/recipe_edit.h"
#include "core/import/text/words.h"
#include "core/import/vocabulary/units_in_text.h"

#include <algorithm>

namespace lapwright::import {
namespace {

using base::Quantity;
using base::Unit;
using recording::DoubtKind;
using recording::Meaning;

constexpr std::size_t shown_values = 8;

// Which meaning a unit turns a name into: "lat" in g is no latitude.
Meaning meaning_with_unit(Meaning meaning, Unit unit) {
    const Quantity quantity = base::quantity(unit);
    if (unit == Unit::none || quantity == recording::quantity(meaning)) return meaning;
    if (meaning == Meaning::latitude && quantity == Quantity::acceleration) return Meaning::lateral_acceleration;
    if (meaning == Meaning::longitude && quantity == Quantity::acceleration) return Meaning::longitudinal_acceleration;
    if (meaning == Meaning::latitude && quantity == Quantity::length) return Meaning::north;
    if (meaning == Meaning::longitude && quantity == Quantity::length) return Meaning::east;
    if (meaning == Meaning::north && quantity == Quantity::angle) return Meaning::latitude;
    if (meaning == Meaning::east && quantity == Quantity::angle) return Meaning::longitude;
    if (meaning == Meaning::brake && quantity == Quantity::pressure) return Meaning::brake_pressure;
    if (meaning == Meaning::brake_pressure && quantity == Quantity::share) return Meaning::brake;
    // "Gear (n)", "Sats (m)" are counts all the same; "Giro (km/h)" is no lap.
    const bool count = recording::quantity(meaning) == Quantity::none;
    const bool measured = quantity == Quantity::speed || quantity == Quantity::acceleration ||
                          quantity == Quantity::rotation || quantity == Quantity::pressure ||
                          quantity == Quantity::temperature;
    return count && !measured ? meaning : Meaning::other;
}

NameAndUnit part_header(const Layout& layout, std::size_t column) {
    const std::string& header = layout.names[column];
    const Vocabulary& known = layout.vocabulary();
    const auto whole = meaning_of_name(header, Quantity::none, known);
    const bool letters = whole && (whole->role == Role::north_south || whole->role == Role::east_west);
    // The S of "N/S" is no second, and the W of "Lon (W)" no watt.
    const bool whole_name = letters || sided_position(header, known);
    NameAndUnit parted = whole_name ? NameAndUnit{header, "", std::nullopt} : part_name_and_unit(header, known);
    const bool no_unit = means_absent(layout.units[column]) || folded(layout.units[column]) == "none";
    if (parted.unit_text.empty() && !no_unit) {
        parted.unit_text = layout.units[column];
        parted.unit = parse_unit(parted.unit_text, known);
    }
    if (!parted.unit && !parted.unit_text.empty() && only_says_where(parted.unit_text, known)) {
        if (!plain_words(parted.unit_text).empty()) parted.name += " " + parted.unit_text;
        parted.unit_text.clear();
    }
    if (parted.name.empty()) parted.name = header;
    return parted;
}

// "MPH", "rpm": name and unit at once.
std::optional<NamedColumn> named_by_unit(const NameAndUnit& parted, const Vocabulary& known) {
    const auto unit = parse_unit(parted.name, known);
    if (!unit) return std::nullopt;
    if (base::quantity(*unit) == Quantity::speed) return NamedColumn{Role::channel, Meaning::speed, 0.8};
    if (*unit == Unit::revolution_per_minute || *unit == Unit::thousand_revolutions_per_minute)
        return NamedColumn{Role::channel, Meaning::engine_speed, 0.95};
    return std::nullopt;
}

// The name without its unit, and where that is not known the whole header: "Lateral g", "G(x)".
std::optional<NamedColumn> known_name(const std::string& header, NameAndUnit& parted, const Vocabulary& known) {
    const Quantity written = base::quantity(parted.unit.value_or(Unit::none));
    if (const auto column = named_by_unit(parted, known)) {
        if (parted.unit_text.empty()) parted = {parted.name, parted.name, parse_unit(parted.name, known)};
        return column;
    }
    if (const auto column = meaning_of_name(parted.name, written, known)) return column;
    // "g quer", "G forward": a name that says itself that values are in g.
    if (parted.unit_text.empty() && names_gravity(parted.name, known))
        if (const auto column = meaning_of_name(without_gravity(parted.name, known), Quantity::acceleration, known);
            column && recording::quantity(column->meaning) == Quantity::acceleration)
            return column;
    const auto column = meaning_of_name(header, written, known);
    if (!column) return std::nullopt;
    parted.name = header;
    if (!parted.unit) parted.unit_text.clear();
    return column;
}

ColumnGuess guess_by_name(const Layout& layout, std::size_t column) {
    ColumnGuess guess;
    guess.header = layout.names[column];
    NameAndUnit parted = part_header(layout, column);
    const auto sided = sided_position(parted.name, layout.vocabulary());
    const auto named = sided ? std::optional(sided->column) : known_name(guess.header, parted, layout.vocabulary());
    if (named && parted.unit_text.empty() && recording::quantity(named->meaning) == Quantity::acceleration &&
        names_gravity(guess.header, layout.vocabulary())) {
        parted.unit = Unit::standard_gravity;
        parted.unit_text = "g";
    }
    guess.name = parted.name;
    guess.unit_text = parted.unit_text;
    guess.unit_written = parted.unit.has_value();
    guess.unit = parted.unit.value_or(Unit::none);
    guess.role = named ? named->role : Role::channel;
    guess.confidence = named ? named->confidence : 0.9;
    guess.from_satellites = named && named->from_satellites;
    guess.meaning = named ? meaning_with_unit(named->meaning, guess.unit) : Meaning::other;
    const bool place = named && (named->meaning == Meaning::latitude || named->meaning == Meaning::longitude);
    if (place && guess.unit == Unit::minute) { // of arc
        guess.meaning = named->meaning;
        guess.unit = Unit::degree;
        guess.scale = 1.0 / 60.0;
    }
    if (guess.role == Role::time && guess.unit_written && base::quantity(guess.unit) != Quantity::time)
        guess.role = Role::channel; // "t (°C)" is no time
    // "v (km/h)", "track (deg)", "x (m)": the unit says what a short name alone does not.
    constexpr double clear_by_unit = 0.75;
    if (guess.meaning != Meaning::other && guess.unit_written && named->meaning == guess.meaning &&
        base::quantity(guess.unit) == recording::quantity(guess.meaning))
        guess.confidence = std::max(guess.confidence, clear_by_unit);
    // Counts have no unit, whatever stands beside them.
    const bool count = guess.meaning != Meaning::other && recording::quantity(guess.meaning) == Quantity::none;
    if (count) {
        guess.unit = Unit::none;
        guess.unit_written = false;
    }
    guess.reason =
        named ? base::said("named \"%1\"", {guess.name}) : base::said("its name is not known: kept as it is");
    if (guess.unit_written) guess.reason += ", " + base::said("unit %1 as written", {guess.unit_text});
    return guess;
}

// A column without a name, or with that of an earlier one, is told by its number.
std::string told_apart(const Layout& layout, std::size_t column, const std::string& name) {
    if (name.empty()) return name_by_number(column);
    const auto before = layout.names.begin() + static_cast<std::ptrdiff_t>(column);
    const bool again = std::find(layout.names.begin(), before, layout.names[column]) != before;
    return again ? name + " (" + name_by_number(column) + ")" : name;
}

// Cells that bear a unit say it where the header does not.
void take_unit_of_cells(ColumnGuess& guess, const ColumnValues& values) {
    if (values.unit == Unit::none || (guess.unit_written && values.form != CellForm::number_with_unit)) return;
    guess.unit = values.unit;
    guess.unit_text = values.unit_text;
    guess.unit_written = true;
    guess.reason += ", " + base::said("unit %1 as its cells write", {guess.unit_text});
    if (guess.role == Role::channel) guess.meaning = meaning_with_unit(guess.meaning, guess.unit);
    // "1 %" beside a count is none of a share.
    const bool count = guess.meaning != Meaning::other && recording::quantity(guess.meaning) == Quantity::none;
    if (guess.role == Role::channel && count && values.form == CellForm::number) guess.unit = Unit::none;
}

bool can_be_channel(const ColumnGuess& guess, const ColumnValues& values) {
    const bool position = guess.meaning == Meaning::latitude || guess.meaning == Meaning::longitude;
    if (values.form == CellForm::angle) return position || guess.meaning == Meaning::course;
    // "50 Hz" counts no laps.
    const bool fits =
        guess.meaning == Meaning::other || recording::quantity(guess.meaning) == base::quantity(guess.unit);
    if (values.form == CellForm::number_with_unit) return fits;
    return values.form == CellForm::number || (is_clock(values.form) && guess.meaning == Meaning::lap_time);
}

// Whether the cells can be what the name says.
void settle_form(ColumnGuess& guess, const ColumnValues& values) {
    guess.form = values.form;
    // A mark at each passing of the line may stand in no row that was looked at.
    if (values.filled == 0 && guess.meaning == Meaning::beacon) {
        guess.form = CellForm::number;
        return;
    }
    take_unit_of_cells(guess, values);
    const Role named = guess.role;
    const bool known = named != Role::channel || guess.meaning != Meaning::other;
    if (values.form == CellForm::text) guess.role = Role::skip;
    const bool wants_letter = guess.role == Role::north_south || guess.role == Role::east_west;
    if (wants_letter != (values.form == CellForm::hemisphere)) guess.role = Role::skip;
    const bool with_hours = values.form == CellForm::moment || looks_like_day_count(values);
    if (guess.role == Role::date && with_hours) guess.role = Role::time;
    if (guess.role == Role::date && values.form == CellForm::number) guess.role = Role::skip;
    if (guess.role == Role::channel && !can_be_channel(guess, values)) guess.role = Role::skip;
    const bool other_unit =
        guess.form == CellForm::number_with_unit && base::quantity(guess.unit) != base::Quantity::time;
    if (guess.role == Role::time && other_unit) guess.role = Role::skip;
    if (guess.role != Role::skip || named == Role::skip || !known || values.filled == 0) return;
    guess.doubt = {DoubtKind::name_contradicted, {words(ColumnUse{named, guess.meaning})}};
}

// Cameras of the American standard run a thousandth slower than they count: a tenth of a second in a lap.
void doubt_frames(ColumnGuess& guess) {
    if (guess.form == CellForm::clock_24_frames) guess.doubt = {DoubtKind::form_open, {"24 frames a second", "23.98"}};
    if (guess.form == CellForm::clock_30_frames) guess.doubt = {DoubtKind::form_open, {"30 frames a second", "29.97"}};
    if (guess.form == CellForm::clock_60_frames) guess.doubt = {DoubtKind::form_open, {"60 frames a second", "59.94"}};
}

void settle_unit(ColumnGuess& guess, const ColumnValues& values, const Samples& samples) {
    if (guess.role == Role::skip) {
        return;
    } else if (guess.form == CellForm::angle) {
        guess.unit = Unit::degree;
    } else if (guess.form == CellForm::number_with_unit) {
        doubt_written_unit(guess, values);
    } else if (guess.form != CellForm::number) {
        guess.unit = Unit::second;
        doubt_frames(guess);
    } else if (guess.role == Role::time) {
        if (looks_like_day_count(values) && !guess.unit_written) {
            guess.form = CellForm::day_count;
            guess.unit = Unit::second;
            guess.reason += "; " + base::said("days with fractions by its values");
        } else if (looks_like_packed_clock(values.numbers, values.leading_zeros) &&
                   (values.largest > 6000.0 || values.leading_zeros)) {
            guess.form = CellForm::packed_clock;
            guess.unit = Unit::second;
            guess.reason += "; " + base::said("hours, minutes and seconds without marks by its values");
        } else if (base::quantity(guess.unit) != Quantity::time) {
            guess_time_unit(guess, values, median_advance(samples, values.numbers));
        }
    } else if (guess.role == Role::channel && guess.meaning != Meaning::other) {
        if (guess.unit_written)
            doubt_written_unit(guess, values);
        else
            guess_unit(guess, values);
    }
}

// "Lon W": what the name says of the sign.  Numbers that are negative there say it themselves.
void turn_sided(const Layout& layout, const std::vector<ColumnValues>& values, std::vector<ColumnGuess>& guesses) {
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        ColumnGuess& guess = guesses[i];
        const auto sided = sided_position(guess.name, layout.vocabulary());
        const bool positive = std::ranges::none_of(values[i].numbers, [](double number) { return number < 0.0; });
        if (!sided || sided->sign > 0.0 || guess.role != Role::channel || guess.meaning != sided->column.meaning ||
            !positive || is_angle(guess.form))
            continue;
        guess.scale = -guess.scale;
        guess.reason += "; " + base::said("its name says on which side of zero it lies");
    }
}

} // namespace

bool is_doubtful(const ColumnGuess& guess) {
    if (guess.settled) return false;
    const bool unsure = guess.confidence < doubtful_below && guess.role == Role::channel;
    return !guess.doubt.empty() || (unsure && guess.meaning != Meaning::other);
}

std::vector<ColumnGuess> guess_columns(const Layout& layout, const Samples& samples) {
    std::vector<ColumnGuess> guesses;
    std::vector<ColumnValues> values;
    for (std::size_t i = 0; i < layout.columns; ++i) {
        ColumnGuess guess = guess_by_name(layout, i);
        guess.name = told_apart(layout, i, guess.name);
        values.push_back(judge_column(samples, i, layout.style, guess.role, guess.meaning));
        for (std::size_t row = 0; row < std::min(shown_values, samples.rows.size()); ++row)
            guess.first_values.push_back(samples.rows[row][i]);
        settle_form(guess, values.back());
        settle_unit(guess, values.back(), samples);
        guesses.push_back(std::move(guess));
    }
    find_lettered_positions(samples, values, guesses);
    relate_columns(guesses, values, samples, layout.has_names);
    find_unnamed_letters(samples, values, guesses);
    settle_letter_o(layout, samples, guesses);
    turn_sided(layout, values, guesses);
    return guesses;
}

} // namespace lapwright::import
