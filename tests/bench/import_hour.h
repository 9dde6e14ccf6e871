// SPDX-License-Identifier: GPL-3.0-or-later
// The generated hour: 100 Hz × 3600 s, 24 columns, some 57 MB of commas and points, as a logger with many sensors would
// write it.  Seeded; the same on every machine.
#pragma once

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>
#include <string>

namespace lapwright::bench {

inline constexpr std::size_t hour_rows = 360'000;
inline constexpr std::size_t hour_columns = 24;

namespace hour {

struct Column {
    const char* header;
    int decimals;
    double middle;
    double swing;
    double period_s;
    double noise;
};

inline constexpr std::array<Column, hour_columns - 1> columns{{
    {"Latitude (deg)", 7, 54.9, 0.004, 96.0, 1e-6},
    {"Longitude (deg)", 7, 2.35, 0.006, 96.0, 1e-6},
    {"Altitude (m)", 2, 12.0, 5.0, 96.0, 0.1},
    {"GPS Speed (km/h)", 2, 120.0, 60.0, 24.0, 0.2},
    {"Course (deg)", 3, 180.0, 170.0, 96.0, 0.2},
    {"Wheel Speed FL (km/h)", 2, 121.0, 60.0, 24.0, 0.3},
    {"Wheel Speed FR (km/h)", 2, 121.0, 60.0, 24.0, 0.3},
    {"Wheel Speed RL (km/h)", 2, 122.0, 60.0, 24.0, 0.4},
    {"Wheel Speed RR (km/h)", 2, 122.0, 60.0, 24.0, 0.4},
    {"Longitudinal Acc (g)", 3, 0.0, 0.9, 12.0, 0.02},
    {"Lateral Acc (g)", 3, 0.0, 1.2, 16.0, 0.02},
    {"Vertical Acc (g)", 3, 1.0, 0.1, 3.0, 0.05},
    {"Yaw Rate (deg/s)", 3, 0.0, 30.0, 16.0, 0.3},
    {"Throttle (%)", 2, 50.0, 50.0, 12.0, 0.0},
    {"Brake Pressure (bar)", 2, 20.0, 20.0, 12.0, 0.05},
    {"Steering Angle (deg)", 2, 0.0, 90.0, 16.0, 0.5},
    {"Gear", 0, 3.5, 1.5, 24.0, 0.0},
    {"Engine Speed (rpm)", 0, 5500.0, 1500.0, 6.0, 10.0},
    {"Oil Pressure (bar)", 3, 4.5, 0.5, 30.0, 0.02},
    {"Oil Temperature (C)", 2, 110.0, 8.0, 600.0, 0.1},
    {"Water Temperature (C)", 2, 90.0, 5.0, 700.0, 0.1},
    {"Battery (V)", 3, 13.8, 0.2, 60.0, 0.02},
    {"Lap", 0, 0.0, 0.0, 1.0, 0.0},
}};

inline void append(std::string& text, double value, int decimals) {
    std::array<char, 64> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals);
    text.append(buffer.data(), end.ptr);
}

} // namespace hour

inline std::string make_hour(std::size_t rows = hour_rows) {
    std::mt19937_64 engine(20260516);
    // A triangular deviate from the engine's bits: distributions of the standard library differ between machines.
    const auto deviate = [&engine] {
        const auto unit = [&engine] { return static_cast<double>(engine() >> 11U) * 0x1p-53; };
        return unit() + unit() - 1.0;
    };
    std::string text = "Driver,Seeded Twister\nVehicle,Test bench\nTrack,Nowhere\n\nTime (s)";
    for (const auto& column : hour::columns)
        text += "," + std::string(column.header);
    text += "\n";
    text.reserve(rows * 165);
    for (std::size_t row = 0; row < rows; ++row) {
        const double time_s = static_cast<double>(row) / 100.0;
        hour::append(text, time_s, 3);
        for (std::size_t i = 0; i < hour::columns.size(); ++i) {
            const auto& column = hour::columns[i];
            double value =
                column.middle +
                column.swing * std::sin(6.283185307179586 * time_s / column.period_s + static_cast<double>(i)) +
                column.noise * deviate();
            if (i + 1 == hour::columns.size()) value = std::floor(time_s / 96.0);
            text += ',';
            hour::append(text, value, column.decimals);
        }
        text += '\n';
    }
    return text;
}

} // namespace lapwright::bench
