// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_plot.h"

#include "core/base/number_text.h"
#include "ui/sheet/ink.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace lapwright::paper {
namespace {

// A panel's mapping from data to page.
struct Panel {
    QRectF area;
    double length_m;
    double low;
    double high;

    [[nodiscard]] double x(double distance_m) const { return area.left() + area.width() * distance_m / length_m; }
    [[nodiscard]] double y(double value) const { return area.bottom() - area.height() * (value - low) / (high - low); }
};

// More points than this are not told apart on paper.
constexpr std::size_t most_points = 1200;
constexpr double mark_radius = 6.0;

QPainterPath curve(const Panel& panel, const std::vector<double>& distance, const std::vector<double>& values) {
    QPainterPath path;
    const std::size_t stride = std::max<std::size_t>(1, values.size() / most_points);
    for (std::size_t i = 0; i < values.size(); i += stride) {
        const QPointF point(panel.x(distance[i]), panel.y(values[i]));
        if (i == 0)
            path.moveTo(point);
        else
            path.lineTo(point);
    }
    path.lineTo(panel.x(distance.back()), panel.y(values.back()));
    return path;
}

// The largest of 1, 2, 5 · 10ⁿ that gives at least `least` steps over the span.
double round_step(double span, double least) {
    const double power = std::pow(10.0, std::floor(std::log10(span / least)));
    for (const double factor : {5.0, 2.0}) {
        if (span / (factor * power) >= least) return factor * power;
    }
    return power;
}

void paint_grid(QPainter& painter, const Panel& panel, const QString& unit, int decimals) {
    painter.setFont(type(7));
    const double step = round_step(panel.high - panel.low, 3.0);
    const double first = std::ceil(panel.low / step) * step;
    for (double value = first; value <= panel.high + 1e-9; value += step) {
        const double y = panel.y(value);
        painter.setPen(QPen(std::abs(value) < 1e-9 ? faint_ink : rule, 0.5));
        painter.drawLine(QPointF(panel.area.left(), y), QPointF(panel.area.right(), y));
        painter.setPen(faint_ink);
        const QString text = QString::fromStdString(base::fixed_text(value, decimals));
        painter.drawText(QRectF(panel.area.left() - 40, y - 6, 36, 12), Qt::AlignRight | Qt::AlignVCenter, text);
    }
    painter.setPen(faint_ink);
    painter.drawText(QRectF(panel.area.left(), panel.area.top() - 11, 200, 10), Qt::AlignLeft | Qt::AlignVCenter, unit);
}

void paint_marks(QPainter& painter, const Panel& top, const Panel& bottom, const sheet::Sheet& sheet) {
    int number = 0;
    double free_from = top.area.left(); // marks of one place stand side by side
    double last_start_m = -1.0;
    for (const sheet::Finding& finding : sheet.findings) {
        ++number;
        if (finding.end_m <= finding.start_m) continue;
        const QRectF band(QPointF(top.x(finding.start_m), top.area.top()),
                          QPointF(top.x(finding.end_m), bottom.area.bottom()));
        painter.fillRect(band, shade);
        const bool again = finding.start_m == last_start_m;
        const QPointF centre(again ? free_from + mark_radius : band.center().x(), top.area.top() - 18);
        last_start_m = finding.start_m;
        free_from = centre.x() + mark_radius + 2;
        painter.setBrush(ink);
        painter.setPen(Qt::NoPen);
        painter.drawEllipse(centre, mark_radius, mark_radius);
        painter.setPen(Qt::white);
        painter.setFont(type(8, true));
        painter.drawText(QRectF(centre.x() - 6, centre.y() - 6, 12, 12), Qt::AlignCenter, QString::number(number));
    }
}

Panel speed_panel(const QRectF& area, const sheet::Plot& plot) {
    const auto [low_a, high_a] = std::ranges::minmax(plot.speed_a);
    const auto [low_b, high_b] = std::ranges::minmax(plot.speed_b);
    const double low = std::min(low_a, low_b);
    const double high = std::max(high_a, high_b);
    return {area, plot.distance_m.back(), low - 0.05 * (high - low), high + 0.03 * (high - low)};
}

Panel gap_panel(const QRectF& area, const sheet::Plot& plot) {
    const auto [low, high] = std::ranges::minmax(plot.gap_s);
    const double margin = std::max(0.02, 0.12 * (high - low));
    return {area, plot.distance_m.back(), std::min(low, 0.0) - margin, std::max(high, 0.0) + margin};
}

void paint_band(QPainter& painter, const Panel& panel, const sheet::Plot& plot) {
    if (plot.low_s.empty()) return;
    QPainterPath band = curve(panel, plot.distance_m, plot.high_s);
    band.connectPath(curve(panel, plot.distance_m, plot.low_s).toReversed());
    band.closeSubpath();
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0xcf, 0xd6, 0xda));
    painter.drawPath(band);
}

} // namespace

void paint_plot(QPainter& painter, const QRectF& area, const sheet::Sheet& sheet) {
    const sheet::Plot& plot = sheet.plot;
    if (plot.distance_m.size() < 2) return;
    constexpr double left = 30;
    constexpr double between = 16;
    constexpr double above = 26;
    const double height = area.height() - above - between - 12;
    const QRectF upper(area.left() + left, area.top() + above, area.width() - left, 0.62 * height);
    const QRectF lower(upper.left(), upper.bottom() + between, upper.width(), 0.38 * height);
    const Panel speed = speed_panel(upper, plot);
    const Panel gap = gap_panel(lower, plot);
    paint_marks(painter, speed, gap, sheet);
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
    const QRectF foot(lower.left(), lower.bottom() + 1, lower.width(), 11);
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, QStringLiteral("0 m"));
    painter.drawText(foot, Qt::AlignHCenter | Qt::AlignVCenter, QStringLiteral("distance along the track"));
    painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter,
                     QString::fromStdString(base::fixed_text(plot.distance_m.back(), 0)) + QStringLiteral(" m"));
}

} // namespace lapwright::paper
