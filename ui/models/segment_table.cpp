// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/segment_table.h"

#include "core/base/wording.h"
#include "core/presentation/figures.h"
#include "ui/models/text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::models {
namespace {

bool is_corner(const comparison::SegmentComparison& row) {
    return row.segment.kind == track::SegmentKind::corner;
}

// A corner's slowest, a straight's fastest.
const comparison::MaybeFigure& slow_or_top(const comparison::SegmentFigures& figures, bool corner) {
    return corner ? figures.min_speed_mps : figures.top_speed_mps;
}

} // namespace

void SegmentTable::set_segments(std::vector<comparison::SegmentComparison> segments) {
    beginResetModel();
    segments_ = std::move(segments);
    largest_gain_s_ = 0.0;
    for (const auto& row : segments_)
        largest_gain_s_ = std::max(largest_gain_s_, std::abs(row.gain_s.value));
    cursor_row_ = -1;
    notes_.clear();
    endResetModel();
}

void SegmentTable::set_units(base::UnitSystem units) {
    units_ = units;
    if (segments_.empty()) return;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columns - 1);
}

void SegmentTable::set_notes(std::vector<workspace::SegmentNotes> notes) {
    notes_ = std::move(notes);
    if (!segments_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

void SegmentTable::set_cursor_row(int row) {
    if (row == cursor_row_) return;
    const int before = std::exchange(cursor_row_, row);
    for (const int changed : {before, row}) {
        if (changed >= 0 && changed < rowCount())
            Q_EMIT dataChanged(index(changed, 0), index(changed, 0), {CursorRole});
    }
}

Qt::ItemFlags SegmentTable::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.column() == name_column ? flags | Qt::ItemIsEditable : flags;
}

bool SegmentTable::setData(const QModelIndex& index, const QVariant& value, int role) {
    const QString name = value.toString().trimmed();
    if (role != Qt::EditRole || name == index.data().toString()) return false;
    Q_EMIT name_typed(index.row(), name);
    return true;
}

int SegmentTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(segments_.size());
}

int SegmentTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant SegmentTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& row = segments_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
        return cell(row, index.column());
    case Qt::AccessibleTextRole:
        return index.column() == name_column ? spoken(row) + note_words(index.row()) : cell(row, index.column());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(
            Qt::Alignment(Qt::AlignVCenter | (index.column() <= bar_column ? Qt::AlignLeft : Qt::AlignRight)));
    case Qt::ToolTipRole: // marked as rich text and escaped: a name is never read as mark-up
        return QStringLiteral("<qt>%1</qt>")
            .arg((spoken(row) + note_words(index.row())).toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")));
    case BarRole:
        return largest_gain_s_ > 0.0 ? row.gain_s.value / largest_gain_s_ : 0.0;
    case MarginRole:
        return index.column() == gain_column ? text(base::gain_margin_text(row.gain_s.sd)) : QString();
    case CornerRole:
        return is_corner(row);
    case StandsOutRole:
        return base::stands_out(row.gain_s.value, row.gain_s.sd);
    case NoteRole:
        return !note_words(index.row()).isEmpty();
    case CursorRole:
        return index.row() == cursor_row_;
    default:
        return {};
    }
}

QString SegmentTable::cell(const comparison::SegmentComparison& row, int column) const {
    const auto speed = [this](const comparison::MaybeFigure& figure) {
        return text(presentation::speed_text(figure, units_, presentation::Margin::without));
    };
    switch (column) {
    case name_column:
        return text(row.segment.name);
    case gain_column:
        return text(base::gain_text(row.gain_s.value, row.gain_s.sd));
    case slow_a_column:
        return speed(slow_or_top(row.a, is_corner(row)));
    case slow_b_column:
        return speed(slow_or_top(row.b, is_corner(row)));
    case exit_a_column:
        return speed(row.a.exit_speed_mps);
    case exit_b_column:
        return speed(row.b.exit_speed_mps);
    default:
        return {};
    }
}

QString SegmentTable::spoken(const comparison::SegmentComparison& row) const {
    return text(row.segment.name) + QStringLiteral(", ") +
           text(base::gain_with_margin(row.gain_s.value, row.gain_s.sd)) + QStringLiteral(" s");
}

QString SegmentTable::note_words(int row) const {
    QString words;
    const auto place = static_cast<std::size_t>(row);
    if (place >= notes_.size()) return words;
    if (!notes_[place].a.empty()) words += tr("\nNote of A: %1").arg(text(notes_[place].a));
    if (!notes_[place].b.empty()) words += tr("\nNote of B: %1").arg(text(notes_[place].b));
    return words;
}

QVariant SegmentTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    const QString unit = text(base::symbol(base::shown_unit(base::Quantity::speed, units_)));
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(
            Qt::Alignment(Qt::AlignVCenter | (section <= bar_column ? Qt::AlignLeft : Qt::AlignRight)));
    }
    if (role == Qt::ToolTipRole && (section == slow_a_column || section == slow_b_column)) {
        return tr("Slowest speed in a corner, fastest on a straight, %1").arg(unit);
    }
    if (role == Qt::ToolTipRole && section >= exit_a_column) return tr("Speed at the end of the segment, %1").arg(unit);
    const QStringList titles{tr("Segment"), tr("Won by"), tr("s"), tr("min/top A"), tr("B"), tr("exit A"), tr("B")};
    return role == Qt::DisplayRole ? QVariant(titles.value(section)) : QVariant();
}

} // namespace lapwright::models
