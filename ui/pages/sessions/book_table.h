// SPDX-License-Identifier: GPL-3.0-or-later
// A table of the book's: rows are chosen, nothing is edited in it, and keys that mean something else in the rest of the
// window are its own.
#pragma once

#include <QTableView>

namespace lapwright::pages {

class BookTable : public QTableView {
    Q_OBJECT

  public:
    // The model outlives it.
    BookTable(QAbstractItemModel& model, const QString& name, QWidget* parent = nullptr);

    [[nodiscard]] int current_row() const; // -1: none
    void choose_row(int row);              // the nearest that there is

  Q_SIGNALS:
    void row_chosen(int row);
    void row_opened(int row); // Return or a double click
    void removal_asked(int row);
    void renaming_asked(int row);
    void left_upwards(); // Up in the first row
    void left();         // Escape

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
};

} // namespace lapwright::pages
