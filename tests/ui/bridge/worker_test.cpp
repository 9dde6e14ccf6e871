// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/worker.h"

#include "tests/ui/fixture/pairing_fixture.h"
#include "tests/ui/fixture/waiting.h"

#include <QThread>
#include <atomic>
#include <gtest/gtest.h>

using namespace lapwright;
using bridge::Stages;
using bridge::Wanted;
using bridge::Worker;

namespace {

// Comparisons that go on until they are called off or released.
struct SlowStages {
    std::atomic<bool> release{false};
    std::atomic<int> called_off{0};

    Stages stages() {
        return {
            [](const workspace::Origin& origin, const std::optional<track::TrackRecord>&,
               const base::Progress&) -> base::Result<bridge::SessionPointer> {
                const std::string& path = std::get<std::string>(origin);
                if (path.find("bad") != std::string::npos) {
                    return base::Error{base::ErrorCode::not_a_table, {path, 3, ""}, "this is no table", "export again"};
                }
                return fixture::session(path, "Driver", "car", 90.0);
            },
            [this](const Wanted& wanted, const base::Progress& progress) -> base::Result<workspace::ComparedPointer> {
                while (!release) {
                    if (!base::go_on(progress, "comparing", 0.5)) {
                        ++called_off;
                        return base::cancelled();
                    }
                    QThread::msleep(1);
                }
                auto compared = std::make_shared<workspace::Compared>();
                auto pairing = std::make_shared<analysis::Pairing>();
                pairing->a.lap.number = wanted.lap_a.value_or(-1);
                compared->pairing = pairing;
                return workspace::ComparedPointer(compared);
            }};
    }
};

} // namespace

TEST(Worker, AnswersOnTheOwnersThreadWithSessionOrSentence) {
    SlowStages slow;
    Worker worker(slow.stages());
    QStringList come;
    std::string refused;
    QObject::connect(&worker, &Worker::session_ready, &worker,
                     [&](const workspace::Origin& origin, const bridge::SessionPointer&) {
                         EXPECT_EQ(QThread::currentThread(), worker.thread());
                         come << QString::fromStdString(std::get<std::string>(origin));
                     });
    QObject::connect(&worker, &Worker::file_refused, &worker,
                     [&](const workspace::Origin&, const base::Error& error) { refused = base::one_line(error); });
    worker.load({"one", "bad", "two"});
    EXPECT_TRUE(worker.busy());
    ASSERT_TRUE(fixture::wait_for([&] { return !worker.busy(); }));
    fixture::settle();
    come.sort();
    EXPECT_EQ(come, (QStringList{QStringLiteral("one"), QStringLiteral("two")}));
    EXPECT_EQ(refused, "bad:3: this is no table — export again");
}

TEST(Worker, TheNewestComparisonWinsAndTheOlderIsCalledOff) {
    SlowStages slow;
    Worker worker(slow.stages());
    std::vector<int> answered;
    QObject::connect(&worker, &Worker::pairing_ready, &worker, [&](const workspace::ComparedPointer& compared) {
        answered.push_back(compared->pairing->a.lap.number);
    });
    worker.compare({nullptr, nullptr, 1, 1, {}});
    ASSERT_TRUE(fixture::wait_for([&] { return worker.busy(); }));
    QThread::msleep(20);
    worker.compare({nullptr, nullptr, 2, 1, {}});
    slow.release = slow.called_off > 0 || fixture::wait_for([&] { return slow.called_off > 0; });
    ASSERT_TRUE(fixture::wait_for([&] { return !worker.busy(); }));
    fixture::settle();
    EXPECT_EQ(answered, std::vector<int>{2});
    EXPECT_EQ(slow.called_off, 1);
}

TEST(Worker, WhatWasStoppedIsNotAnswered) {
    SlowStages slow;
    Worker worker(slow.stages());
    int answers = 0;
    QString stage;
    QObject::connect(&worker, &Worker::pairing_ready, &worker, [&] { ++answers; });
    QObject::connect(&worker, &Worker::comparison_refused, &worker, [&] { ++answers; });
    QObject::connect(&worker, &Worker::progressed, &worker, [&](const QString& name, double) { stage = name; });
    worker.compare({nullptr, nullptr, 1, 1, {}});
    ASSERT_TRUE(fixture::wait_for([&] { return !stage.isEmpty(); }));
    EXPECT_EQ(stage, QStringLiteral("comparing"));
    worker.cancel();
    ASSERT_TRUE(fixture::wait_for([&] { return !worker.busy(); }));
    fixture::settle();
    EXPECT_EQ(answers, 0);
}

TEST(Worker, MayBeDestroyedWhileItWorks) {
    SlowStages slow;
    {
        Worker worker(slow.stages());
        worker.compare({nullptr, nullptr, 1, 1, {}});
        QThread::msleep(10);
    }
    fixture::settle();
    EXPECT_LE(slow.called_off, 1);
}
