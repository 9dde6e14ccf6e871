// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/line_difference.h"

#include "core/base/wording.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::comparison {
namespace {

// Linear between the grid's points.
double value_at(const std::vector<double>& xs, const std::vector<double>& ys, double x) {
    const auto above = std::clamp<std::ptrdiff_t>(std::ranges::upper_bound(xs, x) - xs.begin(), 1,
                                                  static_cast<std::ptrdiff_t>(xs.size()) - 1);
    const auto i = static_cast<std::size_t>(above);
    const double part = std::clamp((x - xs[i - 1]) / (xs[i] - xs[i - 1]), 0.0, 1.0);
    return ys[i - 1] + part * (ys[i] - ys[i - 1]);
}

std::optional<LineAt> at(const LineDifference& line, double place_m) {
    const double difference = value_at(line.distance_m, line.difference_m, place_m);
    if (!std::isfinite(difference)) return std::nullopt;
    LineAt found{place_m, difference, {}};
    if (!line.sd_m.empty()) found.sd_m = value_at(line.distance_m, line.sd_m, place_m);
    return found;
}

} // namespace

LineDifference line_difference(const lap::LapEnsemble& a, const lap::LapEnsemble& b) {
    LineDifference line;
    const std::size_t pairs = std::min(a.draws.size(), b.draws.size());
    const bool with_draws = pairs >= 2;
    const double nothing = std::numeric_limits<double>::quiet_NaN();
    bool any = false;
    std::vector<double> values(pairs);
    for (std::size_t i = 0; i < a.best.size(); ++i) {
        line.difference_m.push_back(a.best.offset_m[i] - b.best.offset_m[i]);
        any = any || std::isfinite(line.difference_m.back());
        if (!with_draws) continue;
        double sd = nothing;
        if (std::isfinite(line.difference_m.back())) {
            for (std::size_t k = 0; k < pairs; ++k)
                values[k] = a.draws[k].offset_m[i] - b.draws[k].offset_m[i];
            sd = math::standard_uncertainty(values);
        }
        line.sd_m.push_back(sd);
        line.low_m.push_back(line.difference_m.back() - base::half_width_95(sd));
        line.high_m.push_back(line.difference_m.back() + base::half_width_95(sd));
    }
    if (!any) return {};
    line.distance_m = a.best.distance_m;
    return line;
}

LineFigures line_figures(const LineDifference& line, const track::Segment& segment, std::optional<double> slowest_m) {
    if (line.empty() || segment.kind != track::SegmentKind::corner) return {};
    return {at(line, segment.start_m), slowest_m ? at(line, *slowest_m) : std::nullopt, at(line, segment.end_m)};
}

} // namespace lapwright::comparison
