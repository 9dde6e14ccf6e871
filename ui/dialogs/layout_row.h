// SPDX-License-Identifier: GPL-3.0-or-later
// How a file is cut into columns, chosen by a person: what parts them, which line names them, the decimal mark, and
// the rate of rows that bear no time.  Mark and rate go into the table; another layout is to be guessed anew.
#pragma once

#include "core/import/formats/preview.h"
#include "ui/models/column_table.h"

#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace lapwright::dialogs {

// A labelled field at the end of a row of them.
void add_field(QHBoxLayout& row, const QString& words, QWidget* field, QWidget* parent);

// One that no Enter presses.
[[nodiscard]] QPushButton* quiet_button(const QString& words, QWidget* parent);

class LayoutRow : public QWidget {
    Q_OBJECT

  public:
    LayoutRow(models::ColumnTable* table, QWidget* parent);

    [[nodiscard]] const import::LayoutChoice& layout_choice() const { return choice_; }
    void show_layout(const import::Layout& layout);
    void follow_table();
    // Takes the rate that is being typed; false where that is none.
    bool take_rate();

  Q_SIGNALS:
    void chosen();
    void complained(const QString& sentence); // empty: nothing any more

  private:
    void choose();

    models::ColumnTable* table_;
    import::LayoutChoice choice_;
    QComboBox* delimiter_;
    QSpinBox* header_line_;
    QComboBox* decimal_mark_;
    QLineEdit* rate_;
};

} // namespace lapwright::dialogs
