// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/packed_values.h"

#include "core/book/deflate.h"
#include "core/book/quantisation.h"
#include "core/book/varint.h"

#include <algorithm>
#include <bit>
#include <limits>

namespace lapwright::book {
namespace {

constexpr char decimal_form = 'd';
constexpr char binary_form = 'b';
constexpr char planes_form = 'p';
constexpr char smooth_form = 's';
constexpr std::size_t highest_order = 2;
// A varint has ten bytes at most, and a number two of them; a deflated byte becomes some thousand at most (RFC 1951).
constexpr std::size_t max_bytes_a_number = 20;
constexpr std::size_t max_bytes_of_one = 1100;
constexpr std::size_t form_bytes = 64;

using Whole = std::vector<std::uint64_t>;

template <typename Number>
void put_plain(std::string& bytes, Number number) {
    for (std::size_t i = 0; i < sizeof number; ++i)
        bytes.push_back(static_cast<char>(static_cast<unsigned char>(number >> (8 * i))));
}

template <typename Number>
std::optional<Number> take_plain(std::string_view& bytes) {
    if (bytes.size() < sizeof(Number)) return std::nullopt;
    Number number = 0;
    for (std::size_t i = 0; i < sizeof number; ++i)
        number = static_cast<Number>(
            number | static_cast<Number>(static_cast<Number>(static_cast<unsigned char>(bytes[i])) << (8 * i)));
    bytes.remove_prefix(sizeof number);
    return number;
}

void difference(Whole& numbers) {
    for (std::size_t i = numbers.size(); i-- > 1;)
        numbers[i] -= numbers[i - 1];
}

void sum(Whole& numbers) {
    for (std::size_t i = 1; i < numbers.size(); ++i)
        numbers[i] += numbers[i - 1];
}

std::size_t bytes_of(const Whole& numbers) {
    std::size_t bytes = 0;
    for (const std::uint64_t number : numbers)
        bytes += varint_bytes(folded(number));
    return bytes;
}

void put_whole(std::string& bytes, const Whole& numbers) {
    for (const std::uint64_t number : numbers)
        put_varint(bytes, folded(number));
}

std::optional<Whole> take_whole(std::string_view& bytes, std::size_t count) {
    Whole numbers(count);
    for (std::uint64_t& number : numbers) {
        const auto taken = take_varint(bytes);
        if (!taken) return std::nullopt;
        number = unfolded(*taken);
    }
    return numbers;
}

// The order of differences that needs the fewest bytes, and these.
void put_differences(std::string& bytes, Whole numbers) {
    Whole best = numbers;
    std::size_t least = bytes_of(numbers);
    char order = 0;
    for (std::size_t i = 1; i <= highest_order; ++i) {
        difference(numbers);
        if (const std::size_t size = bytes_of(numbers); size < least) {
            least = size;
            best = numbers;
            order = static_cast<char>(i);
        }
    }
    bytes.push_back(order);
    put_whole(bytes, best);
}

std::optional<Whole> take_differences(std::string_view& bytes, std::size_t count) {
    if (bytes.empty() || static_cast<unsigned char>(bytes.front()) > highest_order) return std::nullopt;
    const auto order = static_cast<std::size_t>(bytes.front());
    bytes.remove_prefix(1);
    auto numbers = take_whole(bytes, count);
    for (std::size_t i = 0; numbers && i < order; ++i)
        sum(*numbers);
    return numbers;
}

// The order of differences with the fewest bits.  Next to each
// other, values of a smooth course have patterns that differ little.
std::size_t smoothest(Whole numbers) {
    std::size_t best = 0;
    std::uint64_t least = ~std::uint64_t{0};
    for (std::size_t order = 0; order <= highest_order; ++order) {
        std::uint64_t bits = 0;
        for (const std::uint64_t number : numbers)
            bits += static_cast<std::uint64_t>(std::bit_width(folded(number)));
        if (bits < least) {
            least = bits;
            best = order;
        }
        difference(numbers);
    }
    return best;
}

std::string in_planes(std::span<const double> values) {
    Whole numbers(values.size());
    std::ranges::transform(values, numbers.begin(), [](double value) { return std::bit_cast<std::uint64_t>(value); });
    const std::size_t order = smoothest(numbers);
    std::string bytes(1, order == 0 ? planes_form : smooth_form);
    if (order > 0) {
        bytes.push_back(static_cast<char>(order));
        for (std::size_t i = 0; i < order; ++i)
            difference(numbers);
        std::ranges::transform(numbers, numbers.begin(), folded);
    }
    for (unsigned plane = 0; plane < 8; ++plane)
        for (const std::uint64_t number : numbers)
            bytes.push_back(static_cast<char>(static_cast<unsigned char>(number >> (8 * plane))));
    return bytes;
}

std::optional<std::vector<double>> out_of_planes(std::string_view bytes, std::size_t count, std::size_t order) {
    if (bytes.size() != 8 * count || order > highest_order) return std::nullopt;
    Whole numbers(count, 0);
    for (unsigned plane = 0; plane < 8; ++plane)
        for (std::size_t i = 0; i < count; ++i)
            numbers[i] |= static_cast<std::uint64_t>(static_cast<unsigned char>(bytes[plane * count + i]))
                          << (8 * plane);
    if (order > 0) std::ranges::transform(numbers, numbers.begin(), unfolded);
    for (std::size_t i = 0; i < order; ++i)
        sum(numbers);
    std::vector<double> values(count);
    std::ranges::transform(numbers, values.begin(), [](std::uint64_t bits) { return std::bit_cast<double>(bits); });
    return values;
}

void put_form(std::string& bytes, const Quantisation& quantisation) {
    bytes.push_back(quantisation.bits ? binary_form : decimal_form);
    if (quantisation.bits) return put_plain(bytes, static_cast<std::uint16_t>(*quantisation.bits));
    put_plain(bytes, std::bit_cast<std::uint64_t>(quantisation.factor));
    put_plain(bytes, std::bit_cast<std::uint64_t>(quantisation.offset));
    bytes.push_back(static_cast<char>(quantisation.decimals));
}

std::optional<Quantisation> take_form(char form, std::string_view& bytes) {
    Quantisation quantisation;
    if (form == binary_form) {
        const auto bits = take_plain<std::uint16_t>(bytes);
        if (!bits || *bits > max_bits) return std::nullopt;
        quantisation.bits = *bits;
        return quantisation;
    }
    const auto factor = take_plain<std::uint64_t>(bytes);
    const auto offset = take_plain<std::uint64_t>(bytes);
    const auto decimals = take_plain<std::uint8_t>(bytes);
    if (form != decimal_form || !factor || !offset || !decimals || *decimals > max_decimals) return std::nullopt;
    quantisation.factor = std::bit_cast<double>(*factor);
    quantisation.offset = std::bit_cast<double>(*offset);
    quantisation.decimals = *decimals;
    return quantisation;
}

// The values as whole numbers of steps, or nothing when one of them has no place there.
std::optional<std::string> quantised(std::span<const double> values, const Quantisation& quantisation) {
    Whole numbers(values.size());
    Whole off(values.size());
    bool exact = true;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto n = quantisation.nearest(values[i]);
        if (!n) return std::nullopt;
        numbers[i] = static_cast<std::uint64_t>(*n);
        off[i] = std::bit_cast<std::uint64_t>(values[i]) - std::bit_cast<std::uint64_t>(quantisation.value(*n));
        exact = exact && off[i] == 0;
    }
    std::string bytes;
    put_form(bytes, quantisation);
    put_differences(bytes, std::move(numbers));
    bytes.push_back(exact ? '\0' : '\1');
    if (!exact) put_whole(bytes, off);
    return bytes;
}

std::optional<std::vector<double>> restored(char form, std::string_view bytes, std::size_t count) {
    const auto quantisation = take_form(form, bytes);
    const auto numbers = quantisation ? take_differences(bytes, count) : std::nullopt;
    if (!numbers || bytes.empty()) return std::nullopt;
    const bool exact = bytes.front() == '\0';
    bytes.remove_prefix(1);
    const auto off = exact ? std::optional(Whole()) : take_whole(bytes, count);
    if (!off || !bytes.empty()) return std::nullopt;
    std::vector<double> values(count);
    for (std::size_t i = 0; i < count; ++i) {
        values[i] = quantisation->value(static_cast<std::int64_t>((*numbers)[i]));
        if (!exact) values[i] = std::bit_cast<double>(std::bit_cast<std::uint64_t>(values[i]) + (*off)[i]);
    }
    return values;
}

std::optional<std::string> inflated_numbers(std::string_view bytes, std::size_t count) {
    if (count / max_bytes_of_one > bytes.size()) return std::nullopt;
    return inflated(bytes, form_bytes + count * max_bytes_a_number);
}

} // namespace

std::string packed(std::span<const double> values) {
    if (const auto quantisation = find_quantisation(values))
        if (const auto bytes = quantised(values, *quantisation)) return deflated(*bytes);
    return deflated(in_planes(values));
}

std::string packed(std::span<const std::uint32_t> numbers) {
    std::string bytes;
    put_differences(bytes, Whole(numbers.begin(), numbers.end()));
    return deflated(bytes);
}

std::optional<std::vector<double>> unpacked_values(std::string_view bytes, std::size_t count) {
    const auto plain = inflated_numbers(bytes, count);
    if (!plain || plain->empty()) return std::nullopt;
    const char form = plain->front();
    const std::string_view rest = std::string_view(*plain).substr(1);
    if (form == planes_form) return out_of_planes(rest, count, 0);
    if (form != smooth_form) return restored(form, rest, count);
    return rest.empty() ? std::nullopt : out_of_planes(rest.substr(1), count, static_cast<unsigned char>(rest.front()));
}

std::optional<std::vector<std::uint32_t>> unpacked_numbers(std::string_view bytes, std::size_t count) {
    const auto plain = inflated_numbers(bytes, count);
    if (!plain) return std::nullopt;
    std::string_view rest = *plain;
    const auto whole = take_differences(rest, count);
    const auto too_large = [](std::uint64_t n) { return n > std::numeric_limits<std::uint32_t>::max(); };
    if (!whole || !rest.empty() || std::ranges::any_of(*whole, too_large)) return std::nullopt;
    std::vector<std::uint32_t> numbers(count);
    std::ranges::transform(*whole, numbers.begin(), [](std::uint64_t n) { return static_cast<std::uint32_t>(n); });
    return numbers;
}

} // namespace lapwright::book
