// SPDX-License-Identifier: GPL-3.0-or-later
// The pairings that the book keeps as a table, in the order in which they were found.
#pragma once

#include "core/book/pairings.h"

#include <QAbstractTableModel>
#include <vector>

namespace lapwright::models {

class PairingList : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { track_column, a_column, b_column, outcome_column, kept_column };
    static constexpr int columns = kept_column + 1;

    using QAbstractTableModel::QAbstractTableModel;

    void set_pairings(std::vector<book::PairingSummary> pairings);
    [[nodiscard]] const std::vector<book::PairingSummary>& pairings() const { return pairings_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<book::PairingSummary> pairings_;
};

} // namespace lapwright::models
