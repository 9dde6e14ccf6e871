// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/small_plot.h"

#include "ui/plots/thinning.h"

#include <QPainter>
#include <numeric>

namespace lapwright::plots {

void paint_small_plot(QPainter& painter, const QRectF& room, std::span<const double> values, const QColor& colour) {
    if (values.size() < 2 || room.width() < 4.0 || room.height() < 4.0) return;
    std::vector<double> rows(values.size());
    std::iota(rows.begin(), rows.end(), 0.0);
    auto [least, most] = extent(values);
    if (!(most > least)) {
        least -= 0.5;
        most += 0.5;
    }
    PixelMap map;
    map.x_scale = room.width() / rows.back();
    map.x_offset = room.left();
    map.y_scale = -room.height() / (most - least);
    map.y_offset = room.bottom() - least * map.y_scale;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.0));
    const double columns_per_pixel = painter.device()->devicePixelRatioF();
    for (const Polyline& line : thinned(rows, values, 0.0, rows.back(), map, columns_per_pixel))
        painter.drawPolyline(line.data(), static_cast<int>(line.size()));
    painter.restore();
}

SmallPlot::SmallPlot(QWidget* parent) : QWidget(parent) {
    setMinimumHeight(60);
}

void SmallPlot::set_values(std::span<const double> values) {
    values_.assign(values.begin(), values.end());
    update();
}

void SmallPlot::set_colour(const QColor& colour) {
    colour_ = colour;
    update();
}

QSize SmallPlot::sizeHint() const {
    return {280, 90};
}

void SmallPlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_small_plot(painter, QRectF(rect()).adjusted(1.0, 2.0, -1.0, -2.0), values_, colour_);
}

} // namespace lapwright::plots
