// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/season_figures.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/units.h"

#include <algorithm>

namespace lapwright::book {
namespace {

using base::said;

struct Wanted {
    const char* name;
    std::string title;
    base::Unit unit;
    double scale;
    int decimals;
};

const KeptFigure* find(const SeasonSession& session, std::string_view name) {
    const auto found = std::ranges::find(session.figures, name, &KeptFigure::name);
    return found == session.figures.end() ? nullptr : &*found;
}

FigureCourse course_of(const std::vector<SeasonSession>& season, const Wanted& wanted) {
    std::string title = wanted.title;
    if (wanted.unit != base::Unit::none) title += ", " + std::string(base::symbol(wanted.unit));
    FigureCourse course{title, wanted.unit, wanted.decimals, {}};
    for (std::size_t i = 0; i < season.size(); ++i) {
        const KeptFigure* figure = find(season[i], wanted.name);
        if (figure != nullptr)
            course.points.push_back({i, figure->value * wanted.scale, figure->low * wanted.scale,
                                     figure->high * wanted.scale, figure->decided_by == "data"});
    }
    return course;
}

bool all_know_their_mass(const std::vector<SeasonSession>& season) {
    return std::ranges::all_of(season, [](const SeasonSession& session) {
        return find(session, "power_w") != nullptr || find(session, "power_w_per_kg") == nullptr;
    });
}

} // namespace

std::vector<FigureCourse> figure_courses(const std::vector<SeasonSession>& season, base::UnitSystem units) {
    using base::Unit;
    const Unit power = base::shown_unit(base::Quantity::power, units);
    const std::vector<Wanted> wanted =
        all_know_their_mass(season)
            ? std::vector<Wanted>{{"grip", said("tyre grip"), Unit::none, 1.0, 3},
                                  {"downforce_area_m2", said("downforce area, m²"), Unit::none, 1.0, 2},
                                  {"drag_area_m2", said("drag area, m²"), Unit::none, 1.0, 2},
                                  {"power_w", said("power at the wheels"), power, 1.0, 1}}
            : std::vector<Wanted>{
                  // square metres on a tonne read more easily than on a kilogram
                  {"grip", said("tyre grip"), Unit::none, 1.0, 3},
                  {"downforce_area_m2_per_kg", said("downforce area, m² on a tonne"), Unit::none, base::tonne_kg, 2},
                  {"drag_area_m2_per_kg", said("drag area, m² on a tonne"), Unit::none, base::tonne_kg, 2},
                  {"power_w_per_kg", said("power at the wheels, W on a kg"), Unit::none, 1.0, 1}};
    std::vector<FigureCourse> courses;
    for (const Wanted& one : wanted)
        if (FigureCourse course = course_of(season, one); !course.points.empty()) courses.push_back(std::move(course));
    return courses;
}

std::string figure_text(const FigureCourse& course, const FigurePoint& point) {
    const double factor = base::definition(course.unit).factor;
    const double half_width = 0.5 * (point.high - point.low) / factor;
    const int decimals = std::min(course.decimals, base::decimals_for(half_width, course.decimals));
    return base::shown_text(base::from_si(point.value, course.unit), decimals) + " " +
           base::plus_minus_text(half_width, course.decimals);
}

} // namespace lapwright::book
