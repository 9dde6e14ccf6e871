// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions of the book as a table, in the order in which they were found.
#pragma once

#include "core/book/entries.h"

#include <QAbstractTableModel>
#include <vector>

namespace lapwright::models {

class BookList : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column {
        date_column,
        track_column,
        driver_column,
        car_column,
        tyre_column,
        best_column,
        laps_column,
        notes_column,
        file_column
    };
    static constexpr int columns = file_column + 1;

    using QAbstractTableModel::QAbstractTableModel;

    void set_sessions(std::vector<book::SessionSummary> sessions);
    [[nodiscard]] const std::vector<book::SessionSummary>& sessions() const { return sessions_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<book::SessionSummary> sessions_;
};

} // namespace lapwright::models
