// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/book_view.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/book_list.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/book_filter.h"
#include "ui/pages/sessions/book_table.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <optional>
#include <utility>

namespace lapwright::pages {
namespace {

using models::BookList;
using models::text;

QString counted(int count, const QString& one, const QString& several) {
    return count == 1 ? one : several.arg(text(base::integer_text(count)));
}

} // namespace

BookView::BookView(QWidget* parent)
    : QWidget(parent), model_(new BookList(this)), filter_(new BookFilter(this)),
      list_(new BookTable(*model_, tr("Sessions of the book"), this)), said_(theme::plain_label(this, theme::small())),
      open_(new QPushButton(tr("Open"), this)), rename_(new QPushButton(tr("Names, date…"), this)),
      remove_(new QPushButton(tr("Remove…"), this)), asked_(theme::wrapped_label({}, this)),
      yes_(new QPushButton(tr("Remove it"), this)), no_(new QPushButton(tr("Keep it"), this)),
      question_(make_question()) {
    rename_->setToolTip(tr("Another name for its driver, car or track in all sessions, or its date (F2)"));
    remove_->setToolTip(tr("Takes the session out of the book; its file stays as it is (Delete)"));
    for (int column = 0; column < model_->columnCount(); ++column) {
        const bool wide = column == BookList::track_column || column == BookList::driver_column ||
                          column == BookList::car_column || column == BookList::file_column;
        list_->horizontalHeader()->setSectionResizeMode(column,
                                                        wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
    }
    auto* foot = new QHBoxLayout;
    foot->addWidget(said_, 1);
    for (QPushButton* button : {open_, rename_, remove_})
        foot->addWidget(button);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(filter_);
    column->addWidget(question_);
    column->addWidget(list_, 1);
    column->addLayout(foot);

    connect(filter_, &BookFilter::changed, this, &BookView::filter_changed);
    connect(filter_, &BookFilter::left, this, &BookView::left);
    connect(filter_, &BookFilter::left_downwards, list_, [this] { list_->setFocus(); });
    connect(list_, &BookTable::left, this, &BookView::left);
    connect(list_, &BookTable::left_upwards, filter_, [this] { filter_->words().setFocus(); });
    connect(list_, &BookTable::row_chosen, this, &BookView::follow_row);
    const auto on_chosen = [this](auto signal) {
        return [this, signal] {
            if (const auto session = chosen()) Q_EMIT(this->*signal)(*session);
        };
    };
    connect(list_, &BookTable::row_opened, this, on_chosen(&BookView::session_asked));
    connect(open_, &QPushButton::clicked, this, on_chosen(&BookView::session_asked));
    connect(list_, &BookTable::renaming_asked, this, on_chosen(&BookView::renaming_asked));
    connect(rename_, &QPushButton::clicked, this, on_chosen(&BookView::renaming_asked));
    connect(list_, &BookTable::removal_asked, this, on_chosen(&BookView::removal_asked));
    connect(remove_, &QPushButton::clicked, this, on_chosen(&BookView::removal_asked));
    connect(yes_, &QPushButton::clicked, this, [this] { answer(true); });
    connect(no_, &QPushButton::clicked, this, [this] { answer(false); });
    follow_row();
}

QFrame* BookView::make_question() {
    auto* frame = new QFrame(this);
    frame->setObjectName(QStringLiteral("notice"));
    auto* row = new QHBoxLayout(frame);
    row->addWidget(asked_, 1);
    for (QPushButton* button : {yes_, no_}) {
        row->addWidget(button);
        button->installEventFilter(this);
    }
    frame->hide();
    return frame;
}

void BookView::show_sessions(std::vector<book::SessionSummary> sessions) {
    const int row = list_->current_row();
    const auto& shown = model_->sessions();
    const auto chosen =
        row >= 0 && row < model_->rowCount() ? std::optional(shown[static_cast<std::size_t>(row)].id) : std::nullopt;
    model_->set_sessions(std::move(sessions));
    const int count = model_->rowCount();
    const bool all = filter_->asks_for_nothing();
    // An answer that was on its way does not hide what is wrong with a day.
    if (filter_->filter().ok())
        say(count > 0                           ? counted(count, tr("1 session"), tr("%1 sessions"))
            : all                               ? tr("The book is empty: open a file, and its session is in it.")
            : filter_->words().text().isEmpty() ? tr("No session is all of this.")
                                                : tr("No session has all of these words."));
    // The session, wherever it stands now: an edit may have moved it.
    const auto same = std::ranges::find_if(shown, [&](const auto& session) { return session.id == chosen; });
    list_->choose_row(same != shown.end() ? static_cast<int>(same - shown.begin()) : row);
    follow_row();
}

void BookView::set_names(const book::Names& names) {
    names_ = names;
    filter_->set_names(names);
}

void BookView::say(const QString& sentence) {
    said_->setText(sentence);
}

QString BookView::said() const {
    return said_->text();
}

QString BookView::question() const {
    return asked_about_ ? asked_->text() : QString();
}

QLineEdit& BookView::words() {
    return filter_->words();
}

void BookView::begin() {
    filter_->begin();
}

std::optional<book::SessionSummary> BookView::chosen() const {
    const int row = list_->current_row();
    if (row < 0 || row >= model_->rowCount()) return std::nullopt;
    return model_->sessions()[static_cast<std::size_t>(row)];
}

void BookView::follow_row() {
    for (QPushButton* button : {open_, rename_, remove_})
        button->setEnabled(chosen().has_value());
}

void BookView::ask_for_removal(const book::SessionSummary& session, int pairings) {
    asked_about_ = session;
    QStringList with;
    if (session.notes > 0) with << counted(session.notes, tr("1 note"), tr("%1 notes"));
    if (pairings > 0) with << counted(pairings, tr("1 kept pairing"), tr("%1 kept pairings"));
    const QString name =
        session.start_unix_s
            ? tr("%1 of %2").arg(text(session.source.file_name), text(base::date_text(*session.start_unix_s)))
            : text(session.source.file_name);
    asked_->setText(
        tr("Take %1 out of the book? ").arg(name) +
        (with.isEmpty() ? QString() : tr("With it go its laps and samples, %1. ").arg(with.join(tr(" and ")))) +
        tr("Undo brings all of it back; its file stays as it is."));
    question_->show();
    yes_->setFocus();
}

void BookView::answer(bool yes) {
    const auto about = std::exchange(asked_about_, std::nullopt);
    question_->hide();
    list_->setFocus();
    if (yes && about) Q_EMIT removal_wanted(*about);
}

// In the question Return presses the button with the focus, and Escape means no.
bool BookView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (!enter && key != Qt::Key_Escape) return QWidget::eventFilter(watched, event);
    event->accept();
    if (event->type() == QEvent::KeyPress) answer(enter && watched == yes_);
    return true;
}

} // namespace lapwright::pages
