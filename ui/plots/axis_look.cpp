// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/axis_look.h"

#include "ui/plots/drawing.h"
#include "ui/theme/fonts.h"

#include <QVBoxLayout>

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
    axis.setLabelPadding(5);
}

void fill_with(QWidget& owner, QCustomPlot& plot) {
    auto* layout = new QVBoxLayout(&owner);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(&plot);
    plot.setMinimumSize(1, 1);
    plot.setFocusPolicy(Qt::NoFocus);
}

void begin_anew(QCustomPlot& plot, const theme::Palette& palette) {
    remove_drawings(plot);
    plot.setBackground(QBrush(palette.card));
    plot.axisRect()->setMinimumMargins(QMargins(2, 6, 16, 2));
    for (QCPAxis* axis : {plot.xAxis, plot.yAxis})
        dress(*axis, palette);
}

} // namespace lapwright::plots
