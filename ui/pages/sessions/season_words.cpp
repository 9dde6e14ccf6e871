// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/season_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/book/timing_line.h"
#include "ui/models/text.h"

#include <QCoreApplication>
#include <algorithm>
#include <limits>

namespace lapwright::pages {
namespace {

using book::SeasonSession;
using models::SeasonOf;
using models::text;

QString tr(const char* words) {
    return QCoreApplication::translate("Lapwright", words);
}

QString counted(std::ptrdiff_t count) {
    return count == 1 ? tr("one session") : tr("%1 sessions").arg(text(base::integer_text(count)));
}

QString who(const book::SessionSummary& session) {
    if (session.driver.empty() && session.car.empty()) return text(session.source.file_name);
    if (session.driver.empty() || session.car.empty()) return text(session.driver + session.car);
    return tr("%1 in %2").arg(text(session.driver), text(session.car));
}

QString nothing(SeasonOf of, const QString& name) {
    if (of == SeasonOf::track)
        return name.isEmpty() ? tr("No session of the book says its track. Open one together with its track file: its "
                                   "laps are then seen here through the season.")
                              : tr("No session on %1 is in the book.").arg(name);
    return name.isEmpty() ? tr("No session of the book says its car; the name comes with the logger's file.")
                          : tr("Nothing is fitted to the laps of %1 yet: compare one of its sessions and look at the "
                               "Causes page; what the data say of the car is then kept here.")
                                .arg(name);
}

QString of_laps(const std::vector<SeasonSession>& season) {
    const auto quickest = std::ranges::min_element(season, {}, [](const SeasonSession& one) {
        return one.session.best_clean_s.value_or(std::numeric_limits<double>::infinity());
    });
    if (!quickest->session.best_clean_s) return tr("none has a clean lap.");
    QString words = tr("quickest clean lap %1, %2")
                        .arg(text(base::lap_time_text(*quickest->session.best_clean_s)), who(quickest->session));
    if (quickest->session.start_unix_s)
        words += QStringLiteral(", ") + text(base::date_text(*quickest->session.start_unix_s));
    return models::sentence(words);
}

QString of_figure(const book::FigureCourse& figure) {
    QString words = text(base::labelled(figure.title, figure_text(figure, figure.points.front())));
    if (figure.points.size() > 1)
        words += tr(" at first, %1 at last").arg(text(figure_text(figure, figure.points.back())));
    return models::sentence(words);
}

} // namespace

QString season_sentence(SeasonOf of, const QString& name, const std::vector<SeasonSession>& season,
                        const book::FigureCourse* figure) {
    if (season.empty()) return nothing(of == SeasonOf::car_together ? SeasonOf::car : of, name);
    const auto sessions = counted(std::ssize(season));
    QString words = of == SeasonOf::track
                        ? tr("%1, %2: ").arg(name, sessions) + of_laps(season)
                        : tr("%1, %2 with figures; ").arg(name, sessions) + (figure ? of_figure(*figure) : QString());
    const auto undated = std::ranges::count_if(season, [](const auto& one) { return !one.session.start_unix_s; });
    if (undated == 1) words += tr(" One without a date stands last, in the table only; F2 in the list gives it one.");
    if (undated > 1)
        words += tr(" %1 without a date stand last, in the table only; F2 in the list gives them one.").arg(undated);
    if (const std::string elsewhere = book::timed_elsewhere_text(season); of == SeasonOf::track && !elsewhere.empty())
        words += QLatin1Char(' ') + text(elsewhere);
    return words;
}

} // namespace lapwright::pages
