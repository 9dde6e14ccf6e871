// SPDX-License-Identifier: GPL-3.0-or-later
// Independent tasks on a few threads.  Which thread does a task never changes its result.
#pragma once

#include <cstddef>
#include <functional>

namespace lapwright::motion {

// The number of threads meant by an option where 0 stands for all cores.
[[nodiscard]] unsigned thread_count(unsigned wanted);

// Calls task(0) … task(count - 1), each once; a task answers whether to go on.  False when one said no: the tasks that
// had not begun are left out.
[[nodiscard]] bool do_all(std::size_t count, unsigned threads, const std::function<bool(std::size_t)>& task);

// The same on all cores for tasks that always go on.
void do_every(std::size_t count, const std::function<void(std::size_t)>& task);

} // namespace lapwright::motion
