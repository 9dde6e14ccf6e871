// SPDX-License-Identifier: GPL-3.0-or-later
// The seeds over which an offset is scored: a few in every run of the tests, and as many and as fresh as a person asks
// for with LAPWRIGHT_VIDEO_SEEDS="FIRST COUNT".
#pragma once

#include <cstdlib>
#include <sstream>

namespace lapwright::video::tests {

struct DrawnSeeds {
    int first = 1;
    int count = 1;
};

inline DrawnSeeds drawn_seeds(DrawnSeeds usual) {
    const char* const asked = std::getenv("LAPWRIGHT_VIDEO_SEEDS");
    if (asked == nullptr) return usual;
    std::istringstream(asked) >> usual.first >> usual.count;
    return usual;
}

} // namespace lapwright::video::tests
