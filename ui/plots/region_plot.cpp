// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/region_plot.h"

#include "ui/plots/axis_look.h"
#include "ui/plots/drawing.h"
#include "ui/plots/in_words.h"
#include "ui/plots/unit_ticker.h"

#include <algorithm>
#include <qcustomplot.h>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr int fill_alpha = 40;
constexpr double middle_px = 3.2;
constexpr double room = 0.08; // of the extent, on each side

class Region : public Drawing {
  public:
    Region(QCPAxisRect* rect, const car::JointRegion& region, const QColor& colour, bool solid)
        : Drawing(rect, QStringLiteral("main")), region_(region), colour_(colour), solid_(solid) {}

  protected:
    void draw(QCPPainter* painter) override {
        QPolygonF outline;
        for (std::size_t i = 0; i < region_.outline_x.size(); ++i)
            outline << QPointF(x_pixel(region_.outline_x[i]), y_pixel(region_.outline_y[i]));
        QColor pale = colour_;
        pale.setAlpha(fill_alpha);
        painter->setPen(QPen(colour_, 1.6, solid_ ? Qt::SolidLine : Qt::DashLine));
        painter->setBrush(pale);
        painter->drawPolygon(outline);
        painter->setPen(QPen(colour_, 1.2));
        painter->setBrush(solid_ ? QBrush(colour_) : QBrush(Qt::NoBrush));
        painter->drawEllipse(QPointF(x_pixel(region_.centre_x), y_pixel(region_.centre_y)), middle_px, middle_px);
    }

  private:
    const car::JointRegion& region_;
    QColor colour_;
    bool solid_;
};

void reach(QCPAxis& axis, const std::vector<double>& a, const std::vector<double>& b) {
    QCPRange range;
    bool first = true;
    for (const auto* values : {&a, &b}) {
        for (const double value : *values) {
            range =
                first ? QCPRange(value, value) : QCPRange(std::min(range.lower, value), std::max(range.upper, value));
            first = false;
        }
    }
    const double side = room * range.size();
    if (!first) axis.setRange(range.lower - side, range.upper + side);
}

// The space nearest to the middle ends the first line: a small plot is less high than the words are long.
QString in_two_lines(QString words) {
    const qsizetype middle = words.size() / 2;
    const qsizetype before = words.lastIndexOf(QLatin1Char(' '), middle);
    const qsizetype behind = words.indexOf(QLatin1Char(' '), middle);
    const bool is_behind = before < 0 || (behind >= 0 && behind - middle < middle - before);
    if (const qsizetype space = is_behind ? behind : before; space >= 0) words[space] = QLatin1Char('\n');
    return words;
}

} // namespace

RegionPlot::RegionPlot(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)), palette_(theme::paper()) {
    setAccessibleName(tr("Tyre grip and downforce that the laps allow"));
    fill_with(*this, *plot_);
    build();
}

void RegionPlot::set_regions(car::JointRegion a, car::JointRegion b, bool per_kilogram) {
    a_ = std::move(a);
    b_ = std::move(b);
    per_kilogram_ = per_kilogram;
    setAccessibleDescription(in_words(a_, b_));
    build();
}

void RegionPlot::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    build();
}

void RegionPlot::build() {
    begin_anew(*plot_, palette_);
    QCPAxisRect* rect = plot_->axisRect();
    for (QCPAxis* axis : {plot_->xAxis, plot_->yAxis}) {
        axis->setTicker(QSharedPointer<UnitTicker>::create(base::Unit::none, 2));
    }
    plot_->xAxis->setLabel(tr("tyre grip"));
    plot_->yAxis->setLabel(per_kilogram_ ? in_two_lines(tr("downforce area, m² on a tonne"))
                                         : tr("downforce area, m²"));
    reach(*plot_->xAxis, a_.outline_x, b_.outline_x);
    reach(*plot_->yAxis, a_.outline_y, b_.outline_y);
    if (!a_.empty()) new Region(rect, a_, palette_.a, true);
    if (!b_.empty()) new Region(rect, b_, palette_.b, false);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

PicturePart RegionPlot::picture_part() const {
    return {plot_, accessibleName(), {520, 380}};
}

} // namespace lapwright::plots
