// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/causes_table.h"

#include "core/findings/cause_display.h"
#include "ui/models/text.h"

#include <algorithm>
#include <cmath>

namespace lapwright::pages {
namespace {

QString words(const std::string& utf8) {
    return models::text(utf8);
}

const causes::Seconds& of_column(const causes::Row& row, int column) {
    if (column == CausesTable::measured_column) return row.gain;
    if (column == CausesTable::rest_column) return row.driver_and_rest;
    return causes::of(row, CausesTable::terms[static_cast<std::size_t>(column - CausesTable::first_cause_column)]);
}

// On two lines, so that columns stay narrow.
QString column_head(const causes::Column* column, causes::Term term) {
    if (term == causes::Term::cornering) return CausesTable::tr("grip +\ndownforce");
    if (term == causes::Term::straights) return CausesTable::tr("drag +\npower");
    const QString name = words(std::string(causes::name(term)));
    return column != nullptr && column->part_of ? CausesTable::tr("of it\n%1").arg(name) : name;
}

double greatest(const causes::Row& row) {
    double most = std::abs(row.gain.value);
    const auto reach = [&most](const causes::Seconds& s) {
        if (s.told()) most = std::max(most, std::abs(s.value));
    };
    reach(row.driver_and_rest);
    for (const causes::Seconds& cause : row.causes)
        reach(cause);
    return most;
}

} // namespace

void CausesTable::set_explanation(std::shared_ptr<const causes::Explanation> explanation) {
    beginResetModel();
    explanation_ = std::move(explanation);
    causes_ = explanation_ ? causes::columns(explanation_->total) : std::vector<causes::Column>{};
    what_if_.clear();
    greatest_s_ = 0.0;
    greatest_total_s_ = 0.0;
    if (explanation_) {
        for (const causes::SegmentRow& row : explanation_->segments)
            greatest_s_ = std::max(greatest_s_, greatest(row.row));
        greatest_total_s_ = greatest(explanation_->total);
    }
    endResetModel();
}

void CausesTable::set_what_if(const causes::Prediction& prediction, causes::Side changed) {
    what_if_.clear();
    if (static_cast<int>(prediction.segments.size()) == segment_count()) {
        for (const causes::Seconds& change : prediction.segments)
            what_if_.push_back(findings::favouring_a(change, changed));
        what_if_.push_back(findings::favouring_a(prediction.lap, changed));
    }
    Q_EMIT dataChanged(index(0, what_if_column), index(rowCount() - 1, what_if_column));
}

void CausesTable::forget_what_if() {
    what_if_.clear();
    if (explanation_) Q_EMIT dataChanged(index(0, what_if_column), index(rowCount() - 1, what_if_column));
}

int CausesTable::column_of(causes::Term term) {
    return first_cause_column + static_cast<int>(std::ranges::find(terms, term) - terms.begin());
}

const causes::Column* CausesTable::cause_at(int column) const {
    if (column < first_cause_column || column >= rest_column) return nullptr;
    const causes::Term term = terms[static_cast<std::size_t>(column - first_cause_column)];
    const auto found = std::ranges::find(causes_, term, &causes::Column::term);
    return found == causes_.end() ? nullptr : &*found;
}

bool CausesTable::is_hidden(int column) const {
    return (column == column_of(causes::Term::cornering) || column == column_of(causes::Term::straights)) &&
           cause_at(column) == nullptr;
}

int CausesTable::segment_count() const {
    return explanation_ ? static_cast<int>(explanation_->segments.size()) : 0;
}

int CausesTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !explanation_ ? 0 : segment_count() + 2;
}

int CausesTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

const track::Segment* CausesTable::segment(int row) const {
    if (row < 0 || row >= segment_count()) return nullptr;
    return &explanation_->segments[static_cast<std::size_t>(row)].segment;
}

const causes::Seconds* CausesTable::seconds(int row, int column) const {
    if (!explanation_ || column == name_column) return nullptr;
    if (column == what_if_column) {
        const auto at = static_cast<std::size_t>(std::min(row, segment_count()));
        return at < what_if_.size() ? &what_if_[at] : nullptr;
    }
    if (explanation_->per_kilogram && column == column_of(causes::Term::mass)) return nullptr;
    if (row < segment_count()) return &of_column(explanation_->segments[static_cast<std::size_t>(row)].row, column);
    return &of_column(explanation_->total, column);
}

QString CausesTable::text(int row, int column) const {
    if (column == name_column) {
        if (is_total(row)) return tr("Whole lap");
        if (is_interval(row)) return tr("95 % interval");
        return words(segment(row)->name);
    }
    const causes::Seconds* s = seconds(row, column);
    if (s == nullptr) return column == what_if_column ? QString() : QStringLiteral("—");
    if (is_interval(row)) return words(findings::interval_cell(*s));
    const QString cell = words(findings::cell(*s).text);
    const bool fits = is_total(row) || explanation_->segments[static_cast<std::size_t>(row)].does_not_fit.empty();
    return fits || column != rest_column ? cell : tr("%1 no fit").arg(cell);
}

QString CausesTable::in_full(int row, int column) const {
    const causes::Seconds* s = seconds(row, column);
    QString full = text(row, name_column);
    if (s == nullptr) return full;
    full += QStringLiteral(", ") + models::labelled(headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(),
                                                    words(findings::seconds_in_full(*s)));
    if (row >= segment_count()) return full;
    const causes::SegmentRow& segment_row = explanation_->segments[static_cast<std::size_t>(row)];
    if (column == rest_column) {
        full += QStringLiteral("\n") + words(findings::use_text(segment_row));
        if (!segment_row.does_not_fit.empty())
            full += QStringLiteral("\n") + tr("The model does not fit here: ") + words(segment_row.does_not_fit);
    }
    return full;
}

QVariant CausesTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !explanation_) return {};
    const int row = index.row();
    const int column = index.column();
    const causes::Seconds* s = is_interval(row) ? nullptr : seconds(row, column);
    switch (role) {
    case Qt::DisplayRole:
        return text(row, column);
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return in_full(row, column);
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::Alignment(column == name_column ? Qt::AlignLeft : Qt::AlignHCenter) |
                                   Qt::AlignVCenter);
    case PartRole: {
        const double most = is_total(row) ? greatest_total_s_ : greatest_s_;
        if (s == nullptr || !(most > 0.0) || findings::cell(*s).favours == findings::Favours::neither) return {};
        return s->value / most;
    }
    case ToldRole:
        return s != nullptr && s->told_apart_from_zero();
    case StrongRole:
        return is_total(row) || (segment(row) != nullptr && segment(row)->kind == track::SegmentKind::corner);
    case ApartRole:
        return is_total(row);
    case BehindRole:
        return cause_at(column) != nullptr && cause_at(column)->behind;
    default:
        return {};
    }
}

QVariant CausesTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::Alignment(section == name_column ? Qt::AlignLeft : Qt::AlignHCenter) |
                                   Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    if (section == name_column) return tr("Segment");
    if (section == measured_column) return tr("measured");
    if (section == rest_column) return tr("driver & rest");
    if (section == what_if_column) return tr("what if");
    return column_head(cause_at(section), terms[static_cast<std::size_t>(section - first_cause_column)]);
}

} // namespace lapwright::pages
