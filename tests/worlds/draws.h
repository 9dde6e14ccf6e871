// SPDX-License-Identifier: GPL-3.0-or-later
// Small draws that every part of a world is made of.
#pragma once

#include <cmath>
#include <cstddef>

#include "tests/truth/random.h"

namespace worlds {

inline double between(truth::Random& random, double low, double high) {
    return low + (high - low) * random.uniform();
}

// As likely in each octave.
inline double between_log(truth::Random& random, double low, double high) {
    return low * std::pow(high / low, random.uniform());
}

inline bool chance(truth::Random& random, double probability) {
    return random.uniform() < probability;
}

inline std::size_t index_below(truth::Random& random, std::size_t count) {
    const auto i = static_cast<std::size_t>(random.uniform() * static_cast<double>(count));
    return i < count ? i : count - 1;
}

template <class List>
const auto& one_of(truth::Random& random, const List& list) {
    return list[index_below(random, std::size(list))];
}

} // namespace worlds
