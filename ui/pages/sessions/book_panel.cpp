// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/book_panel.h"

#include "ui/pages/sessions/book_view.h"
#include "ui/pages/sessions/pairings_view.h"
#include "ui/pages/sessions/predictions_view.h"
#include "ui/pages/sessions/season_view.h"
#include "ui/theme/fonts.h"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace lapwright::pages {
namespace {

constexpr int beside_px = 28; // the style's padding of such a button

} // namespace

BookPanel::BookPanel(QWidget* parent)
    : QWidget(parent), sessions_(new BookView(this)), season_(new SeasonView(this)), pairings_(new PairingsView(this)),
      predictions_(new PredictionsView(this)), stack_(new QStackedWidget(this)), buttons_{} {
    const std::array<QString, 4> names{tr("Sessions of the book"), tr("Season"), tr("Kept pairings"),
                                       tr("Predictions")};
    auto* row = new QHBoxLayout;
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        auto* button = new QToolButton(this);
        button->setObjectName(QStringLiteral("page"));
        button->setText(names[i]);
        button->setCheckable(true);
        button->setFocusPolicy(Qt::TabFocus);
        // The one that is checked is written bold, and needs the room for it.
        button->setMinimumWidth(QFontMetrics(theme::strong(theme::body())).horizontalAdvance(names[i]) + beside_px);
        // The part that is shown decides which one is checked.
        connect(button, &QToolButton::clicked, this, [this, i] {
            buttons_[i]->setChecked(static_cast<std::size_t>(stack_->currentIndex()) == i);
            Q_EMIT part_asked(static_cast<Part>(i));
        });
        buttons_[i] = button;
        row->addWidget(button);
    }
    row->addStretch(1);
    for (QWidget* part : std::initializer_list<QWidget*>{sessions_, season_, pairings_, predictions_})
        stack_->addWidget(part);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(row);
    column->addWidget(stack_, 1);
    connect(sessions_, &BookView::left, this, &BookPanel::left);
    connect(season_, &SeasonView::left, this, &BookPanel::left);
    connect(pairings_, &PairingsView::left, this, &BookPanel::left);
    connect(predictions_, &PredictionsView::left, this, &BookPanel::left);
    show_part(Part::sessions);
}

void BookPanel::show_part(Part part) {
    const auto index = static_cast<std::size_t>(part);
    stack_->setCurrentIndex(static_cast<int>(index));
    for (std::size_t i = 0; i < buttons_.size(); ++i)
        buttons_[i]->setChecked(i == index);
    switch (part) {
    case Part::sessions:
        return sessions_->begin();
    case Part::season:
        return season_->begin();
    case Part::pairings:
        return pairings_->begin();
    case Part::predictions:
        return predictions_->begin();
    }
}

BookPanel::Part BookPanel::part() const {
    return static_cast<Part>(stack_->currentIndex());
}

} // namespace lapwright::pages
