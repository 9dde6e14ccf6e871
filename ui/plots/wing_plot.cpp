// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/wing_plot.h"

#include "ui/plots/axis_look.h"
#include "ui/plots/drawing.h"
#include "ui/plots/in_words.h"
#include "ui/plots/unit_ticker.h"

#include <algorithm>
#include <qcustomplot.h>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr int band_alpha = 40;
constexpr double room = 0.06; // of the extent, above and below

class Balance : public Drawing {
  public:
    Balance(QCPAxisRect* rect, const causes::AeroBalance& balance, const QColor& colour, bool solid)
        : Drawing(rect, QStringLiteral("main")), balance_(balance), colour_(colour), solid_(solid) {}

  protected:
    void draw(QCPPainter* painter) override {
        QPolygonF line;
        QPolygonF band;
        for (const causes::AeroStep& step : balance_.steps) {
            line << QPointF(x_pixel(step.downforce_m2), y_pixel(step.lap.value));
            band << QPointF(x_pixel(step.downforce_m2), y_pixel(step.lap.low));
        }
        for (auto step = balance_.steps.rbegin(); step != balance_.steps.rend(); ++step)
            band << QPointF(x_pixel(step->downforce_m2), y_pixel(step->lap.high));
        QColor pale = colour_;
        pale.setAlpha(band_alpha);
        painter->setPen(Qt::NoPen);
        painter->setBrush(pale);
        painter->drawPolygon(band);
        painter->setPen(QPen(colour_, 1.6, solid_ ? Qt::SolidLine : Qt::DashLine));
        painter->setBrush(Qt::NoBrush);
        painter->drawPolyline(line);
    }

  private:
    const causes::AeroBalance& balance_;
    QColor colour_;
    bool solid_;
};

} // namespace

WingPlot::WingPlot(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)), palette_(theme::paper()) {
    setAccessibleName(tr("Lap time over more or less downforce"));
    fill_with(*this, *plot_);
    build();
}

void WingPlot::set_balances(causes::AeroBalance a, causes::AeroBalance b, bool on_a_tonne) {
    a_ = std::move(a);
    b_ = std::move(b);
    on_a_tonne_ = on_a_tonne;
    setAccessibleDescription(in_words(a_, b_));
    build();
}

void WingPlot::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    build();
}

void WingPlot::build() {
    begin_anew(*plot_, palette_);
    QCPAxisRect* rect = plot_->axisRect();
    for (QCPAxis* axis : {plot_->xAxis, plot_->yAxis}) {
        axis->setTicker(QSharedPointer<UnitTicker>::create(base::Unit::none, 2));
        axis->ticker()->setTickCount(7);
        axis->grid()->setZeroLinePen(QPen(palette_.ink, 1.0));
    }
    plot_->xAxis->setLabel(on_a_tonne_ ? tr("downforce more than now, m² on a tonne")
                                       : tr("downforce more than now, m²"));
    plot_->yAxis->setLabel(tr("lap time against now, s"));
    QCPRange across(0.0, 0.0);
    QCPRange up(0.0, 0.0);
    for (const causes::AeroBalance* balance : {&a_, &b_}) {
        for (const causes::AeroStep& step : balance->steps) {
            across.expand(step.downforce_m2);
            up.expand(step.lap.low);
            up.expand(step.lap.high);
        }
    }
    if (across.size() > 0.0) plot_->xAxis->setRange(across);
    if (up.size() > 0.0) plot_->yAxis->setRange(up.lower - room * up.size(), up.upper + room * up.size());
    if (!a_.steps.empty()) new Balance(rect, a_, palette_.a, true);
    if (!b_.steps.empty()) new Balance(rect, b_, palette_.b, false);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

} // namespace lapwright::plots
