// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/curve.h"

#include "ui/plots/stroke_raster.h"

#include <algorithm>

namespace lapwright::plots {
namespace {

constexpr double dash_px = 7.0;
constexpr double hole_px = 3.5;
constexpr double vector_columns = 4.0; // a pixel, where the picture may be enlarged

void draw_line(QCPPainter& painter, const Polyline& line) {
    painter.drawPolyline(line.data(), static_cast<int>(line.size()));
}

} // namespace

Curve::Curve(QCPAxisRect* rect, std::span<const double> xs, std::span<const double> ys, const QColor& colour,
             Stroke stroke, double width_px)
    : Drawing(rect, QStringLiteral("main")), xs_(xs), ys_(ys), colour_(colour), stroke_(stroke), width_px_(width_px) {}

void Curve::draw(QCPPainter* painter) {
    if (painter->modes().testFlag(QCPPainter::pmVectorized)) {
        draw_lines(*painter);
    } else {
        draw_pixels(*painter);
    }
}

void Curve::draw_pixels(QCPPainter& painter) const {
    const double ratio = pixel_ratio();
    const auto from = static_cast<std::size_t>(std::ranges::lower_bound(xs_, view().lower_m) - xs_.begin());
    const auto to = static_cast<std::size_t>(std::ranges::upper_bound(xs_, view().upper_m) - xs_.begin());
    const std::size_t begin = from > 0 ? from - 1 : 0;
    const std::size_t end = std::min({to + 1, xs_.size(), ys_.size()});
    if (begin >= end) return;
    PixelMap map = pixel_map();
    map = {map.x_scale * ratio, map.x_offset * ratio, map.y_scale * ratio, map.y_offset * ratio};
    const QRect pixels =
        QRectF(room().x() * ratio, room().y() * ratio, room().width() * ratio, room().height() * ratio).toRect();
    const bool dashed = stroke_ == Stroke::dashed;
    std::vector<RasterTile> tiles =
        raster_stroke(xs_.subspan(begin, end - begin), ys_.subspan(begin, end - begin), map, pixels,
                      {colour_, width_px_ * ratio, dashed ? dash_px * ratio : 0.0, dashed ? hole_px * ratio : 0.0});
    painter.setAntialiasing(false); // whole pixels
    for (RasterTile& tile : tiles) {
        tile.image.setDevicePixelRatio(ratio);
        painter.drawImage(QPointF(tile.at) / ratio, tile.image);
    }
}

void Curve::draw_lines(QCPPainter& painter) const {
    painter.setPen(QPen(colour_, width_px_, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin));
    painter.setBrush(Qt::NoBrush);
    for (const Polyline& line : thinned(xs_, ys_, view().lower_m, view().upper_m, pixel_map(), vector_columns)) {
        if (stroke_ == Stroke::solid) {
            draw_line(painter, line);
        } else {
            for (const Polyline& dash : dashes(line, dash_px, hole_px))
                draw_line(painter, dash);
        }
    }
}

Band::Band(QCPAxisRect* rect, std::span<const double> xs, std::span<const double> low, std::span<const double> high,
           const QColor& colour)
    : Drawing(rect, QStringLiteral("main")), xs_(xs), low_(low), high_(high), colour_(colour) {}

void Band::draw(QCPPainter* painter) {
    const auto lows = thinned(xs_, low_, view().lower_m, view().upper_m, pixel_map(), 0.5);
    const auto highs = thinned(xs_, high_, view().lower_m, view().upper_m, pixel_map(), 0.5);
    if (lows.size() != highs.size()) return;
    painter->setPen(Qt::NoPen);
    painter->setBrush(colour_);
    for (std::size_t i = 0; i < lows.size(); ++i) {
        Polyline outline = lows[i];
        outline.insert(outline.end(), highs[i].rbegin(), highs[i].rend());
        painter->drawPolygon(outline.data(), static_cast<int>(outline.size()));
    }
}

} // namespace lapwright::plots
