// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/prediction_list.h"

#include "core/analysis/prediction_words.h"
#include "core/base/wording.h"
#include "core/findings/cause_display.h"
#include "ui/models/text.h"

#include <utility>

namespace lapwright::models {

using analysis::HeldPrediction;

PredictionList::PredictionList(QObject* parent) : TextTable(parent) {
    set_predictions({});
}

void PredictionList::set_predictions(std::vector<HeldPrediction> predictions) {
    predictions_ = std::move(predictions);
    fill();
}

void PredictionList::set_units(base::UnitSystem units) {
    units_ = units;
    fill();
}

void PredictionList::fill() {
    const base::UnitSystem units = units_;
    const auto column = [this](const QString& title, const auto& say) {
        return column_of(predictions_, title, false, say);
    };
    show_columns({
        column(tr("Car"), [](const HeldPrediction& one) { return text_or_dash(one.kept.whose.car); }),
        column(tr("Track"), [](const HeldPrediction& one) { return text_or_dash(one.kept.there.track); }),
        column(tr("Change"),
               [units](const HeldPrediction& one) {
                   return text(analysis::asked_text(one.kept.prediction.asked, units));
               }),
        column(tr("Setup sheet then"),
               [units](const HeldPrediction& one) {
                   return text_or_dash(analysis::expected_text(one.kept.prediction.expected, units));
               }),
        column(tr("Predicted"),
               [](const HeldPrediction& one) { return text(findings::lap_change_text(one.kept.prediction.change)); }),
        column(tr("What happened"), [](const HeldPrediction& one) { return text(analysis::outcome_text(one)); }),
        column(tr("Kept"),
               [](const HeldPrediction& one) { return text(base::date_text(one.kept.prediction.kept_unix_s)); }),
    });
}

} // namespace lapwright::models
