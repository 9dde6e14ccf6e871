// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/plain_label.h"

#include <QLabel>
#include <QString>

namespace lapwright::theme {

QLabel* plain_label(QWidget* parent, const QFont& font) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setFont(font);
    return label;
}

QLabel* plain_label(const QString& words, QWidget* parent, const QFont& font) {
    QLabel* label = plain_label(parent, font);
    label->setText(words);
    return label;
}

} // namespace lapwright::theme
