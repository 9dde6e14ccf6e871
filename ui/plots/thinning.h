// SPDX-License-Identifier: GPL-3.0-or-later
// Curves of many samples drawn with no more points than the screen can show: of the samples that fall into one pixel
// column, the first, the lowest, the highest and the last are kept in their order.  What is painted covers the same
// pixels as the whole curve, to within one column.
#pragma once

#include <QLineF>
#include <QPointF>
#include <span>
#include <utility>
#include <vector>

namespace lapwright::plots {

// Data to pixels, both axes linear.
struct PixelMap {
    double x_scale = 1.0;
    double x_offset = 0.0;
    double y_scale = 1.0;
    double y_offset = 0.0;

    [[nodiscard]] QPointF point(double x, double y) const { return {x * x_scale + x_offset, y * y_scale + y_offset}; }
};

using Polyline = std::vector<QPointF>;

// xs increasing, ys as many, NaN where there is nothing: there the line breaks.  Only what lies between the x of
// `lower` and `upper`, and one sample beyond each end.  `columns_per_pixel` 2 for screens of scale 2.
[[nodiscard]] std::vector<Polyline> thinned(std::span<const double> xs, std::span<const double> ys, double lower,
                                            double upper, const PixelMap& map, double columns_per_pixel);

// Index of the first x >= value, and value_at: linear between samples, NaN outside and beside a NaN.
[[nodiscard]] double value_at(std::span<const double> xs, std::span<const double> ys, double x);

// The values whose x lies in lower…upper.
[[nodiscard]] std::span<const double> within(std::span<const double> xs, std::span<const double> ys, double lower,
                                             double upper);

// Least and greatest finite value; (0, 1) when there is none.
[[nodiscard]] std::pair<double, double> extent(std::span<const double> values);

// The polyline cut into dashes of `on` pixels with `off` between, measured along the line.
[[nodiscard]] std::vector<Polyline> dashes(const Polyline& line, double on, double off);

} // namespace lapwright::plots
