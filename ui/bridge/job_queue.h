// SPDX-License-Identifier: GPL-3.0-or-later
// Work off the owner's thread, and behind it where processors are scarce.  Jobs begin in the order in which they were
// added; what one gives back is called on the owner's thread, in its turn among Qt's events, unless the job was called
// off by then.  A job that is called off while it runs learns so from its progress, one that has not begun is left out.
#pragma once

#include "core/base/progress.h"

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <atomic>
#include <functional>
#include <memory>
#include <utility>

namespace lapwright::bridge {

// Jobs that are called off together; those that are added later are not.
class JobGroup {
  public:
    void cancel() { *std::exchange(stop_, std::make_shared<std::atomic<bool>>(false)) = true; }

  private:
    friend class JobQueue;
    std::shared_ptr<std::atomic<bool>> stop_ = std::make_shared<std::atomic<bool>>(false);
};

class JobQueue {
  public:
    using Answer = std::function<void()>;
    using Work = std::function<Answer(const base::Progress&)>;
    using Tell = std::function<void(const QString& stage, double part_done)>; // on the owner's thread

    // The owner has the queue as a member.  With several threads jobs end in any order.
    JobQueue(QObject& owner, int threads, std::function<void(bool)> busy_changed = {});
    ~JobQueue(); // calls all off and waits for what runs
    JobQueue(const JobQueue&) = delete;
    JobQueue& operator=(const JobQueue&) = delete;

    void add(const JobGroup& group, Work work, Tell tell = {});
    // Waits until every job has run; their answers still come.
    void finish() { pool_.waitForDone(); }
    // From the first job until the last answer's turn.
    [[nodiscard]] bool busy() const { return running_ > 0; }

  private:
    using Stop = std::shared_ptr<std::atomic<bool>>;
    [[nodiscard]] base::Progress progress_of(Stop stop, Tell tell);

    QObject& owner_;
    std::function<void(bool)> busy_changed_;
    int running_ = 0;
    std::atomic<bool> ends_ = false;
    QThreadPool pool_;
};

} // namespace lapwright::bridge
