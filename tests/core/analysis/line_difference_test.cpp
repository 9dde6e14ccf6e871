// SPDX-License-Identifier: GPL-3.0-or-later
// How far apart two cars drove sideways, against the simulator's truth: whether the stated band holds it, with two
// receivers whose errors have nothing in common, and how near it is without noise.
#include "core/analysis/run.h"
#include "support/paired_drives.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace lapwright;

// Where the true car is beside the line when it passes a place of it, sideways to the left.
double true_offset(const truth::Session& session, const track::Track& track, double place_m, double guess_s) {
    const truth::GeodeticOrigin& origin = session.track().origin();
    const double degree = std::numbers::pi / 180.0;
    const motion::LocalFrame own{{origin.latitude_deg * degree, origin.longitude_deg * degree, origin.height_m}, true};
    const track::LinePoint at = track.line.at(place_m);
    const auto from_line = [&](double time_s) {
        const truth::TruthSample s = session.at_time(time_s);
        const auto p = motion::to_local(track.frame, motion::to_geodetic(own, {s.x_m, s.y_m, 0.0}));
        return track::Vec2{p.east_m - at.position_m.east, p.north_m - at.position_m.north};
    };
    double low = guess_s - 0.5;
    double high = guess_s + 0.5;
    for (int i = 0; i < 40; ++i) {
        const double middle = 0.5 * (low + high);
        const track::Vec2 away = from_line(middle);
        (away.east * at.tangent.east + away.north * at.tangent.north < 0.0 ? low : high) = middle;
    }
    const track::Vec2 away = from_line(low);
    return at.tangent.east * away.north - at.tangent.north * away.east;
}

struct Score {
    double squares = 0.0;
    double half_widths = 0.0;
    int count = 0;
    int covered = 0;
};

void score(Score& total, const test::TwoDrives& drives, const analysis::Pairing& p) {
    const comparison::LineDifference& line = p.comparison.line;
    ASSERT_FALSE(line.empty());
    for (std::size_t i = 0; i < line.distance_m.size(); i += 40) {
        const auto offset = [&](const truth::Session& session, const analysis::Side& side) {
            return true_offset(session, p.track, line.distance_m[i], side.lap.start_s + side.trace.best.time_s[i]);
        };
        const double truly = offset(drives.a, p.a) - offset(drives.b, p.b);
        const double error = line.difference_m[i] - truly;
        total.squares += error * error;
        total.half_widths += 0.5 * (line.high_m[i] - line.low_m[i]);
        ++total.count;
        total.covered += line.low_m[i] <= truly && truly <= line.high_m[i];
    }
}

TEST(LineDifference, ItsBandHoldsTheTruthWithTwoReceivers) {
    for (const double rate_hz : {10.0, 25.0}) {
        Score total;
        for (std::uint64_t seed = 700; seed < 708; ++seed) {
            const test::TwoDrives drives = test::two_drives(seed, 4);
            const auto pairing = test::paired(drives, truth::typical_logger(rate_hz), seed);
            ASSERT_TRUE(pairing);
            score(total, drives, *pairing);
        }
        const double coverage = static_cast<double>(total.covered) / total.count;
        std::printf("  %.0f Hz: RMS %.2f m, half-width %.2f m, covered %.3f of %d\n", rate_hz,
                    std::sqrt(total.squares / total.count), total.half_widths / total.count, coverage, total.count);
        EXPECT_GE(coverage, 0.90);
    }
}

TEST(LineDifference, IsTheTruthWithoutNoise) {
    Score total;
    const test::TwoDrives drives = test::two_drives(1, 4);
    const auto pairing = test::paired(drives, truth::perfect_logger(25.0), 1);
    ASSERT_TRUE(pairing);
    score(total, drives, *pairing);
    std::printf("  RMS %.3f m\n", std::sqrt(total.squares / total.count));
    EXPECT_LE(std::sqrt(total.squares / total.count), 0.1);
}

} // namespace
