// SPDX-License-Identifier: GPL-3.0-or-later
// What is no trial is refused whatever the order of the sessions, and what is one is put into the order of its times.
#include "core/analysis/trial_plan.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <deque>

using namespace lapwright;
using namespace lapwright::analysis;

namespace {

// Three runs of one car, an hour apart, the middle one with another wing.
struct Day {
    std::deque<recording::Recording> recordings;
    std::vector<PlannedRun> runs;

    Day() {
        for (int i = 0; i < 3; ++i) {
            recording::Recording r;
            r.driver = "Ylva Torrance";
            r.car = i == 1 ? "PLOVER " : "Plover";
            r.track = "Ternbank";
            r.start_unix_s = 1.7e9 + 3600.0 * i;
            r.duration_s = 900.0;
            recordings.push_back(r);
            car::SetupSheet sheet;
            sheet.items = {{"wing", i == 1 ? "3 deg" : "7 deg"}};
            runs.push_back({&recordings.back(), "run " + std::to_string(i + 1), i == 1, sheet});
        }
    }
};

void expect_refused_in_any_order(const Day& day, const std::string& words) {
    std::vector<std::size_t> order{0, 1, 2};
    do {
        std::vector<PlannedRun> runs;
        for (const std::size_t i : order)
            runs.push_back(day.runs[i]);
        const auto refused = check_trial(runs);
        ASSERT_FALSE(refused) << words;
        EXPECT_THAT(base::one_line(refused.error()), testing::HasSubstr(words));
    } while (std::ranges::next_permutation(order).found);
}

} // namespace

TEST(TrialPlan, OneCarOneDriverOneTrackIsATrial) {
    EXPECT_TRUE(check_trial(Day{}.runs));
    EXPECT_EQ(change_not_shown(Day{}.runs), "");
    Day nameless;
    for (recording::Recording& r : nameless.recordings)
        r.driver = r.car = r.track = "";
    EXPECT_TRUE(check_trial(nameless.runs));
}

TEST(TrialPlan, TwoOfAnythingAreRefused) {
    for (int i = 0; i < 3; ++i) {
        const auto at = static_cast<std::size_t>(i);
        Day cars;
        cars.recordings[at].car = "Dunlin";
        expect_refused_in_any_order(cars, "two cars");
        Day drivers;
        drivers.recordings[at].driver = "Odran Pell";
        expect_refused_in_any_order(drivers, "two drivers");
        Day tracks;
        tracks.recordings[at].track = "Saltpan";
        expect_refused_in_any_order(tracks, "two tracks");
        Day sheets; // the recording says nothing, its setup sheet does
        sheets.recordings[at].car = "";
        sheets.runs[at].setup.car = "Dunlin";
        expect_refused_in_any_order(sheets, "two cars");
        Day together;
        together.recordings[at].start_unix_s = *together.recordings[(at + 1) % 3].start_unix_s + 100.0;
        expect_refused_in_any_order(together, "at the same time");
    }
    Day twice;
    twice.runs[2].recording = twice.runs[0].recording;
    expect_refused_in_any_order(twice, "twice");
    Day copied; // under another name, and no clock says so
    for (recording::Recording& r : copied.recordings) {
        r.start_unix_s.reset();
        r.channels.push_back({"speed", recording::Meaning::speed, base::Unit::none, "", nullptr, {1.0, 2.0}, nullptr});
    }
    copied.recordings[1].channels[0].values[1] = 3.0;
    expect_refused_in_any_order(copied, "twice");
    copied.recordings[2].channels[0].values[0] = 4.0;
    EXPECT_TRUE(check_trial(copied.runs)) << "all three are others";
}

TEST(TrialPlan, OrderComesFromTheStartTimes) {
    Day day;
    std::swap(day.runs[0], day.runs[2]);
    const auto order = driven_order(day.runs);
    ASSERT_TRUE(order);
    EXPECT_THAT(*order, testing::ElementsAre(2u, 1u, 0u));
    day.recordings[1].start_unix_s.reset();
    EXPECT_FALSE(driven_order(day.runs));
}

TEST(TrialPlan, AChangeThatTheSheetsDoNotShowIsTold) {
    Day same;
    same.runs[1].setup = same.runs[0].setup;
    EXPECT_THAT(change_not_shown(same.runs), testing::HasSubstr("show no change"));
    Day uneven;
    uneven.runs[2].setup.items.front().value = "5 deg";
    EXPECT_THAT(change_not_shown(uneven.runs), testing::HasSubstr("baseline differ"));
    Day silent;
    for (PlannedRun& run : silent.runs)
        run.setup = {};
    EXPECT_EQ(change_not_shown(silent.runs), "");
}
