// SPDX-License-Identifier: GPL-3.0-or-later
// Which laps are seen behind A and B: letter, driver, lap, time, and how far behind A.  Not there where there are none.
#pragma once

#include "core/analysis/further_laps.h"
#include "ui/theme/palette.h"

#include <QWidget>
#include <memory>
#include <vector>

class QHBoxLayout;

namespace lapwright::theme {
class ElidedLabel;
}

namespace lapwright::pages {

class FurtherRow : public QWidget {
    Q_OBJECT

  public:
    explicit FurtherRow(QWidget* parent = nullptr);

    void show_laps(const std::shared_ptr<const std::vector<analysis::FurtherLap>>& laps); // null: none
    void set_palette(const theme::Palette& palette);
    [[nodiscard]] QStringList words() const;

  private:
    void colour();

    QHBoxLayout* row_;
    std::vector<std::pair<int, theme::ElidedLabel*>> labels_; // with their places among the laps
    theme::Palette palette_;
};

} // namespace lapwright::pages
