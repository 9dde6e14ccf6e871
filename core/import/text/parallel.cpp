// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <new>
#include <system_error>
#include <thread>
#include <vector>

namespace lapwright::import {

unsigned usable_threads(unsigned asked) {
    const unsigned wanted = asked > 0 ? asked : std::max(1U, std::thread::hardware_concurrency());
    return std::min(wanted, most_threads);
}

WorkEnd run_pieces(unsigned threads, std::size_t count, const std::function<bool(std::size_t, std::size_t)>& work,
                   const base::Progress& progress, std::string_view stage, double from, double to) {
    std::atomic<std::size_t> next{0};
    std::atomic<WorkEnd> end{WorkEnd::done};
    std::mutex telling;
    std::size_t finished = 0;
    const auto run = [&](std::size_t worker) {
        try {
            for (std::size_t i = next++; i < count && end == WorkEnd::done; i = next++) {
                if (!work(i, worker)) end = WorkEnd::failed;
                const std::lock_guard lock(telling);
                ++finished;
                const double part = static_cast<double>(finished) / static_cast<double>(count);
                if (end == WorkEnd::done && !base::go_on(progress, stage, from + (to - from) * part))
                    end = WorkEnd::cancelled;
            }
        } catch (const std::bad_alloc&) {
            end = WorkEnd::out_of_memory;
        }
    };
    std::vector<std::thread> helpers;
    const auto wanted = std::min<std::size_t>(threads, count);
    for (std::size_t i = 1; i < wanted; ++i) {
        try {
            helpers.emplace_back(run, i);
        } catch (const std::system_error&) {
            break; // no thread to be had: the others do the work
        }
    }
    run(0);
    for (auto& helper : helpers)
        helper.join();
    return end;
}

} // namespace lapwright::import
