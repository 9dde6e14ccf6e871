// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/book_view.h"

#include "ui/models/book_list.h"
#include "ui/theme/fonts.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::pages {

using models::BookList;

BookView::BookView(QWidget* parent)
    : QWidget(parent), model_(new BookList(this)), words_(new QLineEdit(this)), list_(new QTableView(this)),
      said_(new QLabel(this)) {
    words_->setPlaceholderText(tr("Words: track, car, driver, tyre, or what stands in a note"));
    words_->setAccessibleName(tr("Words that the sessions of the book are searched for"));
    words_->setClearButtonEnabled(true);
    said_->setTextFormat(Qt::PlainText);
    said_->setFont(theme::small());
    list_->setModel(model_);
    list_->setFont(theme::small());
    list_->setAccessibleName(tr("Sessions of the book"));
    list_->setShowGrid(false);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setSelectionBehavior(QAbstractItemView::SelectRows);
    list_->setSelectionMode(QAbstractItemView::SingleSelection);
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list_->setTabKeyNavigation(false);
    list_->setWordWrap(false);
    list_->verticalHeader()->hide();
    list_->verticalHeader()->setDefaultSectionSize(QFontMetrics(theme::small()).height() + 7);
    list_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    list_->horizontalHeader()->setFont(theme::small());
    list_->horizontalHeader()->setHighlightSections(false);
    list_->horizontalHeader()->setSectionsClickable(false);
    for (int column = 0; column < BookList::columns; ++column) {
        const bool wide = column == BookList::track_column || column == BookList::driver_column ||
                          column == BookList::car_column || column == BookList::file_column;
        list_->horizontalHeader()->setSectionResizeMode(column,
                                                        wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
    }
    for (QWidget* part : {static_cast<QWidget*>(words_), static_cast<QWidget*>(list_)})
        part->installEventFilter(this);

    auto* top = new QHBoxLayout;
    top->addWidget(words_, 1);
    top->addWidget(said_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(top);
    column->addWidget(list_, 1);
    connect(words_, &QLineEdit::textChanged, this, &BookView::words_changed);
    connect(list_, &QTableView::doubleClicked, this, &BookView::open_current);
}

void BookView::show_sessions(std::vector<book::SessionSummary> sessions) {
    const auto before = list_->currentIndex().row();
    model_->set_sessions(std::move(sessions));
    const int count = model_->rowCount();
    said_->setText(count == 1                 ? tr("1 session")
                   : count > 1                ? tr("%1 sessions").arg(count)
                   : words_->text().isEmpty() ? tr("The book is empty: open a file, and its session is in it.")
                                              : tr("No session has all of these words."));
    if (count > 0) list_->setCurrentIndex(model_->index(qBound(0, before, count - 1), 0));
}

QString BookView::said() const {
    return said_->text();
}

void BookView::begin() {
    words_->setFocus();
    words_->selectAll();
}

void BookView::open_current() {
    const int row = list_->currentIndex().row();
    if (row < 0 || row >= model_->rowCount()) return;
    Q_EMIT session_asked(model_->sessions()[static_cast<std::size_t>(row)]);
}

bool BookView::key_pressed(int key, bool in_words) {
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        open_current();
        return true;
    case Qt::Key_Escape:
        Q_EMIT left();
        return true;
    case Qt::Key_Down:
        if (in_words) list_->setFocus();
        return in_words;
    case Qt::Key_Up:
        if (in_words || list_->currentIndex().row() > 0) return false;
        words_->setFocus();
        return true;
    default:
        return false;
    }
}

// Keys that mean something else in the rest of the window.
bool BookView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool ours = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape;
    if (event->type() == QEvent::ShortcutOverride) {
        if (ours) event->accept();
        return ours;
    }
    return key_pressed(key, watched == words_);
}

} // namespace lapwright::pages
