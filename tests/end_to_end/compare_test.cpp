// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright compare` on the sample sessions: the contract's keys, sums that must hold exactly, and the story that the
// simulator drove (sample-sessions/README.md).
#include "tests/end_to_end/driven.h"
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;
using ::testing::Not;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

double number(const json& object, const char* key) {
    EXPECT_TRUE(object.contains(key) && object[key].is_number()) << key;
    return object.contains(key) && object[key].is_number() ? object[key].get<double>() : std::nan("");
}

double sum_of_gains(const json& comparison) {
    double sum = 0.0;
    for (const json& segment : comparison["segments"]) {
        sum += number(segment, "gain_s");
    }
    return sum;
}

const json& compared() {
    static const json result = document({"compare", "--json", hatch, coupe});
    return result;
}

TEST(CompareDocument, HasTheKeysOfTheContract) {
    const json& result = compared();
    for (const char* key : {"a", "b", "track", "gap_s", "gap_sd_s", "trace", "segments", "warnings"}) {
        EXPECT_TRUE(result.contains(key)) << key;
    }
    for (const char* side : {"a", "b"}) {
        for (const char* key : {"file", "driver", "lap", "time_s", "time_sd_s"}) {
            EXPECT_TRUE(result[side].contains(key)) << side << " " << key;
        }
    }
    EXPECT_TRUE(result["track"]["name"].is_string() && result["track"]["length_m"].is_number());
    EXPECT_TRUE(result["a"]["lap"].is_number_integer() && result["b"]["lap"].is_number_integer());
}

TEST(CompareDocument, SegmentsHaveTheKeysOfTheContract) {
    ASSERT_FALSE(compared()["segments"].empty());
    for (const json& segment : compared()["segments"]) {
        for (const char* key : {"name",
                                "kind",
                                "start_m",
                                "end_m",
                                "gain_s",
                                "gain_sd_s",
                                "entry_speed_a_mps",
                                "entry_speed_b_mps",
                                "min_speed_a_mps",
                                "min_speed_b_mps",
                                "exit_speed_a_mps",
                                "exit_speed_b_mps",
                                "top_speed_a_mps",
                                "top_speed_b_mps",
                                "braking_point_a_m",
                                "braking_point_b_m",
                                "full_throttle_a_m",
                                "full_throttle_b_m",
                                "min_speed_at_a_m",
                                "min_speed_at_b_m"}) {
            ASSERT_TRUE(segment.contains(key)) << key;
            if (std::string(key).ends_with("_m") || std::string(key).ends_with("_mps")) {
                EXPECT_TRUE(segment[key].is_null() || segment[key].is_number()) << key;
            }
        }
        EXPECT_TRUE(segment["kind"] == "corner" || segment["kind"] == "straight");
        if (segment["kind"] == "corner") {
            EXPECT_GT(number(segment, "min_speed_a_mps"), 5.0) << segment["name"];
            EXPECT_LE(number(segment, "min_speed_a_mps"), number(segment, "entry_speed_a_mps") + 1e-9)
                << segment["name"];
        }
    }
}

TEST(CompareDocument, TraceIsOneGridOverTheWholeLap) {
    const json& trace = compared()["trace"];
    const std::size_t size = trace["distance_m"].size();
    ASSERT_GT(size, 1000U);
    for (const char* key : {"speed_a_mps", "speed_b_mps", "gap_s", "gap_sd_s", "curvature_per_m"}) {
        EXPECT_EQ(trace[key].size(), size) << key;
    }
    EXPECT_EQ(trace["distance_m"].front(), 0.0);
    EXPECT_NEAR(trace["distance_m"].back().get<double>(), number(compared()["track"], "length_m"), 1e-6);
    for (std::size_t i = 1; i < size; ++i) {
        ASSERT_GT(trace["distance_m"][i].get<double>(), trace["distance_m"][i - 1].get<double>());
    }
    EXPECT_NEAR(trace["gap_s"].front().get<double>(), 0.0, 1e-9);
    EXPECT_NEAR(trace["gap_s"].back().get<double>(), number(compared(), "gap_s"), 1e-9);
}

TEST(CompareDocument, GainsAddUpToTheGapAndTheGapToTheLapTimes) {
    const json& result = compared();
    EXPECT_NEAR(sum_of_gains(result), number(result, "gap_s"), 1e-9);
    EXPECT_NEAR(number(result["b"], "time_s") - number(result["a"], "time_s"), number(result, "gap_s"), 1e-9);
    double at_m = 0.0;
    for (const json& segment : result["segments"]) {
        EXPECT_NEAR(number(segment, "start_m"), at_m, 1e-6);
        at_m = number(segment, "end_m");
    }
    EXPECT_NEAR(at_m, number(result["track"], "length_m"), 1e-6);
}

TEST(CompareDocument, TellsTheStoryThatWasDriven) {
    const json result = document({"compare", "--json", "--track", sample("ternbank.track.json"), hatch, coupe});
    EXPECT_EQ(result["track"]["name"], "Ternbank");
    const DrivenLap a{&driven("plover-saturday-2.csv"), result["a"]["lap"].get<int>()};
    const DrivenLap b{&driven("dunlin-saturday-2.txt"), result["b"]["lap"].get<int>()};
    EXPECT_NEAR(number(result, "gap_s"), b.time_s() - a.time_s(), sigmas * std::hypot(a.time_sd_s(), b.time_sd_s()));
    const json* most = nullptr;
    for (const json& segment : result["segments"]) {
        if (most == nullptr || number(segment, "gain_s") > number(*most, "gain_s")) {
            most = &segment;
        }
        const std::string name = segment["name"];
        const TrueGain truth_ = true_gain(name, a, b);
        EXPECT_NEAR(number(segment, "gain_s"), truth_.gain_s, sigmas * truth_.sd_s) << name;
    }
    ASSERT_NE(most, nullptr);
    EXPECT_EQ((*most)["name"], "Lantern");
}

// The two files have different timing lines: each session's own count decides, not the line that they are compared on.
// On the line of both, where the coupe's fastest lap is another than on the line that its own file proposes.
TEST(CompareDocument, TakesEachFilesFastestCleanLapOnTheCommonLine) {
    for (const std::string side : {"a", "b"}) {
        std::vector<double> laps;
        for (const json& segment : compared()["segments"]) {
            const json& times = segment["clean_lap_times_" + side + "_s"];
            laps.resize(times.size(), 0.0);
            for (std::size_t i = 0; i < laps.size(); ++i)
                laps[i] += times[i].get<double>();
        }
        ASSERT_GE(laps.size(), 4U);
        EXPECT_NEAR(number(compared()[side], "time_s"), *std::ranges::min_element(laps), 1e-9);
    }
}

TEST(CompareDocument, SwappingTheLapsTurnsTheSign) {
    const json swapped = document({"compare", "--json", coupe, hatch});
    EXPECT_EQ(swapped["a"]["lap"], compared()["b"]["lap"]);
    EXPECT_NEAR(number(swapped, "gap_s"), -number(compared(), "gap_s"), 1e-3);
}

TEST(CompareDocument, TwoLapsOfOneSession) {
    const json result = document({"compare", "--json", "--lap-a", "2", "--lap-b", "5", hatch, hatch});
    EXPECT_EQ(result["a"]["lap"], 2);
    EXPECT_EQ(result["b"]["lap"], 5);
    EXPECT_NEAR(sum_of_gains(result), number(result, "gap_s"), 1e-9);

    const json same = document({"compare", "--json", "--lap-a", "2", "--lap-b", "2", hatch, hatch});
    EXPECT_NEAR(number(same, "gap_s"), 0.0, 1e-12);
    for (const json& segment : same["segments"]) {
        EXPECT_NEAR(number(segment, "gain_s"), 0.0, 1e-12) << segment["name"];
    }
}

TEST(CompareDocument, StepIsTheGridOfTheTraces) {
    const json coarse = document({"compare", "--json", "--step", "10", hatch, coupe});
    EXPECT_NEAR(static_cast<double>(coarse["trace"]["distance_m"].size()), number(coarse["track"], "length_m") / 10.0,
                2.0);
    EXPECT_NEAR(sum_of_gains(coarse), number(coarse, "gap_s"), 1e-9);
}

TEST(CompareDocument, IsTheSameEveryTimeAndInEveryLocale) {
    const Outcome first = run({"compare", "--json", hatch, coupe});
    EXPECT_EQ(first.out, run({"compare", "--json", hatch, coupe}).out);
    for (const char* locale : {"C.UTF-8", "de_DE.UTF-8", "tr_TR.UTF-8"}) {
        EXPECT_EQ(first.out, run({"compare", "--json", hatch, coupe}, {{"LC_ALL", locale}}).out) << locale;
    }
}

TEST(CompareTable, IsForPeopleInTheAskedUnits) {
    const Outcome metric = run({"compare", hatch, coupe});
    const Outcome imperial = run({"compare", "--units", "imperial", hatch, coupe});
    EXPECT_EQ(metric.status, 0) << metric.err;
    EXPECT_EQ(imperial.status, 0) << imperial.err;
    EXPECT_THAT(metric.out, HasSubstr("km/h"));
    EXPECT_THAT(imperial.out, HasSubstr("mph"));
    EXPECT_THAT(imperial.out, Not(HasSubstr("km/h")));
    EXPECT_THAT(metric.out, HasSubstr("A ahead by 0."));
}

} // namespace
} // namespace lapwright::end_to_end
