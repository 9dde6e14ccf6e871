// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/book_table.h"

#include "ui/models/text_table.h"
#include "ui/theme/fonts.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QMetaMethod>

namespace lapwright::pages {

BookTable::BookTable(QAbstractItemModel& model, const QString& name, QWidget* parent) : QTableView(parent) {
    setModel(&model);
    setFont(theme::small());
    setStyleSheet(QStringLiteral("QTableView { outline: 0; } QTableView::item { padding: 0 4px; border: 0; } "
                                 "QHeaderView::section { padding: 2px 7px; }"));
    setAccessibleName(name);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(QFontMetrics(theme::small()).height() + 7);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setFont(theme::small());
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& at) { Q_EMIT row_opened(at.row()); });
}

int BookTable::current_row() const {
    return currentIndex().row();
}

void BookTable::choose_row(int row) {
    const int count = model()->rowCount();
    if (count == 0) return;
    const QModelIndex index = model()->index(qBound(0, row, count - 1), 0);
    executeDelayedItemsLayout(); // so that it knows where the row is
    setCurrentIndex(index);
    scrollTo(index);
}

bool BookTable::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool ours = key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape ||
                          key == Qt::Key_Delete || key == Qt::Key_F2;
        if (ours) {
            event->accept();
            return true;
        }
    }
    return QTableView::event(event);
}

void BookTable::keyPressEvent(QKeyEvent* event) {
    const int row = current_row();
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (row >= 0) Q_EMIT row_opened(row);
        return;
    case Qt::Key_Delete:
        if (row >= 0) Q_EMIT removal_asked(row);
        return;
    case Qt::Key_F2:
        if (row >= 0) Q_EMIT renaming_asked(row);
        return;
    case Qt::Key_Escape:
        Q_EMIT left();
        return;
    case Qt::Key_Up:
        if (row <= 0) {
            Q_EMIT left_upwards();
            return;
        }
        break;
    default:
        break;
    }
    QTableView::keyPressEvent(event);
}

// What its keys do, as far as somebody listens.
void BookTable::contextMenuEvent(QContextMenuEvent* event) {
    const int row = current_row();
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const auto add = [&](const QString& words, void (BookTable::*signal)(int)) {
        if (row < 0 || !isSignalConnected(QMetaMethod::fromSignal(signal))) return;
        menu->addAction(words, this, [this, signal, row] { Q_EMIT(this->*signal)(row); });
    };
    add(tr("&Open\tReturn"), &BookTable::row_opened);
    add(tr("&Names and date…\tF2"), &BookTable::renaming_asked);
    add(tr("&Take out of the book\tDel"), &BookTable::removal_asked);
    menu->addSeparator();
    menu->addAction(tr("&Copy as a table\tCtrl+C"), this,
                    [this] { QApplication::clipboard()->setText(models::tab_text(*model())); });
    menu->popup(event->reason() == QContextMenuEvent::Mouse
                    ? event->globalPos()
                    : viewport()->mapToGlobal(visualRect(currentIndex()).center()));
}

void BookTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (current.row() != previous.row()) Q_EMIT row_chosen(current.row());
}

} // namespace lapwright::pages
