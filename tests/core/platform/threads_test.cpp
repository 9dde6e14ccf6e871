// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/threads.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <thread>

#ifdef __linux__
#include <sys/resource.h>

namespace lapwright::platform {
namespace {

int own_priority() {
    return getpriority(PRIO_PROCESS, 0);
}

TEST(Threads, OneThatGivesWayWorksBehindAndSoDoWhatItStarts) {
    const int usual = own_priority();
    int before = 0;
    int behind = 0;
    int started_by_it = 0;
    std::thread([&] {
        before = own_priority();
        give_way();
        give_way(); // a second time changes nothing
        behind = own_priority();
        std::thread([&] { started_by_it = own_priority(); }).join();
    }).join();
    EXPECT_EQ(before, usual);
    EXPECT_EQ(behind, std::max(usual, 5));
    EXPECT_EQ(started_by_it, behind);
    EXPECT_EQ(own_priority(), usual) << "the others are left as they were";
}

} // namespace
} // namespace lapwright::platform
#endif
