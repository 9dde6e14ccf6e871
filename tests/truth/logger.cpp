// SPDX-License-Identifier: GPL-3.0-or-later
// The position bias is an Ornstein-Uhlenbeck process in its exact discrete form: b' = phi b + sd sqrt(1 - phi^2) N,
// phi = exp(-dt / tau), started from its stationary law.
#include "tests/truth/logger.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numbers>

#include "tests/truth/geodesy.h"
#include "tests/truth/random.h"

namespace truth {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;

bool same_clock(const SensorClock& a, const SensorClock& b) {
    return a.rate_hz == b.rate_hz && a.latency_s == b.latency_s && a.phase_s == b.phase_s;
}

class DriftingBias {
  public:
    DriftingBias(const double sd, const double tau_s, Random& random)
        : sd_(sd), tau_s_(tau_s), value_(sd * random.normal()) {}
    double step(const double dt_s, Random& random) {
        const double phi = std::exp(-dt_s / tau_s_);
        value_ = phi * value_ + sd_ * std::sqrt(1.0 - phi * phi) * random.normal();
        return value_;
    }

  private:
    double sd_;
    double tau_s_;
    double value_;
};

class Recorder {
  public:
    Recorder(const Session& session, const LoggerSpec& spec, const std::uint64_t seed)
        : session_(session), spec_(spec), seed_(seed) {}

    LoggedSession record() {
        position();
        velocity();
        inertial();
        pedals();
        engine();
        wheel();
        suspension();
        return std::move(out_);
    }

  private:
    using Samples = std::vector<TruthSample>;

    /// Truth on a sensor's clock, shared with the clock used before when it is the same.
    std::shared_ptr<const Samples> sampled(const SensorClock& clock) {
        if (last_ && same_clock(clock, last_clock_)) return last_;
        auto samples = std::make_shared<Samples>();
        const double end = session_.duration_s();
        for (std::size_t i = 0;; ++i) {
            const double stamp = clock.phase_s + static_cast<double>(i) / clock.rate_hz;
            const double shown = stamp - clock.latency_s;
            if (shown > end) break;
            if (shown < 0.0) continue;
            samples->push_back(session_.at_time(shown));
        }
        last_ = samples;
        last_clock_ = clock;
        return last_;
    }

    /// Stamps of a clock's samples, with jitter (never out of order) and rounding.
    std::vector<double> stamps(const Samples& samples, const SensorClock& clock) const {
        Random jitter(seed_, 401);
        std::vector<double> result;
        result.reserve(samples.size());
        for (const TruthSample& sample : samples) {
            double stamp = sample.time_s + clock.latency_s;
            if (spec_.stamp_jitter_sd_s > 0.0) {
                const double most = 0.4 / clock.rate_hz;
                stamp += std::clamp(spec_.stamp_jitter_sd_s * jitter.normal(), -most, most);
            }
            if (spec_.stamp_step_s > 0.0) stamp = std::round(stamp / spec_.stamp_step_s) * spec_.stamp_step_s;
            result.push_back(stamp);
        }
        return result;
    }

    [[nodiscard]] bool dropped(const double time_s) const {
        return std::any_of(spec_.drop_outs.begin(), spec_.drop_outs.end(), [time_s](const DropOut& out) {
            return time_s >= out.start_s && time_s < out.start_s + out.length_s;
        });
    }

    template <class Value>
    void add(const Quantity quantity, const SensorClock& clock, const bool from_satellites, Value value) {
        const auto samples = sampled(clock);
        const std::vector<double> times = stamps(*samples, clock);
        LoggedChannel channel{quantity, {}, {}};
        for (std::size_t i = 0; i < times.size(); ++i) {
            const double shown = value((*samples)[i]);
            if (from_satellites && dropped((*samples)[i].time_s)) continue;
            channel.time_s.push_back(times[i]);
            channel.value.push_back(shown);
        }
        out_.channels.push_back(std::move(channel));
    }

    void position() {
        if (spec_.position.rate_hz <= 0.0) return;
        Random random(seed_, 101);
        const double sd = spec_.position_bias_sd_m;
        const double white = spec_.position_white_sd_m;
        DriftingBias east(sd, spec_.position_bias_tau_s, random);
        DriftingBias north(sd, spec_.position_bias_tau_s, random);
        DriftingBias up(sd * spec_.height_factor, spec_.position_bias_tau_s, random);
        std::vector<GeodeticOrigin> places;
        for (const TruthSample& s : *sampled(spec_.position)) {
            const double dt = 1.0 / spec_.position.rate_hz;
            const double x = s.x_m + east.step(dt, random) + white * random.normal();
            const double y = s.y_m + north.step(dt, random) + white * random.normal();
            const double z = s.height_m + up.step(dt, random) + white * spec_.height_factor * random.normal();
            places.push_back(from_local(session_.track().origin(), x, y, z));
        }
        const auto part = [&](const Quantity quantity, double GeodeticOrigin::* field) {
            std::size_t i = 0;
            add(quantity, spec_.position, true, [&](const TruthSample&) { return places[i++].*field; });
        };
        part(Quantity::latitude_deg, &GeodeticOrigin::latitude_deg);
        part(Quantity::longitude_deg, &GeodeticOrigin::longitude_deg);
        part(Quantity::height_m, &GeodeticOrigin::height_m);
    }

    // A receiver's course is against the meridian of the place where it is, the truth's against the origin's.
    [[nodiscard]] double receiver_course(const TruthSample& s) const {
        constexpr double radians = kTurn / 360.0;
        const GeodeticOrigin& origin = session_.track().origin();
        const GeodeticOrigin place = from_local(origin, s.x_m, s.y_m, s.height_m);
        return s.course_rad +
               (place.longitude_deg - origin.longitude_deg) * radians * std::sin(place.latitude_deg * radians);
    }

    void velocity() {
        if (spec_.velocity.rate_hz <= 0.0) return;
        Random speed(seed_, 103);
        Random course(seed_, 107);
        add(Quantity::speed_mps, spec_.velocity, true,
            [&](const TruthSample& s) { return std::abs(s.speed_mps + spec_.speed_sd_mps * speed.normal()); });
        add(Quantity::course_rad, spec_.velocity, true, [&](const TruthSample& s) {
            const bool still = s.speed_mps < 0.3 && spec_.course_sd_rad > 0.0; // a course of noise alone
            const double shown =
                still ? kTurn * course.uniform() : receiver_course(s) + spec_.course_sd_rad * course.normal();
            return shown - kTurn * std::floor(shown / kTurn);
        });
    }

    void inertial() {
        if (spec_.inertial.rate_hz <= 0.0) return;
        Random random(seed_, 109);
        const auto axis = [&](const Quantity quantity, const double bias_sd, const double scale_sd,
                              const double noise_sd, auto value) {
            const double bias = bias_sd * random.normal();
            const double scale = 1.0 + scale_sd * random.normal();
            add(quantity, spec_.inertial, false,
                [&](const TruthSample& s) { return scale * value(s) + bias + noise_sd * random.normal(); });
        };
        axis(Quantity::a_long_mps2, spec_.accel_bias_sd_mps2, spec_.accel_scale_sd, spec_.accel_noise_sd_mps2,
             [&](const TruthSample& s) {
                 return s.a_long_mps2 + (spec_.accel_feels_slope ? kGravity_mps2 * s.slope : 0.0);
             });
        axis(Quantity::a_lat_mps2, spec_.accel_bias_sd_mps2, spec_.accel_scale_sd, spec_.accel_noise_sd_mps2,
             [&](const TruthSample& s) {
                 const double felt = session_.track().lateral_gravity_mps2(s.station_m);
                 return s.a_lat_mps2 - (spec_.accel_feels_slope ? felt : 0.0);
             });
        axis(Quantity::yaw_rate_radps, spec_.yaw_bias_sd_radps, 0.0, spec_.yaw_noise_sd_radps,
             [](const TruthSample& s) { return s.yaw_rate_radps; });
    }

    void pedals() {
        if (spec_.pedals.rate_hz <= 0.0) return;
        add(Quantity::throttle, spec_.pedals, false, [](const TruthSample& s) { return s.throttle; });
        add(Quantity::brake, spec_.pedals, false, [](const TruthSample& s) { return s.brake; });
    }

    void engine() {
        if (spec_.engine.rate_hz <= 0.0) return;
        add(Quantity::gear, spec_.engine, false, [](const TruthSample& s) { return static_cast<double>(s.gear); });
        add(Quantity::engine_rpm, spec_.engine, false, [](const TruthSample& s) { return s.engine_rpm; });
        add(Quantity::lap_number, spec_.engine, false, [](const TruthSample& s) { return static_cast<double>(s.lap); });
        double distance = 0.0;
        add(Quantity::distance_m, spec_.engine, false, [&](const TruthSample& s) {
            distance += s.speed_mps / spec_.engine.rate_hz;
            return distance;
        });
    }

    void wheel() {
        if (spec_.wheel.rate_hz <= 0.0) return;
        Random random(seed_, 113);
        std::vector<double> lap_scale;
        for (std::size_t l = 0; l < session_.laps().size() + 1; ++l) {
            lap_scale.push_back(spec_.wheel_scale + spec_.wheel_scale_lap_sd * Random(seed_, 200 + l).normal());
        }
        Random drifts(seed_, 114);
        DriftingBias drift(spec_.wheel_scale_drift_sd, spec_.wheel_scale_drift_tau_s, drifts);
        add(Quantity::wheel_speed_mps, spec_.wheel, false, [&](const TruthSample& s) {
            const double lock = spec_.wheel_lock_share * std::clamp((s.brake - 0.8) / 0.2, 0.0, 1.0);
            const double scale =
                lap_scale[static_cast<std::size_t>(s.lap)] + drift.step(1.0 / spec_.wheel.rate_hz, drifts);
            const double shown = scale * s.speed_mps * (1.0 - lock) + spec_.wheel_noise_sd_mps * random.normal();
            return std::max(0.0, shown);
        });
    }

    void suspension() {
        if (spec_.suspension.rate_hz <= 0.0) return;
        Random random(seed_, 127);
        for (int wheel = front_left; wheel <= rear_right; ++wheel) {
            const auto quantity = static_cast<Quantity>(static_cast<int>(Quantity::suspension_front_left_m) + wheel);
            add(quantity, spec_.suspension, false, [&](const TruthSample& s) {
                const auto travel =
                    suspension_travel_m(spec_.suspension_truth, session_.car(), session_.air_density(), s);
                return travel[static_cast<std::size_t>(wheel)] + spec_.suspension_truth.noise_sd_m * random.normal();
            });
        }
    }

    const Session& session_;
    const LoggerSpec& spec_;
    std::uint64_t seed_;
    std::shared_ptr<const Samples> last_;
    SensorClock last_clock_;
    LoggedSession out_;
};

void set_clocks(LoggerSpec& spec, const double rate_hz) {
    for (SensorClock* clock : {&spec.position, &spec.velocity, &spec.inertial, &spec.pedals, &spec.engine}) {
        clock->rate_hz = rate_hz;
    }
}

} // namespace

LoggerSpec typical_logger(const double rate_hz) {
    LoggerSpec spec;
    set_clocks(spec, rate_hz);
    return spec;
}

LoggerSpec perfect_logger(const double rate_hz) {
    LoggerSpec spec;
    set_clocks(spec, rate_hz);
    spec.wheel.rate_hz = rate_hz;
    spec.position_white_sd_m = 0.0;
    spec.position_bias_sd_m = 0.0;
    spec.speed_sd_mps = 0.0;
    spec.course_sd_rad = 0.0;
    spec.accel_noise_sd_mps2 = 0.0;
    spec.accel_bias_sd_mps2 = 0.0;
    spec.accel_scale_sd = 0.0;
    spec.yaw_noise_sd_radps = 0.0;
    spec.yaw_bias_sd_radps = 0.0;
    spec.wheel_scale = 1.0;
    spec.wheel_noise_sd_mps = 0.0;
    spec.wheel_lock_share = 0.0;
    return spec;
}

const LoggedChannel* LoggedSession::find(const Quantity quantity) const {
    const auto found = std::find_if(channels.begin(), channels.end(),
                                    [quantity](const LoggedChannel& channel) { return channel.quantity == quantity; });
    return found == channels.end() ? nullptr : &*found;
}

LoggedSession log_session(const Session& session, const LoggerSpec& spec, const std::uint64_t seed) {
    return Recorder(session, spec, seed).record();
}

} // namespace truth
