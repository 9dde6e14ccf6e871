// SPDX-License-Identifier: GPL-3.0-or-later
// One invented world: a track, and two cars that drive it, each with a driver, an outing, a logger, and the file that
// the logger writes.  Everything follows from the seed.  Names, places and figures are invented.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "tests/truth/drive.h"
#include "tests/truth/logger.h"
#include "tests/truth/track_catalogue.h"
#include "tests/truth/write_text.h"

namespace worlds {

enum class FileForm { table, gpx, nmea };

struct LoggerPlan {
    truth::LoggerSpec spec;
    FileForm form = FileForm::table;
    truth::Dialect dialect;    // of a table
    double clock_ppm = 0.0;    // its clock runs fast by this
    bool freezes = false;      // in a drop-out the last fix is repeated
    bool frozen_start = false; // before the first fix, too
    bool writes_zeros = false; // in a drop-out positions, speed, course and altitude are 0
    bool has_positions = true;
    bool has_speed = true; // measured over the ground
    bool has_lap_column = false;
};

// What the person says of mass and air, each off by what the program takes such figures to be good to.
struct Springs {
    double front_n_per_m = 0.0;
    double rear_n_per_m = 0.0;
};

struct Stated {
    double mass_kg = 0.0;
    double temperature_k = 0.0;
    double pressure_pa = 0.0;
    double humidity = 0.0;
    std::optional<Springs> springs = {};
};

struct Entry {
    truth::CarTruth car;
    Stated stated;
    truth::DriverTruth driver;
    truth::SessionPlan plan;
    LoggerPlan logger;
    std::string file_name;
    std::shared_ptr<const truth::Session> session; // the exact truth
    std::string text;                              // the file
    double first_stamp_s = 0.0;                    // of its first row, by the logger's clock

    // When it truly was what the program calls `time_s`, which counts from the first row.
    [[nodiscard]] double true_time_s(double time_s) const;
    // A true duration by the logger's clock.
    [[nodiscard]] double shown_duration_s(double true_s) const { return true_s * (1.0 + 1e-6 * logger.clock_ppm); }
};

struct World {
    std::uint64_t seed = 0;
    std::shared_ptr<const truth::TrackShape> track;
    Entry a;
    Entry b;
    std::string in_words; // for a person who looks at a bad one
};

// The lap is between 1.4 and 6 km with 5 to 15 corners, either way round.
[[nodiscard]] std::shared_ptr<const truth::TrackShape> draw_track(std::uint64_t seed);
[[nodiscard]] truth::CarTruth draw_car(std::uint64_t seed, std::uint64_t stream);
[[nodiscard]] truth::DriverTruth draw_driver(std::uint64_t seed, std::uint64_t stream, std::size_t corners);
// Weather is that of the day, the same for both.
[[nodiscard]] truth::SessionPlan draw_outing(std::uint64_t seed, std::uint64_t stream, const truth::TrackShape& track);
[[nodiscard]] LoggerPlan draw_logger(std::uint64_t seed, std::uint64_t stream);
// Channels, names and springs where the logger records the suspension; before write_file.
void draw_suspension(std::uint64_t seed, std::uint64_t stream, Entry& entry);
// True: dry air of 20 °C at the pressure that gives it the density of the day.
[[nodiscard]] Stated draw_stated(std::uint64_t seed, std::uint64_t stream, double mass_kg, double air_density);
// What the logger writes, its drop-outs, frozen fixes and clock in it; sets text and first_stamp_s.
void write_file(Entry& entry, const truth::LoggedSession& logged);

[[nodiscard]] World draw_world(std::uint64_t seed);

} // namespace worlds
