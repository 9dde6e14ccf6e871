// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/threads.h"

#include <sys/resource.h>

namespace lapwright::platform {

// A third of the weight of a usual thread, each: 1.25 to the fifth power (sched(7)).
void give_way() {
#ifdef __linux__
    constexpr int behind = 5;
    if (getpriority(PRIO_PROCESS, 0) < behind) (void)setpriority(PRIO_PROCESS, 0, behind);
#endif
}

} // namespace lapwright::platform
