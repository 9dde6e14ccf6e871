// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/what_if_card.h"

#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

namespace lapwright::pages {
namespace {

using findings::Lever;
using models::text;

constexpr int big_step = 5;

} // namespace

WhatIfCard::WhatIfCard(QWidget* parent)
    : QFrame(parent), choose_a_(new QToolButton(this)), choose_b_(new QToolButton(this)), reset_(new QToolButton(this)),
      keep_(new QToolButton(this)), predicted_(theme::plain_label(this, theme::small())),
      where_(theme::plain_label(this, theme::small())), leans_(theme::wrapped_label({}, this, theme::small())),
      pause_(new QTimer(this)) {
    setObjectName(QStringLiteral("card"));
    setAccessibleName(tr("What if"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(3);
    auto* head = new QHBoxLayout;
    auto* title = theme::plain_label(tr("What if"), this, theme::small());
    title->setFont(theme::strong(theme::body()));
    head->addWidget(title);
    head->addSpacing(8);
    for (auto* button : {choose_a_, choose_b_, reset_, keep_}) {
        button->setObjectName(QStringLiteral("plain"));
        head->addWidget(button);
    }
    head->addStretch(1);
    column->addLayout(head);
    choose_a_->setText(tr("car A"));
    choose_b_->setText(tr("car B"));
    reset_->setText(tr("As it is"));
    keep_->setText(tr("Keep…"));
    keep_->setToolTip(tr("Keep what is predicted in the book, to be held against what happens"));
    choose_a_->setCheckable(true);
    choose_b_->setCheckable(true);
    connect(choose_a_, &QToolButton::clicked, this, [this] { choose(causes::Side::a); });
    connect(choose_b_, &QToolButton::clicked, this, [this] { choose(causes::Side::b); });
    connect(reset_, &QToolButton::clicked, this, &WhatIfCard::reset);
    connect(keep_, &QToolButton::clicked, this, &WhatIfCard::keep_asked);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(1);
    grid->setColumnStretch(1, 1);
    add_head(*grid);
    for (const Lever lever : findings::all_levers)
        add_row(*grid, lever);
    column->addLayout(grid);
    predicted_->setFont(theme::strong(theme::body()));
    where_->setWordWrap(true);
    column->addWidget(predicted_);
    column->addWidget(where_);
    column->addWidget(leans_);
    pause_->setSingleShot(true);
    pause_->setInterval(0); // what moves in one go is asked for together
    connect(pause_, &QTimer::timeout, this, &WhatIfCard::ask);
    show_nothing();
}

void WhatIfCard::add_head(QGridLayout& grid) {
    head_ = {theme::plain_label(tr("change"), this, theme::small()),
             theme::plain_label(tr("a lap"), this, theme::small()),
             theme::plain_label(tr("a usual step is worth"), this, theme::small())};
    for (std::size_t i = 0; i < head_.size(); ++i)
        grid.addWidget(head_[i], 0, static_cast<int>(i) + 2, i == 0 ? Qt::AlignLeft : Qt::AlignRight);
}

void WhatIfCard::add_row(QGridLayout& grid, Lever lever) {
    Row& row = rows_[static_cast<std::size_t>(lever)];
    const int at = static_cast<int>(lever) + 1;
    row.name = theme::plain_label(text(findings::name(lever)), this, theme::small());
    row.slider = new QSlider(Qt::Horizontal, this);
    row.slider->setAccessibleName(row.name->text());
    row.slider->setPageStep(big_step);
    row.slider->setMinimumWidth(80);
    row.name->setBuddy(row.slider);
    row.amount = theme::plain_label(this, theme::small());
    row.effect = theme::plain_label(this, theme::small());
    const QFontMetrics metrics(theme::small());
    row.amount->setMinimumWidth(metrics.horizontalAdvance(QStringLiteral("−150 kg__")));
    row.effect->setMinimumWidth(metrics.horizontalAdvance(QStringLiteral("−0.00 ±0.00 s")));
    row.effect->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    grid.addWidget(row.name, at, 0);
    grid.addWidget(row.slider, at, 1);
    grid.addWidget(row.amount, at, 2);
    grid.addWidget(row.effect, at, 3);
    row.each = theme::plain_label(this, theme::small());
    row.each->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    grid.addWidget(row.each, at, 4);
    connect(row.slider, &QSlider::valueChanged, this, [this, lever] { moved(lever); });
}

void WhatIfCard::show_explanation(std::shared_ptr<const causes::Explanation> explanation, double lap_a_s,
                                  double lap_b_s) {
    explanation_ = std::move(explanation);
    lap_a_s_ = lap_a_s;
    lap_b_s_ = lap_b_s;
    choose(side_);
}

void WhatIfCard::show_nothing() {
    explanation_.reset();
    choose(side_);
}

void WhatIfCard::choose(causes::Side side) {
    side_ = side;
    choose_a_->setChecked(side == causes::Side::a);
    choose_b_->setChecked(side == causes::Side::b);
    reset();
    show_sensitivities();
}

void WhatIfCard::reset() {
    pause_->stop();
    under_way_ = moved_since_ = false;
    for (const Lever lever : findings::all_levers) {
        Row& row = rows_[static_cast<std::size_t>(lever)];
        const QSignalBlocker quiet(row.slider);
        const int most = findings::steps(lever, units_).most;
        row.slider->setRange(-most, most);
        row.slider->setValue(0);
        row.slider->setEnabled(offered(lever));
        row.effect->clear();
    }
    asked_.clear();
    shown_.reset();
    keep_->setEnabled(false);
    predicted_->setText(explanation_ ? tr("Move a control to see the predicted lap.") : QString());
    where_->clear();
    show_amounts();
    Q_EMIT taken_back();
}

void WhatIfCard::set_units(base::UnitSystem units) {
    units_ = units;
    reset();
    show_sensitivities();
}

bool WhatIfCard::offered(Lever lever) const {
    if (!explanation_) return false;
    return !explanation_->per_kilogram || (lever != Lever::power && lever != Lever::mass);
}

double WhatIfCard::amount(Lever lever) const {
    const int steps = rows_[static_cast<std::size_t>(lever)].slider->value();
    return static_cast<double>(steps) * findings::steps(lever, units_).step;
}

const std::shared_ptr<const causes::CarModel>& WhatIfCard::car() const {
    return side_ == causes::Side::a ? explanation_->model_a : explanation_->model_b;
}

void WhatIfCard::moved(Lever lever) {
    if (amount(lever) == 0.0) rows_[static_cast<std::size_t>(lever)].effect->clear();
    show_amounts();
    pause_->start();
}

void WhatIfCard::ask() {
    if (!explanation_ || !car()) return;
    moved_since_ = under_way_;
    if (under_way_) return; // asked again when the answer is there: a drag is followed as fast as answers come
    causes::Change& whole = whole_ = {};
    std::vector<causes::Change> alone;
    asked_.clear();
    for (const Lever lever : findings::all_levers) {
        if (amount(lever) == 0.0) continue;
        findings::add(whole, lever, amount(lever));
        alone.emplace_back();
        findings::add(alone.back(), lever, amount(lever));
        asked_.push_back(lever);
    }
    if (asked_.empty()) {
        reset();
        return;
    }
    std::vector<causes::Change> changes{whole};
    if (alone.size() > 1) changes.insert(changes.end(), alone.begin(), alone.end());
    under_way_ = true;
    Q_EMIT predictions_asked(car(), changes);
}

void WhatIfCard::show_predictions(const std::vector<causes::Prediction>& predictions) {
    if (!explanation_ || predictions.empty() || asked_.empty()) return;
    const causes::Seconds& lap = predictions.front().lap;
    predicted_->setText(
        tr("%1 predicted: %2 a lap")
            .arg(text(findings::predicted_lap_text(side_ == causes::Side::a ? lap_a_s_ : lap_b_s_, lap)),
                 text(findings::lap_change_text(lap))));
    where_->setText(text(findings::where_it_changes(*explanation_, predictions.front())));
    if (lap.told())
        shown_ = Shown{side_, whole_, lap};
    else
        shown_.reset();
    keep_->setEnabled(shown_.has_value());
    Q_EMIT predicted(predictions.front());
    for (std::size_t i = 0; i < asked_.size(); ++i) {
        const std::size_t at = asked_.size() == 1 ? 0 : i + 1;
        if (at < predictions.size())
            rows_[static_cast<std::size_t>(asked_[i])].effect->setText(
                text(findings::lap_change_text(predictions[at].lap)));
    }
    under_way_ = false;
    if (moved_since_) ask();
}

QString WhatIfCard::prediction_text() const {
    return predicted_->text();
}

void WhatIfCard::show_amounts() {
    for (const Lever lever : findings::all_levers) {
        const QString words = offered(lever) ? text(findings::change_text(lever, amount(lever), units_))
                              : explanation_ ? tr("needs mass")
                                             : QString();
        rows_[static_cast<std::size_t>(lever)].amount->setText(words);
    }
}

void WhatIfCard::show_sensitivities() {
    for (const Row& row : rows_)
        row.each->clear();
    leans_->setText(explanation_ ? text(findings::what_if_leans(*explanation_)) : QString());
    leans_->setVisible(!leans_->text().isEmpty());
    if (!explanation_) return;
    const auto& all = side_ == causes::Side::a ? explanation_->sensitivities_a : explanation_->sensitivities_b;
    for (const causes::Sensitivity& one : all) {
        if (!one.prediction.lap.told()) continue;
        const findings::Moved moved = findings::moved(one.change);
        QLabel& each = *rows_[static_cast<std::size_t>(moved.lever)].each;
        each.setText(models::labelled(text(findings::change_text(moved.lever, moved.amount, units_)),
                                      text(findings::lap_change_text(one.prediction.lap))));
        each.setToolTip(text(one.what));
    }
}

void WhatIfCard::set_palette(const theme::Palette& palette) {
    setStyleSheet(QStringLiteral("QToolButton:checked { font-weight: bold; border: 2px solid %1; padding: 2px 7px; }")
                      .arg(palette.ink.name()));
    for (const Row& row : rows_) {
        theme::set_ink(row.name, palette.quiet);
        theme::set_ink(row.amount, palette.ink);
        theme::set_ink(row.effect, palette.ink);
        theme::set_ink(row.each, palette.quiet);
    }
    for (QLabel* head : head_)
        theme::set_ink(head, palette.quiet);
    theme::set_ink(predicted_, palette.ink);
    theme::set_ink(where_, palette.ink);
    theme::set_ink(leans_, palette.quiet);
}

} // namespace lapwright::pages
