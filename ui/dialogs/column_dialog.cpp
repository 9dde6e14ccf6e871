// SPDX-License-Identifier: GPL-3.0-or-later
// What the dialog does; how it is put together is in column_dialog_parts.cpp.
#include "ui/dialogs/column_dialog.h"

#include "core/base/number_text.h"
#include "core/recording/warning_words.h"
#include "ui/dialogs/column_form.h"
#include "ui/models/text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTableView>
#include <utility>

namespace lapwright::dialogs {
namespace {

using models::text;

} // namespace

void ColumnDialog::open_file(const QString& path, const std::optional<import::Recipe>& kept) {
    path_ = path;
    kept_ = kept;
    setWindowTitle(tr("Columns of %1").arg(QFileInfo(path).fileName()));
    title_->setText(kept ? text(kept->title) : QFileInfo(path).completeBaseName());
    ask_for_guesses();
}

void ColumnDialog::open_recipe(const import::Recipe& recipe) {
    setWindowTitle(tr("Import recipe"));
    layout_row_->hide();
    guesses_->hide();
    right_->hide();
    next_->hide();
    outcome_->hide();
    title_->setText(text(recipe.title));
    buttons_->button(QDialogButtonBox::Ok)->setText(tr("Keep this recipe"));
    view_->hideColumn(models::ColumnTable::sure_column);
    view_->hideColumn(models::ColumnTable::cells_column);
    view_->hideColumn(models::ColumnTable::plot_column);
    view_->hideColumn(models::ColumnTable::range_column);
    known_ = true;
    table_->set_recipe(recipe);
    view_->selectRow(0);
    question_->setText(
        tr("This recipe is used for files of its shape: the same delimiter and the same names of columns."));
}

// The layout is the person's where it was chosen; what the columns are is guessed anew.
void ColumnDialog::ask_for_guesses() {
    guessing_ = true;
    for (QWidget* part : std::initializer_list<QWidget*>{view_, form_})
        part->setEnabled(false);
    buttons_->button(QDialogButtonBox::Ok)->setEnabled(false);
    import::Options options;
    options.layout = layout_;
    Q_EMIT preview_asked(options);
}

void ColumnDialog::ask_for_preview() {
    if (path_.isEmpty() || guessing_) return;
    import::Options options;
    options.layout = layout_;
    options.recipe = table_->recipe();
    Q_EMIT preview_asked(options);
}

void ColumnDialog::show_preview(const models::ColumnTable::PreviewPointer& preview) {
    if (complaint_of_preview_) complaint_->hide();
    const bool guessed = std::exchange(guessing_, false);
    if (guessed) {
        known_ = true;
        // A recipe made for another header than the one chosen now says nothing here.
        const bool fits = kept_ && import::fits(*kept_, preview->layout);
        table_->set_guessed(preview, fits ? kept_ : std::nullopt);
        view_->setEnabled(true);
        show_layout(preview->layout);
        view_->selectRow(qMax(0, table_->next_doubtful(-1)));
        view_->setFocus();
    } else {
        table_->set_preview(preview);
    }
    buttons_->button(QDialogButtonBox::Ok)->setEnabled(true);
    tell_outcome(*preview);
}

void ColumnDialog::show_refusal(const base::Error& error) {
    guessing_ = false;
    complain(text(base::one_line(error)), true);
}

// The person's own layout fits again only by its names, so the recipe keeps the names that stand there.
void ColumnDialog::choose_layout() {
    static constexpr import::Delimiter marks[]{{','}, {';'}, {'\t'}, {'|'}, {' ', true}};
    layout_.delimiter = marks[delimiter_->currentIndex()];
    layout_.header_line = static_cast<std::size_t>(header_line_->value());
    ask_for_guesses();
}

void ColumnDialog::show_layout(const import::Layout& layout) {
    const QSignalBlocker quiet_delimiter(delimiter_);
    const QSignalBlocker quiet_header(header_line_);
    const QString wanted = layout.delimiter.blanks ? QStringLiteral(" ") : QString(QLatin1Char(layout.delimiter.mark));
    delimiter_->setCurrentIndex(delimiter_->findData(wanted));
    header_line_->setValue(static_cast<int>(layout.header_line));
}

bool ColumnDialog::take_rate() {
    if (!rate_->isEnabled()) return true;
    QString words = rate_->text().trimmed();
    const auto value = base::parse_number(words.replace(QLatin1Char(','), QLatin1Char('.')).toStdString());
    const bool usable = value && *value >= 0.1 && *value <= 10'000.0;
    if (!usable && !words.isEmpty()) {
        complain(tr("Rows per second: a number from 0.1 to 10,000, or nothing."));
        return false;
    }
    complaint_->hide();
    table_->set_row_rate(usable ? std::optional(*value) : std::nullopt);
    return true;
}

void ColumnDialog::follow_table() {
    const import::Recipe& recipe = table_->recipe();
    {
        const QSignalBlocker quiet(decimal_mark_);
        decimal_mark_->setCurrentIndex(recipe.decimal_mark == ',' ? 1 : 0);
    }
    rate_->setEnabled(!table_->has_time());
    if (!rate_->hasFocus())
        rate_->setText(recipe.row_rate_hz ? text(base::exact_text(*recipe.row_rate_hz)) : QString());
    const int row = view_->currentIndex().row();
    right_->setEnabled(row >= 0 && row < table_->rowCount() && table_->is_doubtful(row));
    const int doubtful = table_->doubtful_count();
    next_->setEnabled(doubtful > 0);
    if (path_.isEmpty() || !known_) return;
    const QString kept = tr("Correct what is wrong; the answer is kept for all files of this shape.");
    if (doubtful == 0) {
        question_->setText(tr("The program has no question.") + QLatin1Char(' ') + kept);
    } else {
        const QString asks = doubtful == 1 ? tr("The program is not sure of one column, marked with a question mark.")
                                           : tr("The program is not sure of %1 columns, marked with a question mark.")
                                                 .arg(text(base::integer_text(doubtful)));
        question_->setText(asks + QLatin1Char(' ') + kept);
    }
}

void ColumnDialog::tell_outcome(const import::Preview& preview) {
    QStringList lines;
    if (!preview.recording) {
        lines << tr("These rows make no session: %1").arg(text(preview.problem));
    } else {
        lines << tr("The first %1 rows make %2 channels over %3 s.")
                     .arg(text(base::integer_text(static_cast<std::int64_t>(preview.rows))),
                          text(base::integer_text(static_cast<std::int64_t>(preview.recording->channels.size()))),
                          text(base::fixed_text(preview.recording->duration_s, 1)));
        for (const recording::Warning& warning : preview.recording->warnings)
            lines << text(recording::words(warning));
    }
    outcome_->setPlainText(lines.join(QLatin1Char('\n')));
}

void ColumnDialog::go_to_question(int after) {
    const int row = table_->next_doubtful(after);
    if (row < 0) {
        follow_table();
        return;
    }
    view_->selectRow(row);
    view_->scrollTo(view_->currentIndex());
    follow_table();
}

void ColumnDialog::complain(const QString& sentence, bool of_preview) {
    complaint_of_preview_ = of_preview;
    complaint_->setText(sentence);
    complaint_->show();
}

import::Recipe ColumnDialog::recipe() const {
    import::Recipe said = table_->recipe();
    said.title = title_->text().trimmed().toStdString();
    return said;
}

void ColumnDialog::accept() {
    if (!known_ || guessing_ || !take_rate()) return;
    if (!form_->commit()) {
        complain(tr("Multiplied by: a number that is not 0."));
        return;
    }
    if (const auto kept = keep_(recipe()); !kept) {
        complain(text(base::one_line(kept.error())));
        return;
    }
    QDialog::accept();
}

} // namespace lapwright::dialogs
