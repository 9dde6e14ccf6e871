// SPDX-License-Identifier: GPL-3.0-or-later
// Names and units as headers write them.
#include "core/import/formats/import.h"
#include "core/import/text/words.h"
#include "core/import/vocabulary/column_names.h"
#include "core/import/vocabulary/units_in_text.h"

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
             {"lat_e7", Meaning::latitude},
             {"Position N", Meaning::north},
             {"Pos_E", Meaning::east},
             {"Posición Norte", Meaning::north},
             {"Damper FL", Meaning::suspension_front_left},
             {"SuspTravelRR", Meaning::suspension_rear_right},
             {"Shock_Pot_Left_Rear", Meaning::suspension_rear_left},
             {"Federweg hinten links", Meaning::suspension_rear_left},
             {"Débattement avant droit", Meaning::suspension_front_right},
             {"Amortiguador trasero izquierdo", Meaning::suspension_rear_left},
             {"Ammortizzatore ant. dx", Meaning::suspension_front_right},
             {"Veerweg links achter", Meaning::suspension_rear_left},
             {"Absolute Throttle Position", Meaning::throttle},
         }) {
        const auto found = meaning_of_name(name);
        ASSERT_TRUE(found) << name;
        EXPECT_EQ(found->meaning, meaning) << name;
    }
}

// Every name that a unit makes clear, with every way of writing that unit.
TEST(ColumnNames, AreKnownWithEachSpellingOfTheirUnits) {
    struct Kind {
        Meaning meaning;
        std::vector<std::string> names;
        std::vector<std::string> units;
    };
    const std::vector<Kind> kinds{
        {Meaning::lateral_acceleration,
         {"Lateral", "Lat", "Lateral acceleration", "Lat Acc", "Quer", "Querbeschleunigung", "Accélération latérale",
          "Latérale", "Aceleración lateral", "Accelerazione laterale", "Laterale", "Dwarsversnelling", "Dwars",
          "Transversale", "Acc_Y", "Accel (Y axis)"},
         {"g", "G", "g's", "m/s²", "m/s^2", "m/s2", "m/s/s", "mg", "ms-2"}},
        {Meaning::longitudinal_acceleration,
         {"Longitudinal", "Long", "Inline", "Inline acc", "Forward", "Längs", "Längsbeschleunigung",
          "Accélération longitudinale", "Aceleración longitudinal", "Accelerazione longitudinale", "Langsversnelling",
          "Longitudinaal", "Acc_X", "Accel (X axis)"},
         {"g", "G", "m/s²", "m/s^2", "m/s2", "mg"}},
        {Meaning::yaw_rate,
         {"Yaw rate", "Yaw", "Gierrate", "Lacet", "Vitesse de lacet", "Velocità imbardata", "Giersnelheid"},
         {"deg/s", "°/s", "rad/s", "dps"}},
        {Meaning::speed,
         {"Speed", "GPS Speed", "Geschwindigkeit", "Vitesse", "Velocidad", "Velocità", "Snelheid"},
         {"km/h", "kph", "mph", "m/s", "Meters/second", "miles per hour", "kilometres/hour", "knots", "kn", "ft/s"}},
    };
    for (const Kind& kind : kinds)
        for (const auto& name : kind.names)
            for (const auto& unit : kind.units)
                for (const auto& header :
                     {name + " (" + unit + ")", name + " [" + unit + "]", name + "(" + unit + ")"}) {
                    const auto text = "time (s)," + header + ",x1\n0.0,1,7\n0.1,0.5,7\n0.2,0.7,7\n0.3,0.2,7\n";
                    const auto recording = import_bytes(text, "names.csv");
                    ASSERT_TRUE(recording.ok()) << header;
                    ASSERT_EQ(recording->channels.front().meaning, kind.meaning) << header;
                    EXPECT_NEAR(recording->channels.front().values.front(), base::to_si(1.0, *parse_unit(unit)), 1e-12)
                        << header;
                }
}

TEST(ColumnNames, SayTheirUnitThemselves) {
    struct Case {
        std::string_view header;
        Meaning meaning;
        Unit unit;
    };
    for (const auto& [header, meaning, unit] : std::initializer_list<Case>{
             {"G(x)", Meaning::longitudinal_acceleration, Unit::standard_gravity},
             {"Lat G", Meaning::lateral_acceleration, Unit::standard_gravity},
             {"Lateral g", Meaning::lateral_acceleration, Unit::standard_gravity},
             {"Inline g", Meaning::longitudinal_acceleration, Unit::standard_gravity},
             {"GLat", Meaning::lateral_acceleration, Unit::standard_gravity},
             {"MPH", Meaning::speed, Unit::mile_per_hour},
             {"km/h", Meaning::speed, Unit::kilometre_per_hour},
             {"RPM", Meaning::engine_speed, Unit::revolution_per_minute},
         }) {
        const auto text = "time (s)," + std::string(header) + "\n0.0,1\n0.1,0.5\n0.2,0.7\n";
        const auto recording = import_bytes(text, "names.csv");
        ASSERT_TRUE(recording.ok()) << header;
        EXPECT_EQ(recording->channels.front().meaning, meaning) << header;
        EXPECT_EQ(recording->channels.front().source_unit, unit) << header;
    }
}

// Each name that is known beside a unit of acceleration is known beside the word that says g itself.
TEST(ColumnNames, AreKnownBesideGravity) {
    int known = 0;
    for (const auto& [key, column] : built_in_vocabulary().columns) {
        if (key.first != base::Quantity::acceleration || column.confidence < 0.9) continue;
        for (const std::string& header : {"g " + key.second, key.second + " G"}) {
            const auto recording = import_bytes("time (s)," + header + "\n0.0,1\n0.1,0.5\n0.2,0.7\n", "names.csv");
            ASSERT_TRUE(recording.ok()) << header;
            EXPECT_EQ(recording->channels.front().meaning, column.meaning) << header;
            EXPECT_EQ(recording->channels.front().source_unit, Unit::standard_gravity) << header;
            ++known;
        }
    }
    EXPECT_GT(known, 60);
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
    check("ground_speed_mm_s", "ground_speed", Unit::millimetre_per_second);
    check("speed_m_s", "speed", Unit::metre_per_second);
    check("Speed_km_per_h", "Speed", Unit::kilometre_per_hour);
    check("accel_x_m_s2", "accel_x", Unit::metre_per_second_squared);
    check("yaw_rate_deg_s", "yaw_rate", Unit::degree_per_second);
    check("lap_time_s", "lap_time", Unit::second);
    EXPECT_FALSE(part_name_and_unit("Speed (GPS)").unit);
    EXPECT_FALSE(part_name_and_unit("Brake in").unit);
    EXPECT_EQ(part_name_and_unit("Oil pressure (furlong)").unit_text, "furlong");
}

} // namespace
} // namespace lapwright::import
