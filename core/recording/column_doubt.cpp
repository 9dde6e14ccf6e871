// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/column_doubt.h"

#include "core/base/number_text.h"

namespace lapwright::recording {
namespace {

std::string part(const ColumnDoubt& doubt, std::size_t i) {
    return i < doubt.texts.size() ? doubt.texts[i] : "";
}

// "km/h, mph and m/s are all plausible: taken as km/h"
std::string open_between(const ColumnDoubt& doubt) {
    std::string named = part(doubt, 0);
    for (std::size_t i = 1; i < doubt.texts.size(); ++i)
        named += (i + 1 < doubt.texts.size() ? ", " : " and ") + doubt.texts[i];
    return named + (doubt.texts.size() > 2 ? " are all" : " are both") + " plausible: taken as " + part(doubt, 0);
}

std::string of_meaning(const ColumnDoubt& doubt) {
    const std::string of = part(doubt, 0);
    switch (doubt.kind) {
    case DoubtKind::name_unsure:
        return "taken for " + of + ", which its name does not say for sure";
    case DoubtKind::taken_by_values:
        return "taken as " + of + " by its values";
    case DoubtKind::taken_as_degrees:
        return "its values look like degrees: taken as " + of;
    case DoubtKind::taken_by_advance:
        return "taken as " + of + ", because it advances evenly";
    case DoubtKind::taken_by_motion:
        return "its name does not say what it is: taken as the " + of + " in " + part(doubt, 1) +
               ", because it follows " + part(doubt, 2);
    case DoubtKind::axis_without_direction:
        return "its name says an axis and no direction: taken as the " + of + " one";
    case DoubtKind::axis_elsewhere:
        return "it does not follow the positions as the " + of +
               " acceleration would: its axis points elsewhere, kept without a meaning";
    case DoubtKind::moves_like:
        return "its name does not say what it is: in " + part(doubt, 1) + " it moves as the " + of +
               " does, kept without a meaning";
    case DoubtKind::not_confirmed:
        return "its name does not say what it is: in " + part(doubt, 1) + " it may be the " + of +
               ", which nothing else in the file confirms, kept without a meaning";
    case DoubtKind::one_of_two:
        return "\"" + part(doubt, 1) + "\" is taken as the " + of + ", this one kept without a meaning";
    case DoubtKind::name_contradicted:
        return "its name says " + of + ", but its cells cannot be read as that: not used";
    default:
        return "";
    }
}

std::string of_values(const ColumnDoubt& doubt) {
    switch (doubt.kind) {
    case DoubtKind::exchanged_impossible:
        return "latitudes end at 90°: latitude and longitude are taken exchanged";
    case DoubtKind::exchanged_fits:
        return "latitude and longitude fit the speed only when they are exchanged: taken so";
    case DoubtKind::beyond_percent:
        return "its values go beyond 100, so that they are no percent: kept as written, without a meaning";
    case DoubtKind::laps_too_short:
        return "it changes every " + (doubt.figures.empty() ? "?" : base::fixed_text(doubt.figures[0], 1)) +
               " s, which no lap takes: not used as the number of the lap";
    case DoubtKind::letter_o:
        return "the letter O can be east (German, Dutch) or west (French, Spanish, Italian): taken as east";
    default:
        return "";
    }
}

std::string of_unit(const ColumnDoubt& doubt) {
    switch (doubt.kind) {
    case DoubtKind::unit_open:
        return "no unit is written; " + open_between(doubt);
    case DoubtKind::form_open:
        return open_between(doubt);
    case DoubtKind::minutes_by_size:
        return "taken as minutes of arc";
    case DoubtKind::written_unit_taken:
        return part(doubt, 0) + " is written, but by its values " + part(doubt, 1) +
               " is plausible too: taken as written";
    case DoubtKind::written_unit_wrong:
        return fits_otherwise(part(doubt, 0), part(doubt, 1)) + ": taken as " + part(doubt, 1);
    default:
        return "";
    }
}

} // namespace

std::string words(const ColumnDoubt& doubt) {
    for (auto* const of_kind : {of_meaning, of_values, of_unit})
        if (std::string told = of_kind(doubt); !told.empty()) return told;
    return "";
}

std::string fits_otherwise(const std::string& written, const std::string& fitting) {
    return "its unit is written as " + written + ", but it fits the positions in " + fitting;
}

} // namespace lapwright::recording
