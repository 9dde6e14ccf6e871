// SPDX-License-Identifier: GPL-3.0-or-later
// Segments down, causes across, seconds in the cells; under them the whole lap and its 95 % interval.
#pragma once

#include "core/causes/telling_order.h"

#include <QAbstractTableModel>
#include <array>
#include <memory>
#include <vector>

namespace lapwright::pages {

class CausesTable : public QAbstractTableModel {
    Q_OBJECT

  public:
    static constexpr int name_column = 0;
    static constexpr int measured_column = 1;
    static constexpr int first_cause_column = 2;
    // Sums stand before their parts, and are shown where one of these comes behind them.
    static constexpr std::array terms{causes::Term::cornering, causes::Term::tyre_grip, causes::Term::downforce,
                                      causes::Term::straights, causes::Term::drag,      causes::Term::power,
                                      causes::Term::mass};
    static constexpr int rest_column = first_cause_column + static_cast<int>(terms.size());
    static constexpr int what_if_column = rest_column + 1; // hidden without a prediction
    static constexpr int columns = what_if_column + 1;

    enum Role {
        PartRole = Qt::UserRole, // −1 B's most … 1 A's most, of the greatest cell; nothing without seconds
        ToldRole,                // the interval leaves no doubt about the sign
        StrongRole,              // corner, or the whole lap
        ApartRole,               // first row under the segments
        BehindRole,              // known less well than the sum before it
    };

    using QAbstractTableModel::QAbstractTableModel;

    void set_explanation(std::shared_ptr<const causes::Explanation> explanation);

    // The predicted lap of a changed car; a prediction for other segments is no prediction.
    void set_what_if(const causes::Prediction& prediction, causes::Side changed);
    void forget_what_if();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] static int column_of(causes::Term term);
    [[nodiscard]] bool is_hidden(int column) const; // a sum that is known no better than its parts
    // The segment of a row; null for the rows under them.
    [[nodiscard]] const track::Segment* segment(int row) const;

  private:
    [[nodiscard]] int segment_count() const;
    [[nodiscard]] bool is_total(int row) const { return row == segment_count(); }
    [[nodiscard]] bool is_interval(int row) const { return row == segment_count() + 1; }
    // The seconds behind a cell; null where there are none.
    [[nodiscard]] const causes::Seconds* seconds(int row, int column) const;
    [[nodiscard]] QString text(int row, int column) const;
    [[nodiscard]] QString in_full(int row, int column) const;

    [[nodiscard]] const causes::Column* cause_at(int column) const; // null where it is none, or is hidden

    std::shared_ptr<const causes::Explanation> explanation_;
    std::vector<causes::Column> causes_;   // of the explanation
    std::vector<causes::Seconds> what_if_; // segments, then the lap; empty without a prediction; positive favours A
    double greatest_s_ = 0.0;              // of a segment's cell
    double greatest_total_s_ = 0.0;        // of the whole lap's
};

} // namespace lapwright::pages
