// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/predictions_view.h"

#include "core/analysis/prediction_words.h"
#include "ui/models/prediction_list.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/theme/plain_label.h"

#include <QHeaderView>
#include <QLabel>
#include <QVBoxLayout>

namespace lapwright::pages {

using models::PredictionList;

PredictionsView::PredictionsView(QWidget* parent)
    : QWidget(parent), model_(new PredictionList(this)),
      list_(new BookTable(*model_, tr("Predictions that the book keeps"), this)), said_(theme::plain_label(this)),
      chosen_(theme::plain_label(this, theme::small())) {
    said_->setWordWrap(true);
    chosen_->setWordWrap(true);
    QHeaderView* header = list_->horizontalHeader();
    for (int column = 0; column < model_->columnCount(); ++column) {
        const bool wide = column == PredictionList::car_column || column == PredictionList::change_column ||
                          column == PredictionList::outcome_column;
        header->setSectionResizeMode(column, wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(said_);
    column->addWidget(list_, 1);
    column->addWidget(chosen_);
    const auto at = [this](int row) { return model_->predictions().at(static_cast<std::size_t>(row)); };
    connect(list_, &BookTable::row_opened, this, [this, at](int row) { Q_EMIT driven_asked(at(row)); });
    connect(list_, &BookTable::removal_asked, this, [this, at](int row) { Q_EMIT removal_wanted(at(row)); });
    connect(list_, &BookTable::row_chosen, this, &PredictionsView::follow_row);
    connect(list_, &BookTable::left, this, &PredictionsView::left);
}

void PredictionsView::show(const analysis::HeldPredictions& predictions) {
    const int before = list_->current_row();
    model_->set_predictions(predictions.all);
    list_->choose_row(before);
    follow_row();
}

void PredictionsView::show_kept(const analysis::HeldPredictions& predictions) {
    show(predictions);
    said_->setText(models::text(analysis::score_sentence(predictions.score)) + QLatin1Char(' ') +
                   tr("What was driven since is being looked at…"));
}

void PredictionsView::show_held(const analysis::HeldPredictions& predictions) {
    show(predictions);
    said_->setText(predictions.all.empty()
                       ? tr("No prediction yet: keep what What if or How much wing predicts, and once it was driven "
                            "it is held against what happened here.")
                       : models::text(analysis::score_sentence(predictions.score)) + QLatin1Char(' ') +
                             tr("Return names the session that was driven with one, Delete takes it back."));
}

void PredictionsView::set_units(base::UnitSystem units) {
    const int before = list_->current_row();
    model_->set_units(units);
    list_->choose_row(before);
    follow_row();
}

void PredictionsView::begin() {
    list_->setFocus();
}

// The row in full: its cells are cut where they are long.
void PredictionsView::follow_row() {
    const int row = list_->current_row();
    QStringList words;
    for (const auto column : {PredictionList::car_column, PredictionList::change_column, PredictionList::setup_column,
                              PredictionList::predicted_column, PredictionList::outcome_column})
        if (row >= 0) words << model_->index(row, column).data().toString();
    chosen_->setText(words.join(QStringLiteral(" · ")));
}

QString PredictionsView::said() const {
    return said_->text();
}

} // namespace lapwright::pages
