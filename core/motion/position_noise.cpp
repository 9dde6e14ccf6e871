// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: h the step; a block's periodogram is |Σ taper·d³·exp(-iωn)|²; the expected one follows from a process's
// autocovariances and the taper's.
#include "core/motion/position_noise.h"

#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace lapwright::motion {
namespace {

constexpr std::size_t block = 64;                  // third differences
constexpr std::size_t frequencies = block / 2 - 1; // without 0 and the last
constexpr std::size_t min_blocks = 5;
constexpr double even = 0.1; // steps within so much of the median are evenly spaced
constexpr double slowest_step_s = 0.25;
constexpr double median_of_exponential = 0.6931471805599453; // over its mean

using Spectrum = std::array<double, frequencies>;

// Of third differences, lags 0 to 3, per unit: of white noise; of a walk's steps; of white jerk times h⁵ (a spline of
// the fifth degree at whole numbers).
constexpr std::array<std::array<double, 4>, 3> autocovariances{
    {{20.0, -15.0, 6.0, -1.0}, {6.0, -4.0, 1.0, 0.0}, {66.0 / 120.0, 26.0 / 120.0, 1.0 / 120.0, 0.0}}};

double part_of_turn(double n) {
    return 2.0 * base::pi * n / static_cast<double>(block);
}

double taper(std::size_t n) {
    return 0.5 - 0.5 * std::cos(part_of_turn(static_cast<double>(n) + 0.5));
}

double frequency(std::size_t k) {
    return part_of_turn(static_cast<double>(k + 1));
}

// What a block is multiplied by: the taper, and the circle at its blockth parts.
struct Tables {
    std::array<double, block> taper{};
    std::array<double, block> cosine{};
    std::array<double, block> sine{};

    Tables() {
        for (std::size_t n = 0; n < block; ++n) {
            taper[n] = motion::taper(n);
            cosine[n] = std::cos(part_of_turn(static_cast<double>(n)));
            sine[n] = std::sin(part_of_turn(static_cast<double>(n)));
        }
    }
};

Spectrum expected(const std::array<double, 4>& autocovariance) {
    Spectrum result{};
    for (std::size_t lag = 0; lag < autocovariance.size(); ++lag) {
        double own = 0.0;
        for (std::size_t n = 0; n + lag < block; ++n)
            own += taper(n) * taper(n + lag);
        for (std::size_t k = 0; k < frequencies; ++k)
            result[k] +=
                (lag == 0 ? 1.0 : 2.0) * own * autocovariance[lag] * std::cos(frequency(k) * static_cast<double>(lag));
    }
    return result;
}

Spectrum periodogram(std::span<const double> positions) {
    static const Tables tables;
    std::array<double, block> tapered{};
    for (std::size_t n = 0; n < block; ++n)
        tapered[n] =
            tables.taper[n] * (positions[n + 3] - 3.0 * positions[n + 2] + 3.0 * positions[n + 1] - positions[n]);
    Spectrum result{};
    for (std::size_t k = 0; k < frequencies; ++k) {
        double cosines = 0.0;
        double sines = 0.0;
        for (std::size_t n = 0; n < block; ++n) {
            const std::size_t part = (k + 1) * n % block;
            cosines += tapered[n] * tables.cosine[part];
            sines += tapered[n] * tables.sine[part];
        }
        result[k] = cosines * cosines + sines * sines;
    }
    return result;
}

double median_step(std::span<const Node> nodes) {
    std::vector<double> steps;
    for (std::size_t i = 1; i < nodes.size(); ++i)
        steps.push_back(nodes[i].time_s - nodes[i - 1].time_s);
    return math::median(steps);
}

// Of every evenly spaced block, both axes.
std::vector<Spectrum> periodograms(std::span<const Node> nodes, double step_s) {
    std::vector<Spectrum> all;
    std::vector<double> east;
    std::vector<double> north;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const bool joined = i > 0 && std::abs(nodes[i].time_s - nodes[i - 1].time_s - step_s) < even * step_s;
        if (!joined || std::isnan(nodes[i].position_m.east)) {
            east.clear();
            north.clear();
        }
        if (std::isnan(nodes[i].position_m.east)) continue;
        east.push_back(nodes[i].position_m.east);
        north.push_back(nodes[i].position_m.north);
        if (east.size() < block + 3) continue;
        all.push_back(periodogram(east));
        all.push_back(periodogram(north));
        east.clear();
        north.clear();
    }
    return all;
}

// The median over blocks: hard braking and a jump of the receiver are in few.
Spectrum typical(const std::vector<Spectrum>& all) {
    Spectrum result{};
    std::vector<double> values(all.size());
    for (std::size_t k = 0; k < frequencies; ++k) {
        std::ranges::transform(all, values.begin(), [&](const Spectrum& one) { return one[k]; });
        result[k] = math::median(values) / median_of_exponential;
    }
    return result;
}

// Sizes with which the shapes sum to what is seen.
std::array<double, 3> sizes_of(const Spectrum& seen, const std::array<Spectrum, 3>& shapes) {
    constexpr int rounds = 1000;
    constexpr double least = 1e-12;
    std::array<double, 3> sizes{1e-3, 1e-3, 1e-3};
    for (int round = 0; round < rounds; ++round) {
        std::array<double, 3> asked{};
        std::array<double, 3> given{};
        for (std::size_t k = 0; k < frequencies; ++k) {
            double sum = 0.0;
            for (std::size_t i = 0; i < shapes.size(); ++i)
                sum += sizes[i] * shapes[i][k];
            for (std::size_t i = 0; i < shapes.size(); ++i) {
                asked[i] += shapes[i][k] * seen[k] / (sum * sum);
                given[i] += shapes[i][k] / sum;
            }
        }
        for (std::size_t i = 0; i < sizes.size(); ++i)
            sizes[i] = std::max(least, sizes[i] * std::sqrt(asked[i] / given[i]));
    }
    return sizes;
}

} // namespace

std::optional<PositionNoise> position_noise(std::span<const Node> nodes) {
    if (nodes.size() < min_blocks * block) return std::nullopt;
    const double step_s = median_step(nodes);
    if (step_s > slowest_step_s) return std::nullopt;
    const std::vector<Spectrum> all = periodograms(nodes, step_s);
    if (all.size() < 2 * min_blocks) return std::nullopt;
    std::array<Spectrum, 3> shapes;
    std::ranges::transform(autocovariances, shapes.begin(), expected);
    const std::array<double, 3> sizes = sizes_of(typical(all), shapes);
    return PositionNoise{std::sqrt(sizes[0]), std::sqrt(sizes[1] / step_s)};
}

NoiseLevels levels_of_positions(std::span<const Node> nodes) {
    NoiseLevels levels;
    // A receiver that smooths its positions walks further over a lap than its steps say.  Ours, no source.
    constexpr double min_bias_sd_m = 0.2;
    constexpr double min_white_sd_m = 0.01;
    const auto noise = position_noise(nodes);
    if (!noise) return levels;
    levels.sd[by_position] = std::max(min_white_sd_m, noise->white_sd_m);
    levels.bias_sd_m = std::max(min_bias_sd_m, noise->walk_m_per_root_s * std::sqrt(0.5 * levels.bias_correlation_s));
    return levels;
}

} // namespace lapwright::motion
