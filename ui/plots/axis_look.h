// SPDX-License-Identifier: GPL-3.0-or-later
// How an axis of a plot that stands for itself is drawn.
#pragma once

#include "ui/theme/palette.h"

#include <qcustomplot.h>

namespace lapwright::plots {

void dress(QCPAxis& axis, const theme::Palette& palette);

} // namespace lapwright::plots
