// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/quantisation.h"

#include "core/base/constants.h"
#include "core/base/units.h"
#include "core/book/varint.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <vector>

namespace lapwright::book {
namespace {

constexpr std::array<double, max_decimals + 1> powers_of_ten{1.0, 1e1, 1e2, 1e3,  1e4,  1e5, 1e6,
                                                             1e7, 1e8, 1e9, 1e10, 1e11, 1e12};
constexpr double largest_whole = 9007199254740992.0; // 2^53
// Judged on this many values from each of a few places.
constexpr std::size_t stretch = 48;
constexpr std::size_t stretches = 4;
// A quantisation from which a value is off by more units in the last place than this is not where it came from.
constexpr std::uint64_t near_enough = 16;

using Stretches = std::vector<std::span<const double>>;

Stretches some_stretches(std::span<const double> values) {
    if (values.size() <= stretch * stretches) return {values};
    Stretches some;
    for (std::size_t i = 0; i < stretches; ++i)
        some.push_back(values.subspan(i * (values.size() - stretch) / (stretches - 1), stretch));
    return some;
}

std::uint64_t bits_of(double value) {
    return std::bit_cast<std::uint64_t>(value);
}

// Bits that these values would need, or nothing when they do not lie on its steps.
std::optional<double> cost(const Quantisation& quantisation, const Stretches& some) {
    double bits = 0.0;
    for (const auto values : some) {
        std::int64_t before = 0;
        for (std::size_t i = 0; i < values.size(); ++i) {
            const auto n = quantisation.nearest(values[i]);
            if (!n) return std::nullopt;
            const std::uint64_t off = folded(bits_of(values[i]) - bits_of(quantisation.value(*n)));
            // A negative zero is far away in bits, and rare.
            if (off > near_enough && values[i] != 0.0) return std::nullopt;
            const std::uint64_t step = folded(static_cast<std::uint64_t>(*n) - static_cast<std::uint64_t>(before));
            if (i > 0) bits += static_cast<double>(std::bit_width(step));
            bits += 2.0 * static_cast<double>(std::bit_width(off));
            before = *n;
        }
    }
    return bits;
}

// Units as files write them, and minutes of arc, in which receivers write positions.
std::vector<Quantisation> written_units() {
    std::vector<Quantisation> units{{base::pi / 180.0 / 60.0, 0.0, 0}};
    for (int i = 0; i <= static_cast<int>(base::Unit::ampere); ++i) {
        const auto& unit = base::definition(static_cast<base::Unit>(i));
        const auto same = [&](const Quantisation& l) { return l.factor == unit.factor && l.offset == unit.offset; };
        if (std::ranges::none_of(units, same)) units.push_back({unit.factor, unit.offset, 0});
    }
    return units;
}

// The fewest binary places that all of these have.
std::optional<Quantisation> binary_places(const Stretches& some) {
    int bits = 0;
    for (const auto values : some) {
        for (const double value : values) {
            if (!std::isfinite(value)) return std::nullopt;
            if (value == 0.0) continue;
            int exponent = 0;
            const double mantissa = std::frexp(value, &exponent);
            const auto whole = static_cast<std::uint64_t>(std::abs(mantissa) * largest_whole);
            bits = std::max(bits, 53 - exponent - std::countr_zero(whole));
        }
    }
    if (bits > max_bits) return std::nullopt;
    return Quantisation{1.0, 0.0, 0, bits};
}

} // namespace

double Quantisation::value(std::int64_t n) const {
    const auto whole = static_cast<double>(n);
    if (bits) return std::ldexp(whole, -*bits);
    return whole / powers_of_ten[static_cast<std::size_t>(decimals)] * factor + offset;
}

std::optional<std::int64_t> Quantisation::nearest(double value) const {
    const double n =
        bits ? std::ldexp(value, *bits) : (value - offset) / factor * powers_of_ten[static_cast<std::size_t>(decimals)];
    if (!(std::abs(n) < largest_whole)) return std::nullopt;
    return std::llround(n);
}

std::optional<Quantisation> find_quantisation(std::span<const double> values) {
    if (values.empty()) return std::nullopt;
    static const std::vector<Quantisation> units = written_units();
    const Stretches some = some_stretches(values);
    std::optional<Quantisation> best;
    double least = 40.0 * static_cast<double>(std::min(values.size(), stretch * stretches)); // plain bytes do as well
    const auto consider = [&](const Quantisation& quantisation) {
        const auto bits = cost(quantisation, some);
        if (bits && *bits < least) {
            least = *bits;
            best = quantisation;
        }
        return bits.has_value();
    };
    for (Quantisation quantisation : units)
        for (quantisation.decimals = 0; quantisation.decimals <= max_decimals; ++quantisation.decimals)
            if (consider(quantisation)) break; // more decimals only make longer numbers
    if (const auto binary = binary_places(some)) consider(*binary);
    return best;
}

} // namespace lapwright::book
