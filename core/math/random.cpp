// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/random.h"

#include "core/base/constants.h"

#include <cmath>

namespace lapwright::math {

Random::Random(std::uint64_t seed, std::uint64_t stream) {
    std::uint64_t mix = seed ^ (stream * 0xD1342543DE82EF95ULL);
    for (std::uint64_t& word : state_) {
        mix += 0x9E3779B97F4A7C15ULL;
        std::uint64_t z = mix;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
        word = z ^ (z >> 31U);
    }
}

double Random::uniform() {
    return (static_cast<double>(next() >> 12U) + 0.5) * 0x1.0p-52;
}

double Random::normal() {
    if (has_spare_) {
        has_spare_ = false;
        return spare_;
    }
    const double radius = std::sqrt(-2.0 * std::log(uniform()));
    const double angle = 2.0 * base::pi * uniform();
    spare_ = radius * std::sin(angle);
    has_spare_ = true;
    return radius * std::cos(angle);
}

std::size_t Random::below(std::size_t bound) {
    const std::uint64_t wide = bound;
    // Values under the threshold would make the first few results more likely: throw them away.
    const std::uint64_t threshold = (0 - wide) % wide;
    std::uint64_t value = next();
    while (value < threshold)
        value = next();
    return static_cast<std::size_t>(value % wide);
}

} // namespace lapwright::math
