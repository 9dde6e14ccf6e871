// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/ribbon.h"

#include "ui/models/text.h"

#include <algorithm>
#include <cmath>

namespace lapwright::plots {
namespace {

constexpr double name_space_px = 6.0;
constexpr double mark_half_px = 5.0;
constexpr double room_below_px = 3.0; // for the feet of the letters

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
    const QRectF whole(room());
    const QRectF above_names(whole.topLeft(), QPointF(whole.right(), names_room().top()));
    draw_bumps(*painter, above_names);
    draw_boundaries(*painter, above_names);
    painter->setFont(font_);
    painter->setPen(ink_);
    for (const PlacedName& name : placed_names())
        painter->drawText(box_of(name), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, name.text);
}

QRectF Ribbon::names_room() const {
    const QRectF whole(room());
    const double height = name_rows * QFontMetricsF(font_).height();
    return {whole.left(), whole.bottom() - height - room_below_px, whole.width(), height};
}

QRectF Ribbon::box_of(const PlacedName& name) const {
    const double height = QFontMetricsF(font_).height();
    return {name.left, names_room().top() + name.row * height, name.width + 1.0, height};
}

std::vector<QRectF> Ribbon::written() const {
    std::vector<QRectF> boxes;
    for (const PlacedName& name : placed_names())
        boxes.push_back(box_of(name));
    return boxes;
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

// Marks to be taken hold of; the timing line's is as high as the room.
void Ribbon::draw_boundaries(QCPPainter& painter, const QRectF& room) const {
    painter.setPen(QPen(ink_, 1.0));
    const double middle = room.center().y();
    const auto mark = [&](double place_m, double half) {
        const double x = x_pixel(place_m);
        painter.drawLine(QPointF(x, middle - half), QPointF(x, middle + half));
    };
    for (const track::Segment& segment : track_.segments)
        mark(segment.start_m, segment.start_m > 0.0 ? mark_half_px : 0.5 * room.height());
    if (!track_.segments.empty()) mark(track_.segments.back().end_m, 0.5 * room.height());
}

std::vector<PlacedName> Ribbon::placed_names() const {
    std::vector<Name> names;
    for (const track::Segment& segment : track_.segments) {
        if (segment.kind != track::SegmentKind::corner) continue;
        names.push_back({models::text(segment.name), x_pixel(0.5 * (segment.start_m + segment.end_m)),
                         std::abs(segment.turned_rad)});
    }
    const QFontMetricsF metrics(font_);
    const QRectF room = names_room();
    return place_names(
        names, room.left(), room.right(), name_rows, name_space_px,
        [&](const QString& text) { return std::ceil(metrics.horizontalAdvance(text)) + 1.0; },
        [&](const QString& text, double width) { return metrics.elidedText(text, Qt::ElideRight, width); });
}

} // namespace lapwright::plots
