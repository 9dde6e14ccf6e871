// SPDX-License-Identifier: GPL-3.0-or-later
// The segments of a pairing as a table.  The bar's length comes with BarRole as −1 (all B) … 1 (all A) of the largest
// gain in the table; what is written comes from core/base.
#pragma once

#include "core/base/display.h"
#include "core/comparison/comparison.h"
#include "core/workspace/pairing_notes.h"

#include <QAbstractTableModel>
#include <vector>

namespace lapwright::models {

class SegmentTable : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { name_column, bar_column, gain_column, slow_a_column, slow_b_column, exit_a_column, exit_b_column };
    static constexpr int columns = exit_b_column + 1;
    enum Role { BarRole = Qt::UserRole + 1, MarginRole, CornerRole, CursorRole, StandsOutRole, NoteRole };

    using QAbstractTableModel::QAbstractTableModel;

    void set_segments(std::vector<comparison::SegmentComparison> segments);
    void set_units(base::UnitSystem units);
    void set_notes(std::vector<workspace::SegmentNotes> notes); // a row each
    void set_cursor_row(int row);                               // the segment under the cursor, -1: none
    [[nodiscard]] const std::vector<comparison::SegmentComparison>& segments() const { return segments_; }

    // A name that is typed is asked for; the table shows it when it is given.
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  Q_SIGNALS:
    void name_typed(int row, const QString& name);

  private:
    [[nodiscard]] QString cell(const comparison::SegmentComparison& row, int column) const;
    [[nodiscard]] QString spoken(const comparison::SegmentComparison& row) const;
    [[nodiscard]] QString note_words(int row) const; // empty: no note

    std::vector<comparison::SegmentComparison> segments_;
    std::vector<workspace::SegmentNotes> notes_;
    double largest_gain_s_ = 0.0;
    base::UnitSystem units_ = base::UnitSystem::metric;
    int cursor_row_ = -1;
};

} // namespace lapwright::models
