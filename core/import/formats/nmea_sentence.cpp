// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/nmea_sentence.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/import/text/cells.h"
#include "core/import/text/number_scan.h"

#include <algorithm>

namespace lapwright::import {
namespace {

std::optional<unsigned> hexadecimal(char c) {
    if (is_digit(c)) return static_cast<unsigned>(c - '0');
    if (c >= 'A' && c <= 'F') return static_cast<unsigned>(c - 'A') + 10U;
    if (c >= 'a' && c <= 'f') return static_cast<unsigned>(c - 'a') + 10U;
    return std::nullopt;
}

unsigned sum_of(std::string_view text) {
    unsigned sum = 0;
    for (const char c : text)
        sum ^= static_cast<unsigned char>(c);
    return sum;
}

// Digits alone, with at most one decimal point.
std::optional<double> plain_number(std::string_view text) {
    if (text.empty() || text.size() > 20 || text.find_first_not_of("0123456789.") != std::string_view::npos)
        return std::nullopt;
    return base::parse_number(text);
}

} // namespace

ReadSentence read_sentence(std::string_view line) {
    line = trimmed(line);
    const std::size_t start = line.find_first_of("$!");
    if (start == std::string_view::npos || line.size() - start > longest_sentence)
        return {{}, SentenceFault::not_a_sentence};
    std::string_view body = line.substr(start + 1);
    ReadSentence read;
    const std::size_t star = body.rfind('*');
    if (star == std::string_view::npos) {
        read.fault = SentenceFault::without_sum;
    } else {
        if (body.size() - star < 3) return {{}, SentenceFault::not_a_sentence};
        const auto high = hexadecimal(body[star + 1]);
        const auto low = hexadecimal(body[star + 2]);
        body = body.substr(0, star);
        if (!high || !low || sum_of(body) != *high * 16U + *low) return {{}, SentenceFault::wrong_sum};
    }
    const std::size_t comma = std::min(body.find(','), body.size());
    if (comma < 5) return {{}, SentenceFault::not_a_sentence};
    const auto of_names = [](char c) { return (c >= 'A' && c <= 'Z') || is_digit(c); };
    if (read.fault == SentenceFault::without_sum && !std::ranges::all_of(body.substr(0, comma), of_names))
        return {{}, SentenceFault::not_a_sentence};
    read.sentence.talker = body.substr(0, 2);
    read.sentence.kind = body.substr(2, comma - 2);
    std::size_t at = comma;
    while (at < body.size() && read.sentence.count < Sentence::max_fields) {
        const std::size_t end = std::min(body.find(',', at + 1), body.size());
        read.sentence.fields[read.sentence.count++] = trimmed(body.substr(at + 1, end - at - 1));
        at = end;
    }
    return read;
}

std::optional<double> nmea_time(std::string_view field) {
    if (field.size() < 6 || !std::ranges::all_of(field.substr(0, 6), is_digit)) return std::nullopt;
    const auto hours = plain_number(field.substr(0, 2));
    const auto minutes = plain_number(field.substr(2, 2));
    const auto seconds = plain_number(field.substr(4));
    if (!hours || !minutes || !seconds || *hours > 23.0 || *minutes > 59.0 || *seconds >= 61.0) return std::nullopt;
    return (*hours * 60.0 + *minutes) * 60.0 + *seconds;
}

std::optional<double> nmea_angle(std::string_view field, std::string_view letter, std::size_t degrees_digits) {
    const bool latitude = degrees_digits == 2;
    const bool positive = letter == (latitude ? "N" : "E");
    if (field.size() < degrees_digits + 2 || (!positive && letter != (latitude ? "S" : "W"))) return std::nullopt;
    const auto degrees = plain_number(field.substr(0, degrees_digits));
    const auto minutes = plain_number(field.substr(degrees_digits));
    if (!degrees || !minutes || *minutes >= 60.0 || *degrees + *minutes / 60.0 > (latitude ? 90.0 : 180.0))
        return std::nullopt;
    const double angle = (*degrees + *minutes / 60.0) * (base::pi / 180.0);
    return positive ? angle : -angle;
}

} // namespace lapwright::import
