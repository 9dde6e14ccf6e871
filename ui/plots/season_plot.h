// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions through time: a filled mark each for the value that counts (the best lap, a
// figure), a hollow one for its companion (the median lap), a bar for a 95 % interval.  Marks
// of one series are joined; where there are several series, each bears its name.  Drag pans
// through the season, the wheel zooms at the pointer, a double click fits; a click chooses.
#pragma once

#include "core/base/units.h"
#include "ui/theme/palette.h"

#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

class QCPRange;
class QCustomPlot;

namespace lapwright::plots {

struct SeasonMark {
    double unix_s = 0.0;
    double value = 0.0; // SI
    std::optional<double> companion = {};
    double low = 0.0; // low < high: an interval around the value
    double high = 0.0;
    bool sure = true; // false: the value is drawn hollow, too
    int series = 0;
};

// Marks in the order of time.
struct SeasonCourse {
    QString title; // of the value's axis, with its unit
    base::Unit unit = base::Unit::none;
    bool lap_times = false; // the axis is written as 1:29.5
    std::vector<SeasonMark> marks;
    std::vector<QString> series; // names; not written where there is one
};

class SeasonPlot : public QWidget {
    Q_OBJECT

  public:
    explicit SeasonPlot(QWidget* parent = nullptr);

    void set_course(SeasonCourse course); // shows the whole of it
    void set_palette(const theme::Palette& palette);
    // A mark by its place in the course; -1: none.
    void set_chosen(int mark);
    void zoom(double factor); // less than one shows less
    void pan(double part);    // of what is shown; positive is later
    void fit();

    [[nodiscard]] const SeasonCourse& course() const { return course_; }
    [[nodiscard]] int chosen() const { return chosen_; }
    // Where the value's mark lies, in this widget.
    [[nodiscard]] QPoint place_of(int mark) const;
    [[nodiscard]] double shown_s() const; // length of what is shown
    [[nodiscard]] QSize sizeHint() const override { return {600, 260}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 140}; }

  Q_SIGNALS:
    void mark_chosen(int mark);

  private:
    void build();
    void keep_in_season(const QCPRange& range);
    [[nodiscard]] int mark_at(const QPointF& place) const;

    QCustomPlot* plot_;
    SeasonCourse course_;
    theme::Palette palette_;
    int chosen_ = -1;
    QPoint pressed_;
};

} // namespace lapwright::plots
