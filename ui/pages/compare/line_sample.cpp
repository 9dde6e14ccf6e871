// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/line_sample.h"

#include <QPainter>

namespace lapwright::pages {

LineSample::LineSample(workspace::Side side, QWidget* parent) : QWidget(parent), side_(side) {
    setFixedSize(38, 14);
    set_palette(theme::paper());
}

void LineSample::set_palette(const theme::Palette& palette) {
    colour_ = side_ == workspace::Side::a ? palette.a : palette.b;
    update();
}

void LineSample::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    QPen pen(colour_, 4.0, Qt::SolidLine, Qt::FlatCap);
    if (side_ == workspace::Side::b) pen.setDashPattern({2.0, 1.2});
    painter.setPen(pen);
    painter.drawLine(QPointF(2, 0.5 * height()), QPointF(width() - 2, 0.5 * height()));
}

} // namespace lapwright::pages
