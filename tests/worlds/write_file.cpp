// SPDX-License-Identifier: GPL-3.0-or-later
// Open standards besides tables: GPX 1.1 and NMEA 0183 (GGA and RMC).  A receiver that freezes writes its last fix
// again, another one zeros.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

#include "tests/worlds/world.h"

namespace worlds {
namespace {

using truth::Quantity;

constexpr std::array satellite{Quantity::latitude_deg, Quantity::longitude_deg, Quantity::height_m, Quantity::speed_mps,
                               Quantity::course_rad};

enum class Gaps { left, frozen, zeros };

// The stamps that a satellite channel lacks get the value before, or zeros; before the first fix, the first.
void fill(truth::LoggedChannel& channel, double rate_hz, Gaps gaps, double fill_start_s) {
    std::vector<double> times;
    std::vector<double> values;
    const double step_s = 1.0 / rate_hz;
    for (double t = channel.time_s.front() - fill_start_s; t < channel.time_s.front() - 0.5 * step_s; t += step_s) {
        times.push_back(t);
        values.push_back(channel.value.front());
    }
    for (std::size_t i = 0; i < channel.time_s.size(); ++i) {
        while (gaps != Gaps::left && i > 0 && channel.time_s[i] - times.back() > 1.5 * step_s) {
            times.push_back(times.back() + step_s);
            values.push_back(gaps == Gaps::zeros ? 0.0 : channel.value[i - 1]);
        }
        times.push_back(channel.time_s[i]);
        values.push_back(channel.value[i]);
    }
    channel.time_s = std::move(times);
    channel.value = std::move(values);
}

truth::LoggedSession as_written(const LoggerPlan& logger, truth::LoggedSession logged) {
    const double first_s = logged.channels.empty() ? 0.0 : logged.channels.front().time_s.front();
    const double fill_s = logger.frozen_start ? std::min(first_s, 0.4) : 0.0;
    for (truth::LoggedChannel& channel : logged.channels) {
        const bool from_satellites = std::ranges::find(satellite, channel.quantity) != satellite.end();
        const Gaps gaps = logger.freezes ? Gaps::frozen : logger.writes_zeros ? Gaps::zeros : Gaps::left;
        if (from_satellites && !channel.time_s.empty() && (gaps != Gaps::left || fill_s > 0.0))
            fill(channel, logger.spec.position.rate_hz, gaps, fill_s);
        for (double& t : channel.time_s)
            t *= 1.0 + 1e-6 * logger.clock_ppm;
    }
    return logged;
}

template <class... Values>
std::string printed(const char* form, Values... values) {
    std::array<char, 256> text{};
    const int length = std::snprintf(text.data(), text.size(), form, values...);
    return {text.data(), static_cast<std::size_t>(length)};
}

struct Clock {
    int hours;
    int minutes;
    double seconds;
};

// The invented outing began on 14 June 2025 at 09:12:00 UTC.
Clock clock_at(double time_s) {
    const double day_s = 9.0 * 3600.0 + 12.0 * 60.0 + std::round(time_s * 1000.0) / 1000.0;
    const auto whole = static_cast<long>(day_s);
    return {static_cast<int>(whole / 3600), static_cast<int>(whole / 60 % 60),
            day_s - static_cast<double>(whole / 60 * 60)};
}

std::string gpx(const truth::LoggedSession& logged) {
    const auto& latitude = *logged.find(Quantity::latitude_deg);
    const auto& longitude = *logged.find(Quantity::longitude_deg);
    const auto& height = *logged.find(Quantity::height_m);
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"invented\" "
                       "xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n";
    for (std::size_t i = 0; i < latitude.time_s.size(); ++i) {
        const Clock c = clock_at(latitude.time_s[i]);
        text += printed(
            "<trkpt lat=\"%.8f\" lon=\"%.8f\"><ele>%.2f</ele><time>2025-06-14T%02d:%02d:%06.3fZ</time></trkpt>\n",
            latitude.value[i], longitude.value[i], height.value[i], c.hours, c.minutes, c.seconds);
    }
    return text + "</trkseg></trk></gpx>\n";
}

std::string sentence(const std::string& body) {
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return "$" + body + printed("*%02X\r\n", sum);
}

std::string degrees_and_minutes(double value, const char* form, char positive, char negative) {
    const double size = std::abs(value);
    const int whole = static_cast<int>(size);
    return printed(form, whole, (size - whole) * 60.0) + "," + (value < 0.0 ? negative : positive);
}

std::string nmea(const truth::LoggedSession& logged) {
    const auto& latitude = *logged.find(Quantity::latitude_deg);
    const auto& longitude = *logged.find(Quantity::longitude_deg);
    const auto& height = *logged.find(Quantity::height_m);
    const auto& speed = *logged.find(Quantity::speed_mps);
    const auto& course = *logged.find(Quantity::course_rad);
    std::string text;
    for (std::size_t i = 0; i < latitude.time_s.size(); ++i) {
        const Clock c = clock_at(latitude.time_s[i]);
        const std::string time = printed("%02d%02d%06.3f", c.hours, c.minutes, c.seconds);
        const std::string place = degrees_and_minutes(latitude.value[i], "%02d%010.7f", 'N', 'S') + "," +
                                  degrees_and_minutes(longitude.value[i], "%03d%010.7f", 'E', 'W');
        text += sentence("GPGGA," + time + "," + place + printed(",1,11,0.8,%.1f,M,47.0,M,,", height.value[i] - 47.0));
        text += sentence("GPRMC," + time + ",A," + place +
                         printed(",%.3f,%.2f,140625,,,A", speed.value[i] / 0.5144444444,
                                 course.value[i] * 180.0 / std::numbers::pi));
    }
    return text;
}

} // namespace

void write_file(Entry& entry, const truth::LoggedSession& logged) {
    const truth::LoggedSession shown = as_written(entry.logger, logged);
    const bool table = entry.logger.form == FileForm::table;
    const Quantity clock = table ? entry.logger.dialect.row_clock : Quantity::latitude_deg;
    entry.first_stamp_s = shown.find(clock)->time_s.front();
    entry.text = table                                ? truth::write_text(shown, entry.logger.dialect)
                 : entry.logger.form == FileForm::gpx ? gpx(shown)
                                                      : nmea(shown);
}

double Entry::true_time_s(double time_s) const {
    const double latency_s = logger.has_positions ? logger.spec.position.latency_s : 0.0;
    return (time_s + first_stamp_s) / (1.0 + 1e-6 * logger.clock_ppm) - latency_s;
}

} // namespace worlds
