// SPDX-License-Identifier: GPL-3.0-or-later
// A field for a figure with the decimal mark of the language; what is typed may have a point or a comma.
#pragma once

#include <QDoubleSpinBox>

namespace lapwright::theme {

class FigureBox : public QDoubleSpinBox {
    Q_OBJECT

  public:
    explicit FigureBox(QWidget* parent = nullptr);

    [[nodiscard]] QString textFromValue(double value) const override;
    [[nodiscard]] double valueFromText(const QString& text) const override;
    QValidator::State validate(QString& text, int& cursor) const override;
};

} // namespace lapwright::theme
