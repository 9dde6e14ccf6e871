// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/start_view.h"

#include "ui/models/book_list.h"
#include "ui/models/pairing_list.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/theme/plain_label.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

constexpr std::size_t most_rows = 6;
constexpr int drop_area_px = 150;

template <typename Row>
std::vector<Row> first_rows(std::vector<Row> rows) {
    rows.resize(std::min(rows.size(), most_rows));
    return rows;
}

void stretch_columns(BookTable& list, int first, int last) {
    for (int column = 0; column < list.model()->columnCount(); ++column)
        list.horizontalHeader()->setSectionResizeMode(
            column, column >= first && column <= last ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
}

} // namespace

StartView::StartView(QWidget* parent)
    : QWidget(parent), pairing_list_(new models::PairingList(this)), session_list_(new models::BookList(this)),
      open_(new QPushButton(tr("Open files…"), this)), samples_(new QPushButton(tr("Try the sample sessions"), this)),
      pairings_title_(theme::plain_label(tr("Compared last"), this, theme::strong(theme::body()))),
      pairings_(new BookTable(*pairing_list_, tr("Compared last"), this)),
      sessions_title_(theme::plain_label(tr("Driven last"), this, theme::strong(theme::body()))),
      sessions_(new BookTable(*session_list_, tr("Driven last"), this)) {
    stretch_columns(*pairings_, models::PairingList::a_column, models::PairingList::outcome_column);
    stretch_columns(*sessions_, models::BookList::driver_column, models::BookList::car_column);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(make_drop_area());
    column->addWidget(pairings_title_);
    column->addWidget(pairings_);
    column->addWidget(sessions_title_);
    column->addWidget(sessions_);
    column->addStretch(1);
    set_samples(false);
    show_pairings({});
    show_sessions({});
    connect(open_, &QPushButton::clicked, this, &StartView::open_asked);
    connect(samples_, &QPushButton::clicked, this, &StartView::samples_asked);
    connect(pairings_, &BookTable::row_opened, this,
            [this](int row) { Q_EMIT pairing_asked(pairing_list_->pairings().at(static_cast<std::size_t>(row))); });
    connect(sessions_, &BookTable::row_opened, this,
            [this](int row) { Q_EMIT session_asked(session_list_->sessions().at(static_cast<std::size_t>(row))); });
}

// The whole window takes files; this is where the eye looks for it.
QWidget* StartView::make_drop_area() {
    auto* area = new QFrame(this);
    area->setObjectName(QStringLiteral("drop"));
    area->setFixedHeight(drop_area_px);
    auto* words =
        theme::plain_label(tr("Drop the logger files of two drivers here"), area, theme::strong(theme::body()));
    auto* quiet = theme::plain_label(tr("Text, GPX or NMEA, from any logger. They are read and never changed."), area,
                                     theme::small());
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(open_);
    buttons->addWidget(samples_);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(area);
    column->addStretch(1);
    column->addWidget(words, 0, Qt::AlignHCenter);
    column->addWidget(quiet, 0, Qt::AlignHCenter);
    column->addLayout(buttons);
    column->addStretch(1);
    return area;
}

void StartView::fit(BookTable& list, QLabel& title) {
    const int rows = list.model()->rowCount();
    list.setVisible(rows > 0);
    title.setVisible(rows > 0);
    list.setFixedHeight(list.horizontalHeader()->sizeHint().height() +
                        rows * list.verticalHeader()->defaultSectionSize() + 4);
    list.setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    if (rows > 0 && list.current_row() < 0) list.choose_row(0);
}

void StartView::show_pairings(std::vector<book::PairingSummary> pairings) {
    pairing_list_->set_pairings(first_rows(std::move(pairings)));
    fit(*pairings_, *pairings_title_);
}

void StartView::show_sessions(std::vector<book::SessionSummary> sessions) {
    session_list_->set_sessions(first_rows(std::move(sessions)));
    fit(*sessions_, *sessions_title_);
}

void StartView::set_samples(bool there) {
    samples_->setVisible(there);
}

void StartView::begin() {
    if (pairing_list_->rowCount() > 0)
        pairings_->setFocus();
    else
        open_->setFocus();
}

} // namespace lapwright::pages
