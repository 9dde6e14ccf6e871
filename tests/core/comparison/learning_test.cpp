// SPDX-License-Identifier: GPL-3.0-or-later
// Learning a track, on drawn sessions: what is told is there, and what is not there is seldom told.
#include "core/comparison/learning.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace lapwright::comparison;

namespace {

// Three segments: learned to the end, learned early and then level, never changed.
std::vector<LearningLap> drawn_session(std::mt19937_64& random, int laps, double scatter_s) {
    std::normal_distribution<double> scatter(0.0, scatter_s);
    std::vector<LearningLap> session;
    for (int i = 0; i < laps; ++i) {
        const double share = i / (laps - 1.0);
        session.push_back({static_cast<double>(i + 1),
                           true,
                           {20.0 - 1.0 * share + scatter(random), 15.0 - std::min(3.0 * share, 1.0) + scatter(random),
                            30.0 + scatter(random)}});
    }
    return session;
}

} // namespace

TEST(Learning, TellsWhatGoesOnWhatStoppedAndWhatNeverWas) {
    std::mt19937_64 random(7);
    constexpr int sessions = 400;
    int going_on = 0;
    int stopped = 0;
    int stopped_wrongly = 0;
    int changed_wrongly = 0;
    for (int k = 0; k < sessions; ++k) {
        const LearningCurve curve = learning_curve(drawn_session(random, 16, 0.06));
        going_on += curve.segments[0].state == Learning::quicker;
        stopped_wrongly += curve.segments[0].state == Learning::stopped;
        stopped += curve.segments[1].state == Learning::stopped;
        changed_wrongly +=
            curve.segments[2].state != Learning::level && curve.segments[2].state != Learning::cannot_tell;
    }
    EXPECT_GE(going_on, 0.95 * sessions);
    EXPECT_LE(stopped_wrongly, 0.05 * sessions);
    EXPECT_GE(stopped, 0.6 * sessions);
    EXPECT_LE(changed_wrongly, 0.05 * sessions);
}

// A driver who is at home there is seldom told that the best lap was more than luck.
TEST(Learning, ChanceIsNotStillToBeWon) {
    std::mt19937_64 random(8);
    constexpr int sessions = 400;
    int told = 0;
    int told_of_traffic = 0;
    for (int k = 0; k < sessions; ++k) {
        auto session = drawn_session(random, 12, 0.06);
        told += learning_curve(session).segments[2].to_win_is_told;
        for (std::size_t i = 6; i < session.size(); ++i)
            session[i].segment_s[2] += 0.8; // worn tyres, say
        told_of_traffic += learning_curve(session).segments[2].to_win_is_told;
    }
    EXPECT_LE(told, 0.05 * sessions);
    EXPECT_GE(told_of_traffic, 0.95 * sessions);
}

TEST(Learning, SumsBestAndCountsOnlyLapsThatCount) {
    std::mt19937_64 random(9);
    auto session = drawn_session(random, 8, 0.05);
    session[3].counts = false;
    session[3].segment_s = {10.0, 10.0, 10.0}; // cut all corners
    const LearningCurve curve = learning_curve(session);
    double best_sum = 0.0;
    for (const LearningCourse& course : curve.segments) {
        EXPECT_NE(course.best_lap, 3U);
        EXPECT_NEAR(course.to_win_s.value, course.now_s.value - *course.best_s, 1e-12);
        best_sum += *course.best_s;
    }
    EXPECT_NEAR(*curve.best_segments_s, best_sum, 1e-12);
    EXPECT_LE(*curve.best_segments_s, *curve.lap.best_s);
}

TEST(Learning, FewLapsTellNothingAndSaySo) {
    std::mt19937_64 random(10);
    for (const int laps : {0, 1, 4}) {
        const auto session = laps == 0 ? std::vector<LearningLap>() : drawn_session(random, std::max(laps, 2), 0.05);
        const LearningCurve curve = learning_curve(session);
        EXPECT_EQ(curve.lap.state, Learning::cannot_tell);
        EXPECT_FALSE(curve.lap.change_s_per_lap.told());
        EXPECT_FALSE(curve.lap.to_win_s.told());
        EXPECT_EQ(curve.lap.best_s.has_value(), laps > 0);
    }
    auto none_clean = drawn_session(random, 7, 0.05);
    for (LearningLap& lap : none_clean)
        lap.counts = false;
    const LearningCurve curve = learning_curve(none_clean);
    EXPECT_FALSE(curve.lap.best_s);
    EXPECT_EQ(curve.lap.to_win_s.untold, "no clean lap");
    EXPECT_TRUE(curve.lap.change_s_per_lap.told());
}

// One lap behind a slow car at the end does not blur what is driven now.
TEST(Learning, ALapInTrafficBlursNothing) {
    std::mt19937_64 random(11);
    auto session = drawn_session(random, 10, 0.05);
    const double half_before = learning_curve(session).lap.now_s.half_width();
    session[8].counts = false;
    session[8].segment_s[0] += 4.0;
    const LearningCurve curve = learning_curve(session);
    EXPECT_LT(curve.lap.now_s.half_width(), 3.0 * half_before);
    EXPECT_LT(curve.lap.late_first, 8U);
}
