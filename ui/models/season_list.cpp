// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/season_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"

#include <functional>
#include <utility>

namespace lapwright::models {
namespace {

using book::SeasonSession;

QString date_of(const SeasonSession& one) {
    return one.session.start_unix_s ? text(base::date_text(*one.session.start_unix_s)) : dash;
}

QString time_of(const std::optional<double>& time_s) {
    return time_s ? text(base::lap_time_text(*time_s)) : dash;
}

Qt::Alignment alignment(bool figure) {
    return Qt::AlignVCenter | (figure ? Qt::AlignRight : Qt::AlignLeft);
}

} // namespace

void SeasonList::set_season(SeasonOf of, std::vector<SeasonSession> season) {
    beginResetModel();
    of_ = of;
    season_ = std::move(season);
    fill();
    endResetModel();
}

void SeasonList::set_units(base::UnitSystem units) {
    beginResetModel();
    units_ = units;
    fill();
    endResetModel();
}

void SeasonList::fill() {
    columns_.clear();
    courses_ = of_ == SeasonOf::car ? book::figure_courses(season_, units_) : std::vector<book::FigureCourse>();
    const auto add = [this](const QString& title, bool figure,
                            const std::function<QString(const SeasonSession&)>& say) {
        Column column{title, figure, {}};
        for (const SeasonSession& one : season_)
            column.cells << say(one);
        columns_.push_back(std::move(column));
    };
    add(tr("Date"), false, date_of);
    if (of_ == SeasonOf::track) {
        add(tr("Car"), false, [](const SeasonSession& one) { return text_or_dash(one.session.car); });
        add(tr("Best lap"), true, [](const SeasonSession& one) { return time_of(one.session.best_clean_s); });
        add(tr("Median"), true, [](const SeasonSession& one) { return time_of(one.median_clean_s); });
        add(tr("Clean laps"), true,
            [](const SeasonSession& one) { return text(base::integer_text(one.session.clean_laps)); });
        add(tr("Driver"), false, [](const SeasonSession& one) { return text_or_dash(one.session.driver); });
    } else {
        add(tr("Track"), false, [](const SeasonSession& one) { return text_or_dash(one.session.track); });
        for (const book::FigureCourse& course : courses_) {
            Column column{text(course.title), true, QStringList(rowCount(), dash)};
            column.title[0] = column.title.at(0).toUpper();
            for (const book::FigurePoint& point : course.points)
                column.cells[static_cast<qsizetype>(point.session)] = text(book::figure_text(course, point));
            columns_.push_back(std::move(column));
        }
    }
    add(tr("Tyre"), false, [](const SeasonSession& one) { return text_or_dash(one.session.tyre); });
    add(tr("Conditions"), false,
        [this](const SeasonSession& one) { return text_or_dash(book::conditions_text(one, units_)); });
    Column changes{tr("Setup since the one before"), false, {}};
    for (const std::string& line : book::setup_changes(season_, units_))
        changes.cells << text_or_dash(line);
    columns_.push_back(std::move(changes));
}

bool SeasonList::is_figure(int column) const {
    return columns_.at(static_cast<std::size_t>(column)).figure;
}

int SeasonList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(season_.size());
}

int SeasonList::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant SeasonList::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount() || index.column() >= columnCount()) return {};
    const Column& column = columns_[static_cast<std::size_t>(index.column())];
    const QString& cell = column.cells.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return cell;
    case Qt::ToolTipRole: // escaped: a name is never read as mark-up
        return QStringLiteral("<qt>%1</qt>").arg(cell.toHtmlEscaped());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(alignment(column.figure));
    default:
        return {};
    }
}

QVariant SeasonList::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section >= columnCount()) return {};
    const Column& column = columns_[static_cast<std::size_t>(section)];
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(alignment(column.figure));
    return role == Qt::DisplayRole ? QVariant(column.title) : QVariant();
}

} // namespace lapwright::models
