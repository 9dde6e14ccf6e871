// SPDX-License-Identifier: GPL-3.0-or-later
// Where both cars drove, on a close-up of the map: A solid, B dashed, and the band in which A's line lies as seen from
// B's.  A car's width is little on a map: distances from the reference line are drawn larger than they are, and it says
// by how much.
#pragma once

#include "core/analysis/analysis.h"
#include "ui/theme/palette.h"

#include <QPainter>
#include <QTransform>
#include <utility>

namespace lapwright::plots {

// By how much sideways distances are drawn larger, so that those of the stretch keep within some pixels of the line.
[[nodiscard]] int sideways_factor(const analysis::Pairing& pairing, std::pair<double, double> stretch_m,
                                  double pixels_per_metre);

// Of the stretch and a little beyond.
void paint_driven_lines(QPainter& painter, const analysis::Pairing& pairing, const QTransform& to_pixels,
                        std::pair<double, double> stretch_m, const theme::Palette& palette);

// What takes `whole`, in which the track fills `room`, to a close-up of the stretch.
[[nodiscard]] QTransform close_up_of(const track::ReferenceLine& line, std::pair<double, double> stretch_m,
                                     const QTransform& whole, const QRectF& room);

} // namespace lapwright::plots
