// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/start_view.h"

#include "ui/models/book_list.h"
#include "ui/models/new_file_list.h"
#include "ui/models/pairing_list.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/theme/plain_label.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

constexpr std::size_t most_rows = 4; // of each list, so that all three have room
constexpr int drop_area_px = 120;

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
    : QWidget(parent), new_file_list_(new models::NewFileList(this)), pairing_list_(new models::PairingList(this)),
      session_list_(new models::BookList(this)), open_(new QPushButton(tr("Open files…"), this)),
      samples_(new QPushButton(tr("Try the sample sessions"), this)),
      new_files_title_(theme::plain_label(tr("New files, not opened yet"), this, theme::strong(theme::body()))),
      new_files_(new BookTable(*new_file_list_, tr("New files, not opened yet"), this)),
      pairings_title_(theme::plain_label(tr("Compared last"), this, theme::strong(theme::body()))),
      pairings_(new BookTable(*pairing_list_, tr("Compared last"), this)),
      sessions_title_(theme::plain_label(tr("Driven last"), this, theme::strong(theme::body()))),
      sessions_(new BookTable(*session_list_, tr("Driven last"), this)) {
    stretch_columns(*new_files_, models::NewFileList::file_column, models::NewFileList::folder_column);
    new_files_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    new_files_->setToolTip(tr("Return opens what is chosen; Shift and the arrows choose several"));
    stretch_columns(*pairings_, models::PairingList::a_column, models::PairingList::outcome_column);
    give_pictures();
    stretch_columns(*sessions_, models::BookList::driver_column, models::BookList::car_column);
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    offer_ = make_offer();
    column->addWidget(offer_);
    column->addWidget(make_drop_area());
    column->addWidget(new_files_title_);
    column->addWidget(new_files_);
    column->addWidget(pairings_title_);
    column->addWidget(pairings_);
    column->addWidget(sessions_title_);
    column->addWidget(sessions_);
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(content);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    offer_again({});
    set_samples(false);
    show_new_files({});
    show_pairings({});
    show_sessions({});
    connect(open_, &QPushButton::clicked, this, &StartView::open_asked);
    connect(samples_, &QPushButton::clicked, this, &StartView::samples_asked);
    connect(new_files_, &BookTable::row_opened, this, &StartView::open_new_files);
    connect(pairings_, &BookTable::row_opened, this,
            [this](int row) { Q_EMIT pairing_asked(pairing_list_->pairings().at(static_cast<std::size_t>(row))); });
    connect(sessions_, &BookTable::row_opened, this,
            [this](int row) { Q_EMIT session_asked(session_list_->sessions().at(static_cast<std::size_t>(row))); });
}

QWidget* StartView::make_offer() {
    auto* card = new QFrame(this);
    card->setObjectName(QStringLiteral("card"));
    offered_ = theme::wrapped_label({}, card);
    restore_ = new QPushButton(tr("Open them again"), card);
    auto* decline = new QPushButton(tr("Leave them closed"), card);
    auto* row = new QHBoxLayout(card);
    row->addWidget(offered_, 1);
    row->addWidget(restore_);
    row->addWidget(decline);
    connect(restore_, &QPushButton::clicked, this, &StartView::restore_asked);
    connect(decline, &QPushButton::clicked, this, &StartView::restore_declined);
    return card;
}

void StartView::offer_again(const QString& sentence) {
    offered_->setText(sentence);
    offer_->setVisible(!sentence.isEmpty());
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

// What is chosen stays so while others come.
void StartView::show_new_files(const std::vector<workspace::NewFile>& files) {
    std::vector<workspace::NewFile> shown = first_rows(files);
    if (shown == new_file_list_->files()) {
        fit(*new_files_, *new_files_title_);
        return;
    }
    QStringList chosen;
    for (const QModelIndex& index : new_files_->selectionModel()->selectedRows())
        chosen << new_file_list_->path_at(index.row());
    new_file_list_->set_files(std::move(shown));
    fit(*new_files_, *new_files_title_);
    if (chosen.isEmpty()) return;
    new_files_->clearSelection();
    for (int row = 0; row < new_file_list_->rowCount(); ++row)
        if (chosen.contains(new_file_list_->path_at(row)))
            new_files_->selectionModel()->select(new_file_list_->index(row, 0),
                                                 QItemSelectionModel::Select | QItemSelectionModel::Rows);
}

// In their order on the page.
void StartView::open_new_files() {
    QStringList paths;
    for (int row = 0; row < new_file_list_->rowCount(); ++row)
        if (new_files_->selectionModel()->isRowSelected(row)) paths << new_file_list_->path_at(row);
    if (!paths.isEmpty()) Q_EMIT files_asked(paths);
}

void StartView::show_pairings(std::vector<book::PairingSummary> pairings) {
    pairing_list_->set_pairings(first_rows(std::move(pairings)));
    fit(*pairings_, *pairings_title_);
}

void StartView::show_sessions(std::vector<book::SessionSummary> sessions) {
    session_list_->set_sessions(first_rows(std::move(sessions)));
    fit(*sessions_, *sessions_title_);
}

void StartView::give_pictures() {
    for (BookTable* list : {pairings_, sessions_})
        list->verticalHeader()->setDefaultSectionSize(PictureCell::row_px);
    const auto found = [](const auto& pictures, const auto& id) {
        const auto at = pictures.find(id);
        return at == pictures.end() ? nullptr : &at->second;
    };
    const auto gap = [this, found](int row) {
        return found(gaps_, shown_pairings().at(static_cast<std::size_t>(row)).kept.id);
    };
    const auto outline = [this, found](int row) {
        return found(outlines_, shown_sessions().at(static_cast<std::size_t>(row)).id);
    };
    pairings_->setItemDelegateForColumn(0, new PictureCell(gap, this));
    sessions_->setItemDelegateForColumn(0, new PictureCell(outline, this));
}

void StartView::show_pictures(const book::Pictures& pictures) {
    for (const auto& [id, gaps_s] : pictures.gaps)
        gaps_[id] = picture_of(gaps_s);
    for (const auto& [id, places_m] : pictures.outlines)
        outlines_[id] = picture_of(places_m);
    pairings_->viewport()->update();
    sessions_->viewport()->update();
}

const std::vector<book::PairingSummary>& StartView::shown_pairings() const {
    return pairing_list_->pairings();
}

const std::vector<book::SessionSummary>& StartView::shown_sessions() const {
    return session_list_->sessions();
}

void StartView::set_samples(bool there) {
    samples_->setVisible(there);
}

void StartView::begin() {
    if (!offered_->text().isEmpty()) {
        restore_->setFocus();
        return;
    }
    if (new_file_list_->rowCount() > 0)
        new_files_->setFocus();
    else if (pairing_list_->rowCount() > 0)
        pairings_->setFocus();
    else
        open_->setFocus();
}

} // namespace lapwright::pages
