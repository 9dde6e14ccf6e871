// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/causes/small_label.h"

#include "ui/theme/fonts.h"

namespace lapwright::pages {

QLabel* small_label(const QString& words, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setTextFormat(Qt::PlainText);
    label->setFont(theme::small());
    return label;
}

void set_ink(QLabel& label, const QColor& ink) {
    QPalette own = label.palette();
    own.setColor(QPalette::WindowText, ink);
    label.setPalette(own);
}

} // namespace lapwright::pages
