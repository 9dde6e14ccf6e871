// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_plot.h"

#include "core/base/number_text.h"
#include "core/sheet/plot_layout.h"
#include "ui/sheet/ink.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace lapwright::paper {
namespace {

using sheet::Panel;

QPainterPath curve(const Panel& panel, const std::vector<double>& distance, const std::vector<double>& values) {
    QPainterPath path;
    bool down = false; // the pen is lifted over what is no number
    for (const std::size_t i : sheet::drawn_points(values.size())) {
        const QPointF point(panel.x(distance[i]), panel.y(values[i]));
        if (std::isfinite(values[i]) && down)
            path.lineTo(point);
        else if (std::isfinite(values[i]))
            path.moveTo(point);
        down = std::isfinite(values[i]);
    }
    return path;
}

void paint_grid(QPainter& painter, const Panel& panel, const QString& unit, int decimals) {
    painter.setFont(type(7));
    for (const double value : sheet::grid_values(panel)) {
        const double y = panel.y(value);
        painter.setPen(QPen(std::abs(value) < 1e-9 ? faint_ink : rule, 0.5));
        painter.drawLine(QPointF(panel.area.left, y), QPointF(panel.area.right(), y));
        painter.setPen(faint_ink);
        const QString text = QString::fromStdString(base::fixed_text(value, decimals));
        painter.drawText(QRectF(panel.area.left - 40, y - 6, 36, 12), Qt::AlignRight | Qt::AlignVCenter, text);
    }
    painter.setPen(faint_ink);
    painter.drawText(QRectF(panel.area.left, panel.area.top - 11, 200, 10), Qt::AlignLeft | Qt::AlignVCenter, unit);
}

void paint_shade(QPainter& painter, const sheet::Box& box) {
    painter.fillRect(QRectF(box.left, box.top, box.width, box.height), shade);
}

void paint_name(QPainter& painter, const sheet::NamedMark& mark) {
    paint_shade(painter, mark.shade);
    painter.setPen(ink);
    painter.setFont(type(8));
    painter.drawText(QRectF(mark.name_x - 60, mark.name_y - 9, 120, 12), Qt::AlignHCenter | Qt::AlignVCenter,
                     QString::fromStdString(mark.name));
}

void paint_marks(QPainter& painter, const std::vector<sheet::Mark>& marks) {
    for (const sheet::Mark& mark : marks) {
        paint_shade(painter, mark.shade);
        const QPointF centre(mark.disc_x, mark.disc_y);
        painter.setBrush(ink);
        painter.setPen(Qt::NoPen);
        painter.drawEllipse(centre, sheet::mark_radius, sheet::mark_radius);
        painter.setPen(Qt::white);
        painter.setFont(type(8, true));
        painter.drawText(QRectF(centre.x() - 6, centre.y() - 6, 12, 12), Qt::AlignCenter, QString::number(mark.number));
    }
}

void paint_band(QPainter& painter, const Panel& panel, const sheet::Plot& plot) {
    if (plot.low_s.empty()) return;
    QPainterPath edges = curve(panel, plot.distance_m, plot.high_s);
    edges.connectPath(curve(panel, plot.distance_m, plot.low_s).toReversed());
    edges.closeSubpath();
    painter.setPen(Qt::NoPen);
    painter.setBrush(band);
    painter.drawPath(edges);
}

} // namespace

void paint_plot(QPainter& painter, const QRectF& area, const sheet::Sheet& sheet) {
    const sheet::Plot& plot = sheet.plot;
    if (plot.distance_m.size() < 2) return;
    const sheet::PlotLayout layout =
        sheet::lay_out(plot, sheet.findings, {area.left(), area.top(), area.width(), area.height()});
    const Panel& speed = layout.speed;
    const Panel& gap = layout.gap;
    if (layout.named) paint_name(painter, *layout.named);
    paint_marks(painter, layout.marks);
    paint_grid(painter, speed, QStringLiteral("speed, ") + QString::fromStdString(plot.speed_unit), 0);
    paint_grid(painter, gap, QStringLiteral("gap, s: A ahead is up"), 1);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(vermilion_b, 0.9, Qt::DashLine));
    painter.drawPath(curve(speed, plot.distance_m, plot.speed_b));
    painter.setPen(QPen(blue_a, 0.9));
    painter.drawPath(curve(speed, plot.distance_m, plot.speed_a));
    paint_band(painter, gap, plot);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 0.9));
    painter.drawPath(curve(gap, plot.distance_m, plot.gap_s));
    painter.setFont(type(7));
    painter.setPen(faint_ink);
    const QRectF foot(gap.area.left, gap.area.bottom() + 1, gap.area.width, 11);
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, QStringLiteral("0 m"));
    painter.drawText(foot, Qt::AlignHCenter | Qt::AlignVCenter, QString::fromUtf8(sheet::foot_words));
    painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter,
                     QString::fromStdString(base::fixed_text(plot.distance_m.back(), 0)) + QStringLiteral(" m"));
}

} // namespace lapwright::paper
