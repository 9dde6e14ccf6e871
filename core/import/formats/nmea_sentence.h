// SPDX-License-Identifier: GPL-3.0-or-later
// One NMEA 0183 sentence: framing, checksum, fields.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace lapwright::import {

// The standard allows 82 characters; receivers with many decimals go beyond, damage goes far beyond.
inline constexpr std::size_t longest_sentence = 256;

struct Sentence {
    static constexpr std::size_t max_fields = 32;

    std::string_view talker; // "GP"
    std::string_view kind;   // "GGA"
    std::array<std::string_view, max_fields> fields{};
    std::size_t count = 0;

    // Empty where there are fewer fields.
    [[nodiscard]] std::string_view field(std::size_t i) const { return i < count ? fields[i] : std::string_view(); }
};

// The standard lets receivers leave the checksum out; where others bear one, such a sentence is cut.
enum class SentenceFault { none, not_a_sentence, wrong_sum, without_sum };

struct ReadSentence {
    Sentence sentence;
    SentenceFault fault = SentenceFault::none;
};

// A line, perhaps with other text (a computer's time) before the "$".
[[nodiscard]] ReadSentence read_sentence(std::string_view line);

// Seconds since midnight from "hhmmss.sss".
[[nodiscard]] std::optional<double> nmea_time(std::string_view field);
// Radians from "ddmm.mmmm" and "N", "S", "E" or "W"; `degrees_digits` is 2 for latitude, 3 for longitude.
[[nodiscard]] std::optional<double> nmea_angle(std::string_view field, std::string_view letter,
                                               std::size_t degrees_digits);

} // namespace lapwright::import
