// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/notes.h"

#include "core/workspace/invented.h"
#include "core/workspace/pairing_notes.h"

#include <gmock/gmock.h>

using namespace lapwright;
using namespace lapwright::workspace;
using testing::ElementsAre;

namespace {

const SessionKey first = key_of_bytes("first");
const SessionKey second = key_of_bytes("second");

std::vector<comparison::SegmentComparison> two_segments() {
    std::vector<comparison::SegmentComparison> segments(2);
    segments[0].segment.name = "Sweep";
    segments[0].segment.end_m = 800.0;
    segments[1].segment.name = "Pin";
    segments[1].segment.start_m = 800.0;
    segments[1].segment.end_m = 1500.0;
    return segments;
}

} // namespace

TEST(Notes, OneForEachThingWithoutBlanksAroundIt) {
    Notes notes;
    EXPECT_TRUE(notes.put({first}, " dry \n"));
    EXPECT_FALSE(notes.put({first}, "dry"));
    EXPECT_TRUE(notes.put({first, 3}, "traffic"));
    EXPECT_EQ(notes.text({first}), "dry");
    EXPECT_EQ(notes.of_session(first).size(), 2U);
    EXPECT_TRUE(notes.put({first}, ""));
    EXPECT_EQ(notes.of_session(first).size(), 1U);
    EXPECT_TRUE(notes.of_session(second).empty());
}

TEST(Notes, WhatWasWrittenMeanwhileStays) {
    Notes notes;
    notes.put({first}, "newer");
    EXPECT_TRUE(notes.take_in(first, {{{first}, "older"}, {{first, 2}, "kept"}}));
    EXPECT_EQ(notes.text({first}), "newer");
    EXPECT_EQ(notes.text({first, 2}), "kept");
    EXPECT_FALSE(notes.take_in(first, {{{first}, "older"}}));
}

TEST(Notes, StandAtTheSegmentOfTheirNameElseOfTheirPlace) {
    const auto segments = two_segments();
    Notes notes;
    notes.put({first, {}, "Sweep", 1000.0}, "early");
    notes.put({first, {}, "Hook", 1000.0}, "wide"); // as Pin was called before
    notes.put({second, {}, "Pin", 100.0}, "late");
    const auto on_segments = segment_notes(notes, segments, first, second);
    EXPECT_EQ(on_segments[0].a, "early");
    EXPECT_EQ(on_segments[1].a, "wide");
    EXPECT_EQ(on_segments[1].b, "late");
    // A further note on that segment goes into the one that is there.
    const auto about = notes_about(notes, segments, 1, first);
    ASSERT_EQ(about.size(), 1U);
    EXPECT_EQ(about[0].segment, "Hook");
    EXPECT_EQ(notes_about(notes, segments, 0, second)[0].at_m, 400.0);
}

TEST(Notes, LinesForTheSheet) {
    Notes notes;
    notes.put({first}, "new\n  pads");
    notes.put({first, 3}, "hot");
    notes.put({first, 4}, "of another lap");
    notes.put({second, {}, "Pin", {}}, "late");
    EXPECT_THAT(note_lines(notes, two_segments(), {first, 3, second, 2}),
                ElementsAre("A: new pads", "A, lap 3: hot", "Pin, B: late"));
    EXPECT_THAT(note_lines(notes, two_segments(), {first, 3, first, 4}),
                ElementsAre("session: new pads", "lap 3: hot", "lap 4: of another lap"));
}
