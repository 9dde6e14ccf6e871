// SPDX-License-Identifier: GPL-3.0-or-later
// Something painted inside one panel of the stack, on a layer of the plot.
#pragma once

#include "ui/plots/thinning.h"
#include "ui/plots/view_range.h"

#include <qcustomplot.h>
#include <vector>

namespace lapwright::plots {

class Drawing : public QCPLayerable {
  public:
    Drawing(QCPAxisRect* rect, const QString& layer) : QCPLayerable(rect->parentPlot(), layer), rect_(rect) {}

    // Where it writes names or numbers: the lines of other drawings keep clear of them.
    [[nodiscard]] virtual std::vector<QRectF> written() const { return {}; }

  protected:
    [[nodiscard]] const QCPAxis& x_axis() const { return *rect_->axis(QCPAxis::atBottom); }
    [[nodiscard]] const QCPAxis& y_axis() const { return *rect_->axis(QCPAxis::atLeft); }
    [[nodiscard]] ViewRange view() const { return {x_axis().range().lower, x_axis().range().upper}; }
    [[nodiscard]] QRect room() const { return rect_->rect(); }
    [[nodiscard]] double x_pixel(double place_m) const { return x_axis().coordToPixel(place_m); }
    [[nodiscard]] double y_pixel(double value) const { return y_axis().coordToPixel(value); }
    [[nodiscard]] PixelMap pixel_map() const;
    [[nodiscard]] double pixel_ratio() const { return mParentPlot->bufferDevicePixelRatio(); }

    QRect clipRect() const override { return rect_->rect(); }
    // Clips the painter to this drawing's room without what `other` (may be null) has written.
    void keep_clear_of(const Drawing* other, QCPPainter& painter) const;
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override { painter->setAntialiasing(true); }

  private:
    QCPAxisRect* rect_;
};

// All of them off the plot.
void remove_drawings(QCustomPlot& plot);

} // namespace lapwright::plots
