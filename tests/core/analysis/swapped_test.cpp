// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing turned round is the one that comparing the other way round gives, figure for figure, in drawn worlds.
#include "core/analysis/run.h"
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
        ASSERT_EQ(turned->comparison.segments.size(), asked.comparison.segments.size());
        for (std::size_t i = 0; i < asked.comparison.segments.size(); ++i)
            EXPECT_EQ(turned->comparison.segments[i].gain_s.value, asked.comparison.segments[i].gain_s.value);
        EXPECT_THAT(codes(turned->warnings), testing::UnorderedElementsAreArray(codes(asked.warnings)));
    }
}

} // namespace
