// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/dot_strip.h"

#include "core/base/number_text.h"
#include "ui/models/text.h"
#include "ui/plots/in_words.h"
#include "ui/theme/fonts.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double strip_dot_px = 3.0;
constexpr double ring_px = 5.2;
constexpr double side_px = 18.0; // for the letters
constexpr double row_px = 27.0;
constexpr double min_span_s = 0.02;

// Rises of dots above one another; none of two that stand side by side touch.
constexpr double levels[] = {0.0, -7.4, 7.4};

// For dots in the order of their x: the first level at which the dot touches none before it, else the emptiest.
std::vector<double> rises(const std::vector<double>& xs) {
    std::vector<double> rises;
    double last_x[std::size(levels)] = {-1e9, -1e9, -1e9};
    for (const double x : xs) {
        std::size_t best = 0;
        for (std::size_t level = 0; level < std::size(levels); ++level) {
            if (x - last_x[level] >= 2.0 * strip_dot_px + 1.0) {
                best = level;
                break;
            }
            if (last_x[level] < last_x[best]) best = level;
        }
        last_x[best] = x;
        rises.push_back(levels[best]);
    }
    return rises;
}

} // namespace

struct DotStrip::Scale {
    double low_s = 0.0;
    double high_s = 1.0;
    double left = 0.0;
    double right = 1.0;

    [[nodiscard]] double x(double time_s) const { return left + (time_s - low_s) / (high_s - low_s) * (right - left); }
};

DotStrip::DotStrip(QWidget* parent) : QWidget(parent), palette_(theme::paper()) {
    setFont(theme::small());
    setAccessibleName(tr("Segment times of all clean laps"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void DotStrip::set_dots(Dots dots) {
    dots_ = std::move(dots);
    setAccessibleDescription(in_words(dots_));
    updateGeometry();
    update();
}

void DotStrip::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    update();
}

QSize DotStrip::sizeHint() const {
    return {240, static_cast<int>(2 * row_px) + fontMetrics().height() + 8};
}

QSize DotStrip::minimumSizeHint() const {
    return {140, sizeHint().height()};
}

void DotStrip::paintEvent(QPaintEvent*) {
    Scale scale;
    scale.low_s = std::numeric_limits<double>::infinity();
    scale.high_s = -scale.low_s;
    for (const auto* times : {&dots_.times_a_s, &dots_.times_b_s}) {
        for (const double time : *times) {
            scale.low_s = std::min(scale.low_s, time);
            scale.high_s = std::max(scale.high_s, time);
        }
    }
    if (!(scale.low_s <= scale.high_s)) return;
    const double lacking = std::max(0.0, min_span_s - (scale.high_s - scale.low_s));
    scale.low_s -= 0.5 * lacking;
    scale.high_s += 0.5 * lacking;
    scale.left = side_px + ring_px;
    scale.right = width() - ring_px - 2.0;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paint_row(painter, scale, 0.5 * row_px, true);
    paint_row(painter, scale, 1.5 * row_px, false);
    paint_axis(painter, scale, 2.0 * row_px + 1.0);
}

void DotStrip::paint_row(QPainter& painter, const Scale& scale, double y, bool is_a) const {
    const auto& own = is_a ? dots_.own_a_s : dots_.own_b_s;
    const QColor colour = is_a ? palette_.a : palette_.b;
    std::vector<double> times = is_a ? dots_.times_a_s : dots_.times_b_s;
    std::ranges::sort(times);
    painter.setFont(theme::strong(font()));
    painter.setPen(colour);
    painter.drawText(QRectF(0, y - 0.5 * row_px, side_px, row_px), Qt::AlignLeft | Qt::AlignVCenter,
                     is_a ? QStringLiteral("A") : QStringLiteral("B"));
    painter.setFont(font());
    std::vector<double> xs;
    for (const double time : times)
        xs.push_back(scale.x(time));
    const std::vector<double> up = rises(xs);
    bool ringed = false;
    for (std::size_t i = 0; i < times.size(); ++i) {
        const QPointF centre(xs[i], y + up[i]);
        painter.setPen(QPen(colour, 1.5));
        painter.setBrush(is_a ? QBrush(colour) : QBrush(palette_.card));
        painter.drawEllipse(centre, strip_dot_px, strip_dot_px);
        if (own && !ringed && std::abs(*own - times[i]) < 1e-6) {
            ringed = true;
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(palette_.ink, 1.2));
            painter.drawEllipse(centre, ring_px, ring_px);
        }
    }
}

void DotStrip::paint_axis(QPainter& painter, const Scale& scale, double y) const {
    painter.setPen(QPen(palette_.edge, 1.0));
    painter.drawLine(QPointF(scale.left, y), QPointF(scale.right, y));
    painter.setPen(palette_.quiet);
    const QRectF row(scale.left, y + 2.0, scale.right - scale.left, fontMetrics().height());
    painter.drawText(row, Qt::AlignLeft | Qt::AlignTop, models::text(base::shown_text(scale.low_s, 2)) + tr(" s"));
    painter.drawText(row, Qt::AlignRight | Qt::AlignTop, models::text(base::shown_text(scale.high_s, 2)) + tr(" s"));
}

} // namespace lapwright::plots
