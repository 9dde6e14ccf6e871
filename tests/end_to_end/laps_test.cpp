// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright laps` on the sample sessions: the contract's keys, and the laps that the simulator drove.
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <ostream>
#include <string>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;
using ::testing::Contains;
using ::testing::HasSubstr;

// Truth from sample-sessions/README.md.  A line crossing from a receiver of this kind is good to some 10 to 45 ms (one
// sigma) at 40 m/s: position errors correlated over minutes, Angrisano et al., Algorithms 2024, 17(1), 2, and the
// receiver class's data sheet; three sigma of the better end.
constexpr double lap_time_tolerance_s = 0.030;

struct Expected {
    std::string file;
    std::size_t laps;
    int fastest;
    double fastest_s;
    int in_traffic;
    double in_traffic_s;
};

void PrintTo(const Expected& expected, std::ostream* out) {
    *out << expected.file;
}

// All laps are timed where the truth is: at the track file's gate.
class Laps : public ::testing::TestWithParam<Expected> {};

const json& lap_numbered(const json& laps, int number) {
    static const json none;
    for (const json& lap : laps) {
        if (lap["number"] == number) {
            return lap;
        }
    }
    ADD_FAILURE() << "no lap " << number;
    return none;
}

TEST_P(Laps, AreThoseThatWereDriven) {
    const Expected& expected = GetParam();
    const json document_ =
        document({"laps", "--json", "--track", sample("ternbank.track.json"), sample(expected.file)});
    ASSERT_EQ(document_["sessions"].size(), 1U);
    const json& laps = document_["sessions"][0]["laps"];
    ASSERT_EQ(laps.size(), expected.laps);
    EXPECT_EQ(laps.front()["kind"], "out");
    EXPECT_EQ(laps.back()["kind"], "in");

    double best_s = 1e9;
    int best = -1;
    for (const json& lap : laps) {
        if (lap["clean"] == true && lap["time_s"].get<double>() < best_s) {
            best_s = lap["time_s"].get<double>();
            best = lap["number"].get<int>();
        }
    }
    EXPECT_EQ(best, expected.fastest);
    EXPECT_NEAR(best_s, expected.fastest_s, lap_time_tolerance_s);

    const json& held_up = lap_numbered(laps, expected.in_traffic);
    EXPECT_EQ(held_up["kind"], "flying");
    EXPECT_EQ(held_up["clean"], false);
    EXPECT_NEAR(held_up["time_s"].get<double>(), expected.in_traffic_s, lap_time_tolerance_s);
}

INSTANTIATE_TEST_SUITE_P(SampleSessions, Laps,
                         ::testing::Values(Expected{"plover-saturday-2.csv", 9, 6, 90.312, 4, 93.938},
                                           Expected{"dunlin-saturday-2.txt", 8, 3, 90.876, 2, 93.939},
                                           Expected{"plover-saturday-3-less-wing.tsv", 9, 1, 90.958, 5, 94.404}));

TEST(LapsDocument, HasTheKeysOfTheContract) {
    const json sessions =
        document({"laps", "--json", sample("plover-saturday-2.csv"), sample("dunlin-saturday-2.txt")})["sessions"];
    ASSERT_EQ(sessions.size(), 2U);
    EXPECT_THAT(sessions[0]["file"].get<std::string>(), HasSubstr("plover-saturday-2.csv"));
    EXPECT_THAT(sessions[1]["file"].get<std::string>(), HasSubstr("dunlin-saturday-2.txt"));
    for (const json& session : sessions) {
        for (const char* key : {"file", "driver", "car", "start_utc", "warnings", "channels", "laps"}) {
            EXPECT_TRUE(session.contains(key)) << key;
        }
        for (const json& warning : session["warnings"]) {
            EXPECT_TRUE(warning["code"].is_string() && warning["message"].is_string() && warning.contains("line"));
        }
        ASSERT_FALSE(session["channels"].empty());
        for (const json& channel : session["channels"]) {
            EXPECT_TRUE(channel["name"].is_string() && channel["meaning"].is_string() && channel["unit"].is_string());
            EXPECT_TRUE(channel.contains("rate_hz"));
        }
        for (const json& lap : session["laps"]) {
            EXPECT_TRUE(lap["number"].is_number_integer() && lap["clean"].is_boolean());
            EXPECT_THAT((std::vector<std::string>{"out", "flying", "in", "incomplete"}), Contains(lap["kind"]));
            EXPECT_TRUE(lap["start_s"].is_number() && lap.contains("time_s") && lap.contains("time_sd_s"));
            EXPECT_NE(lap["time_sd_s"], json(0.0)) << "an unknown spread is null, never 0";
        }
    }
    EXPECT_EQ(sessions[0]["driver"], nullptr) << "that file names nobody";
    EXPECT_EQ(sessions[1]["driver"], "Odran Pell");
}

TEST(LapsTable, IsForPeople) {
    const Outcome table = run({"laps", sample("plover-saturday-2.csv")});
    EXPECT_EQ(table.status, 0) << table.err;
    EXPECT_THAT(table.out, HasSubstr("1:30.31"));
    EXPECT_FALSE(json::accept(table.out));
}

} // namespace
} // namespace lapwright::end_to_end
