// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/plain_label.h"

namespace lapwright::theme {

QLabel* plain_label(QWidget* parent, const QFont& font) {
    return plain_label({}, parent, font);
}

QLabel* plain_label(const QString& words, QWidget* parent, const QFont& font) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setFont(font);
    label->setText(words);
    return label;
}

QLabel* wrapped_label(const QString& words, QWidget* parent, const QFont& font) {
    QLabel* label = plain_label(words, parent, font);
    label->setWordWrap(true);
    return label;
}

void set_ink(QWidget* label, const QColor& ink) {
    QPalette own = label->palette();
    own.setColor(QPalette::WindowText, ink);
    label->setPalette(own);
}

} // namespace lapwright::theme
