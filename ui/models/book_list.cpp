// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/book_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"

#include <utility>

namespace lapwright::models {
namespace {

QString cell(const book::SessionSummary& session, int column) {
    switch (column) {
    case BookList::date_column:
        return session.start_unix_s ? text(base::date_text(*session.start_unix_s)) : dash;
    case BookList::track_column:
        return text_or_dash(session.track);
    case BookList::driver_column:
        return text_or_dash(session.driver);
    case BookList::car_column:
        return text_or_dash(session.car);
    case BookList::tyre_column:
        return text_or_dash(session.tyre);
    case BookList::best_column:
        return session.best_clean_s ? text(base::lap_time_text(*session.best_clean_s)) : dash;
    case BookList::laps_column:
        return text(base::integer_text(session.clean_laps));
    case BookList::notes_column:
        return session.notes == 0 ? QString() : text(base::integer_text(session.notes));
    case BookList::file_column:
        return text(session.source.file_name);
    default:
        return {};
    }
}

bool is_figure(int column) {
    return column >= BookList::best_column && column <= BookList::notes_column;
}

} // namespace

void BookList::set_sessions(std::vector<book::SessionSummary> sessions) {
    beginResetModel();
    sessions_ = std::move(sessions);
    endResetModel();
}

int BookList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(sessions_.size());
}

int BookList::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant BookList::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& session = sessions_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return cell(session, index.column());
    case Qt::ToolTipRole: // escaped: a name is never read as mark-up
        return QStringLiteral("<qt>%1</qt>").arg(cell(session, index.column()).toHtmlEscaped());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(
            Qt::Alignment(Qt::AlignVCenter | (is_figure(index.column()) ? Qt::AlignRight : Qt::AlignLeft)));
    default:
        return {};
    }
}

QVariant BookList::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(
            Qt::Alignment(Qt::AlignVCenter | (is_figure(section) ? Qt::AlignRight : Qt::AlignLeft)));
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case date_column:
        return tr("Date");
    case track_column:
        return tr("Track");
    case driver_column:
        return tr("Driver");
    case car_column:
        return tr("Car");
    case tyre_column:
        return tr("Tyre");
    case best_column:
        return tr("Best lap");
    case laps_column:
        return tr("Clean laps");
    case notes_column:
        return tr("Notes");
    case file_column:
        return tr("File");
    default:
        return {};
    }
}

} // namespace lapwright::models
