// SPDX-License-Identifier: GPL-3.0-or-later
// The segment table as it is seen: a bar in the colour of whoever won, rows that are chosen with mouse or arrow keys.
#pragma once

#include "ui/theme/palette.h"

#include <QStyledItemDelegate>
#include <QTableView>

namespace lapwright::models {
class SegmentTable;
}

namespace lapwright::pages {

class SegmentDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void set_palette(const theme::Palette& palette) { palette_ = palette; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    void paint_bar(QPainter& painter, const QRect& room, double part, bool stands_out) const;
    // A leaf with lines of writing, at the right of the name.
    void paint_note_mark(QPainter& painter, const QRect& room) const;
    void paint_text(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const;

    theme::Palette palette_ = theme::paper();
};

class SegmentView : public QTableView {
    Q_OBJECT

  public:
    explicit SegmentView(models::SegmentTable* table, QWidget* parent = nullptr);
    void set_palette(const theme::Palette& palette);
    void choose(int row);     // −1: none
    void begin_name(int row); // typed in its place

    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 120}; }

  Q_SIGNALS:
    void row_chosen(int row);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

  private:
    void fit_height();
    void fit_rows();

    SegmentDelegate* delegate_;
    bool choosing_ = false;
};

} // namespace lapwright::pages
