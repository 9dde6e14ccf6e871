// SPDX-License-Identifier: GPL-3.0-or-later
// The demo tells the story that sample-sessions/README.md states: figures there are held here, in seconds and km/h.
#include "tests/truth/sample_sessions.h"

#include "tests/truth/track_catalogue.h"
#include "tests/truth/true_causes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace truth {
namespace {

class Demo : public testing::Test {
  protected:
    static const std::vector<Session>& sessions() {
        static const std::vector<Session> driven = [] {
            const auto track = std::make_shared<const TrackShape>(ternbank());
            std::vector<Session> result;
            for (const DemoEntry& entry : demo_entries())
                result.push_back(drive_entry(track, entry));
            return result;
        }();
        return driven;
    }
    static double gain(const std::string& segment, const std::size_t a, const std::size_t b) {
        const Session& first = sessions()[a];
        const Session& second = sessions()[b];
        const auto gap = [&](const double s) {
            return second.lap_clock_s(second.fastest_lap(), s) - first.lap_clock_s(first.fastest_lap(), s);
        };
        for (const TrackSegment& part : first.track().segments()) {
            if (part.name == segment) return gap(part.end_m) - gap(part.start_m);
        }
        return NAN;
    }
    static double fastest(const std::size_t i) { return sessions()[i].lap(sessions()[i].fastest_lap()).time_s(); }
};

TEST_F(Demo, LapTimesAreThoseInTheReadme) {
    EXPECT_EQ(sessions()[0].fastest_lap(), 6);
    EXPECT_EQ(sessions()[1].fastest_lap(), 1);
    EXPECT_EQ(sessions()[2].fastest_lap(), 1);
    EXPECT_NEAR(fastest(0), 90.434, 5e-4);
    EXPECT_NEAR(fastest(1), 90.893, 5e-4);
    EXPECT_NEAR(fastest(2), 91.067, 5e-4);
    EXPECT_NEAR(sessions()[0].lap(4).time_s(), 94.069, 5e-4);
    EXPECT_NEAR(sessions()[1].lap(2).time_s(), 94.085, 5e-4);
    EXPECT_NEAR(sessions()[2].lap(5).time_s(), 94.526, 5e-4);
}

TEST_F(Demo, OneFastCornerDecidesAndTheStraightsPaySomeBack) {
    EXPECT_NEAR(gain("Lantern", 0, 1), 0.263, 5e-4);
    EXPECT_NEAR(gain("Lantern straight", 0, 1), 0.146, 5e-4);
    EXPECT_NEAR(gain("Basin", 0, 1), 0.199, 5e-4);
    EXPECT_NEAR(gain("Harbour", 0, 1), 0.116, 5e-4);
    EXPECT_NEAR(gain("Buoy", 0, 1), 0.094, 5e-4);
    EXPECT_NEAR(gain("Harbour to Lantern", 0, 1), -0.175, 5e-4);
    EXPECT_NEAR(gain("Quay straight", 0, 1), -0.122, 5e-4);
    EXPECT_NEAR(gain("Back straight", 0, 1), -0.175, 5e-4);
}

TEST_F(Demo, GainsAddUpToTheGap) {
    double sum = 0.0;
    for (const TrackSegment& segment : sessions()[0].track().segments())
        sum += gain(segment.name, 0, 1);
    EXPECT_NEAR(sum, fastest(1) - fastest(0), 1e-9);
}

TEST_F(Demo, HatchIsFlatThroughLanternAndTheCoupeIsNot) {
    const TrackSegment lantern = sessions()[0].track().corners()[1];
    ASSERT_EQ(lantern.name, "Lantern");
    double min_hatch = 1.0;
    double slowest_coupe = 1e9;
    const double length = sessions()[0].track().length_m();
    for (double s = lantern.start_m; s < lantern.end_m; s += 1.0) {
        min_hatch = std::min(min_hatch, sessions()[0].at_unwrapped(6.0 * length + s).throttle);
        slowest_coupe = std::min(slowest_coupe, sessions()[1].speed_mps(1, s));
    }
    EXPECT_GT(min_hatch, 0.999);
    EXPECT_NEAR(3.6 * slowest_coupe, 205.3, 0.1);
}

TEST_F(Demo, WingEarnsItsKeep) {
    EXPECT_NEAR(fastest(2) - fastest(0), 0.633, 6e-4);
    EXPECT_NEAR(gain("Basin", 0, 2), 0.131, 5e-4);
    EXPECT_NEAR(gain("Harbour", 0, 2), 0.102, 5e-4);
    EXPECT_NEAR(gain("Back straight", 0, 2), -0.016, 5e-4);
}

TEST_F(Demo, CausesAreThoseInTheReadme) {
    const std::vector<DemoEntry> entries = demo_entries();
    const TrueCauses causes =
        true_causes(ternbank(), entries[0].car, entries[1].car, entries[0].driver, entries[0].plan.air_density);
    const CauseSeconds stated{-1.49, 3.12, -0.75, -1.52, 1.01};
    for (std::size_t i = 0; i < kCauseCount; ++i)
        EXPECT_NEAR(causes.total[i], stated[i], 5e-3) << i;
    EXPECT_NEAR(causes.gain_s, 0.36, 5e-3);
}

TEST_F(Demo, FilesHaveTheirOwnNames) {
    std::set<std::string> names;
    for (const NamedText& file : sample_files()) {
        names.insert(file.name);
        EXPECT_FALSE(file.text.empty()) << file.name;
    }
    EXPECT_EQ(names.size(), 7U);
}

} // namespace
} // namespace truth
