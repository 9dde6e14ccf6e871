// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/sessions_page.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/lap_list.h"
#include "ui/pages/sessions/names_form.h"
#include "ui/pages/sessions/season_view.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/start_view.h"
#include "ui/theme/elided_label.h"
#include "ui/theme/plain_label.h"

#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

namespace lapwright::pages {
namespace {

using models::text;
using workspace::Side;

constexpr int card_width_px = 540;

} // namespace

SessionsPage::SessionsPage(models::OpenSessions* sessions, const models::Notes* notes, QWidget* parent)
    : QWidget(parent), sessions_(sessions), notes_(notes), palette_(theme::paper()),
      hint_(theme::wrapped_label({}, this)), new_files_(new QPushButton(this)), start_(new StartView(this)),
      scroll_(new QScrollArea(this)), cards_view_(new QWidget), grid_(new QGridLayout(cards_view_)),
      words_a_(new theme::ElidedLabel(this)), words_b_(new theme::ElidedLabel(this)),
      swap_(new QPushButton(tr("Swap A and B"), this)), compare_(new QPushButton(tr("Compare A and B"), this)),
      trial_(new QPushButton(tr("Setup trial…"), this)), book_button_(new QPushButton(tr("The book…"), this)),
      book_(new BookPanel(this)) {
    auto* open = new QPushButton(tr("Open files…"), this);
    set_track({}, {});
    auto* top = new QHBoxLayout;
    top->addWidget(open);
    top->addWidget(book_button_);
    top->addWidget(new_files_);
    top->addWidget(hint_, 1);
    new_files_->setObjectName(QStringLiteral("new files"));
    new_files_->setMenu(new QMenu(new_files_));
    show_new_files({});

    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setSpacing(10);
    scroll_->setWidget(cards_view_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(top);
    column->addWidget(start_, 1);
    column->addWidget(scroll_, 1);
    column->addWidget(book_, 1);
    book_->hide();
    set_book_usable(false);
    pairing_bar_ = make_pairing_bar();
    column->addWidget(pairing_bar_);

    connect(open, &QPushButton::clicked, this, &SessionsPage::open_asked);
    connect(start_, &StartView::open_asked, this, &SessionsPage::open_asked);
    connect(start_, &StartView::files_asked, this, &SessionsPage::files_asked);
    connect(start_, &StartView::samples_asked, this, &SessionsPage::samples_asked);
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
    connect(sessions_, &models::OpenSessions::sessions_changed, this, &SessionsPage::rebuild);
    connect(sessions_, &models::OpenSessions::picks_changed, this, &SessionsPage::show_picks);
    connect(sessions_, &models::OpenSessions::further_changed, this, &SessionsPage::show_picks);
    connect(notes_, &models::Notes::changed, this, &SessionsPage::show_notes);
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
    for (const auto& [label, colour] : {std::pair(words_a_, palette.a), std::pair(words_b_, palette.b)})
        theme::set_ink(label, colour);
}

void SessionsPage::set_units(base::UnitSystem units) {
    units_ = units;
    book_->season().set_units(units);
    book_->predictions().set_units(units);
    for (SessionCard* card : cards_)
        card->set_units(units);
}

void SessionsPage::rebuild() {
    if (rename_cards()) {
        follow_scale();
        show_picks();
        return;
    }
    const SessionCard* before = focused();
    const auto focused_key = before != nullptr ? std::optional(before->key()) : std::nullopt;
    keep_notes();
    for (SessionCard* card : cards_)
        delete card;
    cards_.clear();
    for (const auto& entry : sessions_->now().entries()) {
        SessionCard* card = make_card(entry);
        cards_.push_back(card);
        if (entry.key == focused_key) card->laps().setFocus();
    }
    follow_scale();
    arrange();
    show_picks();
    show_part();
}

void SessionsPage::follow_scale() {
    const workspace::LapScale scale = workspace::lap_scale(sessions_->now().entries());
    for (SessionCard* card : cards_) {
        const auto found = scale.fastest_s.find(card->key());
        card->laps().set_scale(found == scale.fastest_s.end() ? std::nullopt : std::optional(found->second),
                               scale.full_s);
    }
}

void SessionsPage::set_lap_order(workspace::LapOrder order) {
    lap_order_ = order;
    for (SessionCard* card : cards_)
        card->laps().set_order(order);
}

void SessionsPage::show_part() {
    const bool book = book_->isVisibleTo(this);
    start_->setVisible(!book && cards_.empty());
    scroll_->setVisible(!book && !cards_.empty());
    pairing_bar_->setVisible(!cards_.empty());
    new_files_->setVisible(!cards_.empty() && !new_files_->menu()->isEmpty());
}

void SessionsPage::show_new_files(const std::vector<workspace::NewFile>& files) {
    start_->show_new_files(files);
    QMenu& menu = *new_files_->menu();
    menu.clear();
    QStringList all;
    for (const workspace::NewFile& file : files) {
        const QString path = models::path(file.path);
        all << path;
        QString name = QFileInfo(path).fileName().replace(QLatin1Char('&'), QLatin1String("&&"));
        menu.addAction(tr("%1, written %2").arg(name, text(base::date_text(file.changed_unix_s))), this,
                       [this, path] { Q_EMIT files_asked({path}); });
    }
    if (all.size() > 1) menu.addAction(tr("&All of them"), this, [this, all] { Q_EMIT files_asked(all); });
    new_files_->setText(tr("New files: %1").arg(all.size()));
    new_files_->setVisible(!cards_.empty() && !all.isEmpty());
}

// What is being typed on a card, and where, is left alone.
bool SessionsPage::rename_cards() {
    const auto& entries = sessions_->now().entries();
    return !cards_.empty() && std::ranges::equal(cards_, entries, [](SessionCard* card, const auto& entry) {
        return card->rename(entry);
    });
}

void SessionsPage::show_video(const workspace::SessionKey& key, const QString& name) {
    videos_[key] = name;
    for (SessionCard* const card : cards_)
        if (card->key() == key) card->show_video(name);
}

SessionCard* SessionsPage::make_card(const workspace::OpenSessions::Entry& entry) {
    auto* card = new SessionCard(entry, cards_view_);
    card->set_palette(palette_);
    card->set_units(units_);
    card->offer(known_);
    card->show_report(reported_.contains(entry.key));
    connect(card, &SessionCard::report_toggled, this, [this](const workspace::SessionKey& key, bool shown) {
        if (shown)
            reported_.insert(key);
        else
            reported_.erase(key);
    });
    connect(card, &SessionCard::picked, this, [this](const workspace::SessionKey& key, int lap, bool as_a) {
        Q_EMIT pick_asked(as_a ? Side::a : Side::b, {key, lap});
    });
    connect(card, &SessionCard::further_asked, this,
            [this](const workspace::SessionKey& key, int lap) { Q_EMIT further_asked({key, lap}); });
    connect(card, &SessionCard::columns_asked, this, &SessionsPage::columns_asked);
    connect(card, &SessionCard::names_given, this, &SessionsPage::names_given);
    connect(card, &SessionCard::note_kept, this, &SessionsPage::note_kept);
    connect(card, &SessionCard::lap_judged, this, &SessionsPage::lap_judged);
    connect(&card->laps(), &LapList::session_asked, this, [this, card](int step) {
        const auto own = std::ranges::find(cards_, card) - cards_.begin() + step;
        if (own >= 0 && own < static_cast<std::ptrdiff_t>(cards_.size()))
            focus_session(cards_[static_cast<std::size_t>(own)]->key());
    });
    connect(&card->laps(), &LapList::order_asked, this, &SessionsPage::order_asked);
    card->laps().set_order(lap_order_);
    card->show_notes(notes_->now());
    if (const auto video = videos_.find(entry.key); video != videos_.end()) card->show_video(video->second);
    Q_EMIT card_made(entry.key, entry.session->recording->source_file);
    // The card is deleted by what it asks for: only after its signal has returned.
    connect(card, &SessionCard::close_asked, this, &SessionsPage::close_session, Qt::QueuedConnection);
    return card;
}

void SessionsPage::offer(const book::Names& known) {
    known_ = known;
    for (SessionCard* card : cards_)
        card->offer(known);
}

void SessionsPage::type_names() {
    SessionCard* card = card_in_hand();
    if (card == nullptr && !cards_.empty()) card = cards_.front();
    if (card != nullptr) card->names().begin();
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
        const auto lap_of = [card](const std::optional<workspace::LapPick>& pick) {
            return pick && pick->session == card->key() ? std::optional(pick->lap) : std::nullopt;
        };
        card->laps().set_picked(lap_of(sessions_->now().picks().a), lap_of(sessions_->now().picks().b));
        std::map<int, QString> letters;
        const auto& further = sessions_->now().further();
        for (std::size_t i = 0; i < further.size(); ++i)
            if (further[i].session == card->key()) letters[further[i].lap] = models::further_letter(i);
        card->laps().set_further(std::move(letters));
    }
    const workspace::Picks& picks = sessions_->now().picks();
    words_a_->set_text(pick_words(Side::a));
    words_b_->set_text(pick_words(Side::b));
    swap_->setEnabled(picks.a || picks.b);
    compare_->setEnabled(picks.complete());
    trial_->setEnabled(sessions_->now().entries().size() > 1);
}

QString SessionsPage::pick_words(Side side) const {
    const QString letter = side == Side::a ? QStringLiteral("A") : QStringLiteral("B");
    const auto& pick = sessions_->now().picks().of(side);
    if (!pick) return tr("%1: no lap yet").arg(letter);
    const auto session = sessions_->now().session(pick->session);
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
    if (SessionCard* card = focused()) Q_EMIT pick_asked(side, {card->key(), card->laps().current_lap()});
}

void SessionsPage::turn_further_focused() {
    if (SessionCard* card = focused()) Q_EMIT further_asked({card->key(), card->laps().current_lap()});
}

void SessionsPage::ask_for_columns() {
    if (const SessionCard* card = card_in_hand()) Q_EMIT columns_asked(card->key());
}

void SessionsPage::toggle_report() {
    if (SessionCard* card = card_in_hand()) card->show_report(!card->report_shown());
}

SessionCard* SessionsPage::card_in_hand() const {
    SessionCard* card = focused();
    return card == nullptr && cards_.size() == 1 ? cards_.front() : card;
}

void SessionsPage::show_notes() {
    for (SessionCard* card : cards_)
        card->show_notes(notes_->now());
}

void SessionsPage::write_session_note() {
    if (SessionCard* card = card_in_hand()) card->write_session_note();
}

void SessionsPage::judge_lap() {
    if (SessionCard* card = card_in_hand()) card->judge_lap();
}

void SessionsPage::write_lap_note() {
    if (SessionCard* card = card_in_hand()) card->write_lap_note();
}

void SessionsPage::show_book(bool shown) {
    book_->setVisible(shown);
    show_part();
    book_button_->setText(shown ? tr("Open sessions") : tr("The book…"));
    if (shown)
        book_->show_part(book_->part());
    else if (!cards_.empty())
        cards_.back()->laps().setFocus();
    else
        start_->begin();
}

BookView& SessionsPage::book() {
    return book_->sessions();
}

void SessionsPage::begin() {
    if (cards_.empty() || !scroll_->isVisible()) return;
    const auto& picked = sessions_->now().picks().a;
    focus_session(picked ? picked->session : cards_.front()->key());
}

void SessionsPage::focus_session(const workspace::SessionKey& key) {
    for (SessionCard* card : cards_) {
        if (card->key() != key) continue;
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
    if (const SessionCard* card = focused()) close_session(card->key());
}

void SessionsPage::close_session(const workspace::SessionKey& key) {
    sessions_->edit([&key](workspace::OpenSessions& open) { open.remove(key); });
}

} // namespace lapwright::pages
