// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/elided_label.h"

#include <QEvent>
#include <QPainter>

namespace lapwright::theme {

ElidedLabel::ElidedLabel(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ElidedLabel::set_text(const QString& text) {
    text_ = text;
    setAccessibleName(text);
    follow_room();
    updateGeometry();
}

void ElidedLabel::set_alignment(Qt::Alignment alignment) {
    alignment_ = alignment;
    update();
}

bool ElidedLabel::cut() const {
    return !toolTip().isEmpty();
}

QSize ElidedLabel::sizeHint() const {
    return {fontMetrics().horizontalAdvance(text_) + 2, fontMetrics().height() + 2};
}

QSize ElidedLabel::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 4, fontMetrics().height() + 2};
}

void ElidedLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::WindowText));
    painter.drawText(rect(), static_cast<int>(alignment_ | Qt::AlignVCenter | Qt::TextSingleLine), shown_);
}

void ElidedLabel::resizeEvent(QResizeEvent*) {
    follow_room();
}

void ElidedLabel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) {
        follow_room();
        updateGeometry();
    }
    QWidget::changeEvent(event);
}

void ElidedLabel::follow_room() {
    QString line = text_;
    line.replace(QLatin1Char('\n'), QLatin1Char(' '));
    shown_ = fontMetrics().elidedText(line, Qt::ElideRight, width());
    // A tool tip guesses whether it is rich text; marked as such and escaped, a file's text stays as it is written.
    setToolTip(shown_ == line ? QString() : QStringLiteral("<qt>%1</qt>").arg(line.toHtmlEscaped()));
    update();
}

} // namespace lapwright::theme
