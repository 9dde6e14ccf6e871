// SPDX-License-Identifier: GPL-3.0-or-later
// A table of texts, column by column, which nobody edits: what the lists of the book are made of.  A figure stands at
// the right of its cell.
#pragma once

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>
#include <vector>

namespace lapwright::models {

struct TextColumn {
    QString title;
    bool figure = false;
    QStringList cells = {}; // one a row
};

// For a clipboard: a line a row under one of titles, a tab between cells.
[[nodiscard]] QString tab_text(const QAbstractItemModel& model);

// say(row) for each of the rows.
template <typename Row, typename Say>
[[nodiscard]] TextColumn column_of(const std::vector<Row>& rows, const QString& title, bool figure, const Say& say) {
    TextColumn column{title, figure};
    for (const Row& row : rows)
        column.cells << say(row);
    return column;
}

class TextTable : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  protected:
    void show_columns(std::vector<TextColumn> columns);
    [[nodiscard]] const std::vector<TextColumn>& shown() const { return columns_; }

  private:
    std::vector<TextColumn> columns_;
};

} // namespace lapwright::models
