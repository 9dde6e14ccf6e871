// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/sessions_page.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/season_view.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/fonts.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace lapwright::pages {
namespace {

using models::Side;
using models::text;

constexpr int card_width_px = 540;
constexpr double longest_bar = 1.5; // of the slowest flying lap; longer laps fill the row

} // namespace

SessionsPage::SessionsPage(models::SessionShelf* shelf, const models::NoteShelf* notes, QWidget* parent)
    : QWidget(parent), shelf_(shelf), notes_(notes), palette_(theme::paper()), hint_(new QLabel(this)),
      scroll_(new QScrollArea(this)), shelf_view_(new QWidget), grid_(new QGridLayout(shelf_view_)),
      words_a_(new theme::ElidedLabel(this)), words_b_(new theme::ElidedLabel(this)),
      swap_(new QPushButton(tr("Swap A and B"), this)), compare_(new QPushButton(tr("Compare A and B"), this)),
      trial_(new QPushButton(tr("Setup trial…"), this)), book_button_(new QPushButton(tr("The book…"), this)),
      book_(new BookPanel(this)) {
    auto* open = new QPushButton(tr("Open files…"), this);
    hint_->setTextFormat(Qt::PlainText);
    hint_->setWordWrap(true);
    set_track({}, {});
    auto* top = new QHBoxLayout;
    top->addWidget(open);
    top->addWidget(book_button_);
    top->addWidget(hint_, 1);

    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setSpacing(10);
    scroll_->setWidget(shelf_view_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(top);
    column->addWidget(scroll_, 1);
    column->addWidget(book_, 1);
    book_->hide();
    set_book_usable(false);
    column->addWidget(make_pairing_bar());

    connect(open, &QPushButton::clicked, this, &SessionsPage::open_asked);
    connect(book_button_, &QPushButton::clicked, this, [this] {
        if (book_->isVisible())
            show_book(false);
        else
            Q_EMIT book_asked();
    });
    connect(book_, &BookPanel::left, this, [this] { show_book(false); });
    connect(swap_, &QPushButton::clicked, this, &SessionsPage::swap_asked);
    connect(compare_, &QPushButton::clicked, this, &SessionsPage::compare_asked);
    connect(trial_, &QPushButton::clicked, this, &SessionsPage::trial_asked);
    trial_->setToolTip(tr("What is a change worth? Sessions without it and with it, compared segment by segment"));
    connect(shelf_, &models::SessionShelf::sessions_changed, this, &SessionsPage::rebuild);
    connect(shelf_, &models::SessionShelf::picks_changed, this, &SessionsPage::show_picks);
    connect(notes_, &models::NoteShelf::changed, this, &SessionsPage::show_notes);
    rebuild();
}

QWidget* SessionsPage::make_pairing_bar() {
    auto* bar = new QFrame(this);
    bar->setObjectName(QStringLiteral("card"));
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(12, 8, 12, 8);
    row->addWidget(words_a_, 1);
    row->addWidget(words_b_, 1);
    row->addWidget(swap_);
    row->addWidget(compare_);
    row->addWidget(trial_);
    return bar;
}

void SessionsPage::set_track(const QString& name, const QString& file) {
    QString words = tr("Drop logger files anywhere in this window, or open them. Files are read and never changed.");
    if (!file.isEmpty()) words += QLatin1Char(' ') + tr("Line and corners of %1 come from %2.").arg(name, file);
    hint_->setText(words);
}

void SessionsPage::set_palette(const theme::Palette& palette) {
    palette_ = palette;
    book_->season().set_palette(palette);
    for (SessionCard* card : cards_)
        card->set_palette(palette);
    for (const auto& [label, colour] : {std::pair(words_a_, palette.a), std::pair(words_b_, palette.b)}) {
        QPalette own = label->palette();
        own.setColor(QPalette::WindowText, colour);
        label->setPalette(own);
    }
}

void SessionsPage::set_units(base::UnitSystem units) {
    units_ = units;
    book_->season().set_units(units);
    for (SessionCard* card : cards_)
        card->set_units(units);
}

void SessionsPage::rebuild() {
    const SessionCard* before = focused();
    const QString focused_path = before != nullptr ? before->path() : QString();
    keep_notes();
    for (SessionCard* card : cards_)
        delete card;
    cards_.clear();
    const double scale = full_scale_s();
    for (const auto& entry : shelf_->entries()) {
        auto* card = new SessionCard(entry, shelf_view_);
        card->set_palette(palette_);
        card->laps().set_scale(scale);
        card->set_units(units_);
        card->show_report(reported_.contains(entry.path));
        connect(card, &SessionCard::report_toggled, this, [this](const QString& path, bool shown) {
            if (shown)
                reported_.insert(path);
            else
                reported_.remove(path);
        });
        connect(card, &SessionCard::picked, this, [this](const QString& path, int lap, bool as_a) {
            Q_EMIT pick_asked(as_a ? Side::a : Side::b, {path, lap});
        });
        connect(card, &SessionCard::columns_asked, this, &SessionsPage::columns_asked);
        connect(card, &SessionCard::note_kept, this, &SessionsPage::note_kept);
        card->show_notes(*notes_);
        // The card is deleted by what it asks for: only after its signal has returned.
        connect(card, &SessionCard::close_asked, shelf_, &models::SessionShelf::remove, Qt::QueuedConnection);
        cards_.push_back(card);
        if (entry.path == focused_path) card->laps().setFocus();
    }
    arrange();
    show_picks();
}

double SessionsPage::full_scale_s() const {
    double slowest = 1.0;
    double longest = 1.0;
    for (const auto& entry : shelf_->entries()) {
        for (const lap::Lap& lap : entry.session->laps) {
            longest = std::max(longest, lap.time_s());
            if (lap.kind == lap::LapKind::flying && lap.clean) slowest = std::max(slowest, lap.time_s());
        }
    }
    return slowest > 1.0 ? std::min(longest, longest_bar * slowest) : longest;
}

void SessionsPage::arrange() {
    const int columns = std::max(1, scroll_->viewport()->width() / card_width_px);
    const int count = static_cast<int>(cards_.size());
    // Giving a row a stretch makes the grid longer: its length is asked for once.
    for (int row = 0, rows = grid_->rowCount(); row < rows; ++row)
        grid_->setRowStretch(row, 0);
    for (int column = 0, all = std::max(grid_->columnCount(), columns); column < all; ++column) {
        grid_->setColumnStretch(column, column < columns ? 1 : 0);
    }
    for (int i = 0; i < count; ++i)
        grid_->addWidget(cards_[static_cast<std::size_t>(i)], i / columns, i % columns);
    grid_->setRowStretch(count / columns + 1, 1);
}

void SessionsPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void SessionsPage::show_picks() {
    for (SessionCard* card : cards_) {
        const auto lap_of = [card](const std::optional<models::LapPick>& pick) {
            return pick && pick->path == card->path() ? std::optional(pick->lap) : std::nullopt;
        };
        card->laps().set_picked(lap_of(shelf_->picked(Side::a)), lap_of(shelf_->picked(Side::b)));
    }
    words_a_->set_text(pick_words(Side::a));
    words_b_->set_text(pick_words(Side::b));
    swap_->setEnabled(shelf_->picked(Side::a).has_value() || shelf_->picked(Side::b).has_value());
    compare_->setEnabled(shelf_->complete());
    trial_->setEnabled(shelf_->entries().size() > 1);
}

QString SessionsPage::pick_words(Side side) const {
    const QString letter = side == Side::a ? QStringLiteral("A") : QStringLiteral("B");
    const auto& pick = shelf_->picked(side);
    if (!pick) return tr("%1: no lap yet").arg(letter);
    const auto session = shelf_->session(pick->path);
    const lap::Lap* lap = session->lap(pick->lap);
    // The name stands last: it is what gives way where there is no room.
    return tr("%1: lap %2, %3, %4")
        .arg(letter, text(base::integer_text(pick->lap)),
             text(base::lap_time_with_margin(lap->time_s(), lap->time_sd_s)), text(session->title()));
}

SessionCard* SessionsPage::focused() const {
    const auto found = std::ranges::find_if(cards_, [](SessionCard* card) { return card->laps().hasFocus(); });
    return found == cards_.end() ? nullptr : *found;
}

void SessionsPage::pick_focused(Side side) {
    if (SessionCard* card = focused()) Q_EMIT pick_asked(side, {card->path(), card->laps().current_lap()});
}

void SessionsPage::ask_for_columns() {
    if (const SessionCard* card = focused_or_only()) Q_EMIT columns_asked(card->path());
}

void SessionsPage::toggle_report() {
    if (SessionCard* card = focused_or_only()) card->show_report(!card->report_shown());
}

SessionCard* SessionsPage::focused_or_only() const {
    SessionCard* card = focused();
    return card == nullptr && cards_.size() == 1 ? cards_.front() : card;
}

void SessionsPage::show_notes() {
    for (SessionCard* card : cards_)
        card->show_notes(*notes_);
}

void SessionsPage::write_session_note() {
    if (SessionCard* card = focused_or_only()) card->write_session_note();
}

void SessionsPage::write_lap_note() {
    if (SessionCard* card = focused_or_only()) card->write_lap_note();
}

void SessionsPage::show_book(bool shown) {
    book_->setVisible(shown);
    scroll_->setVisible(!shown);
    book_button_->setText(shown ? tr("Open sessions") : tr("The book…"));
    if (shown)
        book_->show_part(book_->part());
    else if (!cards_.empty())
        cards_.back()->laps().setFocus();
}

BookView& SessionsPage::book() {
    return book_->sessions();
}

void SessionsPage::focus_session(const QString& path) {
    for (SessionCard* card : cards_) {
        if (card->path() != path) continue;
        card->laps().setFocus();
        scroll_->ensureWidgetVisible(card);
    }
}

void SessionsPage::set_book_usable(bool usable) {
    book_button_->setVisible(usable);
    if (!usable && book_->isVisible()) show_book(false);
}

void SessionsPage::keep_notes() {
    for (SessionCard* card : cards_)
        card->keep_notes();
}

void SessionsPage::close_focused() {
    if (const SessionCard* card = focused()) shelf_->remove(card->path());
}

} // namespace lapwright::pages
