// SPDX-License-Identifier: GPL-3.0-or-later
// What a batch is asked to do, and how it is cut into pieces.
#include "app/commands/batch_jobs.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace lapwright::commands {
namespace {

std::vector<std::string> names(std::size_t count) {
    std::vector<std::string> all;
    for (std::size_t i = 0; i < count; ++i)
        all.push_back("run" + std::string(1, static_cast<char>('A' + i)));
    return all;
}

TEST(BatchList, ALineIsAJob) {
    const auto jobs =
        jobs_of_list("# comment\r\n\r\none run.csv\r\n a.csv \tb.csv\na.csv\tb.csv\t3\na.csv\tb.csv\t\t12\n"
                     "a.csv\tb.csv\n",
                     "list");
    ASSERT_TRUE(jobs.ok());
    EXPECT_EQ(*jobs, (std::vector<Job>{{"one run.csv", "", {}, {}},
                                       {"a.csv", "b.csv", {}, {}},
                                       {"a.csv", "b.csv", 3, {}},
                                       {"a.csv", "b.csv", {}, 12}}));
}

TEST(BatchList, WhatIsNoJobIsNamedByItsLine) {
    for (const char* const wrong :
         {"a\tb\tx", "a\tb\t-1", "a\t\t1", "a\tb\t1\t2\t3", "a\tb\t1.5", "a\tb\t9999999999999"}) {
        const auto jobs = jobs_of_list("ok.csv\n" + std::string(wrong), "list");
        ASSERT_FALSE(jobs.ok()) << wrong;
        EXPECT_EQ(jobs.error().place.line, 2U);
    }
}

TEST(BatchPairs, EachWithEachOtherOnceAndFewSessionsAreReadAgain) {
    for (std::size_t count = 0; count < 20; ++count)
        for (const std::size_t block : {1U, 4U, 6U}) {
            const auto jobs = all_pairs(names(count), block);
            std::set<std::set<std::string>> pairs;
            std::vector<std::string> kept; // the last used at the end
            std::size_t reads = 0;
            for (const Job& job : jobs) {
                pairs.insert({job.a, job.b});
                for (const std::string& one : {job.a, job.b}) {
                    if (std::erase(kept, one) == 0) ++reads;
                    kept.push_back(one);
                    if (kept.size() > block + 2) kept.erase(kept.begin());
                }
            }
            EXPECT_EQ(jobs.size(), count * (count > 0 ? count - 1 : 0) / 2);
            EXPECT_EQ(pairs.size(), jobs.size());
            EXPECT_LE(reads, jobs.size() / block + 2 * count + 1) << count << " in blocks of " << block;
        }
}

TEST(BatchPieces, EveryJobIsInOneAndNoPieceIsLonger) {
    std::mt19937 engine(7);
    for (int i = 0; i < 200; ++i) {
        std::vector<Job> jobs;
        for (std::size_t count = engine() % 60; jobs.size() < count;)
            jobs.push_back({std::string(jobs.size(), 'x'), "", {}, {}});
        const std::size_t n = 1 + engine() % 70;
        std::vector<Job> together;
        for (std::size_t piece = 1; piece <= n; ++piece) {
            const auto own = piece_of(jobs, {piece, n});
            EXPECT_LE(own.size(), jobs.size() / n + 1);
            EXPECT_GE(own.size(), jobs.size() / n);
            together.insert(together.end(), own.begin(), own.end());
        }
        EXPECT_EQ(together, jobs);
    }
}

TEST(BatchNames, TellJobsAndOptionsApartAndSuitAnyFileSystem) {
    std::set<std::string> all;
    const std::vector<Job> jobs{{"x/run.csv", "run.csv", {}, {}}, {"run.csv", "x/run.csv", {}, {}},
                                {"run.csv", "x/run.csv", 1, {}},  {"run.csv", "x/run.csv", {}, 1},
                                {"run.csv", "", {}, {}},          {"\xC3\xA4/a:b*?\"<>|\n.csv", "", {}, {}}};
    for (const Job& job : jobs)
        for (const char* const options : {"", "track"})
            all.insert(result_name(job, options));
    EXPECT_EQ(all.size(), 2 * jobs.size());
    for (const std::string& name : all)
        EXPECT_EQ(name.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_"),
                  std::string::npos)
            << name;
    EXPECT_LT(result_name({std::string(500, 'a'), std::string(500, 'b'), {}, {}}, "").size(), 120U);
}

TEST(BatchShard, IsWrittenAsOneOfMany) {
    EXPECT_EQ(parse_shard("3/16")->i, 3U);
    EXPECT_EQ(parse_shard("3/16")->n, 16U);
    for (const char* const wrong : {"", "3", "/3", "3/", "0/3", "4/3", "1/0", "-1/3", "1/3/4", "a/b", "1/99999999"})
        EXPECT_FALSE(parse_shard(wrong)) << wrong;
}

} // namespace
} // namespace lapwright::commands
