// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing turned round is the one that comparing the other way round gives, figure for figure, in drawn worlds.
#include "core/analysis/run.h"
#include "core/comparison/mirrored.h"
#include "core/comparison/summed_segments.h"
#include "support/recording_of.h"
#include "support/two_drives.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <gmock/gmock.h>

namespace {

using namespace lapwright;

std::shared_ptr<const analysis::Session> understood(const truth::Session& session, const char* name,
                                                    std::uint64_t seed) {
    const auto result = analysis::understand(test::recording_of(truth::log_session(session, {}, seed), name), {});
    return result.ok() ? *result : nullptr;
}

std::vector<std::string> codes(const std::vector<recording::Warning>& warnings) {
    std::vector<std::string> all;
    for (const auto& warning : warnings)
        all.push_back(std::to_string(static_cast<int>(warning.kind)) + warning.of);
    return all;
}

void expect_same(const std::vector<comparison::SegmentComparison>& one,
                 const std::vector<comparison::SegmentComparison>& other) {
    ASSERT_EQ(one.size(), other.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        EXPECT_EQ(one[i].gain_s.value, other[i].gain_s.value);
        EXPECT_EQ(one[i].gain_s.sd, other[i].gain_s.sd);
        EXPECT_EQ(one[i].a.time_s, other[i].a.time_s);
        EXPECT_EQ(one[i].b.exit_speed_mps.value, other[i].b.exit_speed_mps.value);
        EXPECT_EQ(one[i].b.exit_speed_mps.sd, other[i].b.exit_speed_mps.sd);
        ASSERT_EQ(one[i].line.slowest.has_value(), other[i].line.slowest.has_value());
        if (one[i].line.slowest) {
            EXPECT_EQ(one[i].line.slowest->difference_m, other[i].line.slowest->difference_m);
        }
    }
}

TEST(Swapped, IsWhatComparingTheOtherWayRoundGives) {
    for (const std::uint64_t seed : {3U, 4U}) {
        const test::TwoDrives drives = test::two_drives(seed, 4);
        const auto a = understood(drives.a, "a", 2 * seed);
        const auto b = understood(drives.b, "b", 2 * seed + 1);
        ASSERT_TRUE(a && b);
        const auto forward = analysis::compare(a, b);
        const auto back = analysis::compare(b, a);
        ASSERT_TRUE(forward.ok() && back.ok());
        const auto turned = analysis::swapped(**forward);
        const analysis::Pairing& asked = **back;
        EXPECT_EQ(turned->headline.verdict, asked.headline.verdict);
        EXPECT_EQ(turned->headline.sentence, asked.headline.sentence);
        EXPECT_EQ(turned->comparison.gap.gap_s, asked.comparison.gap.gap_s);
        EXPECT_EQ(turned->comparison.gap.sd_s, asked.comparison.gap.sd_s);
        EXPECT_EQ(turned->comparison.gap.low_s, asked.comparison.gap.low_s);
        EXPECT_EQ(turned->comparison.gap_at_end_s.value, asked.comparison.gap_at_end_s.value);
        EXPECT_EQ(turned->comparison.line.difference_m, asked.comparison.line.difference_m);
        EXPECT_EQ(turned->comparison.line.high_m, asked.comparison.line.high_m);
        const auto joined = comparison::mirrored(
            comparison::summed_with_straights((*forward)->comparison, (*forward)->a.trace, (*forward)->b.trace));
        expect_same(turned->comparison.segments, asked.comparison.segments);
        expect_same(joined, comparison::summed_with_straights(asked.comparison, asked.a.trace, asked.b.trace));
        EXPECT_THAT(codes(turned->warnings), testing::UnorderedElementsAreArray(codes(asked.warnings)));
    }
}

} // namespace
