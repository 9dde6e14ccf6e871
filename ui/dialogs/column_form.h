// SPDX-License-Identifier: GPL-3.0-or-later
// One column of a file, large: its plot, why it is taken for what it is, and everything about it that can be corrected.
#pragma once

#include "ui/models/column_table.h"
#include "ui/theme/palette.h"

#include <QFrame>

class QComboBox;
class QLabel;
class QLineEdit;

namespace lapwright::plots {
class SmallPlot;
}

namespace lapwright::dialogs {

class ColumnForm : public QFrame {
    Q_OBJECT

  public:
    ColumnForm(models::ColumnTable* table, const theme::Palette& palette, QWidget* parent = nullptr);

    void show_column(int row); // -1: none
    // Takes what is being typed; false where that is no usable number.
    [[nodiscard]] bool commit();
    [[nodiscard]] QComboBox& use() { return *use_; }
    [[nodiscard]] QComboBox& unit() { return *unit_; }
    [[nodiscard]] QComboBox& form() { return *form_; }
    [[nodiscard]] QLineEdit& scale() { return *scale_; }

  private:
    void follow();
    void fill_choices(const import::RecipeColumn& column);
    void take_unit(int choice);
    void take_form(int choice);
    bool take_scale();

    models::ColumnTable* table_;
    int row_ = -1;
    QLabel* name_;
    QLabel* cells_;
    plots::SmallPlot* plot_;
    QLabel* range_;
    QComboBox* use_;
    QComboBox* unit_;
    QComboBox* form_;
    QLineEdit* scale_;
    QLabel* reason_;
};

} // namespace lapwright::dialogs
