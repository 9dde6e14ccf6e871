// SPDX-License-Identifier: GPL-3.0-or-later
// Normal random numbers that are the same on every machine and for every number of threads: each stream is told by a
// seed and its own number.
// Source: ziggurat, Marsaglia and Tsang 2000, J. Stat. Softw. 5(8), in the form of Doornik 2005 with 128 blocks (from
// memory; the tests check the distribution); several times faster than logarithm and cosine.
#pragma once

#include "core/math/random.h"

#include <array>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace lapwright::math {

struct Ziggurat {
    static constexpr std::size_t blocks = 128;
    std::array<double, blocks + 1> edge{};
    std::array<double, blocks + 1> height{}; // of the curve at the edge
    std::array<double, blocks> inside{};     // share of a block's width that lies wholly under the curve
};
extern const Ziggurat ziggurat;

class NormalStream {
  public:
    // Streams of one seed with different numbers are independent for our purposes.
    NormalStream(std::uint64_t seed, std::uint64_t stream) : random_(seed, stream) {}
    explicit NormalStream(const Random& random) : random_(random) {}

    // Standard normal.
    [[nodiscard]] double next() {
        const std::uint64_t word = random_.next();
        const std::size_t block = block_of(word);
        const double u = share_of(word);
        // Of a hundred numbers 98 end here.
        return std::fabs(u) < ziggurat.inside[block] ? u * ziggurat.edge[block] : outside(word);
    }

  private:
    template <std::size_t count>
    friend class NormalStreams;

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

// The streams first_stream … first_stream + count - 1 side by side: what each would give by itself, but quicker, for
// the processor works at several at a time.
template <std::size_t count>
class NormalStreams {
  public:
    NormalStreams(std::uint64_t seed, std::uint64_t first_stream) {
        for (std::size_t c = 0; c < count; ++c)
            put(c, Random(seed, first_stream + c));
    }

    // One number of each.
    void next(float* to) {
        std::array<std::uint64_t, count> words;
        for (std::size_t c = 0; c < count; ++c)
            words[c] = step(c);
        for (std::size_t c = 0; c < count; ++c) {
            const std::size_t block = NormalStream::block_of(words[c]);
            const double u = NormalStream::share_of(words[c]);
            const bool sure = std::fabs(u) < ziggurat.inside[block];
            to[c] = static_cast<float>(sure ? u * ziggurat.edge[block] : outside(c, words[c]));
        }
    }

  private:
    // As Random::next().
    std::uint64_t step(std::size_t c) {
        const std::uint64_t result = std::rotl(state_[0][c] + state_[3][c], 23) + state_[0][c];
        const std::uint64_t shifted = state_[1][c] << 17U;
        state_[2][c] ^= state_[0][c];
        state_[3][c] ^= state_[1][c];
        state_[1][c] ^= state_[2][c];
        state_[0][c] ^= state_[3][c];
        state_[2][c] ^= shifted;
        state_[3][c] = std::rotl(state_[3][c], 45);
        return result;
    }

    void put(std::size_t c, const Random& random) {
        for (std::size_t i = 0; i < state_.size(); ++i)
            state_[i][c] = random.state()[i];
    }

    double outside(std::size_t c, std::uint64_t word) {
        NormalStream one(Random({state_[0][c], state_[1][c], state_[2][c], state_[3][c]}));
        const double result = one.outside(word);
        put(c, one.random_);
        return result;
    }

    std::array<std::array<std::uint64_t, count>, 4> state_{};
};

} // namespace lapwright::math
