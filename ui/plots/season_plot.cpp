// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/season_plot.h"

#include "core/base/display.h"
#include "ui/models/text.h"
#include "ui/plots/axis_look.h"
#include "ui/plots/date_ticker.h"
#include "ui/plots/drawing.h"
#include "ui/plots/in_words.h"
#include "ui/plots/unit_ticker.h"
#include "ui/theme/fonts.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <limits>
#include <qcustomplot.h>
#include <utility>

namespace lapwright::plots {
namespace {

constexpr double mark_px = 3.6; // radius
constexpr double chosen_ring_px = 8.0;
constexpr double click_reach_px = 14.0; // of a click
constexpr double bar_foot_px = 3.5;
constexpr double min_shown_s = 6.0 * 3600.0;
constexpr double room_beside = 0.05;      // of the season
constexpr double room_above_marks = 0.12; // of the values' extent
constexpr int value_ticks = 5;
constexpr int date_ticks = 7;

class Marks : public Drawing {
  public:
    Marks(QCPAxisRect* rect, const SeasonCourse& course, const theme::Palette& palette, const int& chosen)
        : Drawing(rect, QStringLiteral("main")), course_(course), palette_(palette), chosen_(chosen) {}

  protected:
    void draw(QCPPainter* painter) override {
        draw_chosen(*painter);
        for (int series = 0; series < static_cast<int>(course_.series.size()); ++series)
            draw_lines(*painter, series);
        for (const SeasonMark& mark : course_.marks)
            draw_mark(*painter, mark);
        if (course_.series.size() > 1) draw_names(*painter);
    }

  private:
    [[nodiscard]] QPointF at(const SeasonMark& mark, double value) const {
        return {x_pixel(mark.unix_s), y_pixel(value)};
    }

    void draw_chosen(QCPPainter& painter) const {
        if (chosen_ < 0 || chosen_ >= static_cast<int>(course_.marks.size())) return;
        const SeasonMark& mark = course_.marks[static_cast<std::size_t>(chosen_)];
        const QPointF place = at(mark, mark.value);
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette_.chosen);
        painter.drawRect(QRectF(place.x() - chosen_ring_px, room().top(), 2.0 * chosen_ring_px, room().height()));
        painter.setPen(QPen(palette_.ink, 1.4));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(place, chosen_ring_px, chosen_ring_px);
    }

    void draw_lines(QCPPainter& painter, int series) const {
        QPolygonF best;
        QPolygonF companions;
        for (const SeasonMark& mark : course_.marks) {
            if (mark.series != series) continue;
            best << at(mark, mark.value);
            if (mark.companion) companions << at(mark, *mark.companion);
        }
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette_.quiet, 1.2));
        painter.drawPolyline(best);
        painter.setPen(QPen(palette_.quiet, 1.0, Qt::DashLine));
        painter.drawPolyline(companions);
    }

    void draw_mark(QCPPainter& painter, const SeasonMark& mark) const {
        painter.setPen(QPen(palette_.ink, 1.2));
        if (mark.low < mark.high) {
            const QPointF low = at(mark, mark.low);
            const QPointF high = at(mark, mark.high);
            painter.drawLine(low, high);
            for (const QPointF& end : {low, high})
                painter.drawLine(end - QPointF(bar_foot_px, 0.0), end + QPointF(bar_foot_px, 0.0));
        }
        if (mark.companion) {
            painter.setBrush(palette_.card);
            painter.drawEllipse(at(mark, *mark.companion), mark_px, mark_px);
        }
        painter.setBrush(mark.sure ? palette_.ink : palette_.card);
        painter.drawEllipse(at(mark, mark.value), mark_px, mark_px);
    }

    // Beside the last mark of each that is shown: to its left, where the season has passed already.
    void draw_names(QCPPainter& painter) const {
        const QFontMetricsF metrics(theme::small());
        painter.setFont(theme::small());
        painter.setPen(palette_.ink);
        for (int series = 0; series < static_cast<int>(course_.series.size()); ++series) {
            const SeasonMark* last = nullptr;
            for (const SeasonMark& mark : course_.marks)
                if (mark.series == series && room().contains(at(mark, mark.value).toPoint())) last = &mark;
            if (last == nullptr) continue;
            const QString& name = course_.series[static_cast<std::size_t>(series)];
            const QPointF place = at(*last, last->value);
            const double width = metrics.horizontalAdvance(name);
            const double left = std::max(place.x() - width, room().left() + 2.0);
            painter.drawText(QPointF(left, place.y() + chosen_ring_px + metrics.ascent()), name);
        }
    }

    const SeasonCourse& course_;
    const theme::Palette& palette_;
    const int& chosen_;
};

QCPRange values_shown(const SeasonCourse& course) {
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    for (const SeasonMark& mark : course.marks) {
        for (const double value : {mark.value, mark.companion.value_or(mark.value)}) {
            low = std::min(low, value);
            high = std::max(high, value);
        }
        if (mark.low < mark.high) {
            low = std::min(low, mark.low);
            high = std::max(high, mark.high);
        }
    }
    if (!(low < high)) { // one value alone
        const double around = low == 0.0 ? 1.0 : 0.02 * std::abs(low);
        return {low - around, high + around};
    }
    const double margin = room_above_marks * (high - low);
    return {low - margin, high + margin};
}

QCPRange season_of(const SeasonCourse& course) {
    const double first = course.marks.front().unix_s;
    const double last = course.marks.back().unix_s;
    const double margin = std::max(room_beside * (last - first), 0.5 * min_shown_s);
    return {first - margin, last + margin};
}

} // namespace

SeasonPlot::SeasonPlot(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)), palette_(theme::paper()) {
    setAccessibleName(tr("Sessions through time"));
    fill_with(*this, *plot_);
    plot_->setLocale(models::shown_locale());
    plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    plot_->axisRect()->setRangeDrag(Qt::Horizontal);
    plot_->axisRect()->setRangeZoom(Qt::Horizontal);
    plot_->xAxis->setTicker(QSharedPointer<DateTicker>::create(date_ticks));
    new Marks(plot_->axisRect(), course_, palette_, chosen_);
    connect(plot_->xAxis, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), this, &SeasonPlot::keep_in_season);
    connect(plot_, &QCustomPlot::mousePress, this, [this](const QMouseEvent* event) { pressed_ = event->pos(); });
    connect(plot_, &QCustomPlot::mouseRelease, this, [this](const QMouseEvent* event) {
        if ((event->pos() - pressed_).manhattanLength() > 3) return; // it panned
        if (const int mark = mark_at(event->pos()); mark >= 0) Q_EMIT mark_chosen(mark);
    });
    connect(plot_, &QCustomPlot::mouseDoubleClick, this, &SeasonPlot::fit);
    build();
}

void SeasonPlot::set_course(SeasonCourse course) {
    course_ = std::move(course);
    setAccessibleDescription(in_words(course_));
    chosen_ = -1;
    build();
    fit();
}

void SeasonPlot::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    build();
}

void SeasonPlot::set_chosen(int mark) {
    chosen_ = mark;
    if (mark >= 0 && mark < static_cast<int>(course_.marks.size())) {
        const double place = course_.marks[static_cast<std::size_t>(mark)].unix_s;
        const QCPRange shown = plot_->xAxis->range();
        if (!shown.contains(place)) plot_->xAxis->setRange(place, shown.size(), Qt::AlignCenter);
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void SeasonPlot::zoom(double factor) {
    const bool any = chosen_ >= 0 && chosen_ < static_cast<int>(course_.marks.size());
    const double centre =
        any ? course_.marks[static_cast<std::size_t>(chosen_)].unix_s : plot_->xAxis->range().center();
    plot_->xAxis->scaleRange(factor, centre);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void SeasonPlot::pan(double part) {
    plot_->xAxis->moveRange(part * plot_->xAxis->range().size());
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void SeasonPlot::fit() {
    if (!course_.marks.empty()) {
        plot_->xAxis->setRange(season_of(course_));
        plot_->yAxis->setRange(values_shown(course_));
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

QPoint SeasonPlot::place_of(int mark) const {
    const SeasonMark& one = course_.marks.at(static_cast<std::size_t>(mark));
    const QPointF place(plot_->xAxis->coordToPixel(one.unix_s), plot_->yAxis->coordToPixel(one.value));
    return plot_->mapToParent(place.toPoint());
}

double SeasonPlot::shown_s() const {
    return plot_->xAxis->range().size();
}

void SeasonPlot::keep_in_season(const QCPRange& range) {
    if (course_.marks.empty()) return;
    const QCPRange whole = season_of(course_);
    QCPRange kept = range.bounded(whole.lower, whole.upper);
    if (kept.size() < min_shown_s && whole.size() > min_shown_s) {
        const double centre = range.center();
        kept = QCPRange(centre - 0.5 * min_shown_s, centre + 0.5 * min_shown_s).bounded(whole.lower, whole.upper);
    }
    if (kept != range) plot_->xAxis->setRange(kept);
}

int SeasonPlot::mark_at(const QPointF& place) const {
    int nearest = -1;
    double least = click_reach_px;
    for (std::size_t i = 0; i < course_.marks.size(); ++i) {
        const SeasonMark& mark = course_.marks[i];
        for (const double value : {mark.value, mark.companion.value_or(mark.value)}) {
            const QPointF there(plot_->xAxis->coordToPixel(mark.unix_s), plot_->yAxis->coordToPixel(value));
            const double distance = QLineF(there, place).length();
            if (distance >= least) continue;
            least = distance;
            nearest = static_cast<int>(i);
        }
    }
    return nearest;
}

void SeasonPlot::build() {
    plot_->setBackground(QBrush(palette_.card));
    plot_->axisRect()->setMinimumMargins(QMargins(2, 6, 16, 2));
    dress(*plot_->xAxis, palette_);
    dress(*plot_->yAxis, palette_);
    if (course_.lap_times)
        plot_->yAxis->setTicker(QSharedPointer<LapTimeTicker>::create());
    else
        plot_->yAxis->setTicker(QSharedPointer<UnitTicker>::create(course_.unit, value_ticks));
    plot_->yAxis->setLabel(course_.title);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

} // namespace lapwright::plots
