// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers come out to the last bit as std::from_chars has them, whatever way they take.
#include "core/import/text/fast_number.h"
#include "core/import/text/number_scan.h"

#include <gtest/gtest.h>

#include <bit>
#include <charconv>
#include <random>
#include <string>

namespace lapwright::import {
namespace {

double reference(const std::string& text) {
    double value = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::string random_digits(std::mt19937_64& engine, std::size_t count) {
    std::string digits;
    for (std::size_t i = 0; i < count; ++i)
        digits += static_cast<char>('0' + engine() % 10);
    return digits;
}

TEST(FastNumber, EqualsFromCharsToTheLastBit) {
    std::mt19937_64 engine(7);
    std::size_t taken = 0;
    for (int i = 0; i < 400'000; ++i) {
        const std::size_t whole = engine() % 11;
        const std::size_t part = engine() % 11;
        std::string text = engine() % 2 == 0 ? "-" : "";
        text += random_digits(engine, whole);
        if (part > 0 || engine() % 4 == 0) text += "." + random_digits(engine, part);
        const std::string padded = text + ",999999999999999999999999999999999999";
        const ScannedNumber number = scan_number(padded.data(), '.');
        if (!number.end) continue;
        ++taken;
        ASSERT_EQ(number.end - padded.data(), static_cast<std::ptrdiff_t>(text.size())) << text;
        ASSERT_EQ(std::bit_cast<std::uint64_t>(number.value), std::bit_cast<std::uint64_t>(reference(text))) << text;
    }
    EXPECT_GT(taken, 200'000U);
}

TEST(FastNumber, TakesEveryShortDecimal) {
    for (const std::string text : {"0", "1", "-1", "12345678", "0.5", "-0.00000001", "99999999.999999", ".5", "5."}) {
        const std::string padded = text + "\n                                ";
        const ScannedNumber number = scan_number(padded.data(), '.');
        ASSERT_NE(number.end, nullptr) << text;
        EXPECT_EQ(number.value, reference(text)) << text;
    }
}

TEST(FastNumber, LeavesWhatItDoesNotKnow) {
    for (const std::string text : {"", "-", ".", "-.", "+1", "123456789", "0.123456789", "abc", "--1", " 1"}) {
        const std::string padded = text + ",                                ";
        EXPECT_EQ(scan_number(padded.data(), '.').end, nullptr) << text;
    }
    // It stops where the digits do; the caller sees that no delimiter follows.
    const std::string exponent = "1e5,                                ";
    EXPECT_EQ(scan_number(exponent.data(), '.').end, exponent.data() + 1);
}

TEST(NumberScan, ReadsEveryWayOfWriting) {
    const NumberStyle point{'.', true};
    const NumberStyle comma{',', true};
    EXPECT_EQ(read_number("1234.5", point), 1234.5);
    EXPECT_EQ(read_number("1,234.5", point), 1234.5);
    EXPECT_EQ(read_number("1,234,567", point), 1234567.0);
    EXPECT_EQ(read_number("1.234,5", comma), 1234.5);
    EXPECT_EQ(read_number("1 234,5", comma), 1234.5);
    EXPECT_EQ(read_number("1'234.5", point), 1234.5);
    EXPECT_EQ(read_number("1\xC2\xA0"
                          "234,5",
                          comma),
              1234.5);
    EXPECT_EQ(read_number("+1.5", point), 1.5);
    EXPECT_EQ(read_number("\xE2\x88\x92"
                          "1.5",
                          point),
              -1.5);
    EXPECT_EQ(read_number("1,5e-3", comma), 0.0015);
    EXPECT_EQ(read_number("50 %", point), 50.0);
    EXPECT_EQ(read_number("-.5", point), -0.5);
}

TEST(NumberScan, RefusesWhatIsNoNumber) {
    const NumberStyle point{'.', true};
    for (const char* text : {"", "-", "1.2.3", "1,23", "12,34,567", "0x10", "1e", "nan", "inf", "1e400", "1e20", "--1",
                             "+-1", "1 2", "one", "1,2345", "%"})
        EXPECT_FALSE(read_number(text, point)) << text;
}

TEST(NumberScan, EqualsFromCharsForAnyDecimal) {
    std::mt19937_64 engine(11);
    for (int i = 0; i < 100'000; ++i) {
        std::string text = random_digits(engine, 1 + engine() % 14) + "." + random_digits(engine, 1 + engine() % 25);
        if (engine() % 3 == 0) text += "e-" + random_digits(engine, 1);
        const auto value = read_number(text, {});
        ASSERT_TRUE(value) << text;
        ASSERT_EQ(std::bit_cast<std::uint64_t>(*value), std::bit_cast<std::uint64_t>(reference(text))) << text;
    }
}

} // namespace
} // namespace lapwright::import
