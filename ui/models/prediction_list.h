// SPDX-License-Identifier: GPL-3.0-or-later
// The predictions that the book keeps as a table, the oldest first, each with what happened.
#pragma once

#include "core/analysis/held_predictions.h"
#include "core/base/display.h"
#include "ui/models/text_table.h"

#include <vector>

namespace lapwright::models {

class PredictionList : public TextTable {
    Q_OBJECT

  public:
    enum Column {
        car_column,
        track_column,
        change_column,
        setup_column,
        predicted_column,
        outcome_column,
        kept_column
    };

    explicit PredictionList(QObject* parent = nullptr);

    void set_predictions(std::vector<analysis::HeldPrediction> predictions);
    void set_units(base::UnitSystem units);
    [[nodiscard]] const std::vector<analysis::HeldPrediction>& predictions() const { return predictions_; }

  private:
    void fill();

    std::vector<analysis::HeldPrediction> predictions_;
    base::UnitSystem units_ = base::UnitSystem::metric;
};

} // namespace lapwright::models
