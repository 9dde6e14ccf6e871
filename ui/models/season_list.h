// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions of a season as a table, in their order: the laps of a track, or the figures of a car.
#pragma once

#include "core/base/display.h"
#include "core/book/season.h"
#include "core/book/season_figures.h"

#include <QAbstractTableModel>
#include <QStringList>
#include <vector>

namespace lapwright::models {

enum class SeasonOf { track, car };

class SeasonList : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    void set_season(SeasonOf of, std::vector<book::SeasonSession> season);
    void set_units(base::UnitSystem units);
    [[nodiscard]] const std::vector<book::SeasonSession>& season() const { return season_; }
    [[nodiscard]] const std::vector<book::FigureCourse>& courses() const { return courses_; } // of a car
    [[nodiscard]] int change_column() const { return columnCount() - 1; }                     // what changed: the last
    [[nodiscard]] bool is_figure(int column) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    struct Column {
        QString title;
        bool figure = false;
        QStringList cells;
    };

    void fill();

    SeasonOf of_ = SeasonOf::track;
    std::vector<book::SeasonSession> season_;
    std::vector<book::FigureCourse> courses_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    std::vector<Column> columns_;
};

} // namespace lapwright::models
