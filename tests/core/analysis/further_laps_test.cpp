// SPDX-License-Identifier: GPL-3.0-or-later
// Laps beside a pairing say of each against A what comparing the two alone would say, and one that cannot be laid there
// keeps none of the others out.
#include "core/analysis/further_laps.h"

#include "core/analysis/run.h"
#include "support/recording_of.h"
#include "support/two_drives.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace {

using namespace lapwright;

using SessionPointer = std::shared_ptr<const analysis::Session>;

SessionPointer understood(const truth::Session& session, const char* name, std::uint64_t seed) {
    const auto result = analysis::understand(
        test::recording_of(truth::log_session(session, truth::typical_logger(10.0), seed), name), {});
    return result.ok() ? *result : nullptr;
}

struct Three {
    SessionPointer a;
    SessionPointer b;
    SessionPointer c;
    std::shared_ptr<const analysis::Pairing> pairing;
};

const Three& three() {
    static const Three made = [] {
        const test::TwoDrives drives = test::two_drives(21, 4);
        Three t{understood(drives.a, "a", 1), understood(drives.b, "b", 2),
                understood(test::two_drives(22, 4).b, "c", 3), nullptr};
        if (const auto pairing = analysis::compare(t.a, t.b); pairing.ok()) t.pairing = *pairing;
        return t;
    }();
    return made;
}

TEST(FurtherLaps, SayWhatComparingThemWithAAloneSays) {
    ASSERT_TRUE(three().pairing && three().c);
    const auto laps =
        analysis::further_laps(*three().pairing, {{three().c, {}}, {three().b, three().pairing->b.lap.number}});
    ASSERT_TRUE(laps && laps->size() == 2);
    analysis::PairingOptions same_lap;
    same_lap.lap_a = three().pairing->a.lap.number;
    const auto alone = analysis::compare(three().a, three().c, same_lap);
    ASSERT_TRUE(alone.ok());
    const analysis::Pairing* expected[] = {alone->get(), three().pairing.get()};
    for (std::size_t i = 0; i < 2; ++i) {
        const analysis::FurtherLap& lap = (*laps)[i];
        ASSERT_FALSE(lap.refused);
        const comparison::Comparison& by_itself = expected[i]->comparison;
        EXPECT_EQ(lap.lap.number, expected[i]->b.lap.number);
        EXPECT_NEAR(lap.gap_at_end_s.value, by_itself.gap_at_end_s.value, 0.002);
        EXPECT_NEAR(*lap.gap_at_end_s.sd, *by_itself.gap_at_end_s.sd, 0.2 * *by_itself.gap_at_end_s.sd);
        EXPECT_NEAR(lap.trace.distance_m.back(), three().pairing->track.line.length_m, 1e-6);
        double sum = 0.0;
        for (const comparison::Figure& gain : lap.gains_s)
            sum += gain.value;
        EXPECT_EQ(lap.gains_s.size(), three().pairing->track.segments.size());
        EXPECT_NEAR(sum, lap.gap_at_end_s.value, 1e-9);
    }
}

TEST(FurtherLaps, ALapBesideItselfLiesNowhereElse) {
    ASSERT_TRUE(three().pairing);
    const auto laps = analysis::further_laps(*three().pairing, {{three().a, three().pairing->a.lap.number}});
    ASSERT_TRUE(laps);
    for (const double gap_s : laps->front().gap.gap_s)
        EXPECT_EQ(gap_s, 0.0);
    // The same drive, though on a line of its own.
    const auto& speed = laps->front().trace.speed_mps;
    const auto& shown = three().pairing->a.trace.best.speed_mps;
    ASSERT_NEAR(static_cast<double>(speed.size()), static_cast<double>(shown.size()), 2.0);
    for (std::size_t i = 0; i < std::min(speed.size(), shown.size()); i += 50)
        EXPECT_NEAR(speed[i], shown[i], 0.5);
}

TEST(FurtherLaps, OneThatIsRefusedKeepsNoneOut) {
    ASSERT_TRUE(three().pairing && three().c);
    truth::SessionPlan plan;
    plan.flying_laps = 3;
    const auto ellipse = std::make_shared<const truth::TrackShape>(truth::ellipse(500.0, 300.0));
    const SessionPointer elsewhere =
        understood(truth::drive_session(ellipse, truth::light_aero_hatch(), {}, plan, 5), "elsewhere", 5);
    ASSERT_TRUE(elsewhere);
    const auto laps = analysis::further_laps(*three().pairing, {{elsewhere, {}}, {three().c, 99}, {three().c, {}}});
    ASSERT_TRUE(laps && laps->size() == 3);
    EXPECT_TRUE((*laps)[0].refused);
    ASSERT_TRUE((*laps)[1].refused);
    EXPECT_EQ((*laps)[1].refused->code, base::ErrorCode::lap_not_found);
    EXPECT_FALSE((*laps)[2].refused);
    EXPECT_TRUE(analysis::further_laps(*three().pairing, {})->empty());
    EXPECT_FALSE(
        analysis::further_laps(*three().pairing, {{three().c, {}}}, [](std::string_view, double) { return false; }));
}

TEST(FurtherLaps, TheSpreadOfCleanLapsLiesATenthOfThemFromEitherEnd) {
    ASSERT_TRUE(three().pairing);
    const comparison::LapSpread& spread = three().pairing->spread_a;
    const auto& laps = three().pairing->a.clean_traces;
    ASSERT_EQ(spread.laps, laps.size());
    ASSERT_GE(laps.size(), 3U);
    ASSERT_LE(laps.size(), 10U) << "of so few, type 7 quantiles at a tenth leave out the first and the last";
    ASSERT_EQ(spread.distance_m, laps.front().distance_m);
    for (std::size_t i = 0; i < spread.distance_m.size(); ++i) {
        std::vector<double> speeds;
        for (const lap::LapTrace& lap : laps)
            speeds.push_back(lap.speed_mps[i]);
        std::ranges::sort(speeds);
        // A tenth of the way through the sorted laps (Hyndman and Fan 1996, type 7).
        const double from_end = 0.1 * static_cast<double>(speeds.size() - 1);
        EXPECT_NEAR(spread.low_mps[i], std::lerp(speeds[0], speeds[1], from_end), 1e-9);
        EXPECT_NEAR(spread.high_mps[i], std::lerp(speeds.back(), speeds[speeds.size() - 2], from_end), 1e-9);
    }
}

} // namespace
