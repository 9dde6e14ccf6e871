// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/gain_bars.h"

#include "core/base/wording.h"
#include "ui/models/text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::plots {

GainBars::GainBars(QCPAxisRect* rect, std::vector<comparison::SegmentComparison> segments, const QColor& a,
                   const QColor& b, const QColor& ink, const QFont& font)
    : Drawing(rect, QStringLiteral("main")), segments_(std::move(segments)), a_(a), b_(b), ink_(ink), font_(font) {
    for (const auto& segment : segments_)
        largest_gain_s_ = std::max(largest_gain_s_, std::abs(segment.gain_s.value));
}

void GainBars::draw(QCPPainter* painter) {
    painter->setAntialiasing(false);
    painter->setFont(font_);
    for (const Bar& bar : bars()) {
        const QColor& colour = bar.won_by_a ? a_ : b_;
        if (bar.stands_out) {
            painter->fillRect(bar.room, colour);
        } else {
            painter->setPen(QPen(colour, 1.0));
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(bar.room.adjusted(0.5, 0.5, -0.5, -0.5));
        }
        painter->setPen(QPen(ink_, 1.0));
        painter->drawText(bar.number_room, Qt::AlignCenter | Qt::TextSingleLine, bar.number);
    }
    painter->setPen(QPen(ink_, 1.0));
    const QRectF whole(room());
    painter->drawLine(QPointF(whole.left(), whole.center().y()), QPointF(whole.right(), whole.center().y()));
}

std::vector<QRectF> GainBars::written() const {
    std::vector<QRectF> boxes;
    for (const Bar& bar : bars())
        if (!bar.number.isEmpty()) boxes.push_back(bar.number_room);
    return boxes;
}

std::vector<GainBars::Bar> GainBars::bars() const {
    std::vector<Bar> all;
    if (!(largest_gain_s_ > 0.0)) return all;
    const QRectF whole(room());
    for (const auto& segment : segments_) {
        const double left = std::max(x_pixel(segment.segment.start_m), whole.left());
        const double right = std::min(x_pixel(segment.segment.end_m), whole.right());
        if (right > left) all.push_back(bar_of(segment, left, right));
    }
    return all;
}

GainBars::Bar GainBars::bar_of(const comparison::SegmentComparison& segment, double left, double right) const {
    const QRectF whole(room());
    const QFontMetricsF metrics(font_);
    const double gain = segment.gain_s.value;
    const double tallest = std::max(whole.height() / 2 - metrics.height() - 1.0, 1.0); // the number keeps its room
    const double height = tallest * std::abs(gain) / largest_gain_s_;
    const double middle = whole.center().y();
    Bar bar;
    bar.won_by_a = gain > 0.0;
    bar.stands_out = base::stands_out(gain, segment.gain_s.sd);
    bar.room = {left + 0.5, bar.won_by_a ? middle - height : middle, std::max(right - left - 1.0, 1.0), height};
    const QString number = models::text(base::gain_text(gain, segment.gain_s.sd));
    const double width = std::ceil(metrics.horizontalAdvance(number)) + 2.0;
    if (width > right - left) return bar;
    bar.number = number;
    const double top = bar.won_by_a ? bar.room.top() - metrics.height() : bar.room.bottom() + 1.0;
    bar.number_room = {0.5 * (left + right - width), top, width, metrics.height()};
    return bar;
}

} // namespace lapwright::plots
