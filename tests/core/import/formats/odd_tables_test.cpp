// SPDX-License-Identifier: GPL-3.0-or-later
// One invented drive, written in ways that people and programs find: each comes out as the plain table does.
#include "core/base/number_text.h"
#include "core/import/formats/import.h"

#include <gmock/gmock.h>

#include <cmath>
#include <functional>
#include <random>

namespace lapwright::import {
namespace {

using recording::Meaning;
using recording::Recording;
using recording::WarningKind;

struct DrivenRow {
    double time_s = 0.0;
    double speed_kmh = 0.0;
    double throttle = 0.0;
};

// Seconds since the first row at this rate, over a bit more than a minute.
std::vector<DrivenRow> drive(double rate_hz, std::uint64_t seed) {
    std::mt19937_64 engine(seed);
    std::uniform_real_distribution<double> even(0.0, 1.0);
    std::vector<DrivenRow> rows;
    for (int i = 0; i < static_cast<int>(75.0 * rate_hz); ++i)
        rows.push_back(
            {i / rate_hz, std::round(1000.0 + 500.0 * even(engine)) / 10.0, std::round(100.0 * even(engine))});
    return rows;
}

std::string two_digits(double number) {
    return (number < 10.0 ? "0" : "") + base::fixed_text(number, 0);
}

// "10", mark, "20", mark, "03.40"
std::string clock_text(double day_s, std::string_view mark) {
    const double s = std::fmod(day_s + 1e-9, 86400.0);
    const double seconds = std::floor(std::fmod(s, 60.0) * 100.0 + 0.5) / 100.0;
    return two_digits(std::floor(s / 3600.0)) + std::string(mark) +
           two_digits(std::floor(std::fmod(s, 3600.0) / 60.0)) + std::string(mark) + (seconds < 10.0 ? "0" : "") +
           base::fixed_text(seconds, 2);
}

using Cells = std::function<std::string(const DrivenRow&)>;

std::string table(const std::string& header, const std::vector<DrivenRow>& rows, const Cells& cells) {
    std::string text = header + "\n";
    for (const DrivenRow& row : rows)
        text += cells(row) + "\n";
    return text;
}

std::string values_of(const DrivenRow& row) {
    return base::fixed_text(row.speed_kmh, 1) + "," + base::fixed_text(row.throttle, 0);
}

void expect_drive(const std::string& text, const std::vector<DrivenRow>& rows, const std::string& what) {
    const auto recording = import_bytes(text, "odd.csv");
    ASSERT_TRUE(recording.ok()) << what << "\n" << base::one_line(recording.error());
    const auto* const speed = recording->find(Meaning::speed);
    ASSERT_NE(speed, nullptr) << what;
    ASSERT_EQ(speed->size(), rows.size()) << what;
    EXPECT_TRUE(recording->splits_s.empty()) << what;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        ASSERT_NEAR((*speed->time_s)[i], rows[i].time_s, 1e-6) << what << " row " << i;
        ASSERT_NEAR(speed->values[i], rows[i].speed_kmh / 3.6, 1e-9) << what << " row " << i;
    }
    ASSERT_NE(recording->find(Meaning::throttle), nullptr) << what;
}

TEST(OddTables, CellsAsFormulas) {
    const auto rows = drive(10.0, 1);
    expect_drive(table("=\"Time (s)\",=\"Speed (km/h)\",=\"Throttle (%)\"", rows,
                       [](const DrivenRow& row) {
                           return "=\"" + base::fixed_text(row.time_s, 2) + "\",=\"" +
                                  base::fixed_text(row.speed_kmh, 1) + "\",=\"" + base::fixed_text(row.throttle, 0) +
                                  "\"";
                       }),
                 rows, "formulas");
}

TEST(OddTables, TheNewestRowFirst) {
    const auto rows = drive(10.0, 2);
    const std::vector<DrivenRow> turned(rows.rbegin(), rows.rend());
    const std::string text = table("Time (s),Speed (km/h),Throttle (%)", turned, [](const DrivenRow& row) {
        return base::fixed_text(row.time_s, 2) + "," + values_of(row);
    });
    expect_drive(text, rows, "newest first");
    EXPECT_EQ(import_bytes(text, "odd.csv")->warnings.front().kind, WarningKind::rows_turned_over);
}

TEST(OddTables, AlignedColumnsWithNamesOfSeveralWords) {
    const auto rows = drive(10.0, 3);
    const auto aligned = [](std::string text) {
        text.resize(16, ' ');
        return text;
    };
    expect_drive(table("Elapsed Time    Ground Speed    Throttle Position", rows,
                       [&](const DrivenRow& row) {
                           return aligned(base::fixed_text(row.time_s, 2)) +
                                  aligned(base::fixed_text(row.speed_kmh, 1)) + base::fixed_text(row.throttle, 0);
                       }),
                 rows, "aligned");
}

TEST(OddTables, MinutesAndSecondsInTheirOwnColumns) {
    const auto rows = drive(10.0, 4);
    expect_drive(table("Minutes,Seconds,Speed (km/h),Throttle (%)", rows,
                       [](const DrivenRow& row) {
                           const double minutes = std::floor((row.time_s + 1e-9) / 60.0);
                           return base::fixed_text(minutes, 0) + "," +
                                  base::fixed_text(row.time_s - 60.0 * minutes, 2) + "," + values_of(row);
                       }),
                 rows, "minutes and seconds");
}

// Drawn: a start at any time of day, and one short of midnight; each form of the clock, each rate.
TEST(OddTables, AClockOfAnyFormOverFullMinutesAndMidnight) {
    std::mt19937_64 engine(5);
    std::uniform_int_distribution<int> any(0, 85000);
    std::uniform_int_distribution<int> short_of_midnight(86400 - 70, 86399);
    for (int draw = 0; draw < 40; ++draw) {
        const double start_s = draw % 2 == 0 ? any(engine) : short_of_midnight(engine);
        const double rate_hz = std::array{1.0, 5.0, 10.0, 20.0}[engine() % 4];
        const auto rows = drive(rate_hz, engine());
        const auto with = [&](const std::function<std::string(double)>& clock) {
            return table("UTC,Speed (km/h),Throttle (%)", rows,
                         [&](const DrivenRow& row) { return clock(start_s + row.time_s) + "," + values_of(row); });
        };
        const std::string what =
            "from " + base::fixed_text(start_s, 0) + " s at " + base::fixed_text(rate_hz, 0) + " Hz";
        expect_drive(with([](double s) { return clock_text(s, ":"); }), rows, "colons " + what);
        expect_drive(with([](double s) { return clock_text(s, ""); }), rows, "packed " + what);
        expect_drive(with([](double s) {
                         std::string text = clock_text(s, "h");
                         text[text.rfind('h')] = 'm';
                         return text + "s";
                     }),
                     rows, "letters " + what);
    }
}

// What has elapsed, in letters and with days, as people and programs for data analysis write it.
TEST(OddTables, ElapsedTimeInLettersAndWithDays) {
    std::mt19937_64 engine(6);
    for (int draw = 0; draw < 20; ++draw) {
        const double start_s = static_cast<double>(engine() % 40000);
        const auto rows = drive(std::array{1.0, 5.0, 10.0, 20.0}[engine() % 4], engine());
        const auto with = [&](const std::function<std::string(double)>& clock) {
            return table("Elapsed,Speed (km/h),Throttle (%)", rows,
                         [&](const DrivenRow& row) { return clock(start_s + row.time_s) + "," + values_of(row); });
        };
        const auto parted = [](double s, const char* h, const char* m, const char* end) {
            std::string text = clock_text(s, ":");
            text.replace(5, 1, m);
            return text.replace(2, 1, h) + end;
        };
        expect_drive(with([&](double s) { return parted(s, "h ", "m ", "s"); }), rows, "h m s");
        expect_drive(with([&](double s) { return parted(s, " h ", " min ", " s"); }), rows, "h min s");
        expect_drive(with([&](double s) { return "0 days " + clock_text(s, ":"); }), rows, "days");
        expect_drive(with([&](double s) { return "\"1 day, " + clock_text(s, ":") + "\""; }), rows, "day");
    }
}

// Local time is set by an hour at any place of the session, at any rate: nothing is lost, and it is told.
TEST(OddTables, LocalTimeThatIsSetByAnHourGoesOn) {
    std::mt19937_64 engine(7);
    for (int draw = 0; draw < 40; ++draw) {
        const auto rows = drive(std::array{1.0, 5.0, 10.0, 20.0}[engine() % 4], engine());
        const double set_s = draw % 2 == 0 ? 3600.0 : -3600.0;
        const double from_s = rows[1 + engine() % (rows.size() - 2)].time_s;
        const bool dated = draw % 3 == 0;
        const std::string text = table("Time,Speed (km/h),Throttle (%)", rows, [&](const DrivenRow& row) {
            const double s = 40000.0 + row.time_s + (row.time_s >= from_s ? set_s : 0.0);
            return (dated ? "2025-10-26 " : "") + clock_text(s, ":") + "," + values_of(row);
        });
        expect_drive(text, rows, base::fixed_text(from_s, 2));
        const auto recording = import_bytes(text, "odd.csv");
        EXPECT_TRUE(std::ranges::any_of(recording->warnings, [](const auto& warning) {
            return warning.kind == WarningKind::clock_set_by_an_hour;
        }));
    }
}

// The receiver's own clock: milliseconds of the week; at one row a second a counter of microseconds looks the same.
TEST(OddTables, MillisecondsOfTheWeekAreNoDateOfLongAgo) {
    std::mt19937_64 engine(8);
    for (int draw = 0; draw < 20; ++draw) {
        const auto rows = drive(std::array{1.0, 5.0, 10.0, 20.0}[engine() % 4], engine());
        const double start_ms = static_cast<double>(engine() % 604'000) * 1000.0;
        for (const std::string name : {"iTOW", "Time", "tick"})
            expect_drive(table(name + ",Speed (km/h),Throttle (%)", rows,
                               [&](const DrivenRow& row) {
                                   return base::fixed_text(start_ms + row.time_s * 1000.0, 0) + "," + values_of(row);
                               }),
                         rows, name + " from " + base::fixed_text(start_ms, 0));
    }
}

// Steps of one or of a thousand could be of two units: positions say of which, and without them the person is asked.
TEST(OddTables, PositionsTellTheUnitOfAClock) {
    for (const double step : {1.0, 1000.0})
        for (const double rate_hz : {1.0, 1000.0})
            for (const bool placed : {true, false}) {
                std::string text = placed ? "time,lat,lon,km/h\n" : "time,km/h\n";
                for (int i = 0; i < 4000; ++i) {
                    const double along = 20.0 / rate_hz * i / 111195.0;
                    text += base::fixed_text(step * i, 0) + ",";
                    if (placed) text += base::fixed_text(47.0 + along, 9) + ",8.500000000,";
                    text += "72\n";
                }
                const auto recording = import_bytes(text, "odd.csv");
                ASSERT_TRUE(recording.ok()) << base::one_line(recording.error());
                const bool asked = std::ranges::any_of(recording->warnings, [](const auto& warning) {
                    return warning.kind == WarningKind::column_unsure;
                });
                EXPECT_TRUE(placed || asked) << step;
                const double off_s = recording->duration_s - 3999.0 / rate_hz;
                EXPECT_TRUE(!placed || std::abs(off_s) < 1e-3) << step << " at " << rate_hz << " is off by " << off_s;
            }
}

TEST(OddTables, ColumnsOfOneNameAreToldApart) {
    const auto recording =
        import_bytes("Time (s),Speed (km/h),Temp,Temp,\n0,1,2,3,4\n1,2,3,4,5\n2,3,4,5,6\n", "odd.csv");
    ASSERT_TRUE(recording.ok());
    std::vector<std::string> names;
    for (const auto& channel : recording->channels)
        names.push_back(channel.name);
    EXPECT_THAT(names, testing::ElementsAre("Speed", "Temp", "Temp (column 4)", "column 5"));
}

// Whatever the columns are called, or not at all: letters of the hemispheres say what they are.
TEST(OddTables, AnglesWithLettersArePositionsUnderAnyName) {
    const std::vector<std::function<std::string(double, char)>> forms{
        [](double degrees, char letter) {
            return two_digits(std::floor(degrees)) + "°" +
                   base::fixed_text(10.0 + (degrees - std::floor(degrees)) * 60.0 - 10.0, 5) + "'" + letter;
        },
        [](double degrees, char letter) { return base::fixed_text(degrees, 7) + " " + letter; },
        [](double degrees, char letter) { return letter + base::fixed_text(degrees, 7); }};
    for (const auto& form : forms)
        for (const std::string header : {"a,b,c,d\n", "", "Time,Pos A,Pos B,Speed (km/h)\n"}) {
            std::string text = header;
            for (int i = 0; i < 60; ++i)
                text += base::fixed_text(i * 0.1, 1) + "," + form(47.3 + i * 1e-5, 'S') + "," +
                        form(18.6 + i * 1e-5, 'W') + "," + base::fixed_text(40.0, 1) + "\n";
            const auto recording = import_bytes(text, "odd.csv");
            ASSERT_TRUE(recording.ok()) << text.substr(0, 100);
            const auto* const latitude = recording->find(Meaning::latitude);
            const auto* const longitude = recording->find(Meaning::longitude);
            ASSERT_TRUE(latitude && longitude) << text.substr(0, 100);
            EXPECT_NEAR(latitude->values[10], -47.3001 * std::acos(-1.0) / 180.0, 1e-9);
            EXPECT_NEAR(longitude->values[10], -18.6001 * std::acos(-1.0) / 180.0, 1e-9);
        }
}

TEST(OddTables, ATimeThatCannotBeReadIsNamed) {
    const auto refused =
        import_bytes("Time,Speed (km/h),Gear,RPM\nsoon,100,3,6000\nlater,101,3,6100\nlatest,102,4,5000\n", "odd.csv");
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().place.column, "Time");
    EXPECT_THAT(base::one_line(refused.error()), testing::HasSubstr("\"soon\""));
}

} // namespace
} // namespace lapwright::import
