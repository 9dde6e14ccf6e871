// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/compare/segment_view.h"

#include "ui/models/segment_table.h"
#include "ui/theme/fonts.h"

#include <QHeaderView>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace lapwright::pages {
namespace {

using models::SegmentTable;

constexpr int side_px = 5; // left and right of every cell
constexpr int bar_width_px = 64;
constexpr int bar_height_px = 9;
constexpr int mark_px = 8; // of the cursor's row
constexpr int margin_space_px = 5;
constexpr int note_width_px = 9;
constexpr int note_height_px = 11;
constexpr int widest_gap = 5; // between the lines of the table, px
constexpr int narrowest_gap = 3;

int row_height(int gap) {
    return QFontMetrics(theme::small()).height() + gap;
}

QFont font_of(const QModelIndex& index) {
    const bool strong = index.column() == SegmentTable::name_column && index.data(SegmentTable::CornerRole).toBool();
    return strong ? theme::strong(theme::small()) : theme::small();
}

bool has_note(const QModelIndex& index) {
    return index.column() == SegmentTable::name_column && index.data(SegmentTable::NoteRole).toBool();
}

QString margin_of(const QModelIndex& index) {
    return index.data(SegmentTable::MarginRole).toString();
}

} // namespace

QSize SegmentDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    const QFontMetrics metrics(font_of(index));
    if (index.column() == SegmentTable::bar_column) return {bar_width_px + 2 * side_px, metrics.height() + 5};
    int width = metrics.horizontalAdvance(index.data().toString()) + 2 * side_px + 2;
    if (index.column() == SegmentTable::name_column) width += mark_px;
    if (has_note(index)) width += note_width_px + margin_space_px;
    const QString margin = margin_of(index);
    if (!margin.isEmpty()) width += margin_space_px + metrics.horizontalAdvance(margin);
    return {width, metrics.height() + 5};
}

void SegmentDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    painter->save();
    if (option.state.testFlag(QStyle::State_Selected)) painter->fillRect(option.rect, palette_.chosen);
    painter->setPen(QPen(palette_.rule, 1.0));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->setRenderHint(QPainter::Antialiasing);
    if (index.column() == SegmentTable::bar_column) {
        paint_bar(*painter, option.rect.adjusted(side_px, 0, -side_px, 0), index.data(SegmentTable::BarRole).toDouble(),
                  index.data(SegmentTable::StandsOutRole).toBool());
    } else {
        paint_text(*painter, option, index);
    }
    painter->restore();
}

// Full where the gain stands out of its error, else an outline.
void SegmentDelegate::paint_bar(QPainter& painter, const QRect& room, double part, bool stands_out) const {
    painter.setRenderHint(QPainter::Antialiasing, false);
    const QRectF trough(room.left(), room.center().y() - 0.5 * bar_height_px, room.width(), bar_height_px);
    painter.fillRect(trough, palette_.tint);
    const double half = 0.5 * trough.width();
    const double length = std::abs(part) * half;
    const double left = part >= 0.0 ? trough.center().x() : trough.center().x() - length;
    const QColor colour = part >= 0.0 ? palette_.a : palette_.b;
    const QRectF bar(left, trough.top(), length, trough.height());
    if (stands_out) {
        painter.fillRect(bar, colour);
    } else {
        painter.setPen(QPen(colour, 1.0));
        painter.drawRect(bar.adjusted(0.5, 0.5, -0.5, -0.5));
    }
    painter.setPen(QPen(palette_.edge, 1.0));
    painter.drawLine(QPointF(trough.center().x(), trough.top() - 2), QPointF(trough.center().x(), trough.bottom() + 2));
}

void SegmentDelegate::paint_note_mark(QPainter& painter, const QRect& room) const {
    const QRectF leaf(room.right() - note_width_px + 0.5, room.center().y() - note_height_px / 2 + 0.5,
                      note_width_px - 1, note_height_px - 1);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(palette_.ink, 1.0));
    painter.setBrush(palette_.notice);
    painter.drawRect(leaf);
    for (const double line : {3.0, 5.0, 7.0})
        painter.drawLine(QPointF(leaf.left() + 2, leaf.top() + line), QPointF(leaf.right() - 2, leaf.top() + line));
    painter.restore();
}

void SegmentDelegate::paint_text(QPainter& painter, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    QRect room = option.rect.adjusted(side_px, 0, -side_px, 0);
    const QFont font = font_of(index);
    const QFontMetrics metrics(font);
    painter.setFont(font);
    if (index.column() == SegmentTable::name_column) {
        if (index.data(SegmentTable::CursorRole).toBool()) {
            const QPointF tip(room.left() + mark_px - 2.0, room.center().y() + 0.5);
            painter.setPen(Qt::NoPen);
            painter.setBrush(palette_.ink);
            const QPointF mark[] = {tip, tip + QPointF(-6, -4), tip + QPointF(-6, 4)};
            painter.drawPolygon(mark, 3);
        }
        room.setLeft(room.left() + mark_px);
    }
    if (has_note(index)) {
        paint_note_mark(painter, room);
        room.setRight(room.right() - note_width_px - margin_space_px);
    }
    const QString margin = margin_of(index);
    if (!margin.isEmpty()) {
        painter.setPen(palette_.quiet);
        painter.drawText(room, Qt::AlignRight | Qt::AlignVCenter | Qt::TextSingleLine, margin);
        room.setRight(room.right() - metrics.horizontalAdvance(margin) - margin_space_px);
    }
    const bool quiet = index.column() == SegmentTable::name_column && !index.data(SegmentTable::CornerRole).toBool();
    const double won = index.data(SegmentTable::BarRole).toDouble();
    const bool coloured =
        index.column() == SegmentTable::gain_column && index.data(SegmentTable::StandsOutRole).toBool();
    painter.setPen(coloured ? (won >= 0.0 ? palette_.a : palette_.b) : quiet ? palette_.quiet : palette_.ink);
    const auto alignment = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
    painter.drawText(room, static_cast<int>(alignment) | Qt::TextSingleLine,
                     metrics.elidedText(index.data().toString(), Qt::ElideRight, room.width()));
}

SegmentView::SegmentView(models::SegmentTable* table, QWidget* parent)
    : QTableView(parent), delegate_(new SegmentDelegate(this)) {
    setModel(table);
    setItemDelegate(delegate_);
    setFont(theme::small());
    setAccessibleName(tr("Segments"));
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setMinimumSectionSize(10);
    verticalHeader()->setDefaultSectionSize(row_height(widest_gap));
    horizontalHeader()->setFont(theme::small());
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setMinimumSectionSize(20);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(SegmentTable::name_column, QHeaderView::Stretch);
    connect(table, &QAbstractItemModel::modelReset, this, &SegmentView::fit_height);
}

void SegmentView::fit_height() {
    setMaximumHeight(horizontalHeader()->sizeHint().height() + model()->rowCount() * row_height(widest_gap) + 4);
    fit_rows();
}

// Rows move a little closer where that shows all of them: a last half row says nothing.
void SegmentView::fit_rows() {
    if (model()->rowCount() == 0) return;
    const int room = viewport()->height() / model()->rowCount();
    const bool all_fit = room >= row_height(narrowest_gap);
    const int height = all_fit ? std::min(room, row_height(widest_gap)) : row_height(widest_gap);
    if (height != verticalHeader()->defaultSectionSize()) verticalHeader()->setDefaultSectionSize(height);
}

void SegmentView::set_palette(const theme::Palette& palette) {
    delegate_->set_palette(palette);
    viewport()->update();
}

void SegmentView::choose(int row) {
    choosing_ = true;
    if (row < 0) {
        setCurrentIndex({});
        clearSelection();
    } else {
        const int column = std::max(currentIndex().column(), 0);
        setCurrentIndex(model()->index(row, column));
        scrollTo(model()->index(row, column));
    }
    choosing_ = false;
}

void SegmentView::begin_name(int row) {
    setFocus();
    setCurrentIndex(model()->index(row, SegmentTable::name_column));
    edit(currentIndex());
}

void SegmentView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fit_rows();
    if (currentIndex().isValid()) scrollTo(currentIndex());
}

void SegmentView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (!choosing_ && current.isValid() && current.row() != previous.row()) Q_EMIT row_chosen(current.row());
}

} // namespace lapwright::pages
