// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/sections.h"

#include <algorithm>

namespace lapwright::motion {
namespace {

double usual_step(std::span<const double> time_s) {
    std::vector<double> steps(time_s.size() - 1);
    for (std::size_t i = 0; i < steps.size(); ++i)
        steps[i] = time_s[i + 1] - time_s[i];
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::ranges::nth_element(steps, middle);
    return *middle;
}

bool split_between(std::span<const double> splits_s, double before, double after) {
    return std::ranges::any_of(splits_s, [&](double split) { return before < split && split <= after; });
}

} // namespace

std::vector<Section> sections(std::span<const double> time_s, std::span<const double> splits_s) {
    if (time_s.size() < 2) return {{0, time_s.size()}};
    const double longest = std::max(longest_joined_gap_s, 5.0 * usual_step(time_s));
    std::vector<Section> found{{0, 0}};
    for (std::size_t i = 1; i < time_s.size(); ++i) {
        if (time_s[i] - time_s[i - 1] <= longest && !split_between(splits_s, time_s[i - 1], time_s[i])) continue;
        found.back().end = i;
        found.push_back({i, i});
    }
    found.back().end = time_s.size();
    return found;
}

} // namespace lapwright::motion
