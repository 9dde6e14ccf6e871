// SPDX-License-Identifier: GPL-3.0-or-later
// How a plot that stands for itself is drawn: it fills its widget, lies on a card, its axes are quiet.
#pragma once

#include "ui/theme/palette.h"

#include <qcustomplot.h>

namespace lapwright::plots {

void dress(QCPAxis& axis, const theme::Palette& palette);
// Takes no keys.
void fill_with(QWidget& owner, QCustomPlot& plot);
// Bare of what was drawn before, both axes dressed.
void begin_anew(QCustomPlot& plot, const theme::Palette& palette);

} // namespace lapwright::plots
