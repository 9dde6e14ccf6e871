// SPDX-License-Identifier: GPL-3.0-or-later
// A figure over distance: a line, solid or dashed, or the band between two lines.
#pragma once

#include "ui/plots/drawing.h"

#include <span>
#include <vector>

namespace lapwright::plots {

enum class Stroke { solid, dashed };

// Does not own its data: the stack keeps the pairing alive.
class Curve : public Drawing {
  public:
    Curve(QCPAxisRect* rect, std::span<const double> xs, std::span<const double> ys, const QColor& colour,
          Stroke stroke, double width_px = 1.6);

  protected:
    void draw(QCPPainter* painter) override;

  private:
    void draw_pixels(QCPPainter& painter) const; // on the screen
    void draw_lines(QCPPainter& painter) const;  // on paper

    std::span<const double> xs_;
    std::span<const double> ys_;
    QColor colour_;
    Stroke stroke_;
    double width_px_;
};

class Band : public Drawing {
  public:
    Band(QCPAxisRect* rect, std::span<const double> xs, std::span<const double> low, std::span<const double> high,
         const QColor& colour);

  protected:
    void draw(QCPPainter* painter) override;

  private:
    std::span<const double> xs_;
    std::span<const double> low_;
    std::span<const double> high_;
    QColor colour_;
};

} // namespace lapwright::plots
