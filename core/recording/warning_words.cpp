// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/warning_words.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"

#include <cmath>

namespace lapwright::recording {
namespace {

std::string number(std::size_t count) {
    return base::integer_text(static_cast<std::int64_t>(count));
}

// "1 row is", "3 rows are"
std::string counted(const Warning& warning, std::string_view one, std::string_view many) {
    return number(warning.seen.count) + " " + std::string(warning.seen.count == 1 ? one : many);
}

std::string were(const Warning& warning) {
    return warning.seen.count == 1 ? " was left out" : " were left out";
}

// " (line 7)", " (lines 7, 8, 12, 40, 41 and 3 more)"
std::string lines(const Warning& warning) {
    const LineTally& seen = warning.seen;
    if (seen.first_lines.empty()) return "";
    std::string text = seen.count == 1 ? " (line " : " (lines ";
    for (std::size_t i = 0; i < seen.first_lines.size(); ++i)
        text += (i > 0 ? ", " : "") + number(seen.first_lines[i]);
    if (seen.count > seen.first_lines.size()) text += " and " + number(seen.count - seen.first_lines.size()) + " more";
    return text + ")";
}

std::string quoted(const std::string& name) {
    return "\"" + name + "\"";
}

std::string column(const Warning& warning) {
    return "column " + quoted(warning.of) + ": ";
}

std::string figure(const Warning& warning, std::size_t i, int decimals) {
    return i < warning.figures.size() ? base::fixed_text(warning.figures[i], decimals) : "?";
}

std::string text(const Warning& warning, std::size_t i) {
    return i < warning.texts.size() ? warning.texts[i] : "";
}

std::string listed(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& one : texts)
        all += (all.empty() ? "" : ", ") + one;
    return all;
}

// "3.4 % high" of a ratio of 1.034.
std::string off_by(const Warning& warning, int decimals, std::string_view too) {
    const double off = warning.figures.empty() ? 0.0 : warning.figures[0] - 1.0;
    return base::fixed_text(100.0 * std::abs(off), decimals) + " % " + std::string(too) + (off > 0.0 ? "high" : "low");
}

std::string contradiction(const Warning& warning) {
    if (warning.texts.size() >= 2) return fits_otherwise(warning.texts[0], warning.texts[1]);
    if (warning.figures.empty()) return "it does not follow the speed between the positions";
    return "it reads " + figure(warning, 0, 2) + " times the speed between the positions";
}

std::string what_to_do(const Warning& warning) {
    return text(warning, 0) + (text(warning, 1).empty() ? "" : ": " + text(warning, 1));
}

std::string file_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::recipe_used:
        return "columns are read as " + w.of + " says";
    case WarningKind::recipe_unfit:
        return w.of + " was made for files of another shape: only columns of the same name follow it";
    case WarningKind::encoding_damaged:
        return number(w.seen.count) + " characters of UTF-16 are cut or damaged";
    case WarningKind::tail_empty:
        return number(w.seen.count) + " bytes of zeros at the end were left out: the logger may have lost power";
    case WarningKind::put_side_by_side:
        return "the file lists one reading a row: those of one time were put side by side, and lines are counted so";
    case WarningKind::xml_broken:
        return "the XML is broken here (" + text(w, 0) + "): what comes behind is lost";
    case WarningKind::checksum_wrong:
        return counted(w, "sentence has", "sentences have") + " a wrong checksum and" + were(w) + lines(w);
    case WarningKind::not_a_sentence:
        return counted(w, "line is no sentence", "lines are no sentences") + " and" + were(w) + lines(w);
    case WarningKind::without_fix:
        return counted(w, "sentence was", "sentences were") + " written without a fix";
    default:
        return "";
    }
}

std::string cell_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::rows_wrong_width:
        return counted(w, "row has", "rows have") + " too few or too many cells and" + were(w) + lines(w);
    case WarningKind::rows_without_values:
        return counted(w, "line holds", "lines hold") + " no values and" + were(w) + lines(w);
    case WarningKind::header_repeated:
        return "the header stands again " + counted(w, "time", "times") + lines(w);
    case WarningKind::comments_skipped:
        return counted(w, "line is a comment", "lines are comments") + " and left out" + lines(w);
    case WarningKind::cells_not_readable:
        return column(w) + counted(w, "cell is", "cells are") + " not readable and" + were(w) + lines(w);
    case WarningKind::no_value_code:
        return column(w) + counted(w, "cell of ", "cells of ") +
               (w.figures.empty() ? "?" : base::exact_text(w.figures[0])) + " taken as \"no value\" and left out";
    default:
        return "";
    }
}

std::string guessed_units(const Warning& w) {
    std::string told;
    for (std::size_t i = 0; i + 1 < w.texts.size(); i += 2)
        told += (told.empty() ? "" : ", ") + quoted(w.texts[i]) + " in " +
                (w.texts[i + 1].empty() ? "parts of one" : w.texts[i + 1]);
    return "units that are not written were told from the values: " + told;
}

std::string column_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::no_header:
        return "no line names the columns: their meanings are guessed by their values";
    case WarningKind::decimal_mark_unsure:
        return "every comma stands before three digits: taken as decimal commas";
    case WarningKind::column_unsure:
    case WarningKind::column_left_out:
        return column(w) + words(w.doubt);
    case WarningKind::unit_unknown:
        return column(w) + "the unit " + quoted(text(w, 0)) + " is not known, " +
               (text(w, 1).empty() ? "values are kept as written" : "taken as " + text(w, 1));
    case WarningKind::units_guessed:
        return guessed_units(w);
    case WarningKind::speed_contradicts:
        return column(w) + contradiction(w) +
               (w.texts.size() >= 2 ? ": taken as " + w.texts[1] : ": not used as a speed");
    case WarningKind::speed_said:
        return column(w) + contradiction(w) + ", but is read as a person has said";
    case WarningKind::lap_numbers_backwards:
        return "the number of the lap goes down " + counted(w, "time", "times");
    default:
        return "";
    }
}

std::string time_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::zone_unknown:
        return "times are written without a time zone: taken as UTC";
    case WarningKind::date_unsure:
        return "dates can be read as day/month or month/day: taken as day/month";
    case WarningKind::date_unknown:
        return "no RMC or ZDA sentence gives the date";
    case WarningKind::rows_without_time:
        return counted(w, "row has", "rows have") + " no readable time and" + were(w);
    case WarningKind::stamps_duplicated:
        return counted(w, "row repeats", "rows repeat") + " the time of the row before and" + were(w);
    case WarningKind::stamps_backwards:
        return counted(w, "row is", "rows are") + " out of order in time and" + were(w);
    case WarningKind::stamps_coarse:
        return "the clock is coarser than the rows: rows of one stamp were spread evenly";
    case WarningKind::rows_turned_over:
        return "the newest row stands first: the table is read from its end";
    case WarningKind::midnight_passed:
        return "the clock passes midnight here: the time goes on";
    case WarningKind::clock_set_by_an_hour:
        return "the clock is set by an hour here, as summer time begins or ends: the time goes on";
    case WarningKind::clock_jumped:
        return "the clock jumps " + counted(w, "time", "times") +
               ": the recording is split there, nothing is joined across";
    case WarningKind::time_per_lap:
        return "the time starts again with each lap: the laps are put end to end, each " + figure(w, 0, 3) +
               " s after the last row of the one before";
    case WarningKind::recording_paused:
        return "the recording pauses " + counted(w, "time", "times") +
               " for more than a minute: nothing is joined across";
    default:
        return "";
    }
}

std::string position_words(const Warning& w, const std::string& why) {
    return counted(w, "position", "positions") + " " + why + ": left out" + lines(w);
}

std::string value_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::positions_off_the_globe:
        return position_words(w, "beyond 90° of latitude or 360° of longitude, or not readable");
    case WarningKind::positions_zero:
        return position_words(w, "of exactly 0, 0, as receivers write without a fix");
    case WarningKind::positions_half:
        return position_words(w, "with only one of latitude and longitude");
    case WarningKind::positions_repeated:
        return "the positions stand in rows of " + figure(w, 0, 0) + " Hz but change at about " + figure(w, 1, 0) +
               " Hz: repeated values are no measurements";
    case WarningKind::speeds_without_fix:
        return counted(w, "speed", "speeds") +
               " of exactly 0 between rows of a moving car, as receivers write without a fix: left out" + lines(w);
    case WarningKind::speed_derived:
        return "the file holds no speed: it was derived from the positions, and is no finer than they are";
    case WarningKind::gaps:
        return counted(w, "gap", "gaps") + " in " + quoted(w.of) + " and what was sampled with it, the longest of " +
               figure(w, 0, 2) + " s at " + figure(w, 1, 1) + " s";
    case WarningKind::wheel_speed_scale:
        return "wheel speed reads " + off_by(w, 1, "") + " against the speed over the ground";
    case WarningKind::channel_damaged:
        return "channel " + quoted(w.of) + " is damaged in the book and was left out: import the file again";
    default:
        return "";
    }
}

std::string motion_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::fixes_frozen:
        return number(w.seen.count) + " positions only repeat another while the car drove on: they were left out";
    case WarningKind::speed_contradicts_positions:
        return (w.figures.empty() ? "the recorded speed does not follow the positions"
                                  : "the recorded speed reads " + off_by(w, 0, "too ") + " against the positions") +
               ": it was not used";
    case WarningKind::speed_scale_off:
        return "the recorded speed reads " + off_by(w, 0, "too ") +
               " against the positions, as a wheel's does: its scale was estimated";
    default:
        return "";
    }
}

// Nobody has told the length of the lap.
std::string as_wheels_read(const Warning& w) {
    constexpr double half_width = 200.0; // percent in two standard deviations
    if (w.figures.empty() || w.figures[0] == 0.0) return "";
    return "; speeds and distances are as its wheels read them, all alike off by up to " +
           base::fixed_text(half_width * w.figures[0], 0) + " %";
}

std::string lap_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::no_positions:
        if (!w.of.empty())
            return w.of + " has no positions: aligned on cornering, so its error bars are wider" + as_wheels_read(w);
        return "no positions: distance is integrated speed, brought to the lap's length and aligned on cornering, so "
               "error bars are wider and the map is a sketch" +
               as_wheels_read(w);
    case WarningKind::no_motion:
    case WarningKind::no_laps:
    case WarningKind::cannot_be_computed:
        return what_to_do(w);
    case WarningKind::laps_contradict_file:
        return text(w, 0);
    case WarningKind::fastest_not_sure:
        return w.of + ": which of its laps was the fastest cannot be told: another one is slower by " +
               figure(w, 0, 2) + " s " +
               base::gain_margin_text(w.figures.size() > 1 ? std::optional(w.figures[1]) : std::nullopt);
    case WarningKind::lap_not_clean:
        return w.of + ": lap " + figure(w, 0, 0) + " is not clean" + (text(w, 0).empty() ? "" : ": " + text(w, 0));
    case WarningKind::few_clean_laps:
        return w.of + ": " + number(w.seen.count) + " clean laps say little about what repeats";
    case WarningKind::no_uncertainty:
        return w.of + ": the uncertainty of this recording is not known";
    case WarningKind::noise_not_settled:
        return "the noise of the sensors did not settle, the greater one is taken: " + listed(w.texts);
    case WarningKind::laps_not_placed:
        return (w.of.empty() ? "" : w.of + ": ") + "where on the track the corners of " + number(w.seen.count) +
               (w.seen.count == 1 ? " lap" : " laps") + " lie did not settle: placed by distance alone, less surely";
    case WarningKind::map_not_settled:
        return w.of + ": how far its map lies off the other did not settle: its laps are placed less surely";
    default:
        return "";
    }
}

} // namespace

std::string words(const Warning& warning) {
    if (!warning.told.empty()) return warning.told;
    for (auto* const of_kind : {file_words, cell_words, column_words, time_words, value_words, motion_words, lap_words})
        if (std::string told = of_kind(warning); !told.empty()) return told;
    return "";
}

std::string sentence(const Warning& warning) {
    std::string told = words(warning);
    if (told.empty()) return told;
    if (told.front() >= 'a' && told.front() <= 'z') told.front() = static_cast<char>(told.front() - 'a' + 'A');
    const bool names_lines = told.find("(line") != std::string::npos;
    if (warning.line() && !names_lines) told += " (line " + number(*warning.line()) + ")";
    return told + ".";
}

std::string words(Remark remark) {
    switch (remark) {
    case Remark::recipe:
        return "Read by";
    case Remark::guessed:
        return "Guessed";
    case Remark::left_out:
        return "Left out";
    case Remark::mended:
        return "Mended";
    case Remark::seen:
        break;
    }
    return "Seen";
}

} // namespace lapwright::recording
