// SPDX-License-Identifier: GPL-3.0-or-later
// A session is timed at the gate of the known track that it drove, and at no other.
#include "core/analysis/known_track.h"

#include "core/analysis/run.h"
#include "core/analysis/short_text.h"
#include "support/recording_of.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <gtest/gtest.h>
#include <memory>
#include <numbers>

namespace {

using namespace lapwright;

recording::Recording driven(std::uint64_t seed) {
    const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
    truth::SessionPlan plan;
    plan.flying_laps = 3;
    const auto drive = truth::drive_session(track, truth::light_aero_hatch(), truth::DriverTruth{}, plan, seed);
    auto recording = test::recording_of(truth::log_session(drive, truth::perfect_logger(10.0), seed), "session");
    recording.track.clear();
    return recording;
}

class KnownTrack : public testing::Test {
  protected:
    static void SetUpTestSuite() { own = *analysis::understand(driven(1)); }
    static void TearDownTestSuite() { own.reset(); }

    // Half way round from where the session's own laps begin, with one segment.
    static track::TrackRecord record(const std::string& name) {
        const motion::Path& path = own->motion->best;
        const lap::Lap* lap = own->fastest();
        const motion::Moment half_way = path.at(0.5 * (lap->start_s + lap->end_s));
        track::TrackRecord made;
        made.name = name;
        made.gate.position =
            motion::to_geodetic(own->motion->frame, {half_way.position_m.east, half_way.position_m.north, 0.0});
        made.gate.heading_rad = std::atan2(half_way.velocity_mps.north, half_way.velocity_mps.east);
        made.segments = {{"All of it", track::SegmentKind::straight, 0.0, 3860.0, 0.0, {}}};
        made.length_m = 3860.0;
        return made;
    }
    static analysis::SessionOptions knowing(std::vector<track::TrackRecord> known) {
        analysis::SessionOptions options;
        options.known_tracks = std::move(known);
        return options;
    }

    static inline std::shared_ptr<const analysis::Session> own;
};

TEST_F(KnownTrack, ItsGateTimesTheLapsAsIfItHadBeenGiven) {
    const auto known = analysis::understand(*own->recording, knowing({record("Mudflat")}));
    ASSERT_TRUE(known.ok());
    EXPECT_EQ((*known)->gate_origin, "Mudflat, as the book knows it");
    ASSERT_TRUE((*known)->known_track);
    analysis::SessionOptions given;
    given.track = record("Mudflat");
    const auto as_given = analysis::understand(*own->recording, given);
    ASSERT_EQ((*known)->laps.size(), (*as_given)->laps.size());
    for (std::size_t i = 0; i < (*known)->laps.size(); ++i)
        EXPECT_EQ((*known)->laps[i].start_s, (*as_given)->laps[i].start_s);
    EXPECT_FALSE((*as_given)->known_track);
    EXPECT_NE((*known)->laps[1].start_s, own->laps[1].start_s);
}

TEST_F(KnownTrack, AGateThatIsNotPassedOrALengthThatIsNotDrivenIsNoneOfIt) {
    track::TrackRecord backwards = record("Mudflat");
    backwards.gate.heading_rad += std::numbers::pi;
    track::TrackRecord elsewhere = record("Mudflat");
    elsewhere.gate.position.latitude_rad += 0.001;
    track::TrackRecord shorter = record("Mudflat");
    shorter.length_m = 3500.0;
    const auto session = analysis::understand(*own->recording, knowing({backwards, elsewhere, shorter}));
    ASSERT_TRUE(session.ok());
    EXPECT_FALSE((*session)->known_track);
    EXPECT_EQ((*session)->gate_origin, own->gate_origin);
    EXPECT_EQ((*session)->laps.size(), own->laps.size());
}

TEST(Shortened, KeepsWholeCharacters) {
    EXPECT_EQ(analysis::shortened("Åsa", 3), "Åsa");
    EXPECT_EQ(analysis::shortened("Åsaö", 3), "Ås…");
    EXPECT_EQ(analysis::shortened("", 3), "");
    EXPECT_EQ(analysis::shortened(std::string(200, 'W')).size(), analysis::longest_title - 1 + std::string("…").size());
}

TEST(OwnTime, IsSaidWhereTheSessionAloneIsTimedOtherwise) {
    auto session = std::make_shared<analysis::Session>();
    session->laps = {{3, lap::LapKind::flying, 100.0, 189.919, {}, true, ""}};
    analysis::Side side{session, {3, lap::LapKind::flying, 100.001, 189.922, {}, true, ""}, {}, {}, {}};
    EXPECT_EQ(analysis::own_time_text(side), "1:29.919 by its own line");
    side.lap.end_s = 189.9203;
    EXPECT_EQ(analysis::own_time_text(side), "");
    side.lap = {3, lap::LapKind::flying, 190.0, 280.0, {}, true, ""}; // another lap of the same number
    EXPECT_EQ(analysis::own_time_text(side), "");
    side.lap.number = 7;
    EXPECT_EQ(analysis::own_time_text(side), "");
}

TEST_F(KnownTrack, OfSeveralTheOneThatTheFileNames) {
    track::TrackRecord rough = record("Ternbank");
    rough.length_m = 3750.0;
    auto recording = *own->recording;
    EXPECT_EQ(analysis::driven_track({rough, record("Mudflat")}, recording, *own->motion)->name, "Mudflat");
    recording.track = " ternbank";
    EXPECT_EQ(analysis::driven_track({record("Mudflat"), rough}, recording, *own->motion)->name, "Ternbank");
}

TEST_F(KnownTrack, APairingOfTwoSuchSessionsHasItsGateAndSegments) {
    const auto a = analysis::understand(*own->recording, knowing({record("Mudflat")}));
    const auto b = analysis::understand(driven(2), knowing({record("Mudflat")}));
    const auto pairing = analysis::compare(*a, *b);
    ASSERT_TRUE(pairing.ok()) << base::one_line(pairing.error());
    EXPECT_EQ((*pairing)->track.name, "Mudflat");
    ASSERT_EQ((*pairing)->track.segments.size(), 1U);
    EXPECT_EQ((*pairing)->track.segments[0].name, "All of it");
    const std::array sessions{*a, *b};
    const auto line = analysis::line_to_keep((*pairing)->track, sessions);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->line.length_m, 3860.0, 25.0);
    // One that was opened before the track was known: both as they were.
    const auto with_other = analysis::compare(*a, own);
    ASSERT_TRUE(with_other.ok());
    EXPECT_GT((*with_other)->track.segments.size(), 4U);
}

} // namespace
