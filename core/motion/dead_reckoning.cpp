// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/dead_reckoning.h"

#include "core/math/local_polynomial.h"
#include "core/math/normal_random.h"
#include "core/motion/nodes.h"

#include <cmath>

namespace lapwright::motion {
namespace {

constexpr double series_rate_hz = 50.0;
constexpr double scale_error_sd = 0.003;
constexpr double scale_error_correlation_s = 5.0;
constexpr double slowest_turn_mps = 3.0; // below, lateral acceleration over speed is noise

// Turning to the left per second at the stamps of the speed.
std::vector<double> yaw_rates(const Measurements& measured, const Series& speed) {
    const bool has_rate = !measured.yaw_rate_radps.empty();
    const Series source = thinned(has_rate ? measured.yaw_rate_radps : measured.lateral_mps2, series_rate_hz);
    std::vector<double> rates(speed.size(), 0.0);
    if (source.size() < 2) return rates;
    for (std::size_t i = 0; i < rates.size(); ++i) {
        const double value = math::interpolated(source.time_s, source.values, speed.time_s[i]);
        rates[i] = has_rate ? value : speed.values[i] > slowest_turn_mps ? value / speed.values[i] : 0.0;
    }
    return rates;
}

} // namespace

Measurements with_dead_reckoned_course(const Measurements& measured) {
    Measurements result = measured;
    if (result.speed.empty()) result.speed = measured.wheel_speed;
    result.speed = thinned(result.speed, series_rate_hz);
    result.wheel_speed = {};
    const std::vector<double> rates = yaw_rates(measured, result.speed);
    // It has gone into the course, or is of no use.
    result.lateral_mps2 = {};
    result.course = {result.speed.time_s, std::vector<double>(result.speed.size(), 0.0), "reckoned course", 0};
    for (std::size_t i = 1; i < rates.size(); ++i) {
        const double step_s = result.speed.time_s[i] - result.speed.time_s[i - 1];
        result.course.values[i] = result.course.values[i - 1] - 0.5 * step_s * (rates[i] + rates[i - 1]);
    }
    return result;
}

void add_scale_errors(MotionEstimate& motion, std::uint64_t seed) {
    constexpr std::uint64_t first_stream = 1U << 20U; // apart from the smoother's own
    for (std::size_t d = 0; d < motion.draws.size(); ++d) {
        math::NormalStream normals(seed, first_stream + d);
        Path draw = drawn_path(motion, d);
        double error = scale_error_sd * normals.next();
        Vec2 moved;
        for (std::size_t i = 0; i < draw.size(); ++i) {
            const Vec2 velocity = draw.velocity_mps[i];
            if (i > 0) {
                const double step_s = (*draw.time_s)[i] - (*draw.time_s)[i - 1];
                const double kept = std::exp(-step_s / scale_error_correlation_s);
                error = kept * error + scale_error_sd * std::sqrt(1.0 - kept * kept) * normals.next();
                moved = {moved.east + step_s * error * velocity.east, moved.north + step_s * error * velocity.north};
            }
            draw.position_m[i] = {draw.position_m[i].east + moved.east, draw.position_m[i].north + moved.north};
            draw.velocity_mps[i] = {velocity.east * (1.0 + error), velocity.north * (1.0 + error)};
        }
        motion.draws[d] = departures(draw, motion.best);
    }
}

} // namespace lapwright::motion
