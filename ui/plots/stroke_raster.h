// SPDX-License-Identifier: GPL-3.0-or-later
// An antialiased line of a figure over distance, painted column by column.  Such a line has one value at each place, so
// what it covers of a narrow column is one interval; thickened with a round brush (the Minkowski sum with a disc) and
// averaged over a few columns a pixel, that is its coverage.  Costs the same for smooth and for rough data and for
// dashes, where a general stroker takes hundreds of milliseconds.
#pragma once

#include "ui/plots/thinning.h"

#include <QColor>
#include <QImage>
#include <QRect>
#include <span>
#include <vector>

namespace lapwright::plots {

struct StrokeStyle {
    QColor colour;
    double width_px = 1.6;
    double dash_px = 0.0; // along the line; 0: solid
    double hole_px = 0.0;
};

// A piece of the line, as high as the line is there: little more is painted than what the line covers.
struct RasterTile {
    QImage image; // premultiplied
    QPoint at;    // of its upper left pixel
};

// Everything in pixels of the image: `map` gives them, `room` is what may be painted.  xs increasing; a NaN breaks the
// line.  Tiles from left to right, none where there is nothing.
[[nodiscard]] std::vector<RasterTile> raster_stroke(std::span<const double> xs, std::span<const double> ys,
                                                    const PixelMap& map, const QRect& room, const StrokeStyle& style);

} // namespace lapwright::plots
