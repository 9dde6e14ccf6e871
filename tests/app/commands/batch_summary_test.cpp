// SPDX-License-Identifier: GPL-3.0-or-later
// The summary of a batch reads whatever lies in its folder: results, and what is none.
#include "app/commands/batch_summary.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace lapwright::commands {
namespace {

class BatchSummary : public testing::Test {
  protected:
    void SetUp() override { std::filesystem::create_directories(folder_); }
    void TearDown() override { std::filesystem::remove_all(folder_); }

    std::string second_line_with(const std::string& document) {
        std::ofstream(result_path(folder_, result_name(job_, ""))) << document;
        const std::string csv = summary_csv({job_}, folder_, "");
        return csv.substr(csv.find('\n') + 1);
    }

    Job job_{"one.csv", "", {}, {}};
    std::string folder_ = (std::filesystem::temp_directory_path() / ("summary" + std::to_string(getpid()))).string();
};

TEST_F(BatchSummary, TellsTheFastestCleanLap) {
    const std::string line = second_line_with(
        R"({"sessions": [{"laps": [{"number": 1, "clean": true, "time_s": 90.5}, {"number": 2, "clean": false, "time_s": 89.0},
            {"number": 3, "clean": true, "time_s": 90.25}]}]})");
    EXPECT_NE(line.find(R"("done","one.csv","",3,,90.25,)"), std::string::npos) << line;
}

TEST_F(BatchSummary, DocumentsOfOthersLeaveCellsEmpty) {
    for (const char* document :
         {R"({"sessions": []})", R"({"sessions": 3})",
          R"({"sessions": [{"laps": [{"clean": true}, {"clean": true}]}]})", R"({})", R"({"sessions": [[]]})"}) {
        const std::string line = second_line_with(document);
        EXPECT_NE(line.find(R"("done","one.csv","",,,,,,,)"), std::string::npos) << document << " gave " << line;
    }
    EXPECT_NE(second_line_with("[1, 2").find("\"missing\""), std::string::npos) << "what was cut off is not done";
}

} // namespace
} // namespace lapwright::commands
