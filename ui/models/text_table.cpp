// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/text_table.h"

#include <utility>

namespace lapwright::models {
namespace {

QVariant alignment(const TextColumn& column) {
    return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | (column.figure ? Qt::AlignRight : Qt::AlignLeft)));
}

// One cell of a line: what would be taken for another cell, line or a formula is not.
QString tab_cell(const QVariant& value) {
    QString cell = value.toString().simplified();
    if (!cell.isEmpty() && QStringLiteral("=+-@").contains(cell.front())) cell.prepend(QLatin1Char('\''));
    return cell;
}

} // namespace

QString tab_text(const QAbstractItemModel& model) {
    QStringList lines;
    for (int row = -1; row < model.rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column)
            cells << tab_cell(row < 0 ? model.headerData(column, Qt::Horizontal) : model.index(row, column).data());
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void TextTable::show_columns(std::vector<TextColumn> columns) {
    beginResetModel();
    columns_ = std::move(columns);
    endResetModel();
}

int TextTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || columns_.empty() ? 0 : static_cast<int>(columns_.front().cells.size());
}

int TextTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant TextTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= columnCount()) return {};
    const TextColumn& column = columns_[static_cast<std::size_t>(index.column())];
    const QString& cell = column.cells.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return cell;
    case Qt::ToolTipRole: // escaped: a name is never read as mark-up
        return QStringLiteral("<qt>%1</qt>").arg(cell.toHtmlEscaped());
    case Qt::TextAlignmentRole:
        return alignment(column);
    default:
        return {};
    }
}

QVariant TextTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section >= columnCount()) return {};
    const TextColumn& column = columns_[static_cast<std::size_t>(section)];
    if (role == Qt::TextAlignmentRole) return alignment(column);
    return role == Qt::DisplayRole ? QVariant(column.title) : QVariant();
}

} // namespace lapwright::models
