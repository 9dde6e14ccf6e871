// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/book_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"

#include <utility>

namespace lapwright::models {

using book::SessionSummary;

BookList::BookList(QObject* parent) : TextTable(parent) {
    set_sessions({});
}

void BookList::set_sessions(std::vector<SessionSummary> sessions) {
    sessions_ = std::move(sessions);
    const auto column = [this](const QString& title, bool figure, const auto& say) {
        return column_of(sessions_, title, figure, say);
    };
    const auto name = [&](const QString& title, std::string SessionSummary::* which) {
        return column(title, false, [which](const SessionSummary& one) { return text_or_dash(one.*which); });
    };
    show_columns({
        column(tr("Date"), false,
               [](const SessionSummary& one) {
                   return one.start_unix_s ? text(base::date_text(*one.start_unix_s)) : dash;
               }),
        name(tr("Track"), &SessionSummary::track),
        name(tr("Driver"), &SessionSummary::driver),
        name(tr("Car"), &SessionSummary::car),
        name(tr("Tyre"), &SessionSummary::tyre),
        column(tr("Best lap"), true,
               [](const SessionSummary& one) {
                   return one.best_clean_s ? text(base::lap_time_text(*one.best_clean_s)) : dash;
               }),
        column(tr("Clean laps"), true,
               [](const SessionSummary& one) { return text(base::integer_text(one.clean_laps)); }),
        column(
            tr("Notes"), true,
            [](const SessionSummary& one) { return one.notes == 0 ? QString() : text(base::integer_text(one.notes)); }),
        column(tr("File"), false, [](const SessionSummary& one) { return text(one.source.file_name); }),
    });
}

} // namespace lapwright::models
