// SPDX-License-Identifier: GPL-3.0-or-later
// A line of values over their row, without axes: to see at a glance whether a column looks like what it is taken for.
#pragma once

#include <QColor>
#include <QRectF>
#include <QWidget>
#include <span>
#include <vector>

class QPainter;

namespace lapwright::plots {

// NaN breaks the line; the values fill the room.
void paint_small_plot(QPainter& painter, const QRectF& room, std::span<const double> values, const QColor& colour);

class SmallPlot : public QWidget {
    Q_OBJECT

  public:
    explicit SmallPlot(QWidget* parent = nullptr);

    void set_values(std::span<const double> values);
    void set_colour(const QColor& colour);
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::vector<double> values_;
    QColor colour_;
};

} // namespace lapwright::plots
