// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/normal_random.h"

#include <cmath>
#include <cstddef>
#include <cstdint>

namespace lapwright::math {
namespace {

constexpr std::size_t blocks = Ziggurat::blocks;
constexpr double right_edge = 3.442619855899;      // where the tail begins, for 128 blocks
constexpr double block_area = 9.91256303526217e-3; // of each block

Ziggurat make_ziggurat() {
    Ziggurat table;
    double height = std::exp(-0.5 * right_edge * right_edge);
    table.edge[0] = block_area / height;
    table.edge[1] = right_edge;
    for (std::size_t i = 2; i < blocks; ++i) {
        table.edge[i] = std::sqrt(-2.0 * std::log(block_area / table.edge[i - 1] + height));
        height = std::exp(-0.5 * table.edge[i] * table.edge[i]);
    }
    table.edge[blocks] = 0.0;
    for (std::size_t i = 0; i <= blocks; ++i)
        table.height[i] = std::exp(-0.5 * table.edge[i] * table.edge[i]);
    for (std::size_t i = 0; i < blocks; ++i)
        table.inside[i] = table.edge[i + 1] / table.edge[i];
    return table;
}

} // namespace

const Ziggurat ziggurat = make_ziggurat();

double NormalStream::tail(bool negative) {
    for (;;) {
        const double x = -std::log(random_.uniform()) / right_edge;
        const double y = -std::log(random_.uniform());
        if (2.0 * y > x * x) return negative ? -(right_edge + x) : right_edge + x;
    }
}

double NormalStream::outside(std::uint64_t word) {
    for (;; word = random_.next()) {
        const std::size_t block = block_of(word);
        const double u = share_of(word);
        if (std::fabs(u) < ziggurat.inside[block]) return u * ziggurat.edge[block];
        if (block == 0) return tail(u < 0.0);
        const double x = u * ziggurat.edge[block];
        const double outer = ziggurat.height[block];
        const double inner = ziggurat.height[block + 1];
        if (inner + random_.uniform() * (outer - inner) < std::exp(-0.5 * x * x)) return x;
    }
}

} // namespace lapwright::math
