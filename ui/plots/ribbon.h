// SPDX-License-Identifier: GPL-3.0-or-later
// The unrolled track: curvature over distance, bumps up are left-handers, with the corners' names beneath.
#pragma once

#include "core/track/track.h"
#include "ui/plots/drawing.h"
#include "ui/plots/label_layout.h"

namespace lapwright::plots {

class Ribbon : public Drawing {
  public:
    // Does not own the track.
    Ribbon(QCPAxisRect* rect, const track::Track& track, const QColor& fill, const QColor& ink, const QFont& font);

    static constexpr int name_rows = 2;
    [[nodiscard]] std::vector<QRectF> written() const override;

  protected:
    void draw(QCPPainter* painter) override;

  private:
    void draw_boundaries(QCPPainter& painter, const QRectF& room) const;
    void draw_bumps(QCPPainter& painter, const QRectF& room) const;
    [[nodiscard]] QRectF names_room() const;
    [[nodiscard]] std::vector<PlacedName> placed_names() const;
    [[nodiscard]] QRectF box_of(const PlacedName& name) const;

    const track::Track& track_;
    std::vector<double> stations_m_; // one more than the line's nodes: it ends where it begins
    std::vector<double> bumps_;      // −1…1 of the tightest corner
    QColor fill_;
    QColor ink_;
    QFont font_;
};

} // namespace lapwright::plots
