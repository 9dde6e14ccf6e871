// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences of drawn talkers, among other lines, deep in a file, with sums that are wrong: NMEA 0183 as receivers and
// the programs that log them write it.
#include "core/import/formats/import.h"

#include "core/base/number_text.h"

#include <gtest/gtest.h>

#include <array>
#include <random>

namespace lapwright::import {
namespace {

using recording::Meaning;

std::string padded(int value, std::size_t width) {
    const std::string digits = base::integer_text(value);
    return std::string(width > digits.size() ? width - digits.size() : 0, '0') + digits;
}

std::string sentence(const std::string& body, unsigned wrong = 0) {
    constexpr std::string_view hexadecimal = "0123456789ABCDEF";
    unsigned sum = wrong;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return "$" + body + "*" + hexadecimal[sum / 16] + hexadecimal[sum % 16] + "\r\n";
}

std::string fix(const std::string& talker, const std::string& kind, int second, unsigned wrong = 0) {
    const std::string time = "10" + padded(second / 60, 2) + padded(second % 60, 2) + ".00";
    const std::string place = "5454." + padded(1000 + 10 * second, 4) + ",N,00221.0000,E";
    if (kind == "RMC") return sentence(talker + "RMC," + time + ",A," + place + ",036.0,000.0,160526,,", wrong);
    if (kind == "GLL") return sentence(talker + "GLL," + place + "," + time + ",A", wrong);
    const std::string quality = kind == "GNS" ? "AAN" : "1";
    return sentence(talker + kind + "," + time + "," + place + "," + quality + ",09,0.9,120.0,48.0,,", wrong);
}

TEST(Nmea, AnyTalkerIsReadWhateverStandsAround) {
    constexpr std::array talkers{"GP", "GN", "GL", "GA", "GB", "GQ", "GI", "BD", "IN", "II", "LC", "SN"};
    constexpr std::array kinds{"GGA", "GNS", "RMC", "GLL"};
    std::mt19937_64 engine(5);
    for (int file = 0; file < 60; ++file) {
        const std::string talker = talkers[engine() % talkers.size()];
        const std::string kind = kinds[engine() % kinds.size()];
        const std::size_t before = engine() % 3 == 0 ? 200 + engine() % 2000 : engine() % 30;
        const std::size_t others = engine() % 4;
        std::string text;
        for (std::size_t i = 0; i < before; ++i)
            text +=
                i % 2 == 0 ? "boot: antenna open\n" : sentence("PLOG,start," + base::integer_text(static_cast<int>(i)));
        for (int second = 0; second < 600; ++second) {
            text += fix(talker, kind, second);
            for (std::size_t i = 0; i < others; ++i)
                text += i % 2 == 0 ? sentence(talker + "GSV,3,1,11,03,03,111,00,04,15,270,00") : "temperature 41\n";
        }
        const auto recording = import_bytes(text, "drawn.nmea");
        ASSERT_TRUE(recording.ok()) << talker << kind << base::one_line(recording.error());
        const auto* const latitude = recording->find(Meaning::latitude);
        ASSERT_NE(latitude, nullptr) << talker << kind;
        EXPECT_EQ(latitude->size(), 600U) << talker << kind;
    }
}

TEST(Nmea, WrongSumsAreTheReasonWhereNothingIsLeft) {
    std::string text;
    for (int second = 0; second < 100; ++second)
        text += fix("GP", second % 2 == 0 ? "GGA" : "RMC", second / 2, 7);
    const auto refused = import_bytes(text, "wrong.nmea");
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(base::one_line(refused.error()).find("100 of its sentences have a wrong checksum"), std::string::npos)
        << base::one_line(refused.error());
    const auto mended = import_bytes(text + fix("GP", "GGA", 100) + fix("GP", "GGA", 101), "two.nmea");
    ASSERT_TRUE(mended.ok());
    EXPECT_EQ(mended->warnings.front().kind, recording::WarningKind::checksum_wrong);
}

TEST(Nmea, ATableWithADollarIsATable) {
    std::string text = "time (s),price ($),speed (m/s)\n";
    for (int i = 0; i < 50; ++i)
        text += base::integer_text(i) + ",$" + base::integer_text(i) + "," + base::integer_text(i % 9) + "\n";
    EXPECT_TRUE(import_bytes(text, "prices.csv").ok());
}

} // namespace
} // namespace lapwright::import
