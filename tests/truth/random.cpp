// SPDX-License-Identifier: GPL-3.0-or-later
// Seeds are spread with the SplitMix64 finaliser (Steele, Lea, Flood 2014), so that neighbouring seeds and streams
// do not start in neighbouring states.
#include "tests/truth/random.h"

#include <cmath>
#include <numbers>

namespace truth {
namespace {

std::uint64_t scrambled(std::uint64_t value) {
    value += 0x9e3779b97f4a7c15ULL;
    value = (value ^ (value >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    value = (value ^ (value >> 27U)) * 0x94d049bb133111ebULL;
    return value ^ (value >> 31U);
}

} // namespace

Random::Random(const std::uint64_t seed, const std::uint64_t stream) : engine_(scrambled(seed ^ scrambled(stream))) {}

double Random::uniform() {
    constexpr double kScale = 1.0 / 9007199254740992.0; // 2^-53
    return (static_cast<double>(engine_() >> 11U) + 0.5) * kScale;
}

double Random::normal() {
    if (has_spare_) {
        has_spare_ = false;
        return spare_;
    }
    const double radius = std::sqrt(-2.0 * std::log(uniform()));
    const double angle = 2.0 * std::numbers::pi * uniform();
    spare_ = radius * std::sin(angle);
    has_spare_ = true;
    return radius * std::cos(angle);
}

} // namespace truth
