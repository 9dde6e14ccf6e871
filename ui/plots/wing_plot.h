// SPDX-License-Identifier: GPL-3.0-or-later
// The lap over more or less downforce with its drag: A solid, B dashed, each with its 95 % band; what is below the line
// of the lap as it is is quicker.
#pragma once

#include "core/causes/aero_balance.h"
#include "ui/theme/palette.h"

#include <QWidget>

class QCustomPlot;

namespace lapwright::plots {

class WingPlot : public QWidget {
    Q_OBJECT

  public:
    explicit WingPlot(QWidget* parent = nullptr);

    void set_balances(causes::AeroBalance a, causes::AeroBalance b, bool on_a_tonne);
    void set_palette(const theme::Palette& palette);
    [[nodiscard]] QSize sizeHint() const override { return {520, 300}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {320, 200}; }

  private:
    void build();

    QCustomPlot* plot_;
    causes::AeroBalance a_;
    causes::AeroBalance b_;
    bool on_a_tonne_ = false;
    theme::Palette palette_;
};

} // namespace lapwright::plots
