// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/column_doubt.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"

namespace lapwright::recording {
namespace {

using base::said;
using base::word;

std::string part(const ColumnDoubt& doubt, std::size_t i) {
    return i < doubt.texts.size() ? doubt.texts[i] : "";
}

// "km/h, mph and m/s are all plausible: taken as km/h"
std::string open_between(const ColumnDoubt& doubt) {
    return said(doubt.texts.size() > 2 ? word("%1 are all plausible: taken as %2")
                                       : word("%1 are both plausible: taken as %2"),
                {base::listed(doubt.texts), part(doubt, 0)});
}

std::string of_meaning(const ColumnDoubt& doubt) {
    const std::string of = said(part(doubt, 0).c_str());
    switch (doubt.kind) {
    case DoubtKind::name_unsure:
        return said("taken for %1, which its name does not say for sure", {of});
    case DoubtKind::taken_by_values:
        return said("taken as %1 by its values", {of});
    case DoubtKind::taken_as_degrees:
        return said("its values look like degrees: taken as %1", {of});
    case DoubtKind::taken_by_advance:
        return said("taken as %1, because it advances evenly", {of});
    case DoubtKind::taken_by_motion:
        return said("its name does not say what it is: taken as the %1 in %2, because it follows %3",
                    {of, part(doubt, 1), said(part(doubt, 2).c_str())});
    case DoubtKind::axis_without_direction:
        return said("its name says an axis and no direction: taken as the %1 one", {of});
    case DoubtKind::axis_elsewhere:
        return said("it does not follow the positions as the %1 acceleration would: its axis points elsewhere, kept "
                    "without a meaning",
                    {of});
    case DoubtKind::moves_like:
        return said("its name does not say what it is: in %1 it moves as the %2 does, kept without a meaning",
                    {part(doubt, 1), of});
    case DoubtKind::not_confirmed:
        return said(
            "its name does not say what it is: in %1 it may be the %2, which nothing else in the file confirms, "
            "kept without a meaning",
            {part(doubt, 1), of});
    case DoubtKind::one_of_two:
        return said("\"%1\" is taken as the %2, this one kept without a meaning", {part(doubt, 1), of});
    case DoubtKind::name_contradicted:
        return said("its name says %1, but its cells cannot be read as that: not used", {of});
    default:
        return "";
    }
}

std::string of_values(const ColumnDoubt& doubt) {
    switch (doubt.kind) {
    case DoubtKind::exchanged_impossible:
        return said("latitudes end at 90°: latitude and longitude are taken exchanged");
    case DoubtKind::exchanged_fits:
        return said("latitude and longitude fit the speed only when they are exchanged: taken so");
    case DoubtKind::beyond_percent:
        return said("its values go beyond 100, so that they are no percent: kept as written, without a meaning");
    case DoubtKind::laps_too_short:
        return said("it changes every %1 s, which no lap takes: not used as the number of the lap",
                    {doubt.figures.empty() ? "?" : base::shown_text(doubt.figures[0], 1)});
    case DoubtKind::letter_o:
        return said("the letter O can be east (German, Dutch) or west (French, Spanish, Italian): taken as east");
    default:
        return "";
    }
}

std::string of_unit(const ColumnDoubt& doubt) {
    switch (doubt.kind) {
    case DoubtKind::unit_open:
        return said("no unit is written; %1", {open_between(doubt)});
    case DoubtKind::form_open:
        return open_between(doubt);
    case DoubtKind::minutes_by_size:
        return said("taken as minutes of arc");
    case DoubtKind::part_of_unit:
        return said("it fits the positions where one is %1 %2: taken so", {part(doubt, 0), part(doubt, 1)});
    case DoubtKind::written_unit_taken:
        return said("%1 is written, but by its values %2 is plausible too: taken as written",
                    {part(doubt, 0), part(doubt, 1)});
    case DoubtKind::written_unit_wrong:
        return said("%1: taken as %2", {fits_otherwise(part(doubt, 0), part(doubt, 1)), part(doubt, 1)});
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
    return said("its unit is written as %1, but it fits the positions in %2", {written, fitting});
}

} // namespace lapwright::recording
