// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/check.h"

#include <cstdio>
#include <cstdlib>

namespace lapwright::base {

void invariant_broken(const char* sentence) {
    std::fprintf(stderr, "lapwright: a mistake of the program itself: %s\n", sentence);
    std::abort();
}

} // namespace lapwright::base
