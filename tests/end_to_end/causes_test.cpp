// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright causes` on the sample sessions: the contract's keys, rows that add up, and the truth behind the files (see
// sample-sessions/README.md) inside the intervals.
#include "tests/end_to_end/program.h"
#include "tests/truth/sample_sessions.h"
#include "tests/truth/track_catalogue.h"
#include "tests/truth/true_causes.h"

#include <gmock/gmock.h>

#include <cmath>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");
constexpr const char* keys[5] = {"tyre_grip", "downforce", "drag", "power", "mass"};

const json& caused() {
    static const json result =
        document({"causes", "--json", hatch, coupe, "--setup-a", sample("plover-saturday-2.setup.json"), "--setup-b",
                  sample("dunlin-saturday-2.setup.json"), "--track", sample("ternbank.track.json")});
    return result;
}

void expect_inside(const json& figure, double truth, const char* what) {
    ASSERT_TRUE(figure.is_object()) << what;
    EXPECT_LE(figure["low"].get<double>(), truth) << what;
    EXPECT_GE(figure["high"].get<double>(), truth) << what;
    EXPECT_TRUE(figure["decided_by"].is_string()) << what;
}

TEST(CausesDocument, RowsAddUpToTheMeasuredGain) {
    double gap = 0.0;
    for (const json& segment : caused()["segments"]) {
        double sum = segment["driver_and_rest_s"].get<double>();
        for (const char* key : keys) {
            sum += segment["causes"][key].get<double>();
        }
        EXPECT_NEAR(sum, segment["gain_s"].get<double>(), 1e-9) << segment["name"];
        gap += segment["gain_s"].get<double>();
    }
    EXPECT_NEAR(gap, caused()["total"]["gain_s"].get<double>(), 1e-9);
    const json compared = document({"compare", "--json", hatch, coupe, "--track", sample("ternbank.track.json")});
    EXPECT_NEAR(compared["gap_s"].get<double>(), caused()["total"]["gain_s"].get<double>(), 1e-9);
}

TEST(CausesDocument, FindsTheCars) {
    const auto entries = truth::demo_entries();
    const char* sides[2] = {"a", "b"};
    for (std::size_t i = 0; i < 2; ++i) {
        const json& figures = caused()["cars"][sides[i]];
        const truth::CarTruth& car = entries[i].car;
        expect_inside(figures["grip"], car.mu, "grip");
        expect_inside(figures["downforce_area_m2"], car.downforce_area_m2, "downforce area");
        expect_inside(figures["drag_area_m2"], car.drag_area_m2, "drag area");
        expect_inside(figures["power_w"], car.power_w, "power");
        expect_inside(figures["mass_kg"], car.mass_kg, "mass");
        EXPECT_EQ(figures["power_w"]["decided_by"], "data");
        EXPECT_EQ(figures["mass_kg"]["decided_by"], "setup");
        EXPECT_NEAR(figures["power_w"]["value"].get<double>(), car.power_w, 0.05 * car.power_w);
    }
}

TEST(CausesDocument, FindsWhatTheGapIsMadeOf) {
    const auto entries = truth::demo_entries();
    const truth::TrueCauses truth = truth::true_causes(truth::ternbank(), entries[0].car, entries[1].car,
                                                       entries[0].driver, entries[0].conditions.air_density);
    const json& total = caused()["total"];
    for (std::size_t c = 0; c < 5; ++c) {
        EXPECT_LE(total["causes_low"][keys[c]].get<double>(), truth.total[c]) << keys[c];
        EXPECT_GE(total["causes_high"][keys[c]].get<double>(), truth.total[c]) << keys[c];
    }
    for (const std::size_t c : {2U, 3U, 4U}) { // the bar for drag, power and mass
        EXPECT_NEAR(total["causes"][keys[c]].get<double>(), truth.total[c], 0.15) << keys[c];
    }
}

TEST(CausesDocument, WithoutAMassSaysSo) {
    const Scratch scratch;
    const json result = document({"causes", "--json", scratch.sample_alone("plover-saturday-2.csv"),
                                  scratch.sample_alone("dunlin-saturday-2.txt")});
    EXPECT_TRUE(result["per_kilogram"].get<bool>());
    EXPECT_TRUE(result["cars"]["a"]["power_w"].is_null());
    EXPECT_TRUE(result["total"]["causes"]["mass"].is_null());
    EXPECT_TRUE(result["cars"]["a"]["power_w_per_kg"].is_object());
}

TEST(CausesDocument, OneCarHasNoCauses) {
    const json result = document({"causes", "--json", hatch, hatch, "--lap-a", "2", "--lap-b", "6"});
    for (const char* key : {"tyre_grip", "downforce", "drag", "power"}) {
        EXPECT_NEAR(result["total"]["causes"][key].get<double>(), 0.0, 1e-9) << key;
    }
    EXPECT_THAT(result["sentence"].get<std::string>(), HasSubstr("same car"));
}

} // namespace
} // namespace lapwright::end_to_end
