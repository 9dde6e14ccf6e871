// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of a file while a person says what they are: a row a column, with what it is taken for, its unit, how
// sure that is, its first cells and the range of its values.  Each change can be undone.  Texts are the file's own:
// whoever shows them shows them as plain text.
#pragma once

#include "core/base/display.h"
#include "core/import/columns/recipe_edit.h"
#include "core/import/formats/preview.h"

#include <QAbstractTableModel>
#include <memory>
#include <span>
#include <vector>

namespace lapwright::models {

class ColumnTable : public QAbstractTableModel {
    Q_OBJECT

  public:
    using PreviewPointer = std::shared_ptr<const import::Preview>;
    enum Column { name_column, use_column, unit_column, sure_column, cells_column, plot_column, range_column, columns };

    explicit ColumnTable(base::UnitSystem units, QObject* parent = nullptr);

    // What the program thinks by itself; with a recipe that was made before, which is what is edited then.
    void set_guessed(const PreviewPointer& guessed, const std::optional<import::Recipe>& kept = {});
    // A recipe without a file: no cells, no guesses.
    void set_recipe(const import::Recipe& recipe);
    // What the rows are as the present recipe reads them.
    void set_preview(const PreviewPointer& preview);

    [[nodiscard]] const import::Recipe& recipe() const { return history_[now_]; }
    void set_column(int row, const import::RecipeColumn& column);
    void set_use(int row, const import::ColumnUse& use);
    void set_decimal_mark(char mark);
    void set_row_rate(std::optional<double> rate_hz);
    void take_guesses(); // all of them, in place of what was said
    void undo();
    void redo();
    [[nodiscard]] bool can_undo() const { return now_ > 0; }
    [[nodiscard]] bool can_redo() const { return now_ + 1 < history_.size(); }

    [[nodiscard]] const import::ColumnGuess& guess(int row) const;
    [[nodiscard]] bool is_changed(int row) const;  // differs from the guess
    [[nodiscard]] bool is_doubtful(int row) const; // asks, and nobody has answered yet
    [[nodiscard]] int doubtful_count() const;
    [[nodiscard]] int next_doubtful(int after) const; // -1: none
    [[nodiscard]] bool has_time() const;
    // SI values of the first rows; empty where the column is not read.
    [[nodiscard]] std::span<const double> values(int row) const;
    [[nodiscard]] QString range(int row) const;
    [[nodiscard]] QString reason(int row) const;
    [[nodiscard]] QString cells(int row) const;
    // Somebody has looked at this column and left it as it is: it asks no more.
    void confirm(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  Q_SIGNALS:
    void edited(); // the recipe is another one: ask for a preview

  private:
    void start(import::Recipe recipe);
    void change(import::Recipe recipe);
    void tell_all();
    [[nodiscard]] QString sure_words(int row) const;

    base::UnitSystem units_;
    PreviewPointer guessed_;
    PreviewPointer preview_;
    std::vector<import::ColumnGuess> guesses_;
    std::vector<import::Recipe> history_;
    std::size_t now_ = 0;
    std::vector<bool> confirmed_;
};

} // namespace lapwright::models
