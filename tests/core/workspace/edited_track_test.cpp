// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/edited_track.h"

#include "core/workspace/invented.h"

#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::workspace;

namespace {

track::Track a_track(const std::string& name) {
    track::Track track;
    track.name = name;
    track.frame.on_earth = true;
    track.line.length_m = 1000.0;
    track.line.step_m = 1.0;
    track.line.position_m.resize(1000);
    track.line.tangent.resize(1000, {1.0, 0.0});
    track.line.curvature_per_m.resize(1000, 0.0);
    track.segments = {{"Sweep", track::SegmentKind::corner, 0.0, 400.0, 0.5, {}},
                      {"Back straight", track::SegmentKind::straight, 400.0, 1000.0, 0.0, {}}};
    return track;
}

} // namespace

TEST(EditedTrack, IsWrittenDownUnderItsNameOrOneThatSaysThatItHasNone) {
    const SegmentEdit same = [](track::Segments segments) {
        return base::Result<track::Segments>(std::move(segments));
    };
    EXPECT_EQ(edited(a_track("Gull Head"), same)->record.name, "Gull Head");
    EXPECT_EQ(edited(a_track(""), same)->record.name, unnamed_track);
    EXPECT_FALSE(edited(a_track("Gull Head"), same)->other_gate);
    EXPECT_TRUE(with_gate_at(a_track("Gull Head"), 500.0)->other_gate);
}

TEST(EditedTrack, WhatIsRefusedIsSaid) {
    const auto refused = edited(a_track("Gull Head"), [](track::Segments segments) {
        return track::with_name(std::move(segments), 0, "back straight");
    });
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(base::one_line(refused.error()), "there is a segment \"back straight\" already — give another name");
}

TEST(EditedTrack, AllThatDriveItGetItAndNobodyElse) {
    const track::TrackRecord before = edited(a_track("Gull Head"), [](auto s) { return base::Result(s); })->record;
    OpenSessions sessions;
    sessions.add("/data/one.csv", invented("one.csv", "one"));
    sessions.add("/data/two.csv", on_track(invented("two.csv", "two"), before));
    sessions.add("/data/three.csv", invented("three.csv", "three"));
    track::TrackRecord after = before;
    after.segments.front().name = "Long one";
    const auto moved = on_track(sessions, after, {key_of_bytes("one")});
    ASSERT_EQ(moved.size(), 2U);
    for (const SessionPointer& session : moved)
        EXPECT_EQ(session->known_track->segments.front().name, "Long one");
    EXPECT_EQ(key_of(*moved[0]), key_of_bytes("one"));
    EXPECT_EQ(key_of(*moved[1]), key_of_bytes("two"));
    EXPECT_FALSE(on_track(moved[0], std::nullopt)->known_track) << "undone";
}
