// SPDX-License-Identifier: GPL-3.0-or-later
// Independent tasks on a few threads.  Which thread does a task never changes its result.
//
// The caller works too, so that a loop inside a loop cannot wait for itself, and where no thread is to be had it does
// all of it.  An exception of a task (memory ran out) is thrown again to the caller, once all have ended.
#pragma once

#include "core/base/progress.h"

#include <cstddef>
#include <functional>
#include <mutex>
#include <string_view>

namespace lapwright::base {

// The number of threads meant by an option where 0 stands for all cores; at most 8: more wait for memory (common
// practice, no source).
[[nodiscard]] unsigned thread_count(unsigned wanted = 0);

// Calls task(i, worker) for each i < count once; no two at a time have the same worker, 0 … thread_count(threads) - 1.
// A task answers whether to go on.  False when one said no: the tasks that had not begun are left out.
[[nodiscard]] bool parallel_for(std::size_t count, unsigned threads,
                                const std::function<bool(std::size_t, std::size_t)>& task);

// The same for tasks that always go on.
void parallel_for(std::size_t count, unsigned threads, const std::function<void(std::size_t)>& task);

// How far equal tasks are, told from any thread.
class TaskProgress {
  public:
    // The stage's part of the work runs from `from` to `to`, 0..1.
    TaskProgress(const Progress& progress, std::string_view stage, std::size_t count, double from = 0.0,
                 double to = 1.0);
    // One more is done.  Answers whether to go on.
    [[nodiscard]] bool done();

  private:
    const Progress& progress_;
    std::string stage_;
    double from_;
    double step_;
    std::size_t finished_ = 0;
    bool go_on_ = true;
    std::mutex mutex_;
};

} // namespace lapwright::base
