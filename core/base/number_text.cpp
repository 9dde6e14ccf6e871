// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"

#include "core/base/check.h"
#include "core/base/translation.h"

#include <array>
#include <charconv>
#include <cmath>

namespace lapwright::base {
namespace {

template <typename T>
std::optional<T> parse_whole(std::string_view text) {
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && (text.front() == '-' || text.front() == '+')) return std::nullopt;
    }
    T value{};
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (problem != std::errc{} || end != text.data() + text.size() || text.empty()) return std::nullopt;
    return value;
}

} // namespace

std::optional<double> parse_number(std::string_view text) {
    const auto value = parse_whole<double>(text);
    if (!value || !std::isfinite(*value)) return std::nullopt;
    return value;
}

std::optional<std::int64_t> parse_integer(std::string_view text) {
    return parse_whole<std::int64_t>(text);
}

std::string fixed_text(double value, int decimals) {
    check(decimals >= 0 && decimals <= 17, "decimals outside 0..17");
    if (!std::isfinite(value)) return "—";
    std::array<char, 400> buffer{};
    const auto written =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals);
    std::string text(buffer.data(), written.ptr);
    if (text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string shown_text(double value, int decimals) {
    std::string text = fixed_text(value, decimals);
    if (const auto point = text.find('.'); point != std::string::npos) text[point] = decimal_mark();
    return text;
}

bool shows_zero(std::string_view figure) {
    return figure.find_first_not_of("0.,") == std::string_view::npos;
}

std::string exact_text(double value) {
    if (!std::isfinite(value)) return "—";
    std::array<char, 64> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return {buffer.data(), written.ptr};
}

std::string integer_text(std::int64_t value) {
    std::array<char, 32> buffer{};
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return {buffer.data(), written.ptr};
}

} // namespace lapwright::base
