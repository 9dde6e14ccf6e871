// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/reason_field.h"

#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

namespace lapwright::pages {

ReasonField::ReasonField(QWidget* parent)
    : QWidget(parent), question_(theme::plain_label(this, theme::strong(theme::small()))), line_(new QLineEdit(this)) {
    constexpr int max_characters = 120;
    line_->setFont(theme::small());
    line_->setMaxLength(max_characters);
    line_->setPlaceholderText(tr("traffic, a mistake, a flag; Return without a word does too"));
    line_->installEventFilter(this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 2, 0, 2);
    row->addWidget(question_);
    row->addWidget(line_, 1);
    hide();
}

void ReasonField::begin(const QString& question) {
    question_->setText(question);
    line_->setAccessibleName(question);
    line_->clear();
    show();
    line_->setFocus();
}

// Escape would else dismiss the window's notices.
bool ReasonField::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_) return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason) hide();
        return false;
    }
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride) return false;
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool gives = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (!gives && key != Qt::Key_Escape) return false;
    event->accept();
    if (event->type() == QEvent::ShortcutOverride) return true;
    const QString reason = line_->text().trimmed();
    hide();
    Q_EMIT ended();
    if (gives) Q_EMIT given(reason);
    return true;
}

} // namespace lapwright::pages
