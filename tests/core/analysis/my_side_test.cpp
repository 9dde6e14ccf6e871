// SPDX-License-Identifier: GPL-3.0-or-later
// Which side is the person's own car, whichever letter it bears.
#include "core/analysis/my_side.h"

#include <gtest/gtest.h>

#include <array>
#include <random>

using namespace lapwright;
using causes::Side;

namespace {

std::shared_ptr<const analysis::Session> session_of(const car::Names& names, const std::string& file) {
    auto recording = std::make_shared<recording::Recording>();
    recording->source_file = "/somewhere/" + file;
    recording->driver = names.driver;
    recording->car = names.car;
    auto session = std::make_shared<analysis::Session>();
    session->recording = recording;
    return session;
}

std::optional<Side> side(const std::optional<car::Names>& mine, const car::Names& a, const car::Names& b) {
    analysis::Pairing pairing;
    pairing.a.session = session_of(a, "one.csv");
    pairing.b.session = session_of(b, "two.csv");
    return analysis::spoken_to(analysis::my_sides(mine, pairing));
}

} // namespace

TEST(MySide, IsTheOneOfMyCar) {
    const car::Names me{"Wren Alder", "Plover"};
    EXPECT_EQ(side(me, me, {"Odran Pell", "Dunlin"}), Side::a);
    EXPECT_EQ(side(me, {"", " PLOVER"}, {"Wren Alder", "Dunlin"}), Side::a) << "a friend's car is not mine";
    EXPECT_EQ(side(me, {"Odran Pell", "Plover"}, me), Side::b) << "of two of my car the one that I drove";
    EXPECT_EQ(side(me, me, me), std::nullopt) << "both are mine: both are spoken to";
    EXPECT_EQ(side(me, {"Odran Pell", "Dunlin"}, {"", ""}), std::nullopt);
    EXPECT_EQ(side(me, {"wren alder", ""}, {"Odran Pell", ""}), Side::a) << "without cars the driver";
    EXPECT_EQ(side(car::Names{"", "two.csv"}, {}, {}), Side::b) << "without names the file";
    EXPECT_EQ(side(std::nullopt, me, {}), std::nullopt);
}

TEST(MySide, SwappingSwapsItAndWhatWasSaidIsRemembered) {
    constexpr std::array drivers{"", "Wren Alder", "Odran Pell"};
    constexpr std::array cars{"", "Plover", "Dunlin"};
    std::mt19937 engine(5);
    for (int i = 0; i < 2000; ++i) {
        const auto drawn = [&] { return car::Names{drivers[engine() % 3], cars[engine() % 3]}; };
        const car::Names a = drawn();
        const car::Names b = drawn();
        const std::optional<car::Names> mine = drawn();
        const auto straight = side(mine, a, b);
        const auto swapped = side(mine, b, a);
        ASSERT_EQ(straight.has_value(), swapped.has_value());
        if (straight && swapped) {
            EXPECT_NE(*straight, *swapped);
        }
        // Who says "A" gets A, unless B is just as much theirs.
        const auto said = side(analysis::names_to_keep(*session_of(a, "one.csv")), a, b);
        EXPECT_TRUE(said == Side::a || (!said && a == b)) << a.driver << a.car << " " << b.driver << b.car;
    }
}
