// SPDX-License-Identifier: GPL-3.0-or-later
// The sentence never claims more than the error bars allow.
#include "core/findings/headline.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::findings;
using comparison::Comparison;
using comparison::Repeatability;
using testing::HasSubstr;
using testing::Not;

namespace {

comparison::SegmentComparison segment(const char* name, track::SegmentKind kind, double gain_s, double sd_s) {
    comparison::SegmentComparison s;
    s.segment.name = name;
    s.segment.kind = kind;
    s.gain_s = {gain_s, sd_s, false};
    return s;
}

Comparison comparison_of(double corner_s, double straight_s, double sd_s) {
    Comparison c;
    c.segments = {segment("Mire", track::SegmentKind::corner, corner_s, sd_s),
                  segment("Home", track::SegmentKind::straight, straight_s, sd_s)};
    c.gap_at_end_s = {corner_s + straight_s, sd_s, false};
    return c;
}

Repeatability laps(std::vector<double> a, std::vector<double> b, double low_s, double high_s) {
    Repeatability r;
    r.times_a_s = std::move(a);
    r.times_b_s = std::move(b);
    r.low_s = low_s;
    r.high_s = high_s;
    return r;
}

} // namespace

TEST(Headline, NamesTheDecidingCornerAndWhoIsQuickerOnTheStraights) {
    const auto h = headline(comparison_of(0.70, -0.21, 0.01), {laps({5.0, 5.1, 5.05}, {5.7, 5.8, 5.75}, 0.6, 0.8), {}});
    EXPECT_EQ(h.ahead, Favours::a);
    EXPECT_EQ(h.verdict, "A ahead by 0.49 s");
    EXPECT_EQ(h.uncertainty, "±0.02");
    EXPECT_EQ(h.deciding_segment, "Mire");
    EXPECT_EQ(h.sentence,
              "Most of it is Mire: A gains 0.70 s there; A is quicker there in all 3 clean laps. B is quicker "
              "on the straights, worth 0.21 s in all.");
}

TEST(Headline, SaysProbablyWhenTheLapsDoNotRepeatIt) {
    const auto h = headline(comparison_of(-0.70, 0.1, 0.01), {laps({5.0, 5.9}, {5.7, 4.9}, -0.4, 0.9), {}});
    EXPECT_EQ(h.ahead, Favours::b);
    EXPECT_THAT(h.sentence, HasSubstr("is probably Mire"));
    EXPECT_THAT(h.sentence, HasSubstr("1 of 2 clean laps"));
}

TEST(Headline, ClaimsNothingWithinTheErrorBars) {
    const auto h = headline(comparison_of(0.03, 0.0, 0.02), {});
    EXPECT_EQ(h.ahead, Favours::neither);
    EXPECT_EQ(h.verdict, "A and B are level");
    EXPECT_THAT(h.sentence, HasSubstr("cannot be told"));
    EXPECT_THAT(h.sentence, Not(HasSubstr("Mire")));
}

TEST(Headline, SaysWhenNothingStandsOut) {
    const auto h = headline(comparison_of(0.015, 0.015, 0.002), {});
    EXPECT_THAT(h.sentence, HasSubstr("spread over the lap"));
}
