// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/figure_box.h"

#include "core/base/translation.h"

namespace lapwright::theme {
namespace {

QString with_point(QString text) {
    return text.replace(QLatin1Char(','), QLatin1Char('.'));
}

} // namespace

FigureBox::FigureBox(QWidget* parent) : QDoubleSpinBox(parent) {
    setLocale(QLocale::c());
}

QString FigureBox::textFromValue(double value) const {
    return QString::number(value, 'f', decimals()).replace(QLatin1Char('.'), QLatin1Char(base::decimal_mark()));
}

double FigureBox::valueFromText(const QString& text) const {
    return QDoubleSpinBox::valueFromText(with_point(text));
}

QValidator::State FigureBox::validate(QString& text, int& cursor) const {
    QString pointed = with_point(text);
    return QDoubleSpinBox::validate(pointed, cursor);
}

} // namespace lapwright::theme
