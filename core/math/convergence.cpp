// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/convergence.h"

#include "core/base/check.h"
#include "core/math/distributions.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::math {
namespace {

using Chains = std::vector<std::vector<double>>;

std::vector<double> all_of(const Chains& chains) {
    std::vector<double> all;
    for (const auto& chain : chains)
        all.insert(all.end(), chain.begin(), chain.end());
    return all;
}

Chains halves_of(std::span<const std::vector<double>> chains) {
    Chains halves;
    for (const auto& chain : chains) {
        const auto half = static_cast<std::ptrdiff_t>(chain.size() / 2);
        halves.emplace_back(chain.begin(), chain.begin() + half);
        halves.emplace_back(chain.end() - half, chain.end());
    }
    return halves;
}

// Normal scores of the ranks, equal draws sharing their mean rank (Blom's offsets).
Chains rank_normalised(Chains chains) {
    const std::vector<double> all = all_of(chains);
    std::vector<double> sorted = all;
    std::ranges::sort(sorted);
    const auto count = static_cast<double>(all.size());
    for (auto& chain : chains)
        for (double& x : chain) {
            const auto [first, last] = std::ranges::equal_range(sorted, x);
            const double rank = 0.5 * static_cast<double>((first - sorted.begin()) + (last - sorted.begin()) + 1);
            x = normal_quantile((rank - 0.375) / (count + 0.25));
        }
    return chains;
}

Chains mapped(Chains chains, auto function) {
    for (auto& chain : chains)
        std::ranges::transform(chain, chain.begin(), function);
    return chains;
}

struct Variances {
    double within = 0.0;
    double pooled = 0.0; // of the distribution, from within and between
};

Variances variances_of(const Chains& chains) {
    const auto n = static_cast<double>(chains.front().size());
    std::vector<double> means;
    std::vector<double> squares;
    for (const auto& chain : chains) {
        means.push_back(mean(chain));
        squares.push_back(std::pow(standard_deviation(chain), 2));
    }
    const double within = mean(squares);
    return {within, (n - 1.0) / n * within + std::pow(standard_deviation(means), 2)};
}

double r_hat_of(const Chains& chains) {
    const Variances v = variances_of(chains);
    return v.within > 0.0 ? std::sqrt(v.pooled / v.within) : std::numeric_limits<double>::infinity();
}

double autocovariance(const std::vector<double>& chain, std::size_t lag) {
    const double middle = mean(chain);
    double sum = 0.0;
    for (std::size_t i = 0; i + lag < chain.size(); ++i)
        sum += (chain[i] - middle) * (chain[i + lag] - middle);
    return sum / static_cast<double>(chain.size());
}

// Geyer's initial monotone sequence of paired autocorrelations.
double effective_draws(const Chains& chains) {
    const Variances v = variances_of(chains);
    const std::size_t n = chains.front().size();
    const double total = static_cast<double>(n * chains.size());
    if (!(v.pooled > 0.0)) return 0.0;
    const auto correlation = [&](std::size_t lag) {
        double sum = 0.0;
        for (const auto& chain : chains)
            sum += autocovariance(chain, lag);
        const double covariance =
            sum / static_cast<double>(chains.size()) * static_cast<double>(n) / static_cast<double>(n - 1);
        return 1.0 - (v.within - covariance) / v.pooled;
    };
    double time = -1.0;
    double last = std::numeric_limits<double>::infinity();
    for (std::size_t lag = 0; lag + 1 < n; lag += 2) {
        const double pair = lag == 0 ? 1.0 + correlation(1) : correlation(lag) + correlation(lag + 1);
        if (pair < 0.0) break;
        last = std::min(last, pair);
        time += 2.0 * last;
    }
    // Antithetic chains may count for more, but never without bound.
    return std::min(total * std::log10(total), total / std::max(time, 1.0 / std::log10(total)));
}

} // namespace

Convergence convergence_of(std::span<const std::vector<double>> chains) {
    base::check(!chains.empty() && chains.front().size() >= 8, "convergence needs draws");
    const Chains halves = halves_of(chains);
    const std::vector<double> all = all_of(halves);
    const double middle = median(all);
    const Chains bulk = rank_normalised(halves);
    const Chains folded = rank_normalised(mapped(halves, [&](double x) { return std::abs(x - middle); }));
    Convergence c;
    c.r_hat = std::max(r_hat_of(bulk), r_hat_of(folded));
    c.effective_bulk = effective_draws(bulk);
    const auto beyond = [&](double share) {
        const double at = quantile(all, share);
        return effective_draws(mapped(halves, [&](double x) { return x <= at ? 1.0 : 0.0; }));
    };
    c.effective_tail = std::min(beyond(0.05), beyond(0.95));
    return c;
}

} // namespace lapwright::math
