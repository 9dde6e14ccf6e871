// SPDX-License-Identifier: GPL-3.0-or-later
// Tyre grip and downforce of both cars at once: the ellipse that holds 95 % of what the laps allow, A solid with a
// filled middle, B dashed with a hollow one.  A long slanted one is a sum that is known better than its parts.
#pragma once

#include "core/causes/explanation.h"
#include "ui/plots/picture.h"
#include "ui/theme/palette.h"

#include <QWidget>

class QCustomPlot;

namespace lapwright::plots {

class RegionPlot : public QWidget {
    Q_OBJECT

  public:
    explicit RegionPlot(QWidget* parent = nullptr);

    void set_regions(car::JointRegion a, car::JointRegion b, bool per_kilogram);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] PicturePart picture_part() const; // larger than on the page
    [[nodiscard]] QSize sizeHint() const override { return {220, 190}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {150, 160}; }

  private:
    void build();

    QCustomPlot* plot_;
    car::JointRegion a_;
    car::JointRegion b_;
    bool per_kilogram_ = false;
    theme::Palette palette_;
};

} // namespace lapwright::plots
