// SPDX-License-Identifier: GPL-3.0-or-later
// The four manners of drawn tables: clocks, names, units and columns that mean nothing here, as each kind writes them.
#pragma once

#include "core/import/drawn_tables.h"

namespace lapwright::import::drawn {

using Words = std::vector<std::string>;

inline constexpr double degree = std::numbers::pi / 180.0;

inline void positions(Pen& pen, const Words& latitudes, const Words& longitudes, const std::string& unit, int decimals,
                      double invalid_share = 0.0, const std::string& invalid = "") {
    const std::size_t which = pen.engine()() % latitudes.size();
    pen.measured(Meaning::latitude, &DriveRow::latitude, {latitudes[which]}, {{Unit::degree, unit}}, decimals,
                 invalid_share, invalid);
    pen.measured(Meaning::longitude, &DriveRow::longitude, {longitudes[which]}, {{Unit::degree, unit}}, decimals,
                 invalid_share, invalid);
}

// How the stamps are written; the resolution that they have.
struct Clock {
    std::string header;
    std::function<std::string(double time_s)> cell;
    double step_s = 0.001;
};

inline std::string month_name(int month, std::size_t language) {
    static const std::vector<Words> names{
        {"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"},
        {"Jan", "Feb", "Mär", "Apr", "Mai", "Jun", "Jul", "Aug", "Sep", "Okt", "Nov", "Dez"},
        {"janv.", "févr.", "mars", "avr.", "mai", "juin", "juil.", "août", "sept.", "oct.", "nov.", "déc."},
        {"ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"},
        {"gen", "feb", "mar", "apr", "mag", "giu", "lug", "ago", "set", "ott", "nov", "dic"},
        {"jan", "feb", "mrt", "apr", "mei", "jun", "jul", "aug", "sep", "okt", "nov", "dec"}};
    return names[language][static_cast<std::size_t>(month - 1)];
}

inline Clock moment_clock(Engine& engine, double start_unix_s, const std::string& header) {
    const std::size_t form = engine() % 6;
    const std::size_t language = engine() % 6;
    return {header, [=](double time_s) {
                const Civil c = civil(start_unix_s + time_s);
                const std::string date = c.year + "-" + c.month + "-" + c.day;
                switch (form) {
                case 0:
                    return date + "T" + c.clock + "Z";
                case 1:
                    return date + " " + c.clock;
                case 2:
                    return c.day + "-" + month_name(c.month_number, language) + "-" + c.year + " " + c.clock;
                case 3:
                    return c.day + "." + c.month + "." + c.year + " " + c.clock;
                case 4:
                    return date + " " + c.clock + "+00:00";
                default:
                    return c.day + " " + month_name(c.month_number, language) + " " + c.year + " " + c.clock;
                }
            }};
}

inline Clock elapsed_clock(Engine& engine, const Words& names) {
    const std::string name = pick(engine, names);
    // "1:02:03.456" in parts.
    const auto parts = [](double t, const char* behind_hours, const char* behind_minutes, int decimals) {
        const double whole_s = std::floor(t * 1e3 + 0.5) / 1e3;
        const auto minutes = static_cast<std::size_t>(whole_s / 60.0);
        const std::string seconds = fixed(100.0 + whole_s - 60.0 * static_cast<double>(minutes), decimals).substr(1);
        return whole(minutes / 60) + behind_hours + whole(100 + minutes % 60).substr(1) + behind_minutes + seconds;
    };
    switch (engine() % 8) {
    case 4:
        return {name, [=](double t) { return parts(t, ":", ":", 3); }, 0.001};
    case 5:
        return {name, [=](double t) { return parts(t, "h ", "m ", 3) + "s"; }, 0.001};
    case 6:
        return {name, [=](double t) { return "0 days 0" + parts(t, ":", ":", 6); }, 0.001};
    case 0:
        return {name + " (s)", [](double t) { return fixed(t, 3); }, 0.001};
    case 1:
        return {name + "_ms", [](double t) { return fixed(t * 1e3, 0); }, 0.001};
    case 2:
        return {name + " [s]", [](double t) { return fixed(t, 4); }, 0.0001};
    default:
        return {name, [](double t) { return fixed(t, 3); }, 0.001};
    }
}

inline Clock epoch_clock(Engine& engine, double start_unix_s, const Words& names) {
    const std::string name = pick(engine, names);
    switch (engine() % 3) {
    case 0:
        return {name, [=](double t) { return fixed((start_unix_s + t) * 1e3, 0); }, 0.001};
    case 1:
        return {name, [=](double t) { return fixed(start_unix_s + t, 3); }, 0.001};
    default:
        return {name, [=](double t) { return fixed((start_unix_s + t) * 1e3, 0) + "000000"; }, 0.001};
    }
}

// A receiver's own clock.
inline Clock week_clock(Engine& engine) {
    const double start_ms = std::floor(between(engine, 0.0, 604'000.0)) * 1e3;
    return {pick<std::string>(engine, {"iTOW", "time of week (ms)", "tow_ms"}),
            [=](double t) { return fixed(start_ms + t * 1e3, 0); }, 0.001};
}

inline void stamp(Pen& pen, const Clock& clock) {
    const Drive& drive = pen.drive();
    pen.table().columns.push_back({clock.header, "", Meaning::other, {}, [&drive, clock](std::size_t i) {
                                       return clock.cell(drive.rows[i].time_s);
                                   }});
    pen.table().columns.back().is_clock = true;
    pen.table().clock_step_s = clock.step_s;
}

// Sensors of a telephone: joined words, epochs, -1 for what the receiver does not know.
inline void telephone(Pen& pen) {
    Engine& engine = pen.engine();
    if (pen.chance(0.3)) pen.count({"", "index", "id"});
    if (pen.chance(0.5))
        stamp(pen, epoch_clock(engine, pen.drive().start_unix_s,
                               {"timestamp", "time", "unixTime", "locationTimestamp_since1970"}));
    else
        stamp(pen, pen.chance(0.5) ? moment_clock(engine, pen.drive().start_unix_s,
                                                  pick<std::string>(engine, {"loggingTime", "Time", "date_time"}))
                                   : elapsed_clock(engine, {"seconds_elapsed", "Time", "elapsed"}));
    positions(pen, {"latitude", "Latitude", "locationLatitude", "lat"},
              {"longitude", "Longitude", "locationLongitude", "lng"}, "", 7);
    pen.measured(Meaning::speed, &DriveRow::speed_mps, {"speed", "Speed", "locationSpeed", "gps_speed"},
                 {{Unit::metre_per_second, pen.chance(0.6) ? "m/s" : ""}}, 2, pen.chance(0.6) ? 0.03 : 0.0, "-1");
    if (pen.chance(0.7))
        pen.measured(Meaning::course, &DriveRow::course, {"course", "bearing", "locationCourse"},
                     {{Unit::degree, "°"}, {Unit::degree, ""}}, 2, pen.chance(0.5) ? 0.03 : 0.0, "-1");
    if (pen.chance(0.6)) pen.wander("horizontalAccuracy", 3.0, 12.0, 1);
    if (pen.chance(0.5)) {
        for (const char* name : {"roll", "pitch", "yaw"})
            pen.wander(name, -0.4, 0.9, 7);
    }
    if (pen.chance(0.4)) {
        // The telephone lies across: its axes are no direction of the car.
        const double turn = between(engine, 1.0, 2.1);
        const auto axis = [&drive = pen.drive(), turn](bool along) {
            return [&drive, turn, along](std::size_t i) {
                const auto& row = drive.rows[i];
                const double a = along ? std::cos(turn) : std::sin(turn);
                const double b = along ? std::sin(turn) : -std::cos(turn);
                return fixed((a * row.longitudinal_mps2 + b * row.lateral_mps2) / 9.80665, 5);
            };
        };
        pen.free("accelerometerAccelerationX(G)", axis(true));
        pen.free("accelerometerAccelerationY(G)", axis(false));
        pen.wander("accelerometerAccelerationZ(G)", -1.1, -0.9, 5);
    }
    if (pen.chance(0.5)) pen.wander("batteryLevel", 0.3, 0.9, 2);
    if (pen.chance(0.4)) pen.wander("heartRate", 80.0, 160.0, 0);
}

// Written by a program for data analysis: an index without a name, short names in small letters.
inline void data_frame(Pen& pen) {
    Engine& engine = pen.engine();
    const bool index = pen.chance(0.7);
    if (index) pen.count({"", "", "Unnamed: 0", "index"});
    const auto clock = [&] {
        if (pen.chance(0.4))
            stamp(pen, moment_clock(engine, pen.drive().start_unix_s,
                                    pick<std::string>(engine, {"dt", "timestamp", "datetime", "when"})));
        else if (pen.chance(0.5))
            stamp(pen, elapsed_clock(engine, {"t", "time", "elapsed"}));
        else
            stamp(pen, epoch_clock(engine, pen.drive().start_unix_s, {"timestamp", "epoch", "ts"}));
    };
    const bool last = pen.chance(0.3);
    if (!last) clock();
    if (pen.chance(0.4)) {
        Column s;
        pen.free("s_m", [&drive = pen.drive()](std::size_t i) { return fixed(drive.rows[i].distance_m, 2); });
    }
    positions(pen, {"lat", "latitude", "gps_lat"}, {"lon", "longitude", "gps_lon"}, "", 8);
    const std::vector<Spelled> speeds = pen.style() == UnitStyle::none
                                            ? std::vector<Spelled>{{Unit::kilometre_per_hour, ""},
                                                                   {Unit::mile_per_hour, ""},
                                                                   {Unit::metre_per_second, ""}}
                                            : std::vector<Spelled>{{Unit::kilometre_per_hour, "kmh"},
                                                                   {Unit::kilometre_per_hour, "kph"},
                                                                   {Unit::mile_per_hour, "mph"},
                                                                   {Unit::metre_per_second, "mps"}};
    pen.measured(Meaning::speed, &DriveRow::speed_mps, {"speed", "v", "velocity", "gps_speed"}, speeds, 3);
    if (pen.chance(0.5))
        pen.measured(Meaning::lateral_acceleration, &DriveRow::lateral_mps2,
                     {"ay", "lat_acc", "acc_lat", "lateral_acc"},
                     {{Unit::standard_gravity, "g"}, {Unit::metre_per_second_squared, "ms2"}}, 4);
    if (pen.chance(0.5))
        pen.measured(Meaning::longitudinal_acceleration, &DriveRow::longitudinal_mps2, {"ax", "long_acc", "acc_long"},
                     {{Unit::standard_gravity, "g"}}, 4);
    if (pen.chance(0.4))
        pen.measured(Meaning::lap_number, &DriveRow::lap, {"lap", "lap_number", "Lap"}, {{Unit::none, ""}}, 0);
    if (pen.chance(0.4))
        pen.measured(Meaning::distance, &DriveRow::distance_m, {"dist", "distance"},
                     {{Unit::metre, ""}, {Unit::kilometre, ""}}, 5);
    if (pen.chance(0.3)) pen.wander("fuel", 20.0, 45.0, 2);
    if (pen.chance(0.3)) pen.wander("oil_temp", 80.0, 120.0, 1);
    if (pen.chance(0.2)) pen.count({"row", "frame", "sample", "n"});
    if (last) clock();
}

// A reader of the engine's own diagnosis: sources in brackets, months by name, '-' for what was not asked.
inline void diagnosis(Pen& pen) {
    Engine& engine = pen.engine();
    const double start = pen.drive().start_unix_s;
    const Drive& drive = pen.drive();
    if (pen.chance(0.5))
        pen.free("GPS Time", [&drive, start](std::size_t i) {
            const Civil c = civil(start + drive.rows[i].time_s);
            return "Wed " + month_name(c.month_number, 0) + " " + c.day + " " + c.clock.substr(0, 8) + " GMT " + c.year;
        });
    stamp(pen, moment_clock(engine, start, pick<std::string>(engine, {"Device Time", "Time", "Date Time"})));
    positions(pen, {"Latitude", "GPS Latitude", " Latitude"}, {"Longitude", "GPS Longitude", " Longitude"},
              pen.chance(0.5) ? "°" : "", 8, 0.02, "-");
    pen.measured(
        Meaning::speed, &DriveRow::speed_mps, {"GPS Speed", "Speed (GPS)"},
        {{Unit::metre_per_second, "Meters/second"}, {Unit::kilometre_per_hour, "km/h"}, {Unit::mile_per_hour, "mph"}},
        2);
    if (pen.chance(0.7))
        pen.measured(Meaning::wheel_speed, &DriveRow::speed_mps, {"Speed (OBD)", "Vehicle Speed"},
                     {{Unit::kilometre_per_hour, "km/h"}}, 0, 0.1, "-");
    if (pen.chance(0.7))
        pen.measured(Meaning::engine_speed, &DriveRow::engine_hz, {"Engine RPM", "RPM", "Engine Speed"},
                     {{Unit::revolution_per_minute, "rpm"}}, 0, 0.05, "-");
    if (pen.chance(0.5))
        pen.measured(Meaning::throttle, &DriveRow::throttle, {"Throttle Position", "Accelerator Pedal"},
                     {{Unit::percent, "%"}}, 1);
    if (pen.chance(0.6))
        pen.measured(Meaning::longitudinal_acceleration, &DriveRow::longitudinal_mps2,
                     {"G(x)", "Acceleration Sensor(X axis)"}, {{Unit::standard_gravity, "g"}}, 4);
    if (pen.chance(0.6))
        pen.measured(Meaning::lateral_acceleration, &DriveRow::lateral_mps2, {"G(y)", "Acceleration Sensor(Y axis)"},
                     {{Unit::standard_gravity, "g"}}, 4);
    if (pen.chance(0.4)) pen.wander("GPS vs OBD Speed difference", -1.0, 2.0, 2, "km/h");
    if (pen.chance(0.4)) pen.wander("Engine Load", 10.0, 90.0, 1, "%");
    if (pen.chance(0.4)) pen.wander("Coolant", 80.0, 95.0, 0, "°C");
    if (pen.chance(0.3))
        pen.measured(Meaning::distance, &DriveRow::distance_m, {"Trip Distance"},
                     {{Unit::kilometre, "km"}, {Unit::mile, "miles"}}, 4);
}

// Research data: a preamble, rows of units, codes for absent values, a local frame or radians.
inline void research(Pen& pen) {
    Engine& engine = pen.engine();
    const Drive& drive = pen.drive();
    if (pen.chance(0.3)) pen.count({"Sample", "Record", "No", "#"});
    if (pen.chance(0.3))
        for (const char* name : {"Temp", "Temp"})
            pen.wander(name, 20.0, 90.0, 1, "°C");
    switch (engine() % 5) {
    case 4:
        stamp(pen, week_clock(engine));
        break;
    case 0:
        stamp(pen, elapsed_clock(engine, {"Time", "Relative time", "Messzeit", "Temps"}));
        break;
    case 1: {
        const double days = std::floor(drive.start_unix_s / 86400.0) + (pen.chance(0.5) ? 25569.0 : 719529.0);
        stamp(pen, {"Time", [days](double t) { return fixed(days + 0.4 + t / 86400.0, 9); }, 0.0002});
        break;
    }
    case 2:
        pen.free("Date", [&drive](std::size_t i) {
            const Civil c = civil(drive.start_unix_s + drive.rows[i].time_s);
            return c.day + "/" + c.month + "/" + c.year;
        });
        stamp(pen, {"Time", [&drive](double t) { return civil(drive.start_unix_s + t).clock; }, 0.001});
        break;
    default:
        stamp(pen,
              {"Time of Day (s)",
               [&drive](double t) { return fixed(std::fmod(std::fmod(drive.start_unix_s, 86400.0) + t, 86400.0), 3); },
               0.001});
    }
    const std::string code = pick<std::string>(engine, {"-9999", "-999", "NaN", "9999"});
    const double share = pen.chance(0.6) ? 0.02 : 0.0;
    if (pen.chance(0.3)) {
        pen.measured(Meaning::east, &DriveRow::east_m, {"X", "East", "Easting"}, {{Unit::metre, "m"}}, 3);
        pen.measured(Meaning::north, &DriveRow::north_m, {"Y", "North", "Northing"}, {{Unit::metre, "m"}}, 3);
    } else if (pen.chance(0.3)) {
        pen.measured(Meaning::longitude, &DriveRow::longitude, {"X"}, {{Unit::degree, pen.chance(0.5) ? "deg" : ""}},
                     8);
        pen.measured(Meaning::latitude, &DriveRow::latitude, {"Y"}, {{Unit::degree, pen.chance(0.5) ? "deg" : ""}}, 8);
    } else {
        positions(pen, {"Latitude", "Lat", "Breitengrad"}, {"Longitude", "Lon", "Längengrad"}, "deg", 8, share, code);
    }
    pen.measured(Meaning::speed, &DriveRow::speed_mps,
                 {"Speed", "Velocity", "Geschwindigkeit", "Vitesse", "Velocidad", "Velocità", "Snelheid"},
                 {{Unit::kilometre_per_hour, "km/h"}, {Unit::metre_per_second, "m/s"}, {Unit::knot, "kn"}}, 3, share,
                 code);
    pen.measured(Meaning::lateral_acceleration, &DriveRow::lateral_mps2,
                 {"Lateral", "Lateral acceleration", "Querbeschleunigung", "Accélération latérale",
                  "Aceleración lateral", "Accelerazione laterale", "Dwarsversnelling"},
                 {{Unit::standard_gravity, "g"},
                  {Unit::metre_per_second_squared, "m/s²"},
                  {Unit::metre_per_second_squared, "m/s^2"}},
                 4, share, code);
    if (pen.chance(0.6))
        pen.measured(Meaning::longitudinal_acceleration, &DriveRow::longitudinal_mps2,
                     {"Longitudinal", "Inline", "Longitudinal acceleration", "Längsbeschleunigung"},
                     {{Unit::standard_gravity, "g"}, {Unit::metre_per_second_squared, "m/s²"}}, 4, share, code);
    if (pen.chance(0.5))
        pen.measured(Meaning::yaw_rate, &DriveRow::yaw_rate, {"Yaw rate", "Yaw", "Gierrate"},
                     {{Unit::degree_per_second, "deg/s"}, {Unit::radian_per_second, "rad/s"}}, 4, share, code);
    if (pen.chance(0.4))
        pen.measured(Meaning::course, &DriveRow::course, {"Heading", "Course", "Kurs"},
                     {{Unit::degree, "deg"}, {Unit::radian, "rad"}}, 4);
    if (pen.chance(0.4))
        for (const char* name : {"Roll", "Pitch"})
            pen.wander(name, -3.0, 3.0, 6, "deg");
    if (pen.chance(0.4))
        pen.measured(Meaning::altitude, &DriveRow::altitude_m, {"Altitude", "Höhe", "Elevation"},
                     {{Unit::metre, "m"}, {Unit::foot, "ft"}}, 2);
    if (pen.chance(0.3))
        pen.measured(Meaning::brake_pressure, &DriveRow::brake_pa,
                     {"Brake pressure", "Bremsdruck", "Pression de frein"},
                     {{Unit::bar, "bar"}, {Unit::pound_per_square_inch, "psi"}}, 2);
    if (pen.chance(0.3))
        pen.measured(Meaning::distance, &DriveRow::distance_m, {"Distance"},
                     {{Unit::kilometre, "km"}, {Unit::metre, "m"}}, 4);
}

} // namespace lapwright::import::drawn
