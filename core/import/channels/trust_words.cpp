// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/trust_words.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/import/columns/recipe_edit.h"
#include "core/import/text/wording.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace lapwright::import {
namespace {

using recording::Channel;

constexpr std::array<std::string_view, 8> guessed_codes{"column_unsure",       "unit_unknown", "units_guessed",
                                                        "decimal_mark_unsure", "no_header",    "zone_unknown",
                                                        "date_unsure",         "date_unknown"};
constexpr std::array<std::string_view, 18> left_out_codes{
    "speed_contradicts",  "comments_skipped",        "no_value_code",  "rows_wrong_width",  "rows_without_values",
    "cells_not_readable", "header_repeated",         "tail_empty",     "rows_without_time", "stamps_duplicated",
    "stamps_backwards",   "positions_off_the_globe", "xml_broken",     "checksum_wrong",    "not_a_sentence",
    "without_fix",        "encoding_damaged",        "column_left_out"};
constexpr std::array<std::string_view, 6> mended_codes{"midnight_passed", "clock_jumped",     "time_per_lap",
                                                       "stamps_coarse",   "recording_paused", "speed_derived"};

template <std::size_t N>
bool holds(const std::array<std::string_view, N>& codes, std::string_view code) {
    return std::ranges::find(codes, code) != codes.end();
}

std::string gap_words(const ChannelTrust& trust) {
    if (trust.gaps == 0) return "none";
    return base::integer_text(static_cast<std::int64_t>(trust.gaps)) + ", longest " +
           base::fixed_text(trust.longest_gap_s, 2) + " s at " + base::fixed_text(trust.longest_gap_at_s, 1) + " s";
}

std::string written_words(const Channel& channel) {
    if (channel.source_unit == base::Unit::none) return channel.source_unit_text;
    return unit_words(channel.source_unit);
}

} // namespace

std::vector<ChannelWords> channel_words(const recording::Recording& recording, const Trust& trust,
                                        base::UnitSystem system) {
    std::vector<ChannelWords> all;
    const bool known = trust.channels.size() == recording.channels.size();
    for (std::size_t i = 0; i < recording.channels.size(); ++i) {
        const Channel& channel = recording.channels[i];
        ChannelWords words;
        words.name = channel.name;
        words.meaning = import::words(ColumnUse{Role::channel, channel.meaning});
        words.written = written_words(channel);
        if (known) {
            const ChannelTrust& of = trust.channels[i];
            const RecipeColumn column{channel.name, Role::channel, channel.meaning, channel.source_unit};
            words.rate = base::rate_text(of.rate_hz);
            words.range = channel.size() > 0 ? range_words(std::array{of.least, of.most}, column, system) : "";
            words.gaps = gap_words(of);
        }
        all.push_back(std::move(words));
    }
    return all;
}

Remark remark_of(const recording::Warning& warning) {
    if (warning.code == "recipe_used") return Remark::recipe;
    if (holds(guessed_codes, warning.code)) return Remark::guessed;
    if (holds(left_out_codes, warning.code)) return Remark::left_out;
    if (holds(mended_codes, warning.code)) return Remark::mended;
    return Remark::seen;
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

std::string sentence(const recording::Warning& warning) {
    std::string text = warning.message;
    if (text.empty()) return text;
    if (text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
    const bool names_lines = text.find("(line") != std::string::npos;
    if (warning.line && !names_lines)
        text += " (line " + base::integer_text(static_cast<std::int64_t>(*warning.line)) + ")";
    return text + ".";
}

std::string wheel_words(const Trust& trust) {
    if (!trust.wheel_speed_scale) return "";
    const double percent = 100.0 * (*trust.wheel_speed_scale - 1.0);
    const std::string figure = base::fixed_text(std::abs(percent), 1);
    if (figure == "0.0") return "Wheel speed and satellite speed agree within 0.05 %.";
    return "Wheel speed reads " + figure + " % " + (percent > 0.0 ? "high" : "low") + " against satellite speed.";
}

} // namespace lapwright::import
