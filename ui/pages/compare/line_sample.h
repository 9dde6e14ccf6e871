// SPDX-License-Identifier: GPL-3.0-or-later
// A short piece of a lap's line, as the plots draw it: A solid, B dashed.
#pragma once

#include "core/workspace/session_key.h"
#include "ui/theme/palette.h"

#include <QWidget>

namespace lapwright::pages {

class LineSample : public QWidget {
    Q_OBJECT

  public:
    explicit LineSample(workspace::Side side, QWidget* parent = nullptr);
    void set_palette(const theme::Palette& palette);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    workspace::Side side_;
    QColor colour_;
};

} // namespace lapwright::pages
