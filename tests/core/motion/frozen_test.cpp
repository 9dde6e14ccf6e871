// SPDX-License-Identifier: GPL-3.0-or-later
// Metamorphic: a receiver that repeats its last fix says no more than one that
// says nothing.  Drawn recordings are estimated twice, with rows frozen and with
// the same rows blanked; what is frozen, where and for how long is drawn too.
#include "core/motion/estimate_motion.h"
#include "core/motion/frozen.h"
#include "support/recording_of.h"
#include "truth/drive.h"
#include "truth/random.h"
#include "truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

#include <cmath>
#include <numbers>

namespace lapwright::motion {
namespace {

using recording::Channel;
using recording::Meaning;
using recording::Recording;

enum class What { fix, positions, speed, velocity };

struct Span {
    std::size_t first; // the first row that is not fresh
    std::size_t end;
};

bool concerns(What what, Meaning meaning) {
    const bool position = meaning == Meaning::latitude || meaning == Meaning::longitude;
    const bool velocity = meaning == Meaning::speed || meaning == Meaning::course;
    switch (what) {
    case What::fix:
        return position || velocity;
    case What::positions:
        return position;
    case What::speed:
        return meaning == Meaning::speed;
    case What::velocity:
        return velocity;
    }
    return false;
}

void freeze(Channel& channel, const std::vector<Span>& spans) {
    for (const Span& span : spans)
        for (std::size_t i = span.first; i < span.end; ++i)
            channel.values[i] = span.first == 0 ? channel.values[span.end] : channel.values[span.first - 1];
}

void blank(Channel& channel, const std::vector<Span>& spans) {
    std::vector<double> stamps = *channel.time_s;
    for (auto span = spans.rbegin(); span != spans.rend(); ++span) {
        const auto from = static_cast<std::ptrdiff_t>(span->first);
        const auto to = static_cast<std::ptrdiff_t>(span->end);
        stamps.erase(stamps.begin() + from, stamps.begin() + to);
        channel.values.erase(channel.values.begin() + from, channel.values.begin() + to);
    }
    channel.time_s = std::make_shared<const std::vector<double>>(std::move(stamps));
}

template <typename Change>
Recording with(Recording recording, What what, const Change& change) {
    for (Channel& channel : recording.channels)
        if (concerns(what, channel.meaning)) change(channel);
    return recording;
}

// Rows that lie apart, each run of a length between one row and two seconds.
std::vector<Span> drawn_spans(truth::Random& random, std::size_t rows, double rate_hz, bool at_start, bool short_runs) {
    std::vector<Span> spans;
    if (at_start) spans.push_back({0, 1 + static_cast<std::size_t>(3.0 * random.uniform())});
    const auto part = rows / 6;
    for (std::size_t i = 1; i < 5; ++i) {
        const double length_s = short_runs ? 3.0 / rate_hz : 0.5 + 1.5 * random.uniform();
        const std::size_t first =
            i * part + static_cast<std::size_t>(0.5 * random.uniform() * static_cast<double>(part));
        spans.push_back({first, first + std::max<std::size_t>(1, static_cast<std::size_t>(length_s * rate_hz))});
    }
    return spans;
}

std::vector<double> passings_s(const Recording& recording, const truth::Session& driven) {
    const auto motion = estimate_motion(recording);
    constexpr double degree = std::numbers::pi / 180.0;
    const truth::GeodeticOrigin& origin = driven.track().origin();
    const LocalFrame own{{origin.latitude_deg * degree, origin.longitude_deg * degree, motion->frame.origin.height_m}};
    const truth::TrackPoint gate = driven.track().at(0.0);
    const EastNorthUp centre = to_local(motion->frame, to_geodetic(own, {gate.x_m, gate.y_m, 0.0}));
    const double heading = gate.bend.heading_rad;
    std::vector<double> times;
    for (const truth::LapTruth& lap : driven.laps()) {
        if (lap.kind != truth::LapKind::flying) continue;
        double low = lap.start_s - 0.5;
        double high = lap.start_s + 0.5;
        for (int i = 0; i < 50; ++i) {
            const double middle = 0.5 * (low + high);
            const Vec2 p = motion->best.at(middle).position_m;
            const double ahead =
                (p.east - centre.east_m) * std::cos(heading) + (p.north - centre.north_m) * std::sin(heading);
            (ahead < 0.0 ? low : high) = middle;
        }
        times.push_back(low);
    }
    return times;
}

class Frozen : public testing::TestWithParam<int> {};

TEST_P(Frozen, IsAsGoodAsBlanked) {
    const auto seed = static_cast<std::uint64_t>(GetParam());
    truth::Random random(seed, 77);
    const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
    truth::SessionPlan plan;
    plan.flying_laps = 2;
    truth::DriverTruth driver;
    driver.style_seed = seed;
    const truth::Session driven = truth::drive_session(track, truth::light_aero_hatch(), driver, plan, seed);
    const double rate_hz = seed % 3 == 0 ? 10.0 : 25.0;
    const auto spec = seed % 4 == 1 ? truth::perfect_logger(rate_hz) : truth::typical_logger(rate_hz);
    const Recording recording = lapwright::test::recording_of(truth::log_session(driven, spec, seed), "simulated");
    const What what = std::array{What::fix, What::positions, What::velocity, What::speed}[seed % 4];
    const std::size_t rows = recording.find(Meaning::latitude)->size();
    // Single rows of a speed alone cannot be told from chance, and do no harm.
    const bool short_runs = seed % 2 == 1 && what != What::speed;
    const auto spans = drawn_spans(random, rows, rate_hz, what == What::fix || what == What::positions, short_runs);
    const auto frozen = passings_s(with(recording, what, [&](Channel& c) { freeze(c, spans); }), driven);
    const auto blanked = passings_s(with(recording, what, [&](Channel& c) { blank(c, spans); }), driven);
    ASSERT_EQ(frozen.size(), blanked.size());
    for (std::size_t i = 0; i < frozen.size(); ++i)
        EXPECT_NEAR(frozen[i], blanked[i], 5e-5) << "passing " << i;
}

INSTANTIATE_TEST_SUITE_P(Drawn, Frozen, testing::Range(0, 16));

Series speed_of(const std::vector<double>& time_s, double mps) {
    return {time_s, std::vector<double>(time_s.size(), mps), "speed", 0};
}

std::vector<double> seconds(std::size_t count, double step_s) {
    std::vector<double> time(count);
    for (std::size_t i = 0; i < count; ++i)
        time[i] = step_s * static_cast<double>(i);
    return time;
}

TEST(FrozenFixes, AreNotThoseOfACarThatStands) {
    const std::vector<double> time = seconds(200, 0.1);
    std::vector<Vec2> position(200, Vec2{5.0, 5.0});
    // A receiver that holds its fix at rest lets go with a jump.
    for (std::size_t i = 100; i < 200; ++i)
        position[i].east = 6.5 + 0.5 * 5.0 * std::pow(time[i] - time[100], 2);
    const auto marks = frozen_fixes({time, position, 0.01}, {}, {});
    EXPECT_EQ(std::ranges::count(marks, 1), 0);
}

TEST(FrozenFixes, AreNotThoseOfACoarseReceiverInASlowCar) {
    const std::vector<double> time = seconds(400, 0.04);
    std::vector<Vec2> position(400);
    for (std::size_t i = 0; i < 400; ++i)
        position[i].east = std::round(6.0 * time[i]); // six metres a second, written to the metre
    EXPECT_EQ(std::ranges::count(frozen_fixes({time, position, 1.0}, speed_of(time, 6.0), {}), 1), 0);
}

TEST(FrozenFixes, OfARecordingsBeginGoButForTheLast) {
    const std::vector<double> time = seconds(100, 0.04);
    std::vector<Vec2> position(100);
    for (std::size_t i = 0; i < 100; ++i)
        position[i].north = 30.0 * time[i];
    position[0] = position[1] = position[2]; // the first fix, and copies before it
    const auto marks = frozen_fixes({time, position, 1e-3}, {}, {});
    EXPECT_EQ(std::ranges::count(marks, 1), 2);
    EXPECT_EQ(marks[0] + marks[1], 2);
}

TEST(FrozenValues, AreNotThoseOfACoarseSpeedometer) {
    const std::vector<double> time = seconds(2000, 0.04);
    Series speed{time, std::vector<double>(2000), "speed", 0};
    for (std::size_t i = 0; i < 2000; ++i)
        speed.values[i] = std::round(40.0 + 10.0 * std::sin(0.1 * time[i])); // to 1 m/s
    EXPECT_EQ(std::ranges::count(frozen_values(speed, {}), 1), 0);
}

// An exact course along straights that are joined by bends, written to a hundredth of a degree.
TEST(FrozenValues, AreNotThoseOfACourseOnAStraight) {
    const std::vector<double> time = seconds(3000, 0.04);
    Series course{time, std::vector<double>(3000), "course", 0};
    double heading = 10.004;
    for (std::size_t i = 0; i < 3000; ++i) {
        const double phase = std::fmod(time[i], 12.0);
        heading += phase > 8.0 ? 0.04 * 30.0 * std::sin((phase - 8.0) / 4.0 * std::numbers::pi) : 0.0;
        course.values[i] = std::round(heading * 100.0) / 100.0;
    }
    EXPECT_EQ(std::ranges::count(frozen_values(course, {}), 1), 0);
}

} // namespace
} // namespace lapwright::motion
