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

    [[nodiscard]] std::vector<QRectF> written() const override;

  protected:
    void draw(QCPPainter* painter) override;

  private:
    struct Bar {
        QRectF room;
        bool won_by_a = true;
        bool stands_out = true; // of its error
        QString number;         // empty where it has no room
        QRectF number_room;
    };

    [[nodiscard]] std::vector<Bar> bars() const;
    [[nodiscard]] Bar bar_of(const comparison::SegmentComparison& segment, double left, double right) const;

    std::vector<comparison::SegmentComparison> segments_;
    double largest_gain_s_ = 0.0;
    QColor a_;
    QColor b_;
    QColor ink_;
    QFont font_;
};

} // namespace lapwright::plots
