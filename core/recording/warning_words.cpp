// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/warning_words.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"

#include <cmath>

namespace lapwright::recording {
namespace {

using base::said;
using base::word;

std::string number(std::size_t count) {
    return base::integer_text(static_cast<std::int64_t>(count));
}

// " (line 7)", " (lines 7, 8, 12, 40, 41 and 3 more)"
std::string lines(const Warning& warning) {
    const LineTally& seen = warning.seen;
    if (seen.first_lines.empty()) return "";
    std::string all;
    for (std::size_t i = 0; i < seen.first_lines.size(); ++i)
        all += (i > 0 ? ", " : "") + number(seen.first_lines[i]);
    if (seen.count == 1) return " " + said("(line %1)", {all});
    if (seen.count == seen.first_lines.size()) return " " + said("(lines %1)", {all});
    return " " + said("(lines %1 and %2 more)", {all, number(seen.count - seen.first_lines.size())});
}

// %1: how many; %2: their lines, with a space before them.
std::string counted(const Warning& warning, const char* one, const char* many) {
    return said(warning.seen.count == 1 ? one : many, {number(warning.seen.count), lines(warning)});
}

std::string quoted(const std::string& name) {
    return "\"" + name + "\"";
}

std::string column(const Warning& warning, const std::string& words) {
    return said("column %1: %2", {quoted(warning.of), words});
}

std::string figure(const Warning& warning, std::size_t i, int decimals) {
    return i < warning.figures.size() ? base::shown_text(warning.figures[i], decimals) : "?";
}

std::string text(const Warning& warning, std::size_t i) {
    return i < warning.texts.size() ? warning.texts[i] : "";
}

std::string listed(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& one : texts)
        all += (all.empty() ? "" : ", ") + said(one.c_str());
    return all;
}

// "3.4 % high" of a ratio of 1.034.
std::string off_by(const Warning& warning, int decimals, const char* high, const char* low) {
    const double off = warning.figures.empty() ? 0.0 : warning.figures[0] - 1.0;
    return said(off > 0.0 ? high : low, {base::shown_text(100.0 * std::abs(off), decimals)});
}

std::string contradiction(const Warning& warning) {
    if (warning.texts.size() >= 2) return fits_otherwise(warning.texts[0], warning.texts[1]);
    if (warning.figures.empty()) return said("it does not follow the speed between the positions");
    return said("it reads %1 times the speed between the positions", {figure(warning, 0, 2)});
}

std::string what_to_do(const Warning& warning) {
    return text(warning, 0) + (text(warning, 1).empty() ? "" : ": " + text(warning, 1));
}

std::string file_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::recipe_used:
        return said("columns are read as %1 says", {w.of});
    case WarningKind::recipe_unfit:
        return said("%1 was made for files of another shape: only columns of the same name follow it", {w.of});
    case WarningKind::encoding_damaged:
        return said("%1 characters of UTF-16 are cut or damaged", {number(w.seen.count)});
    case WarningKind::tail_empty:
        return said("%1 bytes of zeros at the end were left out: the logger may have lost power",
                    {number(w.seen.count)});
    case WarningKind::put_side_by_side:
        return said(
            "the file lists one reading a row: those of one time were put side by side, and lines are counted so");
    case WarningKind::xml_broken:
        return said("the XML is broken here (%1): what comes behind is lost", {text(w, 0)});
    case WarningKind::checksum_wrong:
        return counted(w, word("%1 sentence has a wrong checksum and was left out%2"),
                       word("%1 sentences have a wrong checksum and were left out%2"));
    case WarningKind::checksum_absent:
        return said("its sentences bear no checksum: damage in them cannot be found");
    case WarningKind::not_a_sentence:
        return counted(w, word("%1 line is no sentence and was left out%2"),
                       word("%1 lines are no sentences and were left out%2"));
    case WarningKind::without_fix:
        return counted(w, word("%1 sentence was written without a fix"),
                       word("%1 sentences were written without a fix"));
    default:
        return "";
    }
}

std::string cell_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::rows_wrong_width:
        return counted(w, word("%1 row has too few or too many cells and was left out%2"),
                       word("%1 rows have too few or too many cells and were left out%2"));
    case WarningKind::rows_without_values:
        return counted(w, word("%1 line holds no values and was left out%2"),
                       word("%1 lines hold no values and were left out%2"));
    case WarningKind::header_repeated:
        return counted(w, word("the header stands again %1 time%2"), word("the header stands again %1 times%2"));
    case WarningKind::row_is_no_reading:
        return counted(w, word("%1 line between the names and the readings is none of either and was left out%2"),
                       word("%1 lines between the names and the readings are none of either and were left out%2"));
    case WarningKind::comments_skipped:
        return counted(w, word("%1 line is a comment and left out%2"), word("%1 lines are comments and left out%2"));
    case WarningKind::cells_not_readable:
        return column(w, counted(w, word("%1 cell is not readable and was left out%2"),
                                 word("%1 cells are not readable and were left out%2")));
    case WarningKind::no_value_code:
        return column(w, said(w.seen.count == 1 ? word("%1 cell of %2 taken as \"no value\" and left out")
                                                : word("%1 cells of %2 taken as \"no value\" and left out"),
                              {number(w.seen.count), w.figures.empty() ? "?" : base::exact_text(w.figures[0])}));
    default:
        return "";
    }
}

std::string guessed_units(const Warning& w) {
    std::string told;
    for (std::size_t i = 0; i + 1 < w.texts.size(); i += 2)
        told += (told.empty() ? "" : ", ") +
                said("%1 in %2", {quoted(w.texts[i]), w.texts[i + 1].empty() ? said("parts of one") : w.texts[i + 1]});
    return said("units that are not written were told from the values: %1", {told});
}

std::string column_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::no_header:
        return said("no line names the columns: their meanings are guessed by their values");
    case WarningKind::decimal_mark_unsure:
        return said("every comma stands before three digits: taken as decimal commas");
    case WarningKind::column_unsure:
    case WarningKind::column_left_out:
        return column(w, words(w.doubt));
    case WarningKind::unit_unknown:
        return column(w, text(w, 1).empty()
                             ? said("the unit %1 is not known, values are kept as written", {quoted(text(w, 0))})
                             : said("the unit %1 is not known, taken as %2", {quoted(text(w, 0)), text(w, 1)}));
    case WarningKind::units_guessed:
        return guessed_units(w);
    case WarningKind::speed_contradicts:
        return column(w, w.texts.size() >= 2 ? said("%1: taken as %2", {contradiction(w), w.texts[1]})
                                             : said("%1: not used as a speed", {contradiction(w)}));
    case WarningKind::speed_said:
        return column(w, said("%1, but is read as a person has said", {contradiction(w)}));
    case WarningKind::lap_numbers_backwards:
        return counted(w, word("the number of the lap goes down %1 time"),
                       word("the number of the lap goes down %1 times"));
    default:
        return "";
    }
}

std::string time_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::zone_unknown:
        return said("times are written without a time zone: taken as UTC");
    case WarningKind::date_unsure:
        return said("dates can be read as day/month or month/day: taken as day/month");
    case WarningKind::date_unknown:
        return said("no RMC or ZDA sentence gives the date");
    case WarningKind::rows_without_time:
        return counted(w, word("%1 row has no readable time and was left out"),
                       word("%1 rows have no readable time and were left out"));
    case WarningKind::stamps_duplicated:
        return counted(w, word("%1 row repeats the time of the row before and was left out"),
                       word("%1 rows repeat the time of the row before and were left out"));
    case WarningKind::stamps_backwards:
        return counted(w, word("%1 row is out of order in time and was left out"),
                       word("%1 rows are out of order in time and were left out"));
    case WarningKind::stamps_coarse:
        return said("the clock is coarser than the rows: rows of one stamp were spread evenly");
    case WarningKind::rows_turned_over:
        return said("the newest row stands first: the table is read from its end");
    case WarningKind::midnight_passed:
        return said("the clock passes midnight here: the time goes on");
    case WarningKind::clock_set_by_an_hour:
        return said("the clock is set by an hour here, as summer time begins or ends: the time goes on");
    case WarningKind::clock_jumped:
        return counted(w, word("the clock jumps %1 time: the recording is split there, nothing is joined across"),
                       word("the clock jumps %1 times: the recording is split there, nothing is joined across"));
    case WarningKind::time_per_lap:
        return said("the time starts again with each lap: the laps are put end to end, each %1 s after the last row of "
                    "the one before",
                    {figure(w, 0, 3)});
    case WarningKind::recording_paused:
        return counted(w, word("the recording pauses %1 time for more than a minute: nothing is joined across"),
                       word("the recording pauses %1 times for more than a minute: nothing is joined across"));
    default:
        return "";
    }
}

std::string value_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::positions_off_the_globe:
        return counted(w, word("%1 position beyond 90° of latitude or 360° of longitude, or not readable: left out%2"),
                       word("%1 positions beyond 90° of latitude or 360° of longitude, or not readable: left out%2"));
    case WarningKind::positions_zero:
        return counted(w, word("%1 position of exactly 0, 0, as receivers write without a fix: left out%2"),
                       word("%1 positions of exactly 0, 0, as receivers write without a fix: left out%2"));
    case WarningKind::positions_half:
        return counted(w, word("%1 position with only one of latitude and longitude: left out%2"),
                       word("%1 positions with only one of latitude and longitude: left out%2"));
    case WarningKind::positions_repeated:
        return said(
            "the positions stand in rows of %1 Hz but change at about %2 Hz: repeated values are no measurements",
            {figure(w, 0, 0), figure(w, 1, 0)});
    case WarningKind::speeds_without_fix:
        return counted(
            w, word("%1 speed of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2"),
            word("%1 speeds of exactly 0 between rows of a moving car, as receivers write without a fix: left out%2"));
    case WarningKind::speed_derived:
        return said("the file holds no speed: it was derived from the positions, and is no finer than they are");
    case WarningKind::gaps:
        return said(w.seen.count == 1 ? word("%1 gap in %2 and what was sampled with it, the longest of %3 s at %4 s")
                                      : word("%1 gaps in %2 and what was sampled with it, the longest of %3 s at %4 s"),
                    {number(w.seen.count), quoted(w.of), figure(w, 0, 2), figure(w, 1, 1)});
    case WarningKind::wheel_speed_scale:
        return off_by(w, 1, word("wheel speed reads %1 % high against the speed over the ground"),
                      word("wheel speed reads %1 % low against the speed over the ground"));
    case WarningKind::axis_turned:
        return column(w, said("by the positions it counts the other way round: turned, so that forward and left are "
                              "positive"));
    case WarningKind::channel_damaged:
        return said("channel %1 is damaged in the book and was left out: import the file again", {quoted(w.of)});
    default:
        return "";
    }
}

std::string motion_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::fixes_frozen:
        return said("%1 positions only repeat another while the car drove on: they were left out",
                    {number(w.seen.count)});
    case WarningKind::speed_contradicts_positions:
        if (w.figures.empty()) return said("the recorded speed does not follow the positions: it was not used");
        return off_by(w, 0, word("the recorded speed reads %1 % too high against the positions: it was not used"),
                      word("the recorded speed reads %1 % too low against the positions: it was not used"));
    case WarningKind::speed_scale_off:
        return off_by(
            w, 0,
            word("the recorded speed reads %1 % too high against the positions, as a wheel's does: its scale "
                 "was estimated"),
            word("the recorded speed reads %1 % too low against the positions, as a wheel's does: its scale was "
                 "estimated"));
    default:
        return "";
    }
}

// Nobody has told the length of the lap.
std::string as_wheels_read(const Warning& w) {
    constexpr double half_width = 200.0; // percent in two standard deviations
    if (w.figures.empty() || w.figures[0] == 0.0) return "";
    return said("; speeds and distances are as its wheels read them, all alike off by up to %1 %",
                {base::shown_text(half_width * w.figures[0], 0)});
}

std::string lap_words(const Warning& w) {
    switch (w.kind) {
    case WarningKind::no_positions:
        if (!w.of.empty())
            return said("%1 has no positions: aligned on cornering, so its error bars are wider%2",
                        {w.of, as_wheels_read(w)});
        return said(
            "no positions: distance is integrated speed, brought to the lap's length and aligned on cornering, so "
            "error bars are wider and the map is a sketch%1",
            {as_wheels_read(w)});
    case WarningKind::no_motion:
    case WarningKind::no_laps:
    case WarningKind::cannot_be_computed:
        return what_to_do(w);
    case WarningKind::laps_contradict_file:
        return text(w, 0);
    case WarningKind::fastest_not_sure:
        return said("%1: which of its laps was the fastest cannot be told: another one is slower by %2 s %3",
                    {w.of, figure(w, 0, 2),
                     base::gain_margin_text(w.figures.size() > 1 ? std::optional(w.figures[1]) : std::nullopt)});
    case WarningKind::lap_not_clean:
        if (text(w, 0).empty()) return said("%1: lap %2 is not clean", {w.of, figure(w, 0, 0)});
        return said("%1: lap %2 is not clean: %3", {w.of, figure(w, 0, 0), text(w, 0)});
    case WarningKind::few_clean_laps:
        return said("%1: %2 clean laps say little about what repeats", {w.of, number(w.seen.count)});
    case WarningKind::no_uncertainty:
        return said("%1: the uncertainty of this recording is not known", {w.of});
    case WarningKind::noise_not_settled:
        return said("the noise of the sensors did not settle, the greater one is taken: %1", {listed(w.texts)});
    case WarningKind::laps_not_placed:
        return (w.of.empty() ? "" : w.of + ": ") +
               counted(
                   w,
                   word("where on the track the corners of %1 lap lie did not settle: placed by distance alone, less "
                        "surely"),
                   word("where on the track the corners of %1 laps lie did not settle: placed by distance alone, less "
                        "surely"));
    case WarningKind::map_not_settled:
        return said("%1: how far its map lies off the other did not settle: its laps are placed less surely", {w.of});
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
    const bool names_lines = told.find("(line") != std::string::npos || told.find(lines(warning)) != std::string::npos;
    if (warning.line() && !names_lines) told += " " + said("(line %1)", {number(*warning.line())});
    return said("%1.", {told});
}

std::string words(Remark remark) {
    switch (remark) {
    case Remark::recipe:
        return said("Read by");
    case Remark::guessed:
        return said("Guessed");
    case Remark::left_out:
        return said("Left out");
    case Remark::mended:
        return said("Mended");
    case Remark::seen:
        break;
    }
    return said("Seen");
}

} // namespace lapwright::recording
