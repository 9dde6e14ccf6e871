// SPDX-License-Identifier: GPL-3.0-or-later
// Reproducible random numbers for the simulator: std::mt19937_64 (its output is fixed by the C++ standard) and a
// normal generator of our own, because std::normal_distribution may differ from one library to the next.
#pragma once

#include <cstdint>
#include <random>

namespace truth {

class Random {
  public:
    /// `stream` separates independent sequences drawn under one seed (a sensor, a driver, a lap).
    explicit Random(std::uint64_t seed, std::uint64_t stream = 0);

    /// Uniform in the open interval (0, 1).
    [[nodiscard]] double uniform();

    /// Standard normal: Box and Muller 1958, both values used.
    [[nodiscard]] double normal();

  private:
    std::mt19937_64 engine_;
    double spare_ = 0.0;
    bool has_spare_ = false;
};

} // namespace truth
