// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/compared.h"

#include "core/analysis/run.h"
#include "core/base/wording.h"
#include "core/comparison/compare_laps.h"
#include "core/comparison/mirrored.h"
#include "core/comparison/summed_segments.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::workspace {
namespace {

// The rate that is shown in full colour: nine tenths of the lap
// stay below it, so that one hairpin does not pale the rest.
double full_colour(std::vector<double> rates) {
    for (double& rate : rates)
        rate = std::abs(rate);
    const auto place = rates.begin() + static_cast<std::ptrdiff_t>(0.9 * static_cast<double>(rates.size() - 1));
    std::nth_element(rates.begin(), place, rates.end());
    return *place;
}

// 0 where it is not told who won the segment.
std::vector<double> favour_on_line(const track::ReferenceLine& line, const comparison::Comparison& comparison) {
    const comparison::GapTrace& gap = comparison.gap;
    const std::vector<double> rates = comparison::winning_rate(gap);
    if (rates.empty()) return {};
    const double full = full_colour(rates);
    std::vector<double> favour(line.position_m.size(), 0.0);
    std::size_t grid = 0;
    for (std::size_t node = 0; node < favour.size() && full > 0.0; ++node) {
        const double station = static_cast<double>(node) * line.step_m;
        while (grid + 1 < gap.distance_m.size() && gap.distance_m[grid] < station)
            ++grid;
        favour[node] = std::clamp(rates[grid] / full, -1.0, 1.0);
    }
    for (const comparison::SegmentComparison& s : comparison.segments) {
        if (base::stands_out(s.gain_s.value, s.gain_s.sd)) continue;
        const auto from = static_cast<std::size_t>(std::ceil(s.segment.start_m / line.step_m));
        const auto to = static_cast<std::size_t>(std::ceil(s.segment.end_m / line.step_m));
        for (std::size_t node = from; node < std::min(to, favour.size()); ++node)
            favour[node] = 0.0;
    }
    return favour;
}

} // namespace

namespace {

ComparedPointer shown(std::shared_ptr<const analysis::Pairing> pairing,
                      std::vector<comparison::SegmentComparison> summed) {
    auto result = std::make_shared<Compared>();
    result->summed = std::move(summed);
    result->favour = favour_on_line(pairing->track.line, pairing->comparison);
    result->pairing = std::move(pairing);
    return result;
}

} // namespace

ComparedPointer compared(std::shared_ptr<const analysis::Pairing> pairing) {
    auto summed = comparison::summed_with_straights(pairing->comparison, pairing->a.trace, pairing->b.trace);
    return shown(std::move(pairing), std::move(summed));
}

ComparedPointer swapped(const Compared& one) {
    return shown(analysis::swapped(*one.pairing), comparison::mirrored(one.summed));
}

} // namespace lapwright::workspace
