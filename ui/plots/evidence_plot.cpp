// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/evidence_plot.h"

#include "ui/models/text.h"
#include "ui/plots/axis_look.h"
#include "ui/plots/curve.h"
#include "ui/plots/drawing.h"
#include "ui/plots/in_words.h"
#include "ui/plots/unit_ticker.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <qcustomplot.h>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double dot_px = 2.4;
constexpr int band_alpha = 46;
constexpr std::size_t max_points = 250; // of one car
constexpr double room_above = 0.08;     // of the values' extent

// Dots or triangles of one car.
class Points : public Drawing {
  public:
    Points(QCPAxisRect* rect, const std::vector<EvidencePoint>& points, const QColor& colour, bool filled)
        : Drawing(rect, QStringLiteral("main")), points_(points), colour_(colour), filled_(filled) {}

  protected:
    void draw(QCPPainter* painter) override {
        painter->setPen(QPen(colour_, 1.0));
        painter->setBrush(filled_ ? QBrush(colour_) : QBrush(Qt::NoBrush));
        for (const EvidencePoint& point : points_) {
            const QPointF at(x_pixel(point.speed_mps), y_pixel(point.value_mps2));
            if (point.from_below) {
                const QPointF tip[] = {at + QPointF(0, -4.2), at + QPointF(3.4, 2.4), at + QPointF(-3.4, 2.4)};
                painter->drawPolygon(tip, 3);
            } else {
                painter->drawEllipse(at, dot_px, dot_px);
            }
        }
    }

  private:
    const std::vector<EvidencePoint>& points_;
    QColor colour_;
    bool filled_;
};

std::vector<EvidencePoint> corner_points(const car::CarFigures& figures) {
    std::vector<EvidencePoint> points;
    for (const car::CornerEvidence& corner : figures.corners) {
        for (std::size_t i = 0; i < corner.lap_speed_mps.size() && i < corner.lap_lateral_mps2.size(); ++i)
            points.push_back({corner.lap_speed_mps[i], corner.lap_lateral_mps2[i], corner.flat});
    }
    return points;
}

std::vector<EvidencePoint> driving_points(const car::CarFigures& figures) {
    std::vector<EvidencePoint> all;
    for (const car::DrivingEvidence& evidence : figures.driving) {
        if (evidence.used) all.push_back({evidence.speed_mps, evidence.drive_mps2, false});
    }
    const std::size_t stride = all.size() / max_points + 1;
    std::vector<EvidencePoint> points;
    for (std::size_t i = 0; i < all.size(); i += stride)
        points.push_back(all[i]);
    return points;
}

void stretch(std::pair<double, double>& range, double value) {
    if (!std::isfinite(value)) return;
    range.first = std::min(range.first, value);
    range.second = std::max(range.second, value);
}

// Speeds and values that the plot must show: all points, and the curves between their ends.
std::pair<std::pair<double, double>, std::pair<double, double>> extents(const Evidence& evidence) {
    constexpr double far = std::numeric_limits<double>::infinity();
    std::pair speeds{far, -far};
    std::pair values{far, -far};
    for (const auto* points : {&evidence.points_a, &evidence.points_b}) {
        for (const EvidencePoint& point : *points) {
            stretch(speeds, point.speed_mps);
            stretch(values, point.value_mps2);
        }
    }
    for (const car::Curve* curve : {&evidence.curve_a, &evidence.curve_b}) {
        for (std::size_t i = 0; i < curve->speed_mps.size(); ++i) {
            const double speed = curve->speed_mps[i];
            if (speed >= speeds.first && speed <= speeds.second) stretch(values, curve->value[i]);
        }
    }
    return {speeds, values};
}

QString with_unit(const QString& words, base::Unit unit) {
    return words + QStringLiteral(", ") + models::text(base::symbol(unit));
}

} // namespace

Evidence cornering_evidence(const causes::Explanation& explanation) {
    return {corner_points(explanation.car_a), corner_points(explanation.car_b), explanation.limit_a,
            explanation.limit_b};
}

Evidence driving_evidence(const causes::Explanation& explanation) {
    return {driving_points(explanation.car_a), driving_points(explanation.car_b), explanation.driving_a,
            explanation.driving_b};
}

EvidencePlot::EvidencePlot(const QString& title, QWidget* parent)
    : QWidget(parent), plot_(new QCustomPlot(this)), palette_(theme::paper()) {
    setAccessibleName(title);
    fill_with(*this, *plot_);
    build();
}

void EvidencePlot::set_evidence(Evidence evidence) {
    evidence_ = std::move(evidence);
    build();
}

void EvidencePlot::set_units(base::UnitSystem units) {
    units_ = units;
    build();
}

void EvidencePlot::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    build();
}

void EvidencePlot::build() {
    setAccessibleDescription(in_words(evidence_, units_));
    begin_anew(*plot_, palette_);
    QCPAxisRect* rect = plot_->axisRect();
    const base::Unit speed = base::shown_unit(base::Quantity::speed, units_);
    const base::Unit acceleration = base::shown_unit(base::Quantity::acceleration, units_);
    plot_->xAxis->setTicker(QSharedPointer<UnitTicker>::create(speed, 3));
    plot_->yAxis->setTicker(QSharedPointer<UnitTicker>::create(acceleration, 4));
    plot_->xAxis->setLabel(with_unit(tr("speed"), speed));
    plot_->yAxis->setLabel(models::text(base::symbol(acceleration)));
    const auto [speeds, values] = extents(evidence_);
    const bool any = speeds.first < speeds.second && values.first < values.second;
    if (any) {
        const double margin = room_above * (values.second - values.first);
        const double side = 0.04 * (speeds.second - speeds.first);
        plot_->xAxis->setRange(speeds.first - side, speeds.second + side);
        plot_->yAxis->setRange(values.first - margin, values.second + margin);
        for (const auto& [curve, colour] :
             {std::pair(&evidence_.curve_a, palette_.a), std::pair(&evidence_.curve_b, palette_.b)}) {
            QColor pale = colour;
            pale.setAlpha(band_alpha);
            new Band(rect, curve->speed_mps, curve->low, curve->high, pale);
        }
        new Points(rect, evidence_.points_a, theme::blend(palette_.a, palette_.card, 0.25), true);
        new Points(rect, evidence_.points_b, palette_.b, false);
        new Curve(rect, evidence_.curve_a.speed_mps, evidence_.curve_a.value, palette_.a, Stroke::solid);
        new Curve(rect, evidence_.curve_b.speed_mps, evidence_.curve_b.value, palette_.b, Stroke::dashed);
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

PicturePart EvidencePlot::picture_part() const {
    return {plot_, accessibleName(), {520, 380}};
}

} // namespace lapwright::plots
