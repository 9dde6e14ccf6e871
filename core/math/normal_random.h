// SPDX-License-Identifier: GPL-3.0-or-later
// Normal random numbers that are the same on every machine and for every number of threads: each stream is told by a
// seed and its own number.
// Source: ziggurat, Marsaglia and Tsang 2000, J. Stat. Softw. 5(8), in the form of Doornik 2005 with 128 blocks (from
// memory; the tests check the distribution); several times faster than logarithm and cosine.
#pragma once

#include "core/math/random.h"

#include <cstdint>

namespace lapwright::math {

class NormalStream {
  public:
    // Streams of one seed with different numbers are independent for our purposes.
    NormalStream(std::uint64_t seed, std::uint64_t stream) : random_(seed, stream) {}

    // Standard normal.
    [[nodiscard]] double next();

  private:
    [[nodiscard]] double tail(bool negative);

    Random random_;
};

} // namespace lapwright::math
