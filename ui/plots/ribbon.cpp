// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/ribbon.h"

#include "ui/models/text.h"
#include "ui/plots/label_layout.h"

#include <algorithm>
#include <cmath>

namespace lapwright::plots {
namespace {

constexpr double name_space_px = 6.0;

} // namespace

// Drawn height grows with the square root of curvature: a sweep of 250 m radius must be seen beside a hairpin of 12 m.
Ribbon::Ribbon(QCPAxisRect* rect, const track::Track& track, const QColor& fill, const QColor& ink, const QFont& font)
    : Drawing(rect, QStringLiteral("main")), track_(track), fill_(fill), ink_(ink), font_(font) {
    const auto& curvature = track.line.curvature_per_m;
    double tightest = 0.0;
    for (const double value : curvature)
        tightest = std::max(tightest, std::abs(value));
    for (std::size_t i = 0; i <= curvature.size() && !curvature.empty(); ++i) {
        const double value = curvature[i % curvature.size()];
        stations_m_.push_back(static_cast<double>(i) * track.line.step_m);
        bumps_.push_back(tightest > 0.0 ? std::copysign(std::sqrt(std::abs(value) / tightest), value) : 0.0);
    }
}

void Ribbon::draw(QCPPainter* painter) {
    const double names_height = name_rows * QFontMetricsF(font_).height();
    const QRectF whole(room());
    draw_bumps(*painter, whole.adjusted(0, 0, 0, -names_height));
    draw_names(*painter, QRectF(whole.left(), whole.bottom() - names_height, whole.width(), names_height));
}

void Ribbon::draw_bumps(QCPPainter& painter, const QRectF& room) const {
    PixelMap map = pixel_map();
    map.y_offset = room.center().y();
    map.y_scale = -0.48 * room.height();
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill_);
    for (Polyline& line : thinned(stations_m_, bumps_, view().lower_m, view().upper_m, map, 1.0)) {
        if (line.size() < 2) continue;
        line.push_back({line.back().x(), map.y_offset});
        line.push_back({line.front().x(), map.y_offset});
        painter.drawPolygon(line.data(), static_cast<int>(line.size()));
    }
    painter.setPen(QPen(fill_, 1.0));
    painter.drawLine(QPointF(room.left(), map.y_offset), QPointF(room.right(), map.y_offset));
}

void Ribbon::draw_names(QCPPainter& painter, const QRectF& room) const {
    std::vector<Name> names;
    for (const track::Segment& segment : track_.segments) {
        if (segment.kind != track::SegmentKind::corner) continue;
        names.push_back({models::text(segment.name), x_pixel(0.5 * (segment.start_m + segment.end_m)),
                         std::abs(segment.turned_rad)});
    }
    const QFontMetricsF metrics(font_);
    const auto placed = place_names(
        names, room.left(), room.right(), name_rows, name_space_px,
        [&](const QString& text) { return std::ceil(metrics.horizontalAdvance(text)) + 1.0; },
        [&](const QString& text, double width) { return metrics.elidedText(text, Qt::ElideRight, width); });
    painter.setFont(font_);
    painter.setPen(ink_);
    for (const PlacedName& name : placed) {
        const QRectF box(name.left, room.top() + name.row * metrics.height(), name.width + 1.0, metrics.height());
        painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, name.text);
    }
}

} // namespace lapwright::plots
