// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/causes_view.h"

#include "ui/pages/causes/causes_table.h"
#include "ui/theme/fonts.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace lapwright::pages {
namespace {

constexpr int side_px = 5;
constexpr int row_room_px = 4; // above and below the text together
constexpr int smallest_share_px = 76;
constexpr int min_rows = 8;
constexpr double palest = 0.14;
constexpr double deepest = 0.92;

bool strong(const QModelIndex& index) {
    if (!index.data(CausesTable::StrongRole).toBool()) return false;
    return index.column() <= CausesTable::measured_column || index.data(CausesTable::ApartRole).toBool();
}

QFont font_of(const QModelIndex& index) {
    return strong(index) ? theme::strong(theme::small()) : theme::small();
}

} // namespace

QSize CausesDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    const QFontMetrics metrics(theme::strong(theme::small()));
    return {metrics.horizontalAdvance(index.data().toString()) + 2 * side_px + 4, metrics.height() + row_room_px};
}

QColor CausesDelegate::paint_cell(QPainter& painter, const QRectF& cell, const QModelIndex& index) const {
    const QVariant part = index.data(CausesTable::PartRole);
    if (!part.isValid()) return palette_.quiet;
    const double favour = part.toDouble();
    const QColor owner = favour >= 0.0 ? palette_.a : palette_.b;
    if (index.data(CausesTable::BehindRole).toBool()) return palette_.quiet;
    if (!index.data(CausesTable::ToldRole).toBool()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme::blend(palette_.paper, owner, 0.55), 1.0, Qt::DotLine));
        painter.drawRoundedRect(cell.adjusted(0.5, 0.5, -0.5, -0.5), 3.0, 3.0);
        return palette_.quiet;
    }
    const QColor fill = theme::blend(palette_.paper, owner, palest + (deepest - palest) * std::sqrt(std::abs(favour)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill);
    painter.drawRoundedRect(cell, 3.0, 3.0);
    return theme::ink_on(fill);
}

void CausesDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF cell = QRectF(option.rect).adjusted(1.0, 1.0, -1.0, -1.0);
    if (index.data(CausesTable::ApartRole).toBool()) {
        painter->setPen(QPen(palette_.edge, 1.0));
        painter->drawLine(QRectF(option.rect).topLeft(), QRectF(option.rect).topRight());
    }
    QColor ink = index.data(CausesTable::StrongRole).toBool() ? palette_.ink : palette_.quiet;
    if (index.column() != CausesTable::name_column) ink = paint_cell(*painter, cell, index);
    if (option.state.testFlag(QStyle::State_Selected)) {
        painter->setBrush(Qt::NoBrush);
        painter->setPen(QPen(palette_.ink, 1.6));
        painter->drawRoundedRect(cell.adjusted(0.8, 0.8, -0.8, -0.8), 3.0, 3.0);
    }
    const QFont font = font_of(index);
    painter->setFont(font);
    painter->setPen(ink);
    const int side = index.column() == CausesTable::name_column ? side_px : 1;
    const QRect room = option.rect.adjusted(side, 0, -side, 0);
    const QString text = QFontMetrics(font).elidedText(index.data().toString(), Qt::ElideRight, room.width());
    painter->drawText(room, static_cast<int>(index.data(Qt::TextAlignmentRole).value<Qt::Alignment>()), text);
    painter->restore();
}

CausesView::CausesView(CausesTable* table, QWidget* parent)
    : QTableView(parent), table_(table), delegate_(new CausesDelegate(this)) {
    setModel(table);
    setItemDelegate(delegate_);
    setFont(theme::small());
    setAccessibleName(tr("Seconds of each segment by cause"));
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setMinimumSectionSize(10);
    verticalHeader()->setDefaultSectionSize(QFontMetrics(theme::strong(theme::small())).height() + row_room_px);
    horizontalHeader()->setFont(theme::small());
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setMinimumSectionSize(20);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    horizontalHeader()->setSectionResizeMode(CausesTable::name_column, QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(CausesTable::rest_column, QHeaderView::ResizeToContents); // "no fit"
    hide_columns();
    connect(this, &QTableView::doubleClicked, this, &CausesView::ask);
    connect(table, &QAbstractItemModel::modelReset, this, [this] {
        hide_columns();
        updateGeometry();
        if (hasFocus()) choose_first();
    });
}

void CausesView::set_palette(const theme::Palette& palette) {
    delegate_->set_palette(palette);
    viewport()->update();
}

QSize CausesView::sizeHint() const {
    const int rows = std::max(min_rows, model()->rowCount());
    return {620, horizontalHeader()->sizeHint().height() + rows * verticalHeader()->defaultSectionSize() + 2};
}

QSize CausesView::minimumSizeHint() const {
    return {420, horizontalHeader()->sizeHint().height() + min_rows * verticalHeader()->defaultSectionSize()};
}

void CausesView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        ask(currentIndex());
        return;
    }
    QTableView::keyPressEvent(event);
}

void CausesView::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid()) choose_first();
}

void CausesView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    Q_EMIT row_chosen(current.row());
}

void CausesView::choose_first() {
    if (model()->rowCount() > 0) setCurrentIndex(model()->index(0, CausesTable::measured_column));
}

// Columns share the room, but one whose name needs more than a share in the smallest window has what it needs.
void CausesView::hide_columns() {
    for (int column = CausesTable::first_cause_column; column < CausesTable::rest_column; ++column) {
        setColumnHidden(column, table_->is_hidden(column));
        const bool is_long = horizontalHeader()->sectionSizeHint(column) > smallest_share_px;
        horizontalHeader()->setSectionResizeMode(column,
                                                 is_long ? QHeaderView::ResizeToContents : QHeaderView::Stretch);
    }
}

void CausesView::ask(const QModelIndex& index) {
    if (index.isValid() && table_->segment(index.row()) != nullptr) Q_EMIT segment_asked(index.row());
}

} // namespace lapwright::pages
