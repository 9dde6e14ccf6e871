// SPDX-License-Identifier: GPL-3.0-or-later
// Corners tinted behind every panel, and the chosen segment framed through all of them.
#pragma once

#include "core/comparison/comparison.h"
#include "ui/plots/drawing.h"

#include <optional>
#include <vector>

namespace lapwright::plots {

class Corners : public Drawing {
  public:
    Corners(QCPAxisRect* rect, const track::Track& track, const QColor& tint);

  protected:
    void draw(QCPPainter* painter) override;

  private:
    const track::Track& track_;
    QColor tint_;
};

class ChosenStretch : public Drawing {
  public:
    ChosenStretch(QCPAxisRect* rect, const QColor& fill, const QColor& line, const Drawing* writing);

    void set(std::optional<ViewRange> stretch) { stretch_ = stretch; }

  protected:
    void draw(QCPPainter* painter) override;

  private:
    std::optional<ViewRange> stretch_;
    QColor fill_;
    QColor line_;
    const Drawing* writing_; // of the same panel, may be null
};

} // namespace lapwright::plots
