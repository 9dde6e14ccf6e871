// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/book_waiting.h"

#include "ui/models/text.h"
#include "ui/window/notices.h"

#include <QAction>
#include <QMessageBox>
#include <QPushButton>

namespace lapwright::window {

using bridge::BookQueue;

BookWaiting::BookWaiting(BookQueue& book, QAction& try_again, QWidget& sign, Notices& notices, QObject* parent)
    : QObject(parent), book_(book), try_again_(try_again), sign_(sign), notices_(notices) {
    show(0, {});
    connect(&try_again_, &QAction::triggered, &book_, &BookQueue::try_again);
    connect(&book_, &BookQueue::waits, this,
            [this](int edits, const base::Error& reason) { show(edits, models::text(base::one_line(reason))); });
    connect(&book_, &BookQueue::caught_up, this, [this] { show(0, {}); });
}

void BookWaiting::show(int edits, const QString& reason) {
    reason_ = reason;
    try_again_.setEnabled(edits > 0);
    try_again_.setText(edits > 0 ? tr("&Write what waits into the book (%1)").arg(edits)
                                 : tr("&Write what waits into the book"));
    try_again_.setIconText(edits == 1 ? tr("1 edit is not in the book")
                                      : tr("%1 edits are not in the book").arg(edits));
    try_again_.setToolTip(reason);
    sign_.setVisible(edits > 0);
    notices_.withdraw_sentence(said_);
    said_ = edits > 0 ? tr("Not in the book yet: %1. It is tried again at the next edit, and by a click on the sign "
                           "above.")
                            .arg(reason)
                      : QString();
    if (edits > 0) notices_.add(said_);
}

bool BookWaiting::may_close(QWidget* window) {
    std::size_t left = book_.finish();
    if (left > 0) {
        book_.try_again();
        left = book_.finish();
    }
    while (left > 0) {
        QMessageBox question(QMessageBox::Warning, tr("Not in the book yet"),
                             left == 1 ? tr("1 edit is not in the book yet.")
                                       : tr("%1 edits are not in the book yet.").arg(left),
                             QMessageBox::NoButton, window);
        question.setTextFormat(Qt::PlainText);
        question.setInformativeText(reason_);
        QPushButton* again = question.addButton(tr("&Try again"), QMessageBox::AcceptRole);
        QPushButton* lose = question.addButton(tr("Close &without them"), QMessageBox::DestructiveRole);
        QPushButton* stay = question.addButton(tr("&Stay"), QMessageBox::RejectRole);
        question.setDefaultButton(again);
        question.setEscapeButton(stay);
        question.exec();
        if (question.clickedButton() == lose) return true;
        if (question.clickedButton() != again) return false;
        book_.try_again();
        left = book_.finish();
    }
    return true;
}

} // namespace lapwright::window
