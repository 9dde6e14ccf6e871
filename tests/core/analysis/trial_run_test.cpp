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
    EXPECT_GE(stages.size(), 4U);
    EXPECT_EQ(stages.back(), "measuring every lap");
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
