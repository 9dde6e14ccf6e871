// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions of a season as a table, in their order: the laps of a track, or the figures of a car, as each session or
// all of them together tell them.
#pragma once

#include "core/base/display.h"
#include "core/book/season.h"
#include "core/book/season_figures.h"
#include "ui/models/text_table.h"

namespace lapwright::models {

enum class SeasonOf { track, car, car_together };

class SeasonList : public TextTable {
    Q_OBJECT

  public:
    using TextTable::TextTable;

    void set_season(SeasonOf of, std::vector<book::SeasonSession> season);
    void set_units(base::UnitSystem units);
    [[nodiscard]] const std::vector<book::SeasonSession>& season() const { return season_; }
    [[nodiscard]] const std::vector<book::FigureCourse>& courses() const { return courses_; } // of a car
    [[nodiscard]] int change_column() const { return columnCount() - 1; }                     // what changed: the last
    [[nodiscard]] bool is_figure(int column) const { return shown().at(static_cast<std::size_t>(column)).figure; }

  private:
    void fill();

    SeasonOf of_ = SeasonOf::track;
    std::vector<book::SeasonSession> season_;
    std::vector<book::FigureCourse> courses_;
    base::UnitSystem units_ = base::UnitSystem::metric;
};

} // namespace lapwright::models
