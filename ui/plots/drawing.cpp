// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plots/drawing.h"

namespace lapwright::plots {

PixelMap Drawing::pixel_map() const {
    const double x0 = x_pixel(0.0);
    const double y0 = y_pixel(0.0);
    return {x_pixel(1.0) - x0, x0, y_pixel(1.0) - y0, y0};
}

} // namespace lapwright::plots
