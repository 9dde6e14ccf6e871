// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <system_error>
#include <thread>
#include <vector>

namespace lapwright::base {

unsigned thread_count(unsigned wanted) {
    constexpr unsigned max_threads = 8;
    static const unsigned cores = std::max(1U, std::thread::hardware_concurrency()); // it reads a file of the system
    return std::min(wanted > 0 ? wanted : cores, max_threads);
}

bool parallel_for(std::size_t count, unsigned threads, const std::function<bool(std::size_t, std::size_t)>& task) {
    std::atomic<std::size_t> next{0};
    std::atomic<bool> go_on{true};
    std::exception_ptr thrown;
    std::mutex throwing;
    const auto work = [&](std::size_t worker) {
        try {
            for (std::size_t i = next++; i < count && go_on; i = next++)
                if (!task(i, worker)) go_on = false;
        } catch (...) {
            go_on = false;
            const std::scoped_lock lock(throwing);
            thrown = std::current_exception();
        }
    };
    std::vector<std::jthread> helpers;
    const auto workers = std::min<std::size_t>(thread_count(threads), count);
    try {
        while (helpers.size() + 1 < workers)
            helpers.emplace_back(work, helpers.size() + 1);
    } catch (const std::system_error&) { // no thread to be had
    }
    work(0);
    helpers.clear(); // joins
    if (thrown) std::rethrow_exception(thrown);
    return go_on;
}

void parallel_for(std::size_t count, unsigned threads, const std::function<void(std::size_t)>& task) {
    static_cast<void>(parallel_for(count, threads, [&](std::size_t i, std::size_t) {
        task(i);
        return true;
    }));
}

TaskProgress::TaskProgress(const Progress& progress, std::string_view stage, std::size_t count, double from, double to)
    : progress_(progress), stage_(stage), from_(from), step_((to - from) / static_cast<double>(count)) {}

bool TaskProgress::done() {
    const std::scoped_lock lock(mutex_);
    ++finished_;
    go_on_ = go_on_ && base::go_on(progress_, stage_, from_ + step_ * static_cast<double>(finished_));
    return go_on_;
}

} // namespace lapwright::base
