// SPDX-License-Identifier: GPL-3.0-or-later
// Notes, pairings, tracks, search and season.
#include "core/book/book_fixture.h"
#include "core/book/notes.h"
#include "core/book/pairings.h"
#include "core/book/search.h"
#include "core/book/season.h"
#include "core/book/season_figures.h"
#include "core/book/timing_line.h"
#include "core/book/tracks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

namespace lapwright::book {
namespace {

using testing::ElementsAre;

constexpr double day_s = 86400.0;

SessionDetails details(const std::string& driver, const std::string& car, const std::string& track, double day,
                       const std::string& tyre) {
    SessionDetails some{driver, car, track, 1.77e9 + day * day_s, "dry", {}};
    some.setup.tyre = tyre;
    return some;
}

class Lists : public testing::Test {
  protected:
    Lists() {
        first = add_named(book, "first", details("Wren Alder", "Plover", "Ternbank", 1, "hard 220"), some_laps(91.0));
        second = add_named(book, "second", details("Wren Alder", "Plover", "Ternbank", 3, "soft 200"), some_laps(90.0));
        third = add_named(book, "third", details("Åsa Lönn", "Dunlin", "Ternbank", 2, "soft 200"), some_laps(89.0));
        undated = add_named(book, "undated", {"Wren Alder", "Plover", "Gull Head", {}, "damp", {}}, {});
    }

    std::vector<SessionId> ids(const Filter& filter) {
        std::vector<SessionId> all;
        const auto found = search(book, filter);
        EXPECT_TRUE(found.ok());
        for (const SessionSummary& summary : *found)
            all.push_back(summary.id);
        return all;
    }

    Folder folder;
    Book book = open_book(folder.file("book"));
    SessionId first{};
    SessionId second{};
    SessionId third{};
    SessionId undated{};
};

TEST_F(Lists, NewestFirstAndWithoutADateLast) {
    EXPECT_THAT(ids({}), ElementsAre(second, third, first, undated));
}

TEST_F(Lists, ASummarySaysWhatAListShows) {
    const auto summary = read_summary(book, third);
    ASSERT_TRUE(summary.ok());
    EXPECT_EQ(summary->driver, "Åsa Lönn");
    EXPECT_EQ(summary->tyre, "soft 200");
    EXPECT_EQ(summary->source, source_named("third"));
    EXPECT_EQ(summary->laps, 5);
    EXPECT_EQ(summary->clean_laps, 2);
    EXPECT_EQ(summary->best_clean_s, 89.0);
    EXPECT_EQ(read_summary(book, undated)->best_clean_s, std::nullopt);
}

TEST_F(Lists, EveryConditionMustHold) {
    EXPECT_THAT(ids({.driver = "wren alder "}), ElementsAre(second, first, undated));
    EXPECT_THAT(ids({.track = "Ternbank", .tyre = "soft 200"}), ElementsAre(second, third));
    EXPECT_THAT(ids({.car = "Dunlin", .tyre = "hard 220"}), ElementsAre());
    EXPECT_THAT(ids({.from_unix_s = 1.77e9 + 2 * day_s}), ElementsAre(second, third));
    EXPECT_THAT(ids({.until_unix_s = 1.77e9 + 2 * day_s}), ElementsAre(third, first));
}

TEST_F(Lists, WordsAreFoundWhereverTheyStand) {
    EXPECT_THAT(ids({.words = "tern soft"}), ElementsAre(second, third));
    EXPECT_THAT(ids({.words = "asa lonn"}), ElementsAre(third)); // without the marks above
    EXPECT_THAT(ids({.words = "Gull"}), ElementsAre(undated));
    EXPECT_THAT(ids({.words = "seven"}), ElementsAre(second, third, first, undated)); // a fact of the file
    EXPECT_THAT(ids({.words = "soft hard"}), ElementsAre());
    EXPECT_THAT(ids({.words = "  "}), ElementsAre(second, third, first, undated));
    // What would be an operator is a word.
    for (const char* const odd : {"\"", "AND", "soft OR", "NEAR(", "tyre:", "*", "'; DROP TABLE note; --", "-", "^"})
        EXPECT_TRUE(search(book, {.words = odd}).ok()) << odd;
}

TEST_F(Lists, ANoteIsFoundChangedAndRemoved) {
    auto uid =
        put_note(book, {"", {.session = first, .lap = 2, .segment = "Sweep", .at_m = 412.5}, "pushes wide", 0.0});
    ASSERT_TRUE(uid.ok()) << base::one_line(uid.error());
    EXPECT_THAT(ids({.words = "pushes sweep"}), ElementsAre(first));
    auto notes = notes_of_session(book, first);
    ASSERT_EQ(notes->size(), 1U);
    EXPECT_EQ(notes->at(0).uid, *uid);
    EXPECT_EQ(notes->at(0).about, (NoteAbout{first, {}, 2, "Sweep", 412.5}));
    EXPECT_GT(notes->at(0).changed_unix_s, 1.7e9);

    Note changed = notes->at(0);
    changed.text = "better with less wing";
    changed.about.session = second;
    EXPECT_EQ(*put_note(book, changed), *uid);
    EXPECT_THAT(ids({.words = "pushes"}), ElementsAre());
    EXPECT_THAT(ids({.words = "wing"}), ElementsAre(second));
    EXPECT_TRUE(notes_of_session(book, first)->empty());

    ASSERT_TRUE(remove_note(book, *uid));
    ASSERT_TRUE(remove_note(book, *uid));
    EXPECT_THAT(ids({.words = "wing"}), ElementsAre());
    EXPECT_EQ(*put_note(book, changed), *uid); // undone
    EXPECT_THAT(ids({.words = "wing"}), ElementsAre(second));
}

TEST_F(Lists, ANoteOfNothingIsRefusedAndChangesNothing) {
    EXPECT_FALSE(put_note(book, {"", {}, "lost", 0.0}).ok());
    EXPECT_FALSE(put_note(book, {"", {.session = SessionId{99}}, "lost", 0.0}).ok());
    EXPECT_FALSE(put_note(book, {"", {.pairing = PairingId{99}}, "lost", 0.0}).ok());
    EXPECT_TRUE(book.check()->whole());
}

TEST_F(Lists, APairingIsKeptOnce) {
    Pairing pairing{first, 2, third, 1, "wing or no wing", "A ahead by 0.48 s", 100.0};
    const auto id = put_pairing(book, pairing);
    ASSERT_TRUE(id.ok());
    pairing.sentence = "A and B are level";
    pairing.changed_unix_s = 200.0;
    EXPECT_EQ(*put_pairing(book, pairing), *id);
    const auto newer = put_pairing(book, {second, 1, third, 1, "later", "", 300.0});
    ASSERT_EQ(pairings(book)->size(), 2U);
    EXPECT_EQ(pairings(book)->at(0).id, *newer);
    const auto read = read_pairing(book, *id);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read->session_a, first);
    EXPECT_EQ(read->lap_a, 2);
    EXPECT_EQ(read->session_b, third);
    EXPECT_EQ(read->lap_b, 1);
    EXPECT_EQ(read->sentence, "A and B are level");
    EXPECT_THAT(ids({.words = "level"}), ElementsAre(third, first));
    const auto list = pairing_list(book);
    ASSERT_EQ(list->size(), 2U);
    EXPECT_EQ(list->at(0).kept.id, *newer);
    EXPECT_EQ(list->at(1).a.driver, "Wren Alder");
    EXPECT_EQ(list->at(1).b.driver, "Åsa Lönn");

    ASSERT_TRUE(put_note(book, {"", {.pairing = *id, .segment = "Hook"}, "brakes later", 1.0}).ok());
    EXPECT_EQ(notes_of_pairing(book, *id)->size(), 1U);
    EXPECT_THAT(ids({.words = "brakes"}), ElementsAre(third, first));
    ASSERT_TRUE(remove_session(book, first));
    EXPECT_EQ(pairings(book)->size(), 1U);
    EXPECT_FALSE(read_pairing(book, *id).ok());
    ASSERT_TRUE(restore_session(book, first));
    ASSERT_TRUE(remove_pairing(book, *id));
    EXPECT_TRUE(notes_of_pairing(book, *id)->empty());
    EXPECT_THAT(ids({.words = "brakes"}), ElementsAre());
    EXPECT_FALSE(put_pairing(book, {first, 1, SessionId{99}, 1, "", "", 0.0}).ok());
}

TEST_F(Lists, APairingThatIsTakenOutComesBackWithItsNotes) {
    const auto ids = *search(book);
    const PairingId id = *put_pairing(book, {ids[0].id, 1, ids[1].id, 2, "", "A ahead by 0.3 s", 77.0});
    const std::string uid = *put_note(book, {"", {.pairing = id}, "brakes cooked", 10.0});
    const std::size_t before = pairings(book)->size();
    const auto taken = take_pairing(book, id);
    ASSERT_TRUE(taken.ok()) << base::one_line(taken.error());
    EXPECT_EQ(pairings(book)->size(), before - 1);
    EXPECT_TRUE(search(book, {.words = "cooked"})->empty());
    EXPECT_FALSE(take_pairing(book, id).ok());
    const auto back = bring_back_pairing(book, *taken);
    ASSERT_TRUE(back.ok());
    EXPECT_EQ(read_pairing(book, *back)->sentence, "A ahead by 0.3 s");
    EXPECT_GT(read_pairing(book, *back)->changed_unix_s, 1.7e9); // later than its removal, for other books too
    ASSERT_EQ(notes_of_pairing(book, *back)->size(), 1U);
    EXPECT_EQ(notes_of_pairing(book, *back)->front().uid, uid);
    EXPECT_EQ(search(book, {.words = "cooked"})->size(), 2U);
}

TEST_F(Lists, ATrackKeepsItsRecordAndItsLine) {
    track::TrackRecord record;
    record.name = "Ternbank";
    record.gate = {{0.95, 0.04, 12.0}, 1.25, 18.0};
    record.length_m = 3100.0;
    record.segments = {{"Pit straight", track::SegmentKind::straight, 0.0, 900.0, 0.0, {}},
                       {"Sweep", track::SegmentKind::corner, 900.0, 3100.0, 1.5, 80.0}};
    EXPECT_EQ(*read_track(book, "ternbank"), std::nullopt); // its name alone
    KeptLine line{{{0.95, 0.04, 12.0}, true}, {}};
    line.line.step_m = 3100.0 / 50;
    line.line.length_m = 3100.0;
    for (int i = 0; i < 50; ++i) {
        line.line.position_m.push_back({1.0 / 3.0 * i, std::sqrt(i)});
        line.line.tangent.push_back({std::cos(0.1 * i), std::sin(0.1 * i)});
        line.line.curvature_per_m.push_back(0.01 / (i + 1));
    }
    ASSERT_TRUE(put_track(book, record, line));
    record.segments[1].name = "Long Sweep";
    ASSERT_TRUE(put_track(book, record)); // the line stays
    const auto read = read_track(book, "ternbank");
    ASSERT_TRUE(read.ok() && *read);
    EXPECT_EQ((*read)->segments.at(1).name, "Long Sweep");
    EXPECT_NEAR((*read)->gate.position.latitude_rad, 0.95, 1e-12);
    const auto kept = read_line(book, "Ternbank");
    ASSERT_TRUE(kept.ok() && *kept);
    EXPECT_EQ((*kept)->line.curvature_per_m, line.line.curvature_per_m);
    EXPECT_EQ((*kept)->line.position_m.at(7).north, line.line.position_m.at(7).north);
    EXPECT_EQ((*kept)->frame.origin.longitude_rad, 0.04);
    EXPECT_EQ((*kept)->line.length_m, 3100.0);
    EXPECT_EQ(tracks(book)->size(), 1U);
    EXPECT_EQ(*read_line(book, "Gull Head"), std::nullopt);
    EXPECT_FALSE(put_track(book, {}));
    const auto gone = forget_track(book, "ternbank");
    ASSERT_TRUE(gone.ok());
    EXPECT_FALSE(*read_track(book, "Ternbank"));
    EXPECT_FALSE(*read_line(book, "Ternbank"));
    EXPECT_EQ(search(book, {.track = "Ternbank"})->size(), 3U);
    ASSERT_TRUE(bring_back_track(book, "Ternbank", *gone));
    EXPECT_EQ((*read_track(book, "Ternbank"))->segments.size(), 2U);
    EXPECT_TRUE(*read_line(book, "Ternbank"));
}

TEST_F(Lists, TheSeasonOfATrackRunsThroughTime) {
    const auto season = season_of_track(book, "ternbank");
    ASSERT_TRUE(season.ok());
    ASSERT_EQ(season->size(), 3U);
    EXPECT_EQ(season->at(0).session.id, first);
    EXPECT_EQ(season->at(1).session.id, third);
    EXPECT_EQ(season->at(2).session.id, second);
    EXPECT_EQ(season->at(0).session.best_clean_s, 91.0);
    EXPECT_DOUBLE_EQ(*season->at(0).median_clean_s, 91.0 + 0.625); // of 92.25 and 91
    EXPECT_EQ(season->at(2).setup.tyre, "soft 200");
    EXPECT_EQ(season_of_track(book, "Ternbank", "Plover")->size(), 2U);
    EXPECT_EQ(season_of_track(book, "Gull Head")->at(0).median_clean_s, std::nullopt);
    EXPECT_TRUE(season_of_track(book, "")->empty());
}

// At 30 m/s to the north; laps begin where the car is at their starts.
TEST_F(Lists, ASessionTimedAtAnotherLineOfTheTrackIsNamed) {
    constexpr double earth_m = 6.371e6;
    const auto add = [&](const std::string& name, double line_m) {
        recording::Recording recording = small_recording(9, 3);
        recording.channels.clear();
        const auto stamps = std::make_shared<const std::vector<double>>(std::vector<double>{0.0, 200.0, 400.0});
        const auto from = [&](double north_m) { return 0.9 + (north_m + line_m) / earth_m; };
        recording.channels.push_back({"Lat",
                                      recording::Meaning::latitude,
                                      base::Unit::degree,
                                      "deg",
                                      stamps,
                                      {from(-6000.0), from(0.0), from(6000.0)},
                                      nullptr});
        recording.channels.push_back(
            {"Lon", recording::Meaning::longitude, base::Unit::degree, "deg", stamps, {0.1, 0.1, 0.1}, nullptr});
        const std::vector<lap::Lap> laps{{1, lap::LapKind::flying, 200.0, 290.0, {}, true, ""}};
        EXPECT_TRUE(add_session(book, source_named(name), recording, {.track = "Marsh"}, laps).ok());
    };
    add("w", 0.0);
    EXPECT_EQ(timed_elsewhere_text(*season_of_track(book, "Marsh")), "");
    add("x", 90.0);
    add("y", -12.0);
    add_named(book, "z", {.track = "Marsh"}); // without positions on both axes
    const auto season = *season_of_track(book, "Marsh");
    ASSERT_EQ(season.size(), 4U);
    ASSERT_TRUE(season[0].timing_line);
    EXPECT_NEAR(season[0].timing_line->latitude_rad, 0.9, 1e-12);
    EXPECT_EQ(timed_elsewhere(season), (std::vector<bool>{false, true, false, false}));
    EXPECT_EQ(timed_elsewhere_text(season),
              "One session was timed at another line of the track than the rest, so that lap times differ a little "
              "without a reason: x.csv.");
}

TEST_F(Lists, TheFiguresOfACarRunThroughTime) {
    const std::vector<KeptFigure> figures{{"drag_area_m2", 0.71, 0.66, 0.77, "data"},
                                          {"grip", 1.21, 1.1, 1.3, "prior"}};
    ASSERT_TRUE(put_figures(book, second, {{"grip", 9.0, 8.0, 10.0, "data"}}));
    ASSERT_TRUE(put_figures(book, second, figures));
    ASSERT_TRUE(put_figures(book, first, {figures[1]}));
    const auto season = season_of_car(book, "plover");
    ASSERT_EQ(season->size(), 2U);
    EXPECT_EQ(season->at(0).session.id, first);
    EXPECT_EQ(season->at(1).figures, figures);
    EXPECT_TRUE(season_of_car(book, "Dunlin")->empty());
}

TEST_F(Lists, AFigureIsOnATonneUntilEveryMassIsKnown) {
    const KeptFigure power{"power_w", 180e3, 170e3, 190e3, "data"};
    const KeptFigure per_kg{"power_w_per_kg", 150.0, 141.0, 159.0, "prior"};
    const KeptFigure drag{"drag_area_m2_per_kg", 0.71e-3, 0.66e-3, 0.76e-3, "data"};
    ASSERT_TRUE(put_figures(book, first, {per_kg, drag}));
    ASSERT_TRUE(put_figures(book, second, {power, per_kg}));
    auto courses = figure_courses(*season_of_car(book, "Plover"), base::UnitSystem::metric);
    ASSERT_EQ(courses.size(), 2U);
    EXPECT_EQ(courses[0].title, "drag area, m² on a tonne");
    EXPECT_EQ(figure_text(courses[0], courses[0].points.at(0)), "0.71 ±0.05");
    EXPECT_EQ(courses[1].title, "power at the wheels, W on a kg");
    ASSERT_EQ(courses[1].points.size(), 2U);
    EXPECT_EQ(courses[1].points[1].session, 1U);
    EXPECT_FALSE(courses[1].points[1].from_data);

    ASSERT_TRUE(put_figures(book, first, {power, per_kg}));
    courses = figure_courses(*season_of_car(book, "Plover"), base::UnitSystem::metric);
    ASSERT_EQ(courses.size(), 1U);
    EXPECT_EQ(courses[0].title, "power at the wheels, kW");
    EXPECT_EQ(figure_text(courses[0], courses[0].points.at(0)), "180 ±10");
    EXPECT_EQ(figure_courses(*season_of_car(book, "Plover"), base::UnitSystem::us)[0].title, "power at the wheels, hp");
}

TEST_F(Lists, ASetupIsHeldAgainstTheOneBeforeItOfTheSameCar) {
    auto later = details("Wren Alder", " plover", "Ternbank", 5, "soft 200");
    later.setup.items = {{"wing angle", "7 deg"}};
    const SessionId fourth = add_named(book, "fourth", later);
    auto silent = details("Wren Alder", "Plover", "Ternbank", 4, "");
    const SessionId unknown = add_named(book, "unknown", silent);
    const SessionId same = add_named(book, "same", details("", "Dunlin", "Ternbank", 6, "soft 200"));
    const auto season = *season_of_track(book, "Ternbank");
    const auto lines = setup_changes(season, base::UnitSystem::metric);
    std::map<SessionId, std::string> line_of;
    for (std::size_t i = 0; i < season.size(); ++i)
        line_of[season[i].session.id] = lines.at(i);
    EXPECT_EQ(line_of[first], ""); // the first of its car
    EXPECT_EQ(line_of[third], "");
    EXPECT_EQ(line_of[second], "tyre hard 220 → soft 200");
    EXPECT_EQ(line_of[unknown], "");
    EXPECT_EQ(line_of[fourth], "wing angle — → 7 deg"); // past the one that says nothing
    EXPECT_EQ(line_of[same], "no change");
}

} // namespace
} // namespace lapwright::book
