// SPDX-License-Identifier: GPL-3.0-or-later
// What the data say of both cars, each figure with its interval and with who decided it.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "ui/theme/palette.h"

#include <QFrame>
#include <QString>
#include <vector>

class QGridLayout;
class QLabel;

namespace lapwright::pages {

class FiguresCard : public QFrame {
    Q_OBJECT

  public:
    explicit FiguresCard(QWidget* parent = nullptr);

    void show_figures(const causes::Explanation& explanation, base::UnitSystem units);
    void show_nothing();
    void set_palette(const theme::Palette& palette);

  private:
    void add_row(int row, const QStringList& cells);
    void colour();

    QGridLayout* grid_;
    QLabel* title_;
    QLabel* foot_;
    std::vector<std::vector<QLabel*>> cells_;
    theme::Palette palette_;
};

} // namespace lapwright::pages
