// SPDX-License-Identifier: GPL-3.0-or-later
// See write_text.h. std::to_chars rounds correctly, so the same value gives the same text everywhere.
#include "tests/truth/write_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numbers>

#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"

namespace truth {
namespace {

constexpr double kDegrees = 180.0 / std::numbers::pi;

void append_fixed(std::string& text, const double value, const int decimals, const char decimal_mark) {
    std::array<char, 64> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals);
    const std::size_t start = text.size();
    text.append(buffer.data(), end.ptr);
    if (decimal_mark == '.') return;
    const std::size_t mark = text.find('.', start);
    if (mark != std::string::npos) text[mark] = decimal_mark;
}

void append_two_digits(std::string& text, const long long value) {
    text.push_back(static_cast<char>('0' + value / 10 % 10));
    text.push_back(static_cast<char>('0' + value % 10));
}

void append_time(std::string& text, const double time_s, const Dialect& dialect) {
    if (dialect.time_style == TimeStyle::seconds) {
        append_fixed(text, time_s, dialect.time_decimals, dialect.decimal_mark);
        return;
    }
    if (dialect.time_style == TimeStyle::milliseconds) {
        append_fixed(text, 1000.0 * time_s, dialect.time_decimals, dialect.decimal_mark);
        return;
    }
    const auto ms = static_cast<long long>(std::llround(1000.0 * (dialect.start_of_day_s + time_s))) % 86400000LL;
    append_two_digits(text, ms / 3600000);
    text.push_back(':');
    append_two_digits(text, ms / 60000 % 60);
    text.push_back(':');
    append_two_digits(text, ms / 1000 % 60);
    text.push_back(dialect.decimal_mark);
    append_two_digits(text, ms % 1000 / 10);
    text.push_back(static_cast<char>('0' + ms % 10));
}

std::string header_text(const std::string& name, const std::string& unit, const UnitPlace place) {
    return place == UnitPlace::header_brackets && !unit.empty() ? name + " [" + unit + "]" : name;
}

void append_head(std::string& text, const Dialect& dialect) {
    for (const auto& [key, value] : dialect.preamble)
        text += key + dialect.delimiter + value + dialect.line_end;
    if (dialect.blank_line_after_preamble) text += dialect.line_end;
    text += header_text(dialect.time_header, dialect.time_unit, dialect.units);
    for (const TextColumn& column : dialect.columns) {
        text += dialect.delimiter + header_text(column.header, column.unit, dialect.units);
    }
    text += dialect.line_end;
    if (dialect.units != UnitPlace::own_row) return;
    text += dialect.time_unit;
    for (const TextColumn& column : dialect.columns)
        text += dialect.delimiter + column.unit;
    text += dialect.line_end;
}

/// Walks along one channel row by row.
class Cursor {
  public:
    explicit Cursor(const LoggedChannel* channel) : channel_(channel) {}

    /// Index + 1 of the sample to show at a stamp; 0 for none.
    std::size_t sample_at(const double time_s, const Missing missing) {
        constexpr double kSameStamp_s = 1e-6;
        if (channel_ == nullptr) return 0;
        const std::vector<double>& times = channel_->time_s;
        while (next_ < times.size() && times[next_] <= time_s + kSameStamp_s)
            ++next_;
        if (next_ == 0) return 0;
        const bool fresh = times[next_ - 1] >= time_s - kSameStamp_s;
        return fresh || missing == Missing::hold ? next_ : 0;
    }
    [[nodiscard]] double value(const std::size_t sample) const { return channel_->value[sample - 1]; }

  private:
    const LoggedChannel* channel_;
    std::size_t next_ = 0;
};

} // namespace

std::string fixed_text(const double value, const int decimals, const char decimal_mark) {
    std::string text;
    append_fixed(text, value, decimals, decimal_mark);
    return text;
}

std::string write_text(const LoggedSession& session, const Dialect& dialect) {
    std::string text;
    append_head(text, dialect);
    const LoggedChannel* clock = session.find(dialect.row_clock);
    if (clock == nullptr) return text;
    std::vector<Cursor> cursors;
    for (const TextColumn& column : dialect.columns)
        cursors.emplace_back(session.find(column.quantity));
    text.reserve(clock->time_s.size() * (12 + 9 * dialect.columns.size()));
    for (const double time_s : clock->time_s) {
        append_time(text, time_s, dialect);
        for (std::size_t c = 0; c < cursors.size(); ++c) {
            text.push_back(dialect.delimiter);
            const std::size_t sample = cursors[c].sample_at(time_s, dialect.missing);
            if (sample == 0) continue;
            const TextColumn& column = dialect.columns[c];
            append_fixed(text, cursors[c].value(sample) * column.factor, column.decimals, dialect.decimal_mark);
        }
        text += dialect.line_end;
    }
    return text;
}

Dialect plain_dialect() {
    Dialect dialect;
    dialect.columns = {
        {Quantity::latitude_deg, "Latitude", "deg", 1.0, 8},
        {Quantity::longitude_deg, "Longitude", "deg", 1.0, 8},
        {Quantity::height_m, "Altitude", "m", 1.0, 2},
        {Quantity::speed_mps, "Speed", "km/h", 3.6, 2},
        {Quantity::course_rad, "Course", "deg", kDegrees, 2},
        {Quantity::a_long_mps2, "Longitudinal acceleration", "g", 1.0 / kGravity_mps2, 3},
        {Quantity::a_lat_mps2, "Lateral acceleration", "g", 1.0 / kGravity_mps2, 3},
        {Quantity::yaw_rate_radps, "Yaw rate", "deg/s", kDegrees, 2},
        {Quantity::throttle, "Throttle", "%", 100.0, 1},
        {Quantity::brake, "Brake", "%", 100.0, 1},
        {Quantity::gear, "Gear", "", 1.0, 0},
        {Quantity::engine_rpm, "Engine speed", "rpm", 1.0, 0},
        {Quantity::lap_number, "Lap", "", 1.0, 0},
    };
    return dialect;
}

std::string benchmark_text(const double hours, const double rate_hz, const std::uint64_t seed) {
    SessionPlan plan;
    plan.flying_laps = static_cast<int>(std::ceil(hours * 3600.0 / 88.0));
    LoggerSpec spec = typical_logger(rate_hz);
    spec.wheel.rate_hz = rate_hz;
    LoggedSession logged = log_session(drive_session(ternbank(), light_aero_hatch(), {}, plan, seed), spec, seed);
    const auto rows = static_cast<std::size_t>(hours * 3600.0 * rate_hz);
    for (LoggedChannel& channel : logged.channels) {
        channel.time_s.resize(std::min(channel.time_s.size(), rows));
        channel.value.resize(std::min(channel.value.size(), rows));
    }
    Dialect dialect = plain_dialect();
    const std::vector<TextColumn> more{
        {Quantity::wheel_speed_mps, "Wheel speed", "km/h", 3.6, 2},
        {Quantity::distance_m, "Distance", "m", 1.0, 2},
    };
    dialect.columns.insert(dialect.columns.end(), more.begin(), more.end());
    constexpr std::size_t kColumnsBesideTime = 23;
    for (std::size_t i = 1; dialect.columns.size() < kColumnsBesideTime; ++i) {
        dialect.columns.push_back({Quantity::engine_rpm, "Sensor " + fixed_text(static_cast<double>(i), 0), "",
                                   0.01 * static_cast<double>(i), 3});
    }
    return write_text(logged, dialect);
}

} // namespace truth
