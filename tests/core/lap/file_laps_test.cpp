// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/file_laps.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::lap;
using testing::HasSubstr;

namespace {

track::RecordedPassings marks(double first_s, std::size_t count) {
    track::RecordedPassings result{{}, {}, "lap column of the file"};
    for (std::size_t i = 0; i < count; ++i) {
        result.time_s.push_back(first_s + 90.0 * static_cast<double>(i) + (i % 2 == 0 ? 0.7 : -0.7));
        result.error_s.push_back(0.02);
    }
    return result;
}

std::vector<double> moved(const track::RecordedPassings& from, double by_s) {
    std::vector<double> times;
    for (const double t : from.time_s)
        times.push_back(t + by_s);
    return times;
}

} // namespace

TEST(AgainstFile, ALineAnywhereOnTheLapExplainsTheMarks) {
    const auto file = marks(50.0, 7);
    for (const double by_s : {-44.0, -20.0, -0.05, 0.0, 0.05, 10.0, 44.9, 60.0})
        EXPECT_FALSE(against_file(moved(file, by_s), file)) << by_s;
}

TEST(AgainstFile, MergedAndCutLapsAreTold) {
    const auto file = marks(50.0, 8);
    std::vector<double> missing = moved(file, 0.1);
    missing.erase(missing.begin() + 3);
    const auto one = against_file(missing, file);
    ASSERT_TRUE(one);
    EXPECT_THAT(*one, HasSubstr("marks 7 laps, but 1 of them do not pass"));
    std::vector<double> twice = moved(file, 0.1);
    twice.insert(twice.begin() + 4, twice[3] + 30.0);
    const auto more = against_file(twice, file);
    ASSERT_TRUE(more);
    EXPECT_THAT(*more, HasSubstr("1 pass it more than once"));
    EXPECT_TRUE(against_file({}, file));
}

TEST(AgainstFile, AnOutLapIsNoWitness) {
    auto file = marks(50.0, 5);
    file.time_s.insert(file.time_s.begin(), 0.5);
    file.error_s.insert(file.error_s.begin(), 0.02);
    std::vector<double> passings = moved(marks(50.0, 5), 2.0);
    EXPECT_FALSE(against_file(passings, file));
}
