// SPDX-License-Identifier: GPL-3.0-or-later
// The predictions that the book keeps, what happened, and how often they held: Return or a double click names the
// sessions that were driven with one, Delete takes it back.
#pragma once

#include "core/analysis/held_predictions.h"
#include "core/base/display.h"

#include <QWidget>

class QLabel;

namespace lapwright::models {
class PredictionList;
}

namespace lapwright::pages {

class BookTable;

class PredictionsView : public QWidget {
    Q_OBJECT

  public:
    explicit PredictionsView(QWidget* parent = nullptr);

    void show_kept(const analysis::HeldPredictions& predictions); // what was driven since is still worked out
    void show_held(const analysis::HeldPredictions& predictions);
    void set_units(base::UnitSystem units);
    void begin(); // to the list
    [[nodiscard]] BookTable& list() { return *list_; }
    [[nodiscard]] const models::PredictionList& model() const { return *model_; }
    [[nodiscard]] QString said() const;

  Q_SIGNALS:
    void driven_asked(const lapwright::analysis::HeldPrediction& prediction);
    void removal_wanted(const lapwright::analysis::HeldPrediction& prediction); // undo brings it back
    void left();

  private:
    void show(const analysis::HeldPredictions& predictions);
    void follow_row();

    models::PredictionList* model_;
    BookTable* list_;
    QLabel* said_;
    QLabel* chosen_;
};

} // namespace lapwright::pages
