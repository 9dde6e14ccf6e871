// SPDX-License-Identifier: GPL-3.0-or-later
// How far a column of accelerations points along the path and to its left.
#pragma once

#include <optional>
#include <vector>

namespace lapwright::import {

// One moment: what the positions say, and what the column reads; any one unit.
struct AxisSample {
    double along = 0.0;
    double left = 0.0;
    double read = 0.0;
};

// The column as a sum of the accelerations along the path and to its left, by least squares about the means.
struct AxisFit {
    double along = 0.0;
    double left = 0.0;
    double correlation = 0.0; // of the column with the sum, 0..1
};

// Nothing with fewer than `enough` samples, or where the car accelerates by no more than a receiver's noise could make;
// `along` and `left` in m/s².
[[nodiscard]] std::optional<AxisFit> fit_axis(std::vector<AxisSample> samples, std::size_t enough);

} // namespace lapwright::import
