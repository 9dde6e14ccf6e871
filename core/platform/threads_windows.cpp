// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/threads.h"

#define WIN32_LEAN_AND_MEAN
#include <windows.h>

namespace lapwright::platform {

void give_way() {
    SetThreadPriority(GetCurrentThread(), THREAD_PRIORITY_BELOW_NORMAL);
}

} // namespace lapwright::platform
