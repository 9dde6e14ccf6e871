// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/local_polynomial.h"

#include "core/base/check.h"

#include <algorithm>
#include <cstddef>

namespace lapwright::math {
namespace {

// Derivative at nodes[at] of the polynomial through all (few) nodes.
double derivative_at_node(std::span<const double> nodes, std::span<const double> values, std::size_t at) {
    double sum = 0.0;
    for (std::size_t j = 0; j < nodes.size(); ++j) {
        if (j == at) continue;
        double ratio = 1.0; // of the barycentric weights of j and `at`, but for the sign
        for (std::size_t k = 0; k < nodes.size(); ++k)
            if (k != at && k != j) ratio *= (nodes[at] - nodes[k]) / (nodes[j] - nodes[k]);

        sum += ratio / (nodes[j] - nodes[at]) * (values[j] - values[at]);
    }
    return sum;
}

double lagrange(std::span<const double> nodes, std::span<const double> values, double at) {
    double sum = 0.0;
    for (std::size_t j = 0; j < nodes.size(); ++j) {
        double basis = 1.0;
        for (std::size_t k = 0; k < nodes.size(); ++k)
            if (k != j) basis *= (at - nodes[k]) / (nodes[j] - nodes[k]);
        sum += basis * values[j];
    }
    return sum;
}

} // namespace

std::vector<double> derivative(std::span<const double> x, std::span<const double> y) {
    base::check(x.size() == y.size(), "derivative of vectors of different length");
    constexpr std::size_t width = 5;
    std::vector<double> result(x.size(), 0.0);
    const std::size_t count = std::min(width, x.size());
    for (std::size_t i = 0; i < x.size(); ++i) {
        const std::size_t first = std::min(i > width / 2 ? i - width / 2 : 0, x.size() - count);
        result[i] = derivative_at_node(x.subspan(first, count), y.subspan(first, count), i - first);
    }
    return result;
}

double interpolated(std::span<const double> x, std::span<const double> y, double at) {
    base::check(!x.empty() && x.size() == y.size(), "interpolation without samples");
    if (at <= x.front()) return y.front();
    if (at >= x.back()) return y.back();
    const auto above = static_cast<std::size_t>(std::ranges::upper_bound(x, at) - x.begin());
    const std::size_t first = above >= 2 ? above - 2 : 0;
    const std::size_t end = std::min(above + 2, x.size());
    return lagrange(x.subspan(first, end - first), y.subspan(first, end - first), at);
}

} // namespace lapwright::math
