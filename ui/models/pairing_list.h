// SPDX-License-Identifier: GPL-3.0-or-later
// The pairings that the book keeps as a table, in the order in which they were found.
#pragma once

#include "core/book/pairings.h"
#include "ui/models/text_table.h"

namespace lapwright::models {

class PairingList : public TextTable {
    Q_OBJECT

  public:
    enum Column { track_column, a_column, b_column, outcome_column, kept_column };

    explicit PairingList(QObject* parent = nullptr);

    void set_pairings(std::vector<book::PairingSummary> pairings);
    [[nodiscard]] const std::vector<book::PairingSummary>& pairings() const { return pairings_; }

  private:
    std::vector<book::PairingSummary> pairings_;
};

} // namespace lapwright::models
