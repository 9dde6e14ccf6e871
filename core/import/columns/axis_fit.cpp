// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/axis_fit.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

// What a receiver's noise alone could make.
constexpr double min_spread_mps2 = 0.4;

void take_means_away(std::vector<AxisSample>& samples) {
    AxisSample mean;
    const auto n = static_cast<double>(samples.size());
    for (const AxisSample& s : samples)
        mean = {mean.along + s.along / n, mean.left + s.left / n, mean.read + s.read / n};
    for (AxisSample& s : samples)
        s = {s.along - mean.along, s.left - mean.left, s.read - mean.read};
}

} // namespace

std::optional<AxisFit> fit_axis(std::vector<AxisSample> samples, std::size_t enough) {
    if (samples.size() < enough) return std::nullopt;
    take_means_away(samples);
    double aa = 0.0, bb = 0.0, ab = 0.0, ay = 0.0, by = 0.0, yy = 0.0;
    for (const AxisSample& s : samples) {
        aa += s.along * s.along;
        bb += s.left * s.left;
        ab += s.along * s.left;
        ay += s.along * s.read;
        by += s.left * s.read;
        yy += s.read * s.read;
    }
    const double least = static_cast<double>(samples.size()) * min_spread_mps2 * min_spread_mps2;
    const double determinant = aa * bb - ab * ab;
    if (!(aa > least && bb > least && yy > 0.0) || !(determinant > 1e-3 * aa * bb)) return std::nullopt;
    const double along = (ay * bb - by * ab) / determinant;
    const double left = (by * aa - ay * ab) / determinant;
    return AxisFit{along, left, std::sqrt(std::clamp((along * ay + left * by) / yy, 0.0, 1.0))};
}

} // namespace lapwright::import
