// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/column_table.h"

#include "ui/models/text.h"

#include <algorithm>

namespace lapwright::models {
namespace {

constexpr std::size_t cells_shown = 4;

std::size_t at(int row) {
    return static_cast<std::size_t>(row);
}

import::RecipeColumn column_of(const import::ColumnGuess& guess) {
    if (guess.role == import::Role::skip) return {guess.header, import::Role::skip};
    const auto meaning = guess.role == import::Role::channel ? guess.meaning : recording::Meaning::other;
    return {guess.header, guess.role, meaning, guess.unit, guess.form, guess.scale};
}

// A table shows one line a cell, whatever the file writes.
QString one_line(QString words) {
    for (QChar& c : words)
        if (c.category() == QChar::Other_Control || c == QChar::LineSeparator || c == QChar::ParagraphSeparator)
            c = QLatin1Char(' ');
    return words.left(200);
}

} // namespace

ColumnTable::ColumnTable(base::UnitSystem units, QObject* parent)
    : QAbstractTableModel(parent), units_(units), history_(1) {}

void ColumnTable::start(import::Recipe recipe) {
    history_.assign(1, std::move(recipe));
    now_ = 0;
    confirmed_.assign(guesses_.size(), false);
}

void ColumnTable::set_guessed(const PreviewPointer& guessed, const std::optional<import::Recipe>& kept) {
    beginResetModel();
    guessed_ = guessed;
    preview_ = guessed;
    guesses_.clear();
    for (const import::PreviewColumn& column : guessed->columns)
        guesses_.push_back(column.guess);
    start(kept.value_or(guessed->recipe));
    endResetModel();
    Q_EMIT edited();
}

void ColumnTable::set_recipe(const import::Recipe& recipe) {
    beginResetModel();
    guessed_.reset();
    preview_.reset();
    guesses_.clear();
    for (const import::RecipeColumn& column : recipe.columns) {
        import::ColumnGuess guess;
        guess.header = column.header;
        guess.name = column.header;
        guess.role = column.role;
        guess.meaning = column.meaning;
        guess.unit = column.unit;
        guess.form = column.form;
        guess.scale = column.scale;
        guess.settled = true;
        guesses_.push_back(std::move(guess));
    }
    start(recipe);
    endResetModel();
}

void ColumnTable::set_preview(const PreviewPointer& preview) {
    preview_ = preview;
    tell_all();
}

void ColumnTable::tell_all() {
    if (rowCount() > 0) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

void ColumnTable::change(import::Recipe recipe) {
    if (recipe == history_[now_]) return;
    history_.resize(now_ + 1);
    history_.push_back(std::move(recipe));
    ++now_;
    tell_all();
    Q_EMIT edited();
}

void ColumnTable::set_column(int row, const import::RecipeColumn& column) {
    import::Recipe changed = recipe();
    changed.columns[at(row)] = column;
    change(std::move(changed));
}

void ColumnTable::set_use(int row, const import::ColumnUse& use) {
    set_column(row, import::with_use(recipe().columns[at(row)], use, guess(row)));
}

void ColumnTable::set_decimal_mark(char mark) {
    import::Recipe changed = recipe();
    changed.decimal_mark = mark;
    change(std::move(changed));
}

void ColumnTable::set_row_rate(std::optional<double> rate_hz) {
    import::Recipe changed = recipe();
    changed.row_rate_hz = rate_hz;
    change(std::move(changed));
}

void ColumnTable::take_guesses() {
    if (!guessed_) return;
    import::Recipe changed = guessed_->recipe;
    changed.title = recipe().title;
    change(std::move(changed));
}

void ColumnTable::undo() {
    if (!can_undo()) return;
    --now_;
    tell_all();
    Q_EMIT edited();
}

void ColumnTable::redo() {
    if (!can_redo()) return;
    ++now_;
    tell_all();
    Q_EMIT edited();
}

const import::ColumnGuess& ColumnTable::guess(int row) const {
    return guesses_[at(row)];
}

bool ColumnTable::is_changed(int row) const {
    return recipe().columns[at(row)] != column_of(guess(row));
}

bool ColumnTable::is_doubtful(int row) const {
    return import::is_doubtful(guess(row)) && !is_changed(row) && !confirmed_[at(row)];
}

int ColumnTable::doubtful_count() const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row)
        count += is_doubtful(row) ? 1 : 0;
    return count;
}

int ColumnTable::next_doubtful(int after) const {
    const int rows = rowCount();
    for (int step = 1; step <= rows; ++step) {
        const int row = (after + step) % rows;
        if (is_doubtful(row)) return row;
    }
    return -1;
}

void ColumnTable::confirm(int row) {
    confirmed_[at(row)] = true;
    tell_all();
}

bool ColumnTable::has_time() const {
    return std::ranges::find(recipe().columns, import::Role::time, &import::RecipeColumn::role) !=
           recipe().columns.end();
}

std::span<const double> ColumnTable::values(int row) const {
    if (!preview_ || at(row) >= preview_->columns.size()) return {};
    return preview_->columns[at(row)].values;
}

QString ColumnTable::range(int row) const {
    return text(import::range_words(values(row), recipe().columns[at(row)], units_));
}

QString ColumnTable::cells(int row) const {
    QStringList cells;
    for (const std::string& cell : guess(row).first_values) {
        if (static_cast<std::size_t>(cells.size()) < cells_shown) cells << text(cell);
    }
    return one_line(cells.join(QStringLiteral("   ")));
}

QString ColumnTable::reason(int row) const {
    const import::ColumnGuess& guessed = guess(row);
    if (guessed.reason.empty()) return {};
    QString words = text(guessed.reason);
    if (!guessed.doubt.empty()) words += QStringLiteral("; ") + text(recording::words(guessed.doubt));
    if (!is_changed(row)) return words;
    const auto column = column_of(guessed);
    QString taken = text(import::words(import::use_of(column)));
    if (column.role == import::Role::channel) taken += QStringLiteral(", ") + text(import::unit_words(column.unit));
    return tr("The program took it for: %1 (%2)").arg(taken, words);
}

QString ColumnTable::sure_words(int row) const {
    if (!guessed_) return {};
    if (is_changed(row)) return tr("as you say");
    if (is_doubtful(row)) return tr("? doubtful");
    if (import::is_doubtful(guess(row))) return tr("looked at");
    if (guess(row).role == import::Role::skip) return {};
    const bool named = guess(row).role != import::Role::channel || guess(row).meaning != recording::Meaning::other;
    if (!named) return tr("not known");
    return guess(row).confidence < 0.85 ? tr("likely") : tr("sure");
}

int ColumnTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(guesses_.size());
}

int ColumnTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns);
}

QVariant ColumnTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const int row = index.row();
    const import::RecipeColumn& column = recipe().columns[at(row)];
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case name_column:
        return one_line(text(column.header));
    case use_column:
        return text(import::words(import::use_of(column)));
    case unit_column:
        if (column.role == import::Role::skip) return {};
        return text(column.form == import::CellForm::number ? import::unit_words(column.unit)
                                                            : import::words(column.form));
    case sure_column:
        return sure_words(row);
    case cells_column:
        return cells(row);
    case range_column:
        return range(row);
    default:
        return {};
    }
}

QVariant ColumnTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case name_column:
        return tr("Column");
    case use_column:
        return tr("Taken for");
    case unit_column:
        return tr("Unit");
    case sure_column:
        return tr("How sure");
    case cells_column:
        return tr("First cells");
    case plot_column:
        return tr("First rows");
    case range_column:
        return tr("Read as");
    default:
        return {};
    }
}

} // namespace lapwright::models
