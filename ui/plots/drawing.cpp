// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/drawing.h"

namespace lapwright::plots {

PixelMap Drawing::pixel_map() const {
    const double x0 = x_pixel(0.0);
    const double y0 = y_pixel(0.0);
    return {x_pixel(1.0) - x0, x0, y_pixel(1.0) - y0, y0};
}

void Drawing::keep_clear_of(const Drawing* other, QCPPainter& painter) const {
    if (other == nullptr) return;
    QRegion region(clipRect());
    for (const QRectF& box : other->written())
        region -= box.toAlignedRect();
    painter.setClipRegion(region);
}

void remove_drawings(QCustomPlot& plot) {
    for (QCPLayerable* drawing : plot.findChildren<QCPLayerable*>(QString(), Qt::FindDirectChildrenOnly))
        if (dynamic_cast<Drawing*>(drawing) != nullptr) delete drawing;
}

} // namespace lapwright::plots
