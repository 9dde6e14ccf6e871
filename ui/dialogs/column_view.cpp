// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/column_view.h"

#include "ui/plots/small_plot.h"
#include "ui/theme/fonts.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTableView>

namespace lapwright::dialogs {
namespace {

using models::ColumnTable;

constexpr int plot_width_px = 100;

// The small plot of a column in its row.
class PlotDelegate : public QStyledItemDelegate {
  public:
    PlotDelegate(const ColumnTable* table, const QColor& colour, QObject* parent)
        : QStyledItemDelegate(parent), table_(table), colour_(colour) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        plots::paint_small_plot(*painter, QRectF(option.rect).adjusted(3.0, 4.0, -3.0, -4.0),
                                table_->values(index.row()), colour_);
    }

  private:
    const ColumnTable* table_;
    QColor colour_;
};

} // namespace

QTableView* column_view(ColumnTable* table, const theme::Palette& palette, QWidget* parent) {
    auto* view = new QTableView(parent);
    view->setModel(table);
    view->setObjectName(QStringLiteral("columns"));
    view->setAccessibleName(QObject::tr("Columns of the file"));
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->setTabKeyNavigation(false);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setShowGrid(false);
    view->setWordWrap(false);
    view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view->setFont(theme::body());
    view->setItemDelegateForColumn(ColumnTable::plot_column, new PlotDelegate(table, palette.a, view));
    view->verticalHeader()->hide();
    view->verticalHeader()->setDefaultSectionSize(view->fontMetrics().height() + 12);
    QHeaderView* header = view->horizontalHeader();
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setHighlightSections(false);
    header->setStretchLastSection(true);
    const int letter = view->fontMetrics().averageCharWidth();
    for (const auto& [section, width] :
         {std::pair(ColumnTable::name_column, 18 * letter), std::pair(ColumnTable::cells_column, 18 * letter),
          std::pair(ColumnTable::plot_column, plot_width_px)})
        header->resizeSection(section, width);
    // Words of the program, in its language.
    for (const int section : {ColumnTable::use_column, ColumnTable::unit_column, ColumnTable::sure_column})
        header->setSectionResizeMode(section, QHeaderView::ResizeToContents);
    return view;
}

} // namespace lapwright::dialogs
