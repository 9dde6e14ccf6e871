// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/axis_look.h"

#include "ui/theme/fonts.h"

namespace lapwright::plots {

void dress(QCPAxis& axis, const theme::Palette& palette) {
    axis.setTickLabelFont(theme::small());
    axis.setTickLabelColor(palette.quiet);
    axis.setTickPen(QPen(palette.edge, 1.0));
    axis.setBasePen(QPen(palette.edge, 1.0));
    axis.setTickLength(0, 3);
    axis.setSubTicks(false);
    axis.grid()->setPen(QPen(palette.rule, 1.0));
    axis.grid()->setZeroLinePen(QPen(palette.edge, 1.0));
    axis.setLabelFont(theme::small());
    axis.setLabelColor(palette.quiet);
    axis.setLabelPadding(1);
}

} // namespace lapwright::plots
