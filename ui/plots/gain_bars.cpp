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
    for (const auto& segment : segments_)
        draw_bar(*painter, segment);
    const QRectF whole(room());
    painter->setPen(QPen(ink_, 1.0));
    painter->drawLine(QPointF(whole.left(), whole.center().y()), QPointF(whole.right(), whole.center().y()));
}

void GainBars::draw_bar(QCPPainter& painter, const comparison::SegmentComparison& segment) const {
    const QRectF whole(room());
    const QFontMetricsF metrics(font_);
    const double tallest = whole.height() / 2 - metrics.height() - 1.0; // the number keeps its room
    const double gain = segment.gain_s.value;
    if (!(largest_gain_s_ > 0.0) || tallest <= 2.0) return;
    const double left = std::max(x_pixel(segment.segment.start_m), whole.left());
    const double right = std::min(x_pixel(segment.segment.end_m), whole.right());
    if (right <= left) return;
    const double height = tallest * std::abs(gain) / largest_gain_s_;
    const double middle = whole.center().y();
    const QRectF bar(left + 0.5, gain > 0 ? middle - height : middle, std::max(right - left - 1.0, 1.0), height);
    painter.fillRect(bar, gain > 0 ? a_ : b_);

    const QString number = models::text(base::gain_text(gain, segment.gain_s.sd));
    const double width = metrics.horizontalAdvance(number);
    if (width + 2.0 > right - left) return;
    const double top = gain > 0 ? bar.top() - metrics.height() : bar.bottom() + 1.0;
    painter.setPen(ink_);
    painter.drawText(QRectF(left, top, right - left, metrics.height()), Qt::AlignCenter | Qt::TextSingleLine, number);
}

} // namespace lapwright::plots
