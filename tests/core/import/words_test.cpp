// SPDX-License-Identifier: GPL-3.0-or-later
// Names and units as headers write them.
#include "core/import/column_names.h"
#include "core/import/units_in_text.h"
#include "core/import/words.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::Meaning;

TEST(Words, FoldsCaseAccentsAndJoinedWords) {
    EXPECT_EQ(plain_words("EngineSpeed"), "engine speed");
    EXPECT_EQ(plain_words("GPS_LatAcc"), "gps lat acc");
    EXPECT_EQ(plain_words("Längsbeschleunigung"), "langsbeschleunigung");
    EXPECT_EQ(plain_words("Außentemperatur"), "aussentemperatur");
    EXPECT_EQ(plain_words("Numéro du tour"), "numero du tour");
}

struct NameCase {
    std::string_view name;
    Meaning meaning;
};

TEST(ColumnNames, KnowsSixLanguages) {
    for (const auto& [name, meaning] : std::initializer_list<NameCase>{
             {"GPS Speed", Meaning::speed},
             {"Wheel Speed FL", Meaning::wheel_speed},
             {"Speed rear left", Meaning::wheel_speed},
             {"Geschwindigkeit", Meaning::speed},
             {"Vitesse", Meaning::speed},
             {"Velocidad", Meaning::speed},
             {"Velocità", Meaning::speed},
             {"Snelheid", Meaning::speed},
             {"Längsbeschleunigung", Meaning::longitudinal_acceleration},
             {"Accélération latérale", Meaning::lateral_acceleration},
             {"Aceleración lateral", Meaning::lateral_acceleration},
             {"Accelerazione laterale", Meaning::lateral_acceleration},
             {"Dwarsversnelling", Meaning::lateral_acceleration},
             {"Numéro de tour", Meaning::lap_number},
             {"Vuelta", Meaning::lap_number},
             {"Giro", Meaning::lap_number},
             {"Ronde", Meaning::lap_number},
             {"Runde", Meaning::lap_number},
             {"Bremsdruck vorne", Meaning::brake_pressure},
             {"Acc Lat", Meaning::lateral_acceleration},
             {"LatAcc", Meaning::lateral_acceleration},
             {"acc_x", Meaning::longitudinal_acceleration},
             {"Gyro Z", Meaning::yaw_rate},
             {"Toerental", Meaning::engine_speed},
         }) {
        const auto found = meaning_of_name(name);
        ASSERT_TRUE(found) << name;
        EXPECT_EQ(found->meaning, meaning) << name;
    }
}

TEST(ColumnNames, DoesNotGuessWhatIsLeftOver) {
    EXPECT_FALSE(meaning_of_name("Brake Temp FL"));
    EXPECT_FALSE(meaning_of_name("Oil Pressure"));
    EXPECT_FALSE(meaning_of_name("Speed Limiter"));
    EXPECT_FALSE(meaning_of_name(""));
}

TEST(UnitsInText, PartsNameAndUnit) {
    const auto check = [](std::string_view header, std::string_view name, Unit unit) {
        const auto parted = part_name_and_unit(header);
        EXPECT_EQ(parted.name, name) << header;
        EXPECT_EQ(parted.unit, unit) << header;
    };
    check("Speed (km/h)", "Speed", Unit::kilometre_per_hour);
    check("Speed [mph]", "Speed", Unit::mile_per_hour);
    check("Speed km/h", "Speed", Unit::kilometre_per_hour);
    check("speed_kph", "speed", Unit::kilometre_per_hour);
    check("Speed in m/s", "Speed", Unit::metre_per_second);
    check("Temp deg C", "Temp", Unit::celsius);
    check("Lat Acc [g]", "Lat Acc", Unit::standard_gravity);
    check("Gierrate (°/s)", "Gierrate", Unit::degree_per_second);
    EXPECT_FALSE(part_name_and_unit("Speed (GPS)").unit);
    EXPECT_FALSE(part_name_and_unit("Brake in").unit);
    EXPECT_EQ(part_name_and_unit("Oil pressure (furlong)").unit_text, "furlong");
}

} // namespace
} // namespace lapwright::import
