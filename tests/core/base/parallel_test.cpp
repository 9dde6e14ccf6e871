// SPDX-License-Identifier: GPL-3.0-or-later
// Each task once, whatever the number of threads; loops inside loops; who stops, who throws.
#include "core/base/parallel.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <new>
#include <vector>

using namespace lapwright::base;

TEST(ParallelFor, DoesEachTaskOnceAndNoWorkerTwoAtATime) {
    for (const unsigned threads : {0U, 1U, 2U, 5U, 100U})
        for (const std::size_t count : {0UL, 1UL, 2UL, 7UL, 1000UL}) {
            std::vector<int> done(count, 0);
            std::vector<std::atomic<int>> busy(thread_count(threads));
            EXPECT_TRUE(parallel_for(count, threads, [&](std::size_t i, std::size_t worker) {
                EXPECT_EQ(busy.at(worker)++, 0);
                ++done[i];
                --busy[worker];
                return true;
            }));
            EXPECT_EQ(std::ranges::count(done, 1), static_cast<std::ptrdiff_t>(count)) << threads;
        }
}

TEST(ParallelFor, LoopsInsideLoopsEnd) {
    std::atomic<int> done{0};
    parallel_for(6, 4, [&](std::size_t) { parallel_for(5, 4, [&](std::size_t) { ++done; }); });
    EXPECT_EQ(done, 30);
}

TEST(ParallelFor, NothingBeginsAfterATaskThatSaidNo) {
    std::atomic<int> begun{0};
    EXPECT_FALSE(parallel_for(1000, 1, [&](std::size_t i, std::size_t) {
        ++begun;
        return i < 10;
    }));
    EXPECT_EQ(begun, 11);
}

TEST(ParallelFor, ThrowsToTheCallerWhatATaskThrewOnAnyThread) {
    for (const unsigned threads : {1U, 4U})
        for (const std::size_t which : {0UL, 3UL, 99UL})
            EXPECT_THROW(parallel_for(100, threads,
                                      [&](std::size_t i) {
                                          if (i == which) throw std::bad_alloc();
                                      }),
                         std::bad_alloc);
}

TEST(TaskProgress, RunsOverItsPartAndStaysStopped) {
    std::vector<double> told;
    bool wanted = true;
    const Progress progress = [&](std::string_view stage, double part) {
        EXPECT_EQ(stage, "sorting");
        told.push_back(part);
        return wanted;
    };
    TaskProgress tasks(progress, "sorting", 4, 0.5, 1.0);
    EXPECT_TRUE(tasks.done());
    EXPECT_TRUE(tasks.done());
    wanted = false;
    EXPECT_FALSE(tasks.done());
    wanted = true;
    EXPECT_FALSE(tasks.done()); // a no is not taken back
    EXPECT_EQ(told, (std::vector<double>{0.625, 0.75, 0.875}));
}
