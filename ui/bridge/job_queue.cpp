// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/job_queue.h"

#include "core/platform/threads.h"

#include <QElapsedTimer>
#include <QMetaObject>

namespace lapwright::bridge {
namespace {

constexpr qint64 progress_pause_ms = 40; // a person sees no more

} // namespace

JobQueue::JobQueue(QObject& owner, int threads, std::function<void(bool)> busy_changed)
    : owner_(owner), busy_changed_(std::move(busy_changed)) {
    pool_.setMaxThreadCount(threads);
}

JobQueue::~JobQueue() {
    ends_ = true;
    pool_.clear();
    pool_.waitForDone();
}

void JobQueue::add(const JobGroup& group, Work work, Tell tell) {
    if (++running_ == 1 && busy_changed_) busy_changed_(true);
    const Stop stop = group.stop_;
    pool_.start([this, stop, work = std::move(work), progress = progress_of(stop, std::move(tell))] {
        platform::give_way();
        Answer answer = *stop || ends_ ? Answer{} : work(progress);
        const auto end = [this, stop, answer = std::move(answer)] {
            if (--running_ == 0 && busy_changed_) busy_changed_(false);
            if (!*stop && answer) answer();
        };
        QMetaObject::invokeMethod(&owner_, end, Qt::QueuedConnection);
    });
}

base::Progress JobQueue::progress_of(Stop stop, Tell tell) {
    return [this, stop, tell = std::move(tell), since = std::make_shared<QElapsedTimer>()](std::string_view stage,
                                                                                           double part_done) {
        if (*stop || ends_) return false;
        if (!tell || (since->isValid() && since->elapsed() < progress_pause_ms)) return true;
        since->start();
        const auto told = [stop, tell, part_done,
                           text = QString::fromUtf8(stage.data(), static_cast<qsizetype>(stage.size()))] {
            if (!*stop) tell(text, part_done);
        };
        QMetaObject::invokeMethod(&owner_, told, Qt::QueuedConnection);
        return true;
    };
}

} // namespace lapwright::bridge
