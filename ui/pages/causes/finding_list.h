// SPDX-License-Identifier: GPL-3.0-or-later
// The findings as claims with their worth, the first three or all; each leads to its place on the Compare page.
#pragma once

#include "core/findings/findings.h"
#include "ui/theme/palette.h"

#include <QWidget>
#include <vector>

class QLabel;
class QToolButton;
class QVBoxLayout;

namespace lapwright::pages {

class FindingList : public QWidget {
    Q_OBJECT

  public:
    explicit FindingList(QWidget* parent = nullptr);

    // to_keep_in_mind: what stands below all of them, one line each.
    void show_findings(std::vector<findings::Finding> findings, const QStringList& to_keep_in_mind = {});
    void set_palette(const theme::Palette& palette);
    void set_all_shown(bool all);
    [[nodiscard]] int shown() const { return static_cast<int>(rows_.size()); }

  Q_SIGNALS:
    void place_asked(double start_m, double end_m);

  private:
    void fill();
    void add(std::size_t index);

    std::vector<findings::Finding> findings_;
    std::vector<QWidget*> rows_; // of the findings
    QLabel* in_mind_;
    QLabel* title_;
    QToolButton* more_;
    QVBoxLayout* column_;
    theme::Palette palette_;
    bool all_ = false;
};

} // namespace lapwright::pages
