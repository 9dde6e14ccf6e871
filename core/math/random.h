// SPDX-License-Identifier: GPL-3.0-or-later
// Seeded random numbers that are the same on every machine: xoshiro256++ (Blackman and Vigna 2021), seeded through
// SplitMix64 as its authors advise.  The standard library's distributions are not used, they differ between libraries.
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>

namespace lapwright::math {

class Random {
  public:
    // `stream` separates independent sequences under one seed.
    explicit Random(std::uint64_t seed, std::uint64_t stream = 0);
    // Goes on where another one is.
    using State = std::array<std::uint64_t, 4>;
    explicit Random(const State& state) : state_(state) {}
    [[nodiscard]] const State& state() const { return state_; }

    [[nodiscard]] std::uint64_t next() {
        const std::uint64_t result = std::rotl(state_[0] + state_[3], 23) + state_[0];
        const std::uint64_t shifted = state_[1] << 17U;
        state_[2] ^= state_[0];
        state_[3] ^= state_[1];
        state_[1] ^= state_[2];
        state_[0] ^= state_[3];
        state_[2] ^= shifted;
        state_[3] = std::rotl(state_[3], 45);
        return result;
    }
    [[nodiscard]] double uniform();                     // in the open interval 0..1
    [[nodiscard]] double normal();                      // standard normal, Box and Muller 1958
    [[nodiscard]] std::size_t below(std::size_t bound); // 0..bound − 1 without bias; bound >= 1

  private:
    State state_{};
    double spare_ = 0.0;
    bool has_spare_ = false;
};

} // namespace lapwright::math
