// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/job_queue.h"

#include "tests/ui/fixture/waiting.h"

#include <QThread>
#include <atomic>
#include <gmock/gmock.h>

using namespace lapwright;
using bridge::JobGroup;
using bridge::JobQueue;
using testing::ElementsAre;

namespace {

struct Jobs : testing::Test {
    QObject owner;
    std::vector<bool> busy;
    std::vector<int> answered;
    std::atomic<int> begun{0};
    std::atomic<bool> release{false};
    std::unique_ptr<JobQueue> queue = std::make_unique<JobQueue>(owner, 1, [this](bool now) { busy.push_back(now); });

    // One that runs until it is released or called off.
    JobQueue::Work slow(int number) {
        return [this, number](const base::Progress& progress) -> JobQueue::Answer {
            ++begun;
            while (!release && base::go_on(progress, "waiting", 0.5))
                QThread::msleep(1);
            return [this, number] { answered.push_back(number); };
        };
    }
    bool ended() {
        return fixture::wait_for([this] { return !queue->busy(); });
    }
};

} // namespace

TEST_F(Jobs, AreAnsweredInTheirOrderOnTheOwnersThread) {
    release = true;
    for (int i = 0; i < 20; ++i)
        queue->add({}, [this, i](const base::Progress&) -> JobQueue::Answer {
            EXPECT_NE(QThread::currentThread(), owner.thread());
            return [this, i] {
                EXPECT_EQ(QThread::currentThread(), owner.thread());
                answered.push_back(i);
            };
        });
    EXPECT_TRUE(queue->busy());
    ASSERT_TRUE(ended());
    ASSERT_EQ(answered.size(), 20U);
    EXPECT_TRUE(std::ranges::is_sorted(answered));
    EXPECT_THAT(busy, ElementsAre(true, false));
}

TEST_F(Jobs, ThatAreCalledOffAreNotAnsweredAndThoseThatWaitDoNotBegin) {
    JobGroup off;
    JobGroup on;
    queue->add(off, slow(1));
    queue->add(off, slow(2));
    queue->add(on, slow(3));
    ASSERT_TRUE(fixture::wait_for([this] { return begun == 1; }));
    off.cancel();
    queue->add(off, slow(4)); // later than the call
    release = true;
    ASSERT_TRUE(ended());
    EXPECT_THAT(answered, ElementsAre(3, 4));
    EXPECT_EQ(begun, 3);
}

TEST_F(Jobs, TellHowFarTheyAreUntilTheyAreCalledOff) {
    JobGroup group;
    std::vector<double> told;
    queue->add(group, slow(1), [&](const QString& stage, double part_done) {
        EXPECT_EQ(stage, QStringLiteral("waiting"));
        told.push_back(part_done);
        group.cancel();
    });
    ASSERT_TRUE(ended());
    EXPECT_THAT(told, ElementsAre(0.5));
    EXPECT_TRUE(answered.empty());
}

TEST_F(Jobs, EndWithTheirQueue) {
    queue->add({}, slow(1));
    queue->add({}, slow(2));
    ASSERT_TRUE(fixture::wait_for([this] { return begun == 1; }));
    queue.reset();
    EXPECT_EQ(begun, 1);
}
