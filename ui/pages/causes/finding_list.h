// SPDX-License-Identifier: GPL-3.0-or-later
// The findings as claims with their worth, the first three or all; each leads to its place on the Compare page.
#pragma once

#include "core/analysis/my_side.h"
#include "core/findings/findings.h"
#include "ui/theme/palette.h"

#include <QWidget>
#include <optional>
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
    // Which of the two is the person's own, whom "try next" speaks to; known: it was said once.
    void set_mine(const analysis::MySides& mine, bool known);
    [[nodiscard]] int shown() const { return static_cast<int>(rows_.size()); }

  Q_SIGNALS:
    void place_asked(double start_m, double end_m);
    void mine_chosen(std::optional<lapwright::causes::Side> side); // nothing: neither

  private:
    QWidget* make_mine();
    QToolButton* mine_button(const QString& letter, causes::Side side);
    void fill();
    void add(std::size_t index);

    std::vector<findings::Finding> findings_;
    std::vector<QWidget*> rows_; // of the findings
    QLabel* in_mind_;
    QLabel* title_;
    QWidget* mine_ = nullptr;
    QLabel* mine_words_ = nullptr;
    QToolButton* mine_a_ = nullptr;
    QToolButton* mine_b_ = nullptr;
    QToolButton* more_;
    QVBoxLayout* column_;
    theme::Palette palette_;
    bool all_ = false;
};

} // namespace lapwright::pages
