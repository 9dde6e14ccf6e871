// SPDX-License-Identifier: GPL-3.0-or-later
// The setup trial over whole sessions as long work: it tells how far it is, in order, and stops when it is called off.
#include "core/analysis/trial_run.h"

#include "core/analysis/run.h"
#include "support/recording_of.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace {

using namespace lapwright;

const std::vector<analysis::TrialSession>& sessions() {
    static const std::vector<analysis::TrialSession> three = [] {
        const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
        truth::SessionPlan plan;
        plan.flying_laps = 3;
        std::vector<analysis::TrialSession> made;
        for (std::uint64_t seed = 1; seed <= 3; ++seed) {
            const auto driven =
                truth::drive_session(track, truth::light_aero_hatch(), truth::DriverTruth{}, plan, seed);
            const auto session = analysis::understand(
                test::recording_of(truth::log_session(driven, truth::perfect_logger(10.0), seed), "session"), {});
            if (session.ok()) made.push_back({*session, seed == 2});
        }
        return made;
    }();
    return three;
}

TEST(TrialRun, TellsHowFarItIs) {
    ASSERT_EQ(sessions().size(), 3U);
    std::vector<double> parts;
    std::vector<std::string> stages;
    const auto report = analysis::run_trial(sessions(), {}, [&](std::string_view stage, double part) {
        parts.push_back(part);
        if (stages.empty() || stages.back() != stage) stages.emplace_back(stage);
        return true;
    });
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(std::is_sorted(parts.begin(), parts.end()));
    EXPECT_EQ(parts.front(), 0.0);
    EXPECT_GT(parts.back(), 0.9);
    EXPECT_LT(parts.back(), 1.0);
    EXPECT_GE(stages.size(), 5U);
    EXPECT_EQ(stages.back(), "telling what the change did to the car");
}

// A wing's step is found on the car, from recordings as they are logged, not on lap time alone.
TEST(TrialRun, TellsWhatTheChangeDidToTheCar) {
    const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
    truth::SessionPlan plan;
    plan.flying_laps = 4;
    std::vector<analysis::TrialSession> three;
    for (std::uint64_t seed = 11; seed <= 13; ++seed) {
        truth::CarTruth car = truth::light_aero_hatch();
        const bool changed = seed == 12;
        if (changed) {
            car.downforce_area_m2 -= 1.2;
            car.drag_area_m2 -= 0.12;
        }
        const auto driven = truth::drive_session(track, car, truth::DriverTruth{}, plan, seed);
        auto session = analysis::understand(
            test::recording_of(truth::log_session(driven, truth::perfect_logger(25.0), seed), "session"), {});
        ASSERT_TRUE(session.ok());
        three.push_back({*session, changed});
        three.back().setup.mass = car::Mass{car.mass_kg, 5.0};
    }
    const auto report = analysis::run_trial(three);
    ASSERT_TRUE(report.ok());
    ASSERT_TRUE(report->figures) << report->no_figures;
    const car::FigureChanges& f = *report->figures;
    EXPECT_LT(f.downforce_area_m2.low, -1.2);
    EXPECT_GT(f.downforce_area_m2.high, -1.2);
    EXPECT_LT(f.downforce_area_m2.high, 0.0) << "less wing is seen";
    EXPECT_LT(f.drag_area_m2.low, -0.12);
    EXPECT_GT(f.drag_area_m2.high, -0.12);
    EXPECT_FALSE(f.on_a_tonne);
    EXPECT_NE(report->sentence.find("drag area −0.1"), std::string::npos) << report->sentence;
}

// Called off at each of its reports in turn, it reports no more and gives no answer.
TEST(TrialRun, StopsWhereverItIsCalledOff) {
    ASSERT_EQ(sessions().size(), 3U);
    int reports = 0;
    ASSERT_TRUE(analysis::run_trial(sessions(), {}, [&](std::string_view, double) { return ++reports > 0; }).ok());
    for (int last = 1; last <= reports; last += 2) {
        int told = 0;
        const auto report =
            analysis::run_trial(sessions(), {}, [&](std::string_view, double) { return ++told < last; });
        ASSERT_FALSE(report.ok());
        EXPECT_EQ(report.error().code, base::ErrorCode::cancelled);
        EXPECT_EQ(told, last);
    }
}

} // namespace
