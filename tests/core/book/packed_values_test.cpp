// SPDX-License-Identifier: GPL-3.0-or-later
// Packed numbers give back every bit, need few bytes where
// they were decimal text, and refuse bytes that are not theirs.
#include "core/book/packed_values.h"

#include "core/base/constants.h"
#include "core/book/book_fixture.h"
#include "core/book/quantisation.h"
#include "core/book/varint.h"

#include <gtest/gtest.h>

#include <limits>

namespace lapwright::book {
namespace {

// Bytes a number, after it was seen to come back.
double packed_size(const std::vector<double>& values) {
    const std::string bytes = packed(std::span<const double>(values));
    const auto back = unpacked_values(bytes, values.size());
    EXPECT_TRUE(back.has_value());
    if (!back) return 0.0;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (std::bit_cast<std::uint64_t>((*back)[i]) != std::bit_cast<std::uint64_t>(values[i])) {
            ADD_FAILURE() << "number " << i << ": " << (*back)[i] << " for " << values[i];
            break;
        }
    return static_cast<double>(bytes.size()) / static_cast<double>(std::max<std::size_t>(values.size(), 1));
}

constexpr std::size_t many = 5000;

TEST(PackedValues, EveryUnitWithEveryNumberOfDecimalsComesBackBitForBitInFewBytes) {
    for (int i = 0; i <= static_cast<int>(base::Unit::ampere); ++i) {
        for (const int decimals : {0, 1, 2, 3, 4}) {
            const auto unit = static_cast<base::Unit>(i);
            SCOPED_TRACE(std::string(base::symbol(unit)) + " with " + base::integer_text(decimals));
            // Steps of up to ±100 of the last digit: 1.2 bytes are their entropy, plain doubles have 8.
            const double swing = 10000.0 * std::pow(10.0, -decimals);
            EXPECT_LT(packed_size(column(many, 1.5 * swing, swing, decimals, unit, 7)), 2.0);
        }
    }
}

TEST(PackedValues, PositionsOfAReceiverNeedTwoBytes) {
    EXPECT_LT(packed_size(column(many, 54.9, 0.004, 7, base::Unit::degree, 3)), 2.0);
    // Degrees and minutes with five decimals, put together as NMEA 0183 asks.
    std::vector<double> minutes = column(many, 27.4, 0.2, 5, base::Unit::none, 3);
    for (double& value : minutes)
        value = (52.0 + value / 60.0) * base::pi / 180.0;
    EXPECT_LT(packed_size(minutes), 3.0);
}

TEST(PackedValues, StampsThatAreADifferenceOfClockReadingsNeedLittle) {
    for (const double start : {0.0, 36000.04, 1.778926803e9}) {
        std::vector<double> stamps(many);
        for (std::size_t i = 0; i < many; ++i)
            stamps[i] = (start + static_cast<double>(i * 4) / 100.0) - start;
        EXPECT_LT(packed_size(stamps), 1.0) << start;
    }
}

TEST(PackedValues, WhatIsNotQuantisedComesBackToo) {
    std::mt19937_64 engine(11);
    std::vector<double> bits(many);
    for (double& value : bits)
        value = std::bit_cast<double>(engine()); // every kind: subnormal, infinite, not a number
    EXPECT_LT(packed_size(bits), 8.1);

    using limits = std::numeric_limits<double>;
    packed_size({});
    packed_size({0.0});
    packed_size({-0.0, 0.0, -0.0});
    packed_size({limits::quiet_NaN(), limits::infinity(), -limits::infinity()});
    packed_size({limits::max(), limits::lowest(), limits::min(), limits::denorm_min(), limits::epsilon()});
    packed_size({9007199254740991.0, 9007199254740992.0, -9007199254740993.0, 1e300, 0.1});
}

TEST(PackedValues, ASmoothCourseNeedsFewerThanItsPatterns) {
    std::vector<double> speed(many);
    for (std::size_t i = 0; i < many; ++i)
        speed[i] = 40.0 + 20.0 * std::sin(0.01 * static_cast<double>(i));
    EXPECT_LT(packed_size(speed), 5.0);
    for (std::size_t i = 0; i < 10; ++i)
        speed[i * 100] = std::numeric_limits<double>::quiet_NaN();
    EXPECT_LT(packed_size(speed), 5.2);
}

TEST(PackedValues, ANumberBesideItsStepKeepsItsDifference) {
    std::vector<double> values = column(many, 120.0, 60.0, 2, base::Unit::kilometre_per_hour, 5);
    values[many / 3] = std::nextafter(values[many / 3], 1000.0);
    values[many / 2] = -0.0;
    values[many - 1] = 1.0 / 3.0 * 1e-9;
    EXPECT_LT(packed_size(values), 2.5);
    values[many - 2] = std::numeric_limits<double>::infinity(); // then none of them is on it
    packed_size(values);
}

TEST(PackedValues, LineNumbersComeBack) {
    std::mt19937_64 engine(13);
    std::vector<std::uint32_t> lines;
    for (std::uint32_t i = 0; i < many; ++i)
        lines.push_back(i + 12);
    EXPECT_LT(packed(std::span<const std::uint32_t>(lines)).size(), 60U);
    for (auto& line : lines)
        line = static_cast<std::uint32_t>(engine());
    lines.front() = std::numeric_limits<std::uint32_t>::max();
    EXPECT_EQ(unpacked_numbers(packed(std::span<const std::uint32_t>(lines)), lines.size()), lines);
}

TEST(PackedValues, BytesThatAreDamagedEndInNothingOrInAsManyNumbers) {
    std::mt19937_64 engine(17);
    const std::vector<double> values = column(200, 120.0, 60.0, 2, base::Unit::kilometre_per_hour, 5);
    const std::string good = packed(std::span<const double>(values));
    EXPECT_FALSE(unpacked_values(good, values.size() + 1));
    EXPECT_FALSE(unpacked_values(good, values.size() - 1));
    EXPECT_FALSE(unpacked_values(good, std::numeric_limits<std::size_t>::max()));
    for (int i = 0; i < 2000; ++i) {
        std::string bytes = good;
        if (i % 2 == 0) bytes.resize(engine() % bytes.size());
        for (std::uint64_t flips = engine() % 4; flips > 0 && !bytes.empty(); --flips)
            bytes[engine() % bytes.size()] = static_cast<char>(engine());
        if (const auto back = unpacked_values(bytes, values.size())) {
            EXPECT_EQ(back->size(), values.size());
        }
        if (const auto back = unpacked_numbers(bytes, values.size())) {
            EXPECT_EQ(back->size(), values.size());
        }
    }
}

TEST(Varint, EveryPatternComesBack) {
    std::mt19937_64 engine(19);
    for (int i = 0; i < 2000; ++i) {
        const std::uint64_t number = engine() >> (engine() % 64);
        std::string bytes;
        put_varint(bytes, number);
        EXPECT_EQ(bytes.size(), varint_bytes(number));
        std::string_view rest = bytes;
        EXPECT_EQ(take_varint(rest), number);
        EXPECT_TRUE(rest.empty());
        EXPECT_EQ(unfolded(folded(number)), number);
    }
    EXPECT_EQ(folded(0), 0U);
    EXPECT_EQ(folded(~std::uint64_t{0}), 1U); // −1
    EXPECT_EQ(folded(1), 2U);
    std::string_view endless = "\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff";
    EXPECT_FALSE(take_varint(endless));
    std::string_view broken = "\x80";
    EXPECT_FALSE(take_varint(broken));
}

} // namespace
} // namespace lapwright::book
