// SPDX-License-Identifier: GPL-3.0-or-later
// The whole way from channels to a comparison against the simulator's truth, without sensor noise: what is left is the
// program's own error.  Bars: lap times within 1 ms, gap trace within 0.5 ms RMS, gains sum to 1e-9 s.
#include "core/analysis/run.h"
#include "support/recording_of.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <cmath>
#include <gtest/gtest.h>

namespace {

using namespace lapwright;

struct Case {
    truth::Session truth_a;
    truth::Session truth_b;
    std::shared_ptr<const analysis::Session> a;
    std::shared_ptr<const analysis::Session> b;
    std::shared_ptr<const analysis::Pairing> pairing;
};

std::shared_ptr<const analysis::Session> understood(const truth::Session& session, double rate_hz,
                                                    const std::string& name, unsigned draws) {
    analysis::SessionOptions options;
    options.motion.draws = draws;
    const auto result = analysis::understand(
        test::recording_of(truth::log_session(session, truth::perfect_logger(rate_hz), 1), name), options);
    EXPECT_TRUE(result.ok()) << (result.ok() ? "" : base::one_line(result.error()));
    return result.ok() ? *result : nullptr;
}

Case make_case(double rate_hz) {
    const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
    truth::SessionPlan plan;
    plan.flying_laps = 4;
    truth::DriverTruth driver_a;
    truth::DriverTruth driver_b;
    driver_b.style_seed = 2;
    Case c{truth::drive_session(track, truth::light_aero_hatch(), driver_a, plan, 11),
           truth::drive_session(track, truth::heavy_powerful_coupe(), driver_b, plan, 12),
           {},
           {},
           {}};
    c.a = understood(c.truth_a, rate_hz, "a", 0);
    c.b = understood(c.truth_b, rate_hz, "b", 0);
    const auto pairing = analysis::compare(c.a, c.b);
    EXPECT_TRUE(pairing.ok()) << (pairing.ok() ? "" : base::one_line(pairing.error()));
    if (pairing.ok()) c.pairing = *pairing;
    return c;
}

// The exact time at which the true car passes the line's normal at a station, near a guess.
double true_passing(const truth::Session& session, const motion::LocalFrame& frame,
                    const motion::LocalFrame& truth_frame, const track::ReferenceLine& line, double station,
                    double guess_s) {
    const track::Vec2 r = line.position(station);
    const track::Vec2 t = line.tangent_at(station);
    const auto behind = [&](double time) {
        const truth::TruthSample s = session.at_time(time);
        const auto p = motion::to_local(frame, motion::to_geodetic(truth_frame, {s.x_m, s.y_m, 0.0}));
        return (p.east_m - r.east) * t.east + (p.north_m - r.north) * t.north;
    };
    double low = guess_s - 0.4;
    double high = guess_s + 0.4;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (behind(middle) < 0.0 ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

double gap_rms(const Case& c) {
    const auto& p = *c.pairing;
    const truth::GeodeticOrigin origin = c.truth_a.track().origin();
    const double degree = std::numbers::pi / 180.0;
    const motion::LocalFrame truth_frame{{origin.latitude_deg * degree, origin.longitude_deg * degree, origin.height_m},
                                         true};
    double sum = 0.0;
    int count = 0;
    double start_a = 0.0;
    double start_b = 0.0;
    for (std::size_t i = 0; i < p.comparison.gap.distance_m.size(); i += 20) {
        const double s = p.comparison.gap.distance_m[i];
        const double a = true_passing(c.truth_a, p.track.frame, truth_frame, p.track.line, s,
                                      p.a.lap.start_s + p.a.trace.best.time_s[i]);
        const double b = true_passing(c.truth_b, p.track.frame, truth_frame, p.track.line, s,
                                      p.b.lap.start_s + p.b.trace.best.time_s[i]);
        if (i == 0) {
            start_a = a;
            start_b = b;
        }
        const double error = p.comparison.gap.gap_s[i] - ((b - start_b) - (a - start_a));
        sum += error * error;
        ++count;
    }
    return std::sqrt(sum / count);
}

TEST(NoiseFree, LapTimesAreWithinAMillisecondAt25Hz) {
    const Case c = make_case(25.0);
    ASSERT_TRUE(c.a);
    double worst = 0.0;
    int flying = 0;
    for (const truth::LapTruth& lap : c.truth_a.laps()) {
        if (lap.kind == truth::LapKind::out || lap.kind == truth::LapKind::in) continue;
        const auto* found = c.a->lap(lap.number);
        ASSERT_TRUE(found);
        worst = std::max(worst, std::abs(found->time_s() - lap.time_s()));
        ++flying;
    }
    EXPECT_EQ(flying, 4);
    // The gate here is square to the driven line, the truth's to
    // the centre line: that alone is some tenths of a millisecond.
    EXPECT_LT(worst, 1e-3);
    RecordProperty("worst_lap_time_error_us", static_cast<int>(worst * 1e6));
    EXPECT_EQ(c.a->laps.front().kind, lap::LapKind::out);
    EXPECT_EQ(c.a->laps.back().kind, lap::LapKind::in);
}

TEST(NoiseFree, GapTraceIsWithinHalfAMillisecondAt25Hz) {
    const Case c = make_case(25.0);
    ASSERT_TRUE(c.pairing);
    const double rms = gap_rms(c);
    RecordProperty("gap_rms_us", static_cast<int>(rms * 1e6));
    EXPECT_LT(rms, 0.5e-3);
}

TEST(NoiseFree, GainsSumToTheDifferenceOfTheLapTimes) {
    const Case c = make_case(25.0);
    ASSERT_TRUE(c.pairing);
    double sum = 0.0;
    for (const auto& s : c.pairing->comparison.segments)
        sum += s.gain_s.value;
    const double difference = c.pairing->b.trace.best.lap_time_s() - c.pairing->a.trace.best.lap_time_s();
    EXPECT_NEAR(sum, difference, 1e-9);
    EXPECT_NEAR(c.pairing->comparison.gap_at_end_s.value, difference, 1e-9);
    EXPECT_NEAR(c.pairing->b.lap.time_s() - c.pairing->a.lap.time_s(), difference, 1e-9);
}

TEST(NoiseFree, EveryTrueCornerIsFoundWithItsMinimumSpeed) {
    const Case c = make_case(25.0);
    ASSERT_TRUE(c.pairing);
    const auto& segments = c.pairing->comparison.segments;
    int bottoms = 0;
    for (const truth::TrackSegment& corner : c.truth_a.track().segments()) {
        if (!corner.is_corner) continue;
        const double middle = 0.5 * (corner.start_m + corner.end_m);
        bool found = false;
        for (const auto& s : segments) {
            // The driven line is up to some 2 % shorter than the centre line; corners are wider than that.
            const double scaled = middle * c.pairing->track.line.length_m / c.truth_a.track().length_m();
            if (s.segment.kind == track::SegmentKind::corner && s.segment.start_m < scaled &&
                scaled < s.segment.end_m) {
                found = true;
                double truly = 1e9;
                double at = 0.0;
                for (double m = corner.start_m; m < corner.end_m; m += 0.5) {
                    const double speed = c.truth_a.speed_mps(c.pairing->a.lap.number, m);
                    if (speed < truly) at = m;
                    truly = std::min(truly, speed);
                }
                ASSERT_TRUE(s.a.min_speed_mps);
                // A corner taken flat is slowest at its entry, and where that lies is a matter of definition.
                if (at > corner.start_m + 5.0 && at < corner.end_m - 5.0) {
                    EXPECT_NEAR(s.a.min_speed_mps->value, truly, 0.05) << corner.name;
                    ++bottoms;
                }
            }
        }
        EXPECT_TRUE(found) << corner.name;
    }
    EXPECT_GE(bottoms, 8);
}

} // namespace
