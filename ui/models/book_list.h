// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions of the book as a table, in the order in which they were found.
#pragma once

#include "core/book/entries.h"
#include "ui/models/text_table.h"

namespace lapwright::models {

class BookList : public TextTable {
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

    explicit BookList(QObject* parent = nullptr);

    void set_sessions(std::vector<book::SessionSummary> sessions);
    [[nodiscard]] const std::vector<book::SessionSummary>& sessions() const { return sessions_; }

  private:
    std::vector<book::SessionSummary> sessions_;
};

} // namespace lapwright::models
