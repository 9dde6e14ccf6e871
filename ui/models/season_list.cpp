// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/season_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"

#include <iterator>
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

} // namespace

void SeasonList::set_season(SeasonOf of, std::vector<SeasonSession> season) {
    of_ = of;
    season_ = std::move(season);
    fill();
}

void SeasonList::set_units(base::UnitSystem units) {
    units_ = units;
    fill();
}

void SeasonList::fill() {
    std::vector<TextColumn> columns;
    courses_ = of_ == SeasonOf::track ? std::vector<book::FigureCourse>() : book::figure_courses(season_, units_);
    const auto add = [&](const QString& title, bool figure, const auto& say) {
        columns.push_back(column_of(season_, title, figure, say));
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
            TextColumn column{text(course.title), true, QStringList(std::ssize(season_), dash)};
            column.title[0] = column.title.at(0).toUpper();
            for (const book::FigurePoint& point : course.points)
                column.cells[static_cast<qsizetype>(point.session)] = text(book::figure_text(course, point));
            columns.push_back(std::move(column));
        }
    }
    add(tr("Tyre"), false, [](const SeasonSession& one) { return text_or_dash(one.session.tyre); });
    add(tr("Conditions"), false,
        [this](const SeasonSession& one) { return text_or_dash(book::conditions_text(one, units_)); });
    TextColumn changes{tr("Setup since the one before")};
    for (const std::string& line : book::setup_changes(season_, units_))
        changes.cells << text_or_dash(line);
    columns.push_back(std::move(changes));
    show_columns(std::move(columns));
}

} // namespace lapwright::models
