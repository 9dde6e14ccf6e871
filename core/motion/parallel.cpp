// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/parallel.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace lapwright::motion {

unsigned thread_count(unsigned wanted) {
    return wanted > 0 ? wanted : std::max(1U, std::thread::hardware_concurrency());
}

bool do_all(std::size_t count, unsigned threads, const std::function<bool(std::size_t)>& task) {
    std::atomic<std::size_t> next{0};
    std::atomic<bool> go_on{true};
    const auto work = [&] {
        for (std::size_t i = next++; i < count && go_on; i = next++)
            if (!task(i)) go_on = false;
    };
    std::vector<std::jthread> helpers;
    for (std::size_t i = 1; i < std::min<std::size_t>(thread_count(threads), count); ++i)
        helpers.emplace_back(work);
    work();
    helpers.clear(); // joins
    return go_on;
}

void do_every(std::size_t count, const std::function<void(std::size_t)>& task) {
    static_cast<void>(do_all(count, 0, [&](std::size_t i) {
        task(i);
        return true;
    }));
}

} // namespace lapwright::motion
