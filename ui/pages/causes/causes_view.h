// SPDX-License-Identifier: GPL-3.0-or-later
// The matrix as it is seen: a cell's fill is in the colour of whoever it favours, the deeper the more; it is an outline
// alone where the interval does not tell the sign, and nothing where the sum before it is known better.  Arrow keys
// move, Enter or a double-click goes to the segment.
#pragma once

#include "ui/theme/palette.h"

#include <QStyledItemDelegate>
#include <QTableView>

namespace lapwright::pages {

class CausesTable;

class CausesDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void set_palette(const theme::Palette& palette) { palette_ = palette; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    // Fills or frames the cell; gives the ink for its text.
    QColor paint_cell(QPainter& painter, const QRectF& cell, const QModelIndex& index) const;

    theme::Palette palette_ = theme::paper();
};

class CausesView : public QTableView {
    Q_OBJECT

  public:
    explicit CausesView(CausesTable* table, QWidget* parent = nullptr);
    void set_palette(const theme::Palette& palette);

    [[nodiscard]] QSize sizeHint() const override; // all rows
    [[nodiscard]] QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void segment_asked(int row);
    void row_chosen(int row); // −1: none

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

  private:
    void choose_first();
    void hide_columns(); // sums that are known no better than their parts
    void ask(const QModelIndex& index);

    CausesTable* table_;
    CausesDelegate* delegate_;
};

} // namespace lapwright::pages
