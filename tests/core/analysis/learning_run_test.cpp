// SPDX-License-Identifier: GPL-3.0-or-later
// Learning over whole sessions: every flying lap counts once, in the order of driving, and its segments sum to it.
#include "core/analysis/learning_run.h"

#include "core/analysis/run.h"
#include "core/analysis/with_words.h"
#include "support/recording_of.h"
#include "support/two_drives.h"
#include "truth/drive.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>

namespace {

using namespace lapwright;

std::shared_ptr<const analysis::Session> understood(const truth::Session& session, const char* name,
                                                    std::uint64_t seed) {
    const auto result = analysis::understand(
        test::recording_of(truth::log_session(session, truth::typical_logger(10.0), seed), name), {});
    return result.ok() ? *result : nullptr;
}

TEST(LearningRun, TakesEveryFlyingLapOnceInTheOrderOfDriving) {
    const auto one = understood(test::two_drives(31, 6).a, "one", 1);
    const auto other = understood(test::two_drives(32, 5).a, "other", 2);
    ASSERT_TRUE(one && other);
    const auto report = analysis::learn({one, other});
    ASSERT_TRUE(report.ok());
    std::size_t flying = 0;
    for (const auto& session : report->sessions)
        flying += static_cast<std::size_t>(std::ranges::count(session->laps, lap::LapKind::flying, &lap::Lap::kind));
    EXPECT_EQ(report->laps.size(), flying);
    for (std::size_t i = 0; i < report->laps.size(); ++i) {
        const analysis::LearnedLap& lap = report->laps[i];
        if (i > 0) {
            EXPECT_GT(lap.order, report->laps[i - 1].order);
        }
        EXPECT_NEAR(std::accumulate(lap.segment_s.begin(), lap.segment_s.end(), 0.0), lap.time_s, 1e-6);
        EXPECT_EQ(report->sessions[lap.session]->lap(lap.number)->kind, lap::LapKind::flying);
    }
    EXPECT_EQ(report->curve.segments.size(), report->track.segments.size());
    EXPECT_FALSE(report->sentence.empty());
    EXPECT_FALSE(analysis::learn({one}, {}, [](std::string_view, double) { return false; }).ok());
}

TEST(LearningRun, ALapThatAPersonSetAsideIsLeftOut) {
    const auto session = understood(test::two_drives(33, 6).a, "one", 1);
    ASSERT_TRUE(session && session->fastest());
    const lap::Lap fastest = *session->fastest();
    const auto judged =
        analysis::with_words(session, lap::with_word({}, fastest, lap::JudgedByHand{0.0, false, "cut"}));
    const auto with = analysis::learn({session});
    const auto without = analysis::learn({judged});
    ASSERT_TRUE(with.ok() && without.ok());
    EXPECT_EQ(without->laps.size() + 1, with->laps.size());
    EXPECT_TRUE(std::ranges::none_of(without->laps, [&](const auto& lap) { return lap.number == fastest.number; }));
    EXPECT_GT(*without->curve.lap.best_s, *with->curve.lap.best_s);
}

} // namespace
