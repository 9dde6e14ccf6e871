// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/stretches.h"

#include <cmath>

namespace lapwright::plots {

Corners::Corners(QCPAxisRect* rect, const track::Track& track, const QColor& tint)
    : Drawing(rect, QStringLiteral("background")), track_(track), tint_(tint) {}

void Corners::draw(QCPPainter* painter) {
    painter->setAntialiasing(false);
    const QRectF whole(room());
    for (const track::Segment& segment : track_.segments) {
        if (segment.kind != track::SegmentKind::corner) continue;
        const double left = x_pixel(segment.start_m);
        painter->fillRect(QRectF(left, whole.top(), x_pixel(segment.end_m) - left, whole.height()), tint_);
    }
}

ChosenStretch::ChosenStretch(QCPAxisRect* rect, const QColor& fill, const QColor& line, const Drawing* writing)
    : Drawing(rect, QStringLiteral("background")), fill_(fill), line_(line), writing_(writing) {}

void ChosenStretch::draw(QCPPainter* painter) {
    if (!stretch_) return;
    painter->setAntialiasing(false);
    const QRectF whole(room());
    const double left = std::round(x_pixel(stretch_->lower_m));
    const double right = std::round(x_pixel(stretch_->upper_m));
    painter->fillRect(QRectF(left, whole.top(), right - left, whole.height()), fill_);
    keep_clear_of(writing_, *painter);
    painter->setPen(QPen(line_, 1.0));
    for (const double x : {left, right}) {
        painter->drawLine(QPointF(x, whole.top()), QPointF(x, whole.bottom()));
    }
}

} // namespace lapwright::plots
