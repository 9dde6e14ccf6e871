// SPDX-License-Identifier: GPL-3.0-or-later
// What both drivers do in the chosen segment, else over the lap: a small table, one column a figure, so that "driver &
// rest" can be read beside the matrix.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/findings/driver_display.h"
#include "ui/theme/palette.h"

#include <QFrame>
#include <memory>
#include <optional>
#include <vector>

class QGridLayout;
class QLabel;

namespace lapwright::pages {

class DriverStrip : public QFrame {
    Q_OBJECT

  public:
    explicit DriverStrip(QWidget* parent = nullptr);

    // The whole lap at first.
    void show_explanation(std::shared_ptr<const causes::Explanation> explanation, base::UnitSystem units);
    void show_nothing();
    // The segment to be shown; nothing: the whole lap.
    void choose(std::optional<std::size_t> segment);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString cell(int row, int column) const; // row 0: names, 1: A, 2: B, 3: who does more

  private:
    void fill();
    void add(const findings::DriverFigure& figure, int column);
    void colour();

    std::shared_ptr<const causes::Explanation> explanation_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    std::optional<std::size_t> segment_;
    std::vector<findings::DriverFigure> figures_;
    std::vector<std::vector<QLabel*>> columns_; // the first is A, B
    QLabel* title_;
    QGridLayout* grid_;
    theme::Palette palette_;
};

} // namespace lapwright::pages
