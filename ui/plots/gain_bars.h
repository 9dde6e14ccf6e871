// SPDX-License-Identifier: GPL-3.0-or-later
// Time won in each segment, a bar over the segment's stretch: up and in A's colour where A won it, down and in B's
// where B did.  The number stands at the bar's end where it is no wider than the bar.
#pragma once

#include "core/comparison/comparison.h"
#include "ui/plots/drawing.h"

#include <vector>

namespace lapwright::plots {

class GainBars : public Drawing {
  public:
    GainBars(QCPAxisRect* rect, std::vector<comparison::SegmentComparison> segments, const QColor& a, const QColor& b,
             const QColor& ink, const QFont& font);

  protected:
    void draw(QCPPainter* painter) override;

  private:
    void draw_bar(QCPPainter& painter, const comparison::SegmentComparison& segment) const;

    std::vector<comparison::SegmentComparison> segments_;
    double largest_gain_s_ = 0.0;
    QColor a_;
    QColor b_;
    QColor ink_;
    QFont font_;
};

} // namespace lapwright::plots
