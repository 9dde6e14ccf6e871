// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/learning_plot.h"

#include "core/base/number_text.h"
#include "core/findings/learning_words.h"
#include "ui/models/text.h"
#include "ui/plots/axis_look.h"
#include "ui/plots/drawing.h"
#include "ui/plots/unit_ticker.h"
#include "ui/theme/fonts.h"

#include <algorithm>
#include <qcustomplot.h>
#include <utility>

namespace lapwright::plots {
namespace {

using analysis::LearnedLap;
using analysis::LearningReport;
using comparison::LearningCourse;

constexpr double lap_mark_px = 3.4; // radius
constexpr double interval_foot_px = 4.0;
constexpr double room_beside_times = 0.12; // of the extent, above and below
constexpr double slow_lap_px = 7.0;        // a lap that is slower than the axis goes stands so far under its upper end
constexpr int time_ticks = 5;

const LearningCourse& course_of(const LearningReport& report, std::optional<std::size_t> segment) {
    return segment ? report.curve.segments[*segment] : report.curve.lap;
}

double time_of(const LearnedLap& lap, std::optional<std::size_t> segment) {
    return segment ? lap.segment_s[*segment] : lap.time_s;
}

class Course : public Drawing {
  public:
    Course(QCPAxisRect* rect, const LearningReport& report, std::optional<std::size_t> segment,
           const theme::Palette& palette)
        : Drawing(rect, QStringLiteral("main")), report_(report), course_(course_of(report, segment)),
          segment_(segment), palette_(palette) {}

  protected:
    void draw(QCPPainter* painter) override {
        draw_best(*painter);
        draw_late(*painter);
        for (const LearnedLap& lap : report_.laps)
            draw_lap(*painter, lap);
    }

  private:
    void draw_best(QCPPainter& painter) const {
        if (!course_.best_s) return;
        const double y = y_pixel(*course_.best_s);
        painter.setPen(QPen(palette_.edge, 1.0, Qt::DashLine));
        painter.drawLine(QPointF(Drawing::room().left(), y), QPointF(Drawing::room().right(), y));
        painter.setFont(theme::small());
        painter.setPen(palette_.quiet);
        painter.drawText(QPointF(Drawing::room().left() + 4.0, y + QFontMetricsF(theme::small()).ascent() + 2.0),
                         QObject::tr("best %1").arg(models::text(findings::best_text(course_))));
    }

    void draw_late(QCPPainter& painter) const {
        if (!course_.now_s.told()) return;
        const double first = report_.laps[course_.late_first].order;
        const double end = report_.laps.back().order;
        painter.setPen(QPen(palette_.ink, 1.6));
        painter.drawLine(QPointF(x_pixel(first), y_pixel(course_.late_begin_s)),
                         QPointF(x_pixel(end), y_pixel(course_.now_s.value)));
        const double x = x_pixel(end) + 3.0 * interval_foot_px;
        painter.setPen(QPen(palette_.ink, 1.2));
        painter.drawLine(QPointF(x, y_pixel(course_.now_s.low)), QPointF(x, y_pixel(course_.now_s.high)));
        for (const double value : {course_.now_s.low, course_.now_s.value, course_.now_s.high})
            painter.drawLine(QPointF(x - interval_foot_px, y_pixel(value)),
                             QPointF(x + interval_foot_px, y_pixel(value)));
    }

    void draw_lap(QCPPainter& painter, const LearnedLap& lap) const {
        const QPointF at(x_pixel(lap.order), y_pixel(time_of(lap, segment_)));
        painter.setPen(QPen(palette_.ink, 1.2));
        painter.setBrush(lap.clean ? palette_.ink : palette_.card);
        if (at.y() >= Drawing::room().top()) {
            painter.drawEllipse(at, lap_mark_px, lap_mark_px);
            return;
        }
        const QPointF tip(at.x(), Drawing::room().top() + slow_lap_px - 2.0 * lap_mark_px);
        const QPointF arrow[] = {tip, tip + QPointF(lap_mark_px, 2.0 * lap_mark_px),
                                 tip + QPointF(-lap_mark_px, 2.0 * lap_mark_px)};
        painter.drawPolygon(arrow, 3);
    }

    const LearningReport& report_;
    const LearningCourse& course_;
    std::optional<std::size_t> segment_;
    const theme::Palette& palette_;
};

// One lap in a gravel trap must not press all others together.
QCPRange times_shown(const LearningReport& report, std::optional<std::size_t> segment) {
    std::vector<double> times;
    for (const LearnedLap& lap : report.laps)
        times.push_back(time_of(lap, segment));
    std::ranges::sort(times);
    const double low = times.front();
    const double middle = times[times.size() / 2];
    double high = std::min(times.back(), middle + 3.0 * (middle - low) + 0.05);
    const LearningCourse& course = course_of(report, segment);
    if (course.now_s.told()) high = std::max(high, course.now_s.high);
    const double bottom = course.now_s.told() ? std::min(low, course.now_s.low) : low;
    const double margin = room_beside_times * std::max(high - bottom, 0.02);
    return {bottom - margin, high + margin};
}

} // namespace

LearningPlot::LearningPlot(QWidget* parent) : QWidget(parent), plot_(new QCustomPlot(this)), palette_(theme::paper()) {
    setAccessibleName(tr("Times over the laps"));
    fill_with(*this, *plot_);
    plot_->setLocale(models::shown_locale());
    build();
}

void LearningPlot::set_course(std::shared_ptr<const LearningReport> report, std::optional<std::size_t> segment) {
    remove_drawings(*plot_); // they point into the report before
    report_ = std::move(report);
    segment_ = segment;
    build();
}

void LearningPlot::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    build();
}

QPoint LearningPlot::place_of(std::size_t lap) const {
    const LearnedLap& one = report_->laps.at(lap);
    const QPointF place(plot_->xAxis->coordToPixel(one.order), plot_->yAxis->coordToPixel(time_of(one, segment_)));
    return plot_->mapToParent(place.toPoint());
}

void LearningPlot::build() {
    begin_anew(*plot_, palette_);
    plot_->yAxis->setTicker(QSharedPointer<LapTimeTicker>::create());
    plot_->yAxis->ticker()->setTickCount(time_ticks);
    if (report_ && !report_->laps.empty()) {
        auto numbers = QSharedPointer<QCPAxisTickerText>::create();
        const std::size_t step = report_->laps.size() / 12 + 1;
        for (std::size_t i = 0; i < report_->laps.size(); i += step)
            numbers->addTick(report_->laps[i].order, models::text(base::integer_text(report_->laps[i].number)));
        plot_->xAxis->setTicker(numbers);
        plot_->xAxis->setLabel(tr("lap"));
        plot_->yAxis->setLabel(segment_ ? models::text(report_->track.segments[*segment_].name) + tr(", s")
                                        : tr("whole lap"));
        plot_->xAxis->setRange(report_->laps.front().order - 0.7, report_->laps.back().order + 1.4);
        plot_->yAxis->setRange(times_shown(*report_, segment_));
        new Course(plot_->axisRect(), *report_, segment_, palette_);
        setAccessibleDescription(
            tr("%1: %2 laps, now %3, best %4, still to be won %5 s")
                .arg(plot_->yAxis->label(),
                     models::text(base::integer_text(static_cast<std::int64_t>(report_->laps.size()))),
                     models::text(findings::now_text(course_of(*report_, segment_))),
                     models::text(findings::best_text(course_of(*report_, segment_))),
                     models::text(findings::to_win_text(course_of(*report_, segment_)))));
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

} // namespace lapwright::plots
