// SPDX-License-Identifier: GPL-3.0-or-later
// Equal pieces of work on a few threads, with one progress for all of them.  The first piece that fails stops the rest.
#pragma once

#include "core/base/progress.h"

#include <cstddef>
#include <functional>
#include <string_view>

namespace lapwright::import {

// 0 threads asked for: as many as the machine has cores; never more than most_threads.
inline constexpr unsigned most_threads = 8;
[[nodiscard]] unsigned usable_threads(unsigned asked);

enum class WorkEnd { done, failed, cancelled, out_of_memory };

// Calls work(0, worker) … work(count - 1, worker), each once, from any thread; no two at a time have the same worker,
// 0 … threads - 1.  Work answers whether it went well.  Progress runs from
// `from` to `to`.
[[nodiscard]] WorkEnd run_pieces(unsigned threads, std::size_t count,
                                 const std::function<bool(std::size_t, std::size_t)>& work,
                                 const base::Progress& progress, std::string_view stage, double from, double to);

} // namespace lapwright::import
