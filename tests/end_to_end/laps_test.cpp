// SPDX-License-Identifier: GPL-3.0-or-later
// `lapwright laps` on the sample sessions: the contract's keys, and the laps that the simulator drove.
#include "tests/end_to_end/driven.h"
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

#include <string>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;
using ::testing::Contains;
using ::testing::HasSubstr;

class Laps : public ::testing::TestWithParam<const char*> {};

std::string contract_name(truth::LapKind kind) {
    switch (kind) {
    case truth::LapKind::out:
        return "out";
    case truth::LapKind::in:
        return "in";
    default:
        return "flying";
    }
}

// Timed where the truth is: at the track file's gate.
TEST_P(Laps, AreThoseThatWereDriven) {
    const truth::Session& truth_ = driven(GetParam());
    const json document_ = document({"laps", "--json", "--track", sample("ternbank.track.json"), sample(GetParam())});
    ASSERT_EQ(document_["sessions"].size(), 1U);
    const json& laps = document_["sessions"][0]["laps"];
    ASSERT_EQ(laps.size(), truth_.laps().size());

    for (std::size_t i = 0; i < laps.size(); ++i) {
        const truth::LapTruth& lap = truth_.laps()[i];
        EXPECT_EQ(laps[i]["number"], lap.number);
        EXPECT_EQ(laps[i]["kind"], contract_name(lap.kind)) << lap.number;
        EXPECT_EQ(laps[i]["clean"], lap.kind == truth::LapKind::flying) << lap.number;
        if (contract_name(lap.kind) == "flying") {
            EXPECT_NEAR(laps[i]["time_s"].get<double>(), lap.time_s(),
                        sigmas * DrivenLap(&truth_, lap.number).time_sd_s())
                << lap.number;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(SampleSessions, Laps,
                         ::testing::Values("plover-saturday-2.csv", "dunlin-saturday-2.txt",
                                           "plover-saturday-3-less-wing.tsv"));

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
    EXPECT_EQ(sessions[0]["driver"], "Ylva Tarnby") << "that file names nobody, the setup sheet beside it does";
    EXPECT_EQ(sessions[1]["driver"], "Odran Pell");
}

TEST(LapsTable, IsForPeople) {
    const Outcome table = run({"laps", sample("plover-saturday-2.csv")});
    EXPECT_EQ(table.status, 0) << table.err;
    EXPECT_THAT(table.out, HasSubstr("fastest"));
    EXPECT_FALSE(json::accept(table.out));
}

} // namespace
} // namespace lapwright::end_to_end
