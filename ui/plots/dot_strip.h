// SPDX-License-Identifier: GPL-3.0-or-later
// All clean laps of both sessions in one segment, a dot a lap over the segment's time: A filled above, B hollow below,
// so that they stay apart without colour.  Quick is left.  The two laps of the pairing have a ring.
#pragma once

#include "ui/theme/palette.h"

#include <QWidget>
#include <optional>
#include <vector>

namespace lapwright::plots {

struct Dots {
    std::vector<double> times_a_s;
    std::vector<double> times_b_s;
    std::optional<double> own_a_s; // the pairing's own laps
    std::optional<double> own_b_s;
};

class DotStrip : public QWidget {
    Q_OBJECT

  public:
    explicit DotStrip(QWidget* parent = nullptr);

    void set_dots(Dots dots);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    struct Scale;

    void paint_row(QPainter& painter, const Scale& scale, double y, bool is_a) const;
    void paint_axis(QPainter& painter, const Scale& scale, double y) const;

    Dots dots_;
    theme::Palette palette_;
};

} // namespace lapwright::plots
