// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/pairings_view.h"

#include "ui/models/pairing_list.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/theme/plain_label.h"

#include <QHeaderView>
#include <QLabel>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::pages {

using models::PairingList;

PairingsView::PairingsView(QWidget* parent)
    : QWidget(parent), model_(new PairingList(this)),
      list_(new BookTable(*model_, tr("Pairings that the book keeps"), this)), said_(theme::plain_label(this)),
      chosen_(theme::plain_label(this, theme::small())) {
    said_->setWordWrap(true);
    chosen_->setWordWrap(true);
    QHeaderView* header = list_->horizontalHeader();
    for (int column = 0; column < model_->columnCount(); ++column) {
        const bool wide = column >= PairingList::a_column && column <= PairingList::outcome_column;
        header->setSectionResizeMode(column, wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(said_);
    column->addWidget(list_, 1);
    column->addWidget(chosen_);
    connect(list_, &BookTable::row_opened, this,
            [this](int row) { Q_EMIT pairing_asked(model_->pairings().at(static_cast<std::size_t>(row))); });
    connect(list_, &BookTable::removal_asked, this,
            [this](int row) { Q_EMIT removal_wanted(model_->pairings().at(static_cast<std::size_t>(row))); });
    connect(list_, &BookTable::row_chosen, this, &PairingsView::follow_row);
    connect(list_, &BookTable::left, this, &PairingsView::left);
}

void PairingsView::show_pairings(std::vector<book::PairingSummary> pairings) {
    const int before = list_->current_row();
    model_->set_pairings(std::move(pairings));
    const int count = model_->rowCount();
    said_->setText(
        count == 0 ? tr("No pairing yet: compare two laps, and what came out is kept here.")
        : count == 1
            ? tr("One pairing. Return opens it with both its sessions, Delete takes it out.")
            : tr("%1 pairings, the last one first. Return opens one with both its sessions, Delete takes it out.")
                  .arg(count));
    list_->choose_row(before);
    follow_row();
}

void PairingsView::begin() {
    list_->setFocus();
}

// The row in full: its cells are cut where they are long.
void PairingsView::follow_row() {
    const int row = list_->current_row();
    QStringList words;
    for (const auto column : {PairingList::a_column, PairingList::b_column, PairingList::outcome_column})
        if (row >= 0) words << model_->index(row, column).data().toString();
    chosen_->setText(words.join(QStringLiteral(" · ")));
}

QString PairingsView::chosen() const {
    return chosen_->text();
}

QString PairingsView::said() const {
    return said_->text();
}

} // namespace lapwright::pages
