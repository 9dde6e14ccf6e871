// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/driven_lines.h"

#include <QPolygonF>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace lapwright::plots {
namespace {

constexpr double beyond_m = 25.0;         // of either end of the stretch
constexpr double most_sideways_px = 42.0; // from the reference line
constexpr double line_of_car_px = 2.2;
constexpr double room_round_stretch = 0.14; // of the close-up, on each side
constexpr double closest_pixels_per_metre = 6.0;
constexpr int band_of_line_alpha = 46;

std::pair<std::size_t, std::size_t> points_of(const std::vector<double>& distance_m,
                                              std::pair<double, double> stretch_m) {
    const auto from = std::ranges::lower_bound(distance_m, stretch_m.first - beyond_m) - distance_m.begin();
    const auto to = std::ranges::upper_bound(distance_m, stretch_m.second + beyond_m) - distance_m.begin();
    return {static_cast<std::size_t>(from), static_cast<std::size_t>(to)};
}

double pixels_per_metre_of(const QTransform& to_pixels) {
    return std::hypot(to_pixels.m11(), to_pixels.m12());
}

} // namespace

int sideways_factor(const analysis::Pairing& pairing, std::pair<double, double> stretch_m, double pixels_per_metre) {
    double furthest_m = 0.1;
    for (const lap::LapTrace* trace : {&pairing.a.trace.best, &pairing.b.trace.best}) {
        const auto [from, to] = points_of(trace->distance_m, stretch_m);
        for (std::size_t i = from; i < to; ++i)
            if (std::isfinite(trace->offset_m[i])) furthest_m = std::max(furthest_m, std::abs(trace->offset_m[i]));
    }
    int factor = 1;
    for (const int larger : std::array{2, 5, 10, 20})
        if (larger * furthest_m * pixels_per_metre <= most_sideways_px) factor = larger;
    return factor;
}

void paint_driven_lines(QPainter& painter, const analysis::Pairing& pairing, const QTransform& to_pixels,
                        std::pair<double, double> stretch_m, const theme::Palette& palette) {
    const double factor = sideways_factor(pairing, stretch_m, pixels_per_metre_of(to_pixels));
    const lap::LapTrace& a = pairing.a.trace.best;
    const lap::LapTrace& b = pairing.b.trace.best;
    const comparison::LineDifference& line = pairing.comparison.line;
    const auto [from, to] = points_of(a.distance_m, stretch_m);
    const auto at = [&](std::size_t i, double offset_m) {
        const track::LinePoint point = pairing.track.line.at(a.distance_m[i]);
        return to_pixels.map(QPointF(point.position_m.east - factor * offset_m * point.tangent.north,
                                     point.position_m.north + factor * offset_m * point.tangent.east));
    };
    QPolygonF of_a;
    QPolygonF of_b;
    QPolygonF low;
    QPolygonF high;
    for (std::size_t i = from; i < to; ++i) {
        if (std::isfinite(a.offset_m[i])) of_a << at(i, a.offset_m[i]);
        if (std::isfinite(b.offset_m[i])) of_b << at(i, b.offset_m[i]);
        if (line.low_m.empty() || !std::isfinite(line.low_m[i])) continue;
        low << at(i, b.offset_m[i] + line.low_m[i]);
        high << at(i, b.offset_m[i] + line.high_m[i]);
    }
    std::ranges::reverse(high);
    QColor band = palette.a;
    band.setAlpha(band_of_line_alpha);
    painter.setPen(Qt::NoPen);
    painter.setBrush(band);
    painter.drawPolygon(low + high);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(palette.b, line_of_car_px, Qt::DashLine, Qt::FlatCap, Qt::RoundJoin));
    painter.drawPolyline(of_b);
    painter.setPen(QPen(palette.a, line_of_car_px, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.drawPolyline(of_a);
}

QTransform close_up_of(const track::ReferenceLine& line, std::pair<double, double> stretch_m, const QTransform& whole,
                       const QRectF& room) {
    QPolygonF path;
    for (double place_m = stretch_m.first - beyond_m; place_m <= stretch_m.second + beyond_m; place_m += 5.0) {
        const track::Vec2 position = line.position(place_m);
        path << whole.map(QPointF(position.east, position.north));
    }
    const QRectF box = path.boundingRect();
    const double inside = 1.0 - 2.0 * room_round_stretch;
    const double closest = closest_pixels_per_metre / pixels_per_metre_of(whole);
    const double scale = std::clamp(std::min(inside * room.width() / std::max(box.width(), 1.0),
                                             inside * room.height() / std::max(box.height(), 1.0)),
                                    1.0, std::max(closest, 1.0));
    QTransform view = QTransform::fromTranslate(-box.center().x(), -box.center().y());
    view *= QTransform::fromScale(scale, scale);
    view *= QTransform::fromTranslate(room.center().x(), room.center().y());
    return view;
}

} // namespace lapwright::plots
