// SPDX-License-Identifier: GPL-3.0-or-later
// Normal random numbers that are the same on every machine and for every number of threads: each stream is told by a
// seed and its own number.
// Source: ziggurat, Marsaglia and Tsang 2000, J. Stat. Softw. 5(8), in the form of Doornik 2005 with 128 blocks (from
// memory; the tests check the distribution); several times faster than logarithm and cosine.
#pragma once

#include "core/math/random.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace lapwright::math {

struct Ziggurat {
    static constexpr std::size_t blocks = 128;
    std::array<double, blocks + 1> edge{};
    std::array<double, blocks> inside{}; // share of a block's width that lies wholly under the curve
};
extern const Ziggurat ziggurat;

class NormalStream {
  public:
    // Streams of one seed with different numbers are independent for our purposes.
    NormalStream(std::uint64_t seed, std::uint64_t stream) : random_(seed, stream) {}

    // Standard normal.
    [[nodiscard]] double next() {
        const std::uint64_t word = random_.next();
        const std::size_t block = block_of(word);
        const double u = share_of(word);
        // Of a hundred numbers 98 end here.
        return std::fabs(u) < ziggurat.inside[block] ? u * ziggurat.edge[block] : outside(word);
    }

  private:
    static std::size_t block_of(std::uint64_t word) { return word & (Ziggurat::blocks - 1); }
    // -1 <= u < 1
    static double share_of(std::uint64_t word) {
        return static_cast<double>(static_cast<std::int64_t>(word) >> 11U) * 0x1.0p-52;
    }
    // The rest of next() for a word that falls outside the sure part of its block.
    [[nodiscard]] double outside(std::uint64_t word);
    [[nodiscard]] double tail(bool negative);

    Random random_;
};

} // namespace lapwright::math
