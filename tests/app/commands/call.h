// SPDX-License-Identifier: GPL-3.0-or-later
// The command line called from a test: its exit status and what it wrote.
#pragma once

#include "app/commands/commands.h"

#include <sstream>
#include <string>
#include <vector>

namespace lapwright::test {

struct Called {
    int status;
    std::string out;
    std::string err;
};

inline Called call(const std::vector<std::string>& words) {
    std::ostringstream out;
    std::ostringstream err;
    const int status = commands::run(words, out, err);
    return {status, out.str(), err.str()};
}

} // namespace lapwright::test
