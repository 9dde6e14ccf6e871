// SPDX-License-Identifier: GPL-3.0-or-later
// `--csv`: the tables' figures are those of the JSON documents.
#include "core/base/number_text.h"
#include "tests/end_to_end/program.h"

#include <gmock/gmock.h>

namespace lapwright::end_to_end {
namespace {

using nlohmann::json;

const std::string hatch = sample("plover-saturday-2.csv");
const std::string coupe = sample("dunlin-saturday-2.txt");

// Rows of fields; the names of this track hold neither comma nor quote.
std::vector<std::vector<std::string>> table(const std::string& command) {
    const Outcome result = run({command, hatch, coupe, "--csv"});
    EXPECT_EQ(result.status, 0) << result.err;
    std::vector<std::vector<std::string>> rows(1, std::vector<std::string>(1));
    for (const char letter : result.out) {
        if (letter == ',')
            rows.back().emplace_back();
        else if (letter == '\n')
            rows.emplace_back(1);
        else if (letter != '"' && letter != '\r')
            rows.back().back() += letter;
    }
    rows.pop_back(); // behind the last line end
    return rows;
}

TEST(Csv, CompareHasTheGainsOfTheDocument) {
    const auto rows = table("compare");
    const json segments = document({"compare", hatch, coupe, "--json"})["segments"];
    ASSERT_EQ(rows.size(), segments.size() + 1);
    EXPECT_EQ(rows[0][4], "gain of A (s)");
    for (std::size_t i = 0; i < segments.size(); ++i) {
        EXPECT_EQ(rows[i + 1].size(), rows[0].size());
        EXPECT_EQ(rows[i + 1][0], segments[i]["name"]);
        EXPECT_NEAR(base::parse_number(rows[i + 1][4]).value(), segments[i]["gain_s"].get<double>(), 0.000051);
    }
}

TEST(Csv, CausesHasTheSecondsOfTheDocument) {
    const auto rows = table("causes");
    const json causes = document({"causes", hatch, coupe, "--json"});
    ASSERT_EQ(rows.size(), causes["segments"].size() + 4);
    EXPECT_EQ(rows[0][4], "downforce (s)");
    const auto& whole_lap = rows[rows.size() - 3];
    EXPECT_NEAR(base::parse_number(whole_lap[4]).value(), causes["total"]["causes"]["downforce"].get<double>(),
                0.000051);
    EXPECT_NEAR(base::parse_number(whole_lap[7]).value(), causes["total"]["causes"]["mass"].get<double>(), 0.000051);
}

TEST(Csv, IsOneFormOfOutputAlone) {
    EXPECT_EQ(run({"compare", hatch, coupe, "--csv", "--json"}).status, 2);
}

} // namespace
} // namespace lapwright::end_to_end
