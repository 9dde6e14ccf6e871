// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/curve.h"

namespace lapwright::plots {
namespace {

constexpr double line_width_px = 1.6;
constexpr double dash_px = 7.0;
constexpr double hole_px = 3.5;

void draw_line(QCPPainter& painter, const Polyline& line) {
    painter.drawPolyline(line.data(), static_cast<int>(line.size()));
}

} // namespace

Curve::Curve(QCPAxisRect* rect, std::span<const double> xs, std::span<const double> ys, const QColor& colour,
             Stroke stroke)
    : Drawing(rect, QStringLiteral("main")), xs_(xs), ys_(ys), colour_(colour), stroke_(stroke) {}

// Qt's own dashed pens cost hundreds of milliseconds on such lines; dashes cut here cost as much as a solid line.
void Curve::draw(QCPPainter* painter) {
    painter->setPen(QPen(colour_, line_width_px, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin));
    painter->setBrush(Qt::NoBrush);
    for (const Polyline& line : thinned(xs_, ys_, view().lower_m, view().upper_m, pixel_map(), pixel_ratio())) {
        if (stroke_ == Stroke::solid) {
            draw_line(*painter, line);
        } else {
            for (const Polyline& dash : dashes(line, dash_px, hole_px))
                draw_line(*painter, dash);
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
