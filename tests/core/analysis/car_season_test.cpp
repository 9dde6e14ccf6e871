// SPDX-License-Identifier: GPL-3.0-or-later
// A book of drawn sessions put together: the wing is found, what tells nothing is left out with its reason, and the
// work can be called off anywhere.
#include "core/analysis/car_season.h"

#include "core/analysis/keep_session.h"
#include "core/analysis/run.h"
#include "core/base/number_text.h"
#include "core/book/sessions.h"
#include "core/book/tracks.h"
#include "support/recording_of.h"
#include "truth/drive.h"
#include "truth/track_catalogue.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <vector>

namespace {

using namespace lapwright;

constexpr double wing_m2 = 1.1;
constexpr double wing_drag_m2 = 0.11;

// The session's bytes are its number: what counts is that no two are the same.
book::Source source_of(int number) {
    book::Source source;
    source.file_name = "run-" + base::integer_text(number) + ".csv";
    source.size_bytes = 100;
    source.checksum.fill(static_cast<std::uint8_t>(number));
    return source;
}

class CarSeason : public testing::Test {
  protected:
    CarSeason() {
        std::filesystem::remove(file_);
        auto opened = book::Book::open(file_, {.may_begin = true});
        EXPECT_TRUE(opened.ok());
        book_.emplace(std::move(opened).value());
    }
    ~CarSeason() override {
        book_.reset();
        std::filesystem::remove(file_);
    }

    void keep(int number, bool winged, int laps = 4) {
        truth::CarTruth car = truth::light_aero_hatch();
        if (!winged) {
            car.downforce_area_m2 -= wing_m2;
            car.drag_area_m2 -= wing_drag_m2;
        }
        truth::SessionPlan plan;
        plan.flying_laps = laps;
        const auto track = std::make_shared<const truth::TrackShape>(truth::ternbank());
        const auto driven =
            truth::drive_session(track, car, truth::DriverTruth{}, plan, 40 + static_cast<std::uint64_t>(number));
        recording::Recording recording = test::recording_of(
            truth::log_session(driven, truth::perfect_logger(20.0), static_cast<std::uint64_t>(number)), "run");
        recording.driver = "Wren Asby";
        recording.car = "Dotterel";
        recording.track = "Ternbank";
        recording.start_unix_s = 1.75e9 + 86400.0 * number;
        const auto session = analysis::understand(std::move(recording));
        ASSERT_TRUE(session.ok());
        car::SetupSheet setup;
        setup.mass = car::Mass{car.mass_kg, 5.0};
        setup.items = {{"wing", winged ? "on" : "off"}};
        ASSERT_TRUE(
            analysis::keep_session(*book_, source_of(number), {.session = session->get(), .setup = setup}).ok());
        if (number == 1) keep_track(*session.value());
    }

    void keep_track(const analysis::Session& session) {
        const auto both = std::make_shared<const analysis::Session>(session);
        analysis::PairingOptions options;
        options.lap_a = 1;
        options.lap_b = 2;
        const auto pairing = analysis::compare(both, both, options);
        ASSERT_TRUE(pairing.ok());
        track::TrackRecord record;
        record.name = "Ternbank";
        record.segments = pairing.value()->track.segments;
        record.length_m = pairing.value()->track.line.length_m;
        const motion::LocalFrame& frame = pairing.value()->track.frame;
        const motion::Vec2 centre = pairing.value()->track.gate.centre_m;
        record.gate.position = motion::to_geodetic(frame, {centre.east, centre.north, 0.0});
        record.gate.heading_rad = pairing.value()->track.gate.heading_rad;
        ASSERT_TRUE(book::put_track(*book_, record).ok());
    }

    book::Book& book() { return *book_; }

  private:
    std::string file_ = testing::TempDir() + "car_season_" + base::integer_text(::getpid()) + ".book";
    std::optional<book::Book> book_;
};

TEST_F(CarSeason, TellsWhatTheWingDid) {
    for (int number = 1; number <= 4; ++number)
        keep(number, number % 2 == 1);
    const auto season = analysis::car_season(book(), " dotterel ");
    ASSERT_TRUE(season.ok()) << base::one_line(season.error());
    EXPECT_EQ(season->sessions.size(), 4U);
    EXPECT_TRUE(season->left_out.empty());
    ASSERT_EQ(season->effects.size(), 1U);
    const car::FigureChanges& off = season->effects[0].change;
    EXPECT_EQ(season->effects[0].before, "on");
    EXPECT_LT(off.downforce_area_m2.low, -wing_m2);
    EXPECT_GT(off.downforce_area_m2.high, -wing_m2);
    EXPECT_LT(off.downforce_area_m2.high, 0.0) << "it is seen";
    EXPECT_LT(off.drag_area_m2.low, -wing_drag_m2);
    EXPECT_GT(off.drag_area_m2.high, -wing_drag_m2);
    EXPECT_EQ(season->so_far.size(), 4U);
    for (const book::SeasonSession& one : season->sessions)
        EXPECT_EQ(one.figures.size(), 4U);
    EXPECT_EQ(season->so_far.back().figures, season->sessions.back().figures);
}

TEST_F(CarSeason, WhatTellsNothingIsLeftOutWithItsReason) {
    keep(1, true);
    recording::Recording standing;
    standing.car = "Dotterel";
    standing.start_unix_s = 1.75e9;
    standing.duration_s = 10.0;
    const auto session = analysis::understand(standing);
    ASSERT_TRUE(session.ok());
    ASSERT_TRUE(analysis::keep_session(book(), source_of(9), {.session = session->get()}).ok());
    const auto season = analysis::car_season(book(), "Dotterel");
    ASSERT_TRUE(season.ok()) << base::one_line(season.error());
    EXPECT_EQ(season->sessions.size(), 1U);
    ASSERT_EQ(season->left_out.size(), 1U);
    EXPECT_EQ(season->left_out[0].session.source.file_name, "run-9.csv");
    EXPECT_FALSE(season->left_out[0].why.empty());
    ASSERT_FALSE(season->notes.empty());
    EXPECT_NE(season->notes[0].find("one session alone"), std::string::npos);
}

TEST_F(CarSeason, ACarThatTheBookDoesNotKnowIsNamed) {
    for (const char* car : {"Plover", "", "  "}) {
        const auto season = analysis::car_season(book(), car);
        ASSERT_FALSE(season.ok());
        EXPECT_EQ(season.error().code, base::ErrorCode::cannot_be_computed);
    }
}

TEST_F(CarSeason, StopsWhereverItIsCalledOff) {
    keep(1, true, 3);
    keep(2, false, 3);
    std::vector<double> parts;
    const auto whole = analysis::car_season(book(), "Dotterel", [&](std::string_view, double part) {
        parts.push_back(part);
        return true;
    });
    ASSERT_TRUE(whole.ok());
    EXPECT_TRUE(std::ranges::is_sorted(parts));
    for (std::size_t last = 1; last <= parts.size(); last += 1 + parts.size() / 10) {
        std::size_t told = 0;
        const auto season =
            analysis::car_season(book(), "Dotterel", [&](std::string_view, double) { return ++told < last; });
        ASSERT_FALSE(season.ok()) << last;
        EXPECT_EQ(season.error().code, base::ErrorCode::cancelled);
    }
}

} // namespace
