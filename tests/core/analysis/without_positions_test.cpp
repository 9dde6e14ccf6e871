// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions recorded without positions (wheel speed, lateral acceleration, lap column)
// against the simulator's truth over seeds, each with its own two drives.  Bars: lap times
// within one sample of the lap column, gap trace up to 60 ms RMS with wheels whose scale is
// wrong by 2 % in its own way each lap, bands that hold the truth in 90 to 98 % of cases.
//
// The gap claims that lap B passed, at a given time, the same tarmac that A passed at another: the truth says when B
// really passed where A really was.
#include "core/analysis/dead_reckoned_session.h"
#include "core/analysis/run.h"
#include "core/recording/warning_words.h"
#include "support/recording_of.h"
#include "support/two_drives.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>

namespace {

using namespace lapwright;
using truth::Quantity;

constexpr double rate_hz = 50.0;
constexpr std::uint64_t seeds = 20;
// What is known of slip beforehand was chosen on seeds 700 to 709 and looked at on 300 to 319; these judge alone.
constexpr std::uint64_t first_seed = 400;

constexpr int flying_laps = 3;

truth::LoggerSpec wheels_only() {
    truth::LoggerSpec spec = truth::typical_logger(rate_hz);
    spec.position.rate_hz = 0.0;
    spec.velocity.rate_hz = 0.0;
    spec.wheel.rate_hz = rate_hz;
    spec.wheel_scale_lap_sd = 0.02;
    return spec;
}

// Speed, lateral acceleration and lap column are all that there is.
recording::Recording recorded(const truth::Session& session, const truth::LoggerSpec& spec, std::uint64_t seed,
                              const std::string& name, double lateral_sign = 1.0) {
    truth::LoggedSession logged = truth::log_session(session, spec, seed);
    std::erase_if(logged.channels, [](const truth::LoggedChannel& channel) {
        return channel.quantity != Quantity::wheel_speed_mps && channel.quantity != Quantity::a_lat_mps2 &&
               channel.quantity != Quantity::lap_number;
    });
    for (truth::LoggedChannel& channel : logged.channels)
        if (channel.quantity == Quantity::a_lat_mps2)
            for (double& value : channel.value)
                value *= lateral_sign;
    return test::recording_of(logged, name);
}

std::shared_ptr<const analysis::Session> understood(recording::Recording recording) {
    const auto result = analysis::understand(std::move(recording), {});
    if (!result) std::printf("  %s\n", base::one_line(result.error()).c_str());
    return result.ok() ? *result : nullptr;
}

std::shared_ptr<const analysis::Pairing> compared(const std::shared_ptr<const analysis::Session>& a,
                                                  const std::shared_ptr<const analysis::Session>& b) {
    if (!a || !b) return nullptr;
    const auto pairing = analysis::compare(a, b);
    if (!pairing) std::printf("  %s\n", base::one_line(pairing.error()).c_str());
    return pairing.ok() ? *pairing : nullptr;
}

struct Score {
    double squares = 0.0;
    int count = 0;
    int covered = 0;
    int laps = 0;
    double worst_lap_s = 0.0;
    [[nodiscard]] double rms() const { return std::sqrt(squares / count); }
    [[nodiscard]] double coverage() const { return static_cast<double>(covered) / count; }
};

void score(Score& total, const analysis::Pairing& p, const test::TwoDrives& truly) {
    const auto length = truly.a.track().length_m();
    const truth::LapTruth& lap_a = truly.a.lap(p.a.lap.number);
    const truth::LapTruth& lap_b = truly.b.lap(p.b.lap.number);
    total.worst_lap_s = std::max(
        {total.worst_lap_s, std::abs(p.a.lap.time_s() - lap_a.time_s()), std::abs(p.b.lap.time_s() - lap_b.time_s())});
    total.laps += 2;
    for (std::size_t i = 20; i + 20 < p.comparison.gap.distance_m.size(); i += 40) {
        const double at_a = p.a.lap.start_s + p.a.trace.best.time_s[i];
        const double station = truly.a.at_time(at_a).unwrapped_m - p.a.lap.number * length;
        if (station < 0.0 || station > length) continue;
        const double gap = truly.b.lap_clock_s(p.b.lap.number, station) - (at_a - lap_a.start_s);
        const double error = p.comparison.gap.gap_s[i] - gap;
        total.squares += error * error;
        ++total.count;
        if (p.comparison.gap.low_s[i] <= gap && gap <= p.comparison.gap.high_s[i]) ++total.covered;
    }
}

void report(const char* what, const Score& total) {
    std::printf("  %s: gap RMS %.1f ms, covered %.3f of %d, worst lap %.1f ms of %d\n", what, total.rms() * 1e3,
                total.coverage(), total.count, total.worst_lap_s * 1e3, total.laps);
}

void expect_within_bars(const Score& total) {
    EXPECT_LE(total.worst_lap_s, 1.0 / rate_hz + 1e-9);
    EXPECT_LE(total.rms(), 60e-3);
    EXPECT_GE(total.coverage(), 0.90);
    EXPECT_LE(total.coverage(), 0.98);
}

TEST(WithoutPositions, TwoSessionsOnWheelsStayWithinTheBars) {
    Score total;
    for (std::uint64_t seed = first_seed; seed < first_seed + seeds; ++seed) {
        const test::TwoDrives both = test::two_drives(seed, flying_laps);
        const auto pairing = compared(understood(recorded(both.a, wheels_only(), 2 * seed + 1, "a")),
                                      understood(recorded(both.b, wheels_only(), 2 * seed + 2, "b")));
        ASSERT_TRUE(pairing);
        score(total, *pairing, both);
    }
    report("two without", total);
    expect_within_bars(total);
}

TEST(WithoutPositions, OneWithSatellitesAgainstOneOnWheels) {
    Score total;
    for (std::uint64_t seed = first_seed; seed < first_seed + seeds; ++seed) {
        const test::TwoDrives both = test::two_drives(seed, flying_laps);
        const auto pairing = compared(
            understood(test::recording_of(truth::log_session(both.a, truth::typical_logger(rate_hz), seed), "a")),
            understood(recorded(both.b, wheels_only(), 2 * seed + 2, "b")));
        ASSERT_TRUE(pairing);
        score(total, *pairing, both);
    }
    report("one without", total);
    expect_within_bars(total);
}

// Where nobody recorded the length of the lap, wheels alone say how fast both went.
TEST(WithoutPositions, SpeedsOfWheelsAloneAreSaidToBeTheirs) {
    const test::TwoDrives both = test::two_drives(first_seed, flying_laps);
    const auto on_wheels = understood(recorded(both.b, wheels_only(), 2, "b"));
    const auto with =
        understood(test::recording_of(truth::log_session(both.a, truth::typical_logger(rate_hz), 1), "a"));
    const auto said = [](const std::vector<recording::Warning>& warnings) {
        return std::ranges::any_of(warnings, [](const recording::Warning& warning) {
            return recording::words(warning).find("as its wheels read them") != std::string::npos;
        });
    };
    EXPECT_TRUE(said(on_wheels->warnings));
    EXPECT_TRUE(said(compared(understood(recorded(both.a, wheels_only(), 3, "c")), on_wheels)->warnings));
    EXPECT_FALSE(said(compared(with, on_wheels)->warnings));
}

// Lateral acceleration that is positive to the right changes nothing but the sketch's handedness.
TEST(WithoutPositions, ASensorThatIsPositiveToTheRightIsTurnedRound) {
    const test::TwoDrives both = test::two_drives(first_seed, flying_laps);
    const auto a = understood(recorded(both.a, wheels_only(), 1, "a"));
    const auto left = compared(a, understood(recorded(both.b, wheels_only(), 2, "b")));
    const auto right = compared(a, understood(recorded(both.b, wheels_only(), 2, "b", -1.0)));
    ASSERT_TRUE(left && right);
    ASSERT_EQ(left->comparison.gap.gap_s.size(), right->comparison.gap.gap_s.size());
    for (std::size_t i = 0; i < left->comparison.gap.gap_s.size(); i += 50)
        EXPECT_NEAR(left->comparison.gap.gap_s[i], right->comparison.gap.gap_s[i], 2e-3);
    for (std::size_t i = 0; i < left->b.trace.best.size(); i += 50)
        EXPECT_NEAR(left->b.trace.best.lateral_mps2[i], right->b.trace.best.lateral_mps2[i], 0.5);
}

// How far across the road the car was, nobody recorded.
TEST(WithoutPositions, TheOffsetFromTheLineIsAbsent) {
    const test::TwoDrives both = test::two_drives(first_seed, flying_laps);
    const auto pairing =
        compared(understood(test::recording_of(truth::log_session(both.a, truth::typical_logger(rate_hz), 1), "a")),
                 understood(recorded(both.b, wheels_only(), 2, "b")));
    ASSERT_TRUE(pairing);
    const auto known = [](double value) { return std::isfinite(value); };
    EXPECT_TRUE(std::ranges::all_of(pairing->a.trace.best.offset_m, known));
    EXPECT_TRUE(std::ranges::none_of(pairing->b.trace.best.offset_m, known));
    ASSERT_FALSE(pairing->b.trace.draws.empty());
    EXPECT_TRUE(std::ranges::none_of(pairing->b.trace.draws.front().offset_m, known));
    ASSERT_FALSE(pairing->b.clean_traces.empty());
    EXPECT_TRUE(std::ranges::none_of(pairing->b.clean_traces.front().offset_m, known));
}

TEST(WithoutPositions, SaysSoAndNeedsALapColumn) {
    const test::TwoDrives both = test::two_drives(first_seed, flying_laps);
    recording::Recording recording = recorded(both.a, wheels_only(), 1, "a");
    const auto session = understood(recording);
    ASSERT_TRUE(session);
    ASSERT_FALSE(session->warnings.empty());
    EXPECT_EQ(session->warnings.front().kind, recording::WarningKind::no_positions);
    EXPECT_EQ(session->gate_origin, "lap column of the file");
    std::erase_if(recording.channels,
                  [](const recording::Channel& channel) { return channel.meaning == recording::Meaning::lap_number; });
    const auto without_laps = understood(std::move(recording));
    ASSERT_TRUE(without_laps);
    ASSERT_TRUE(without_laps->why_no_laps);
    EXPECT_EQ(without_laps->why_no_laps->code, base::ErrorCode::no_laps);
    EXPECT_TRUE(without_laps->laps.empty());
    EXPECT_EQ(without_laps->trust.channels.size(), without_laps->recording->channels.size());
    const auto refused = analysis::compare(session, without_laps);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, base::ErrorCode::no_laps);
}

} // namespace
