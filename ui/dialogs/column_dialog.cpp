// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/column_dialog.h"

#include "core/base/number_text.h"
#include "core/recording/warning_words.h"
#include "ui/dialogs/column_form.h"
#include "ui/dialogs/column_view.h"
#include "ui/dialogs/layout_row.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::dialogs {
namespace {

using models::ColumnTable;
using models::text;

constexpr int form_width_px = 380;

} // namespace

ColumnDialog::ColumnDialog(Keep keep, base::UnitSystem units, const theme::Palette& palette, QWidget* parent)
    : QDialog(parent), keep_(std::move(keep)), table_(new ColumnTable(units, this)),
      view_(column_view(table_, palette, this)), form_(new ColumnForm(table_, palette, this)) {
    form_->setFixedWidth(form_width_px);
    auto* middle = new QHBoxLayout;
    middle->addWidget(view_, 1);
    middle->addWidget(form_);
    auto* column = new QVBoxLayout(this);
    column->addWidget(make_head());
    layout_ = new LayoutRow(table_, this);
    column->addWidget(layout_);
    column->addLayout(middle, 1);
    column->addWidget(make_foot());
    make_keys();
    resize(1240, 680);
    setTabOrder(view_, &form_->use());

    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
        form_->show_column(now.row());
        follow_table();
    });
    connect(layout_, &LayoutRow::chosen, this, &ColumnDialog::ask_for_guesses);
    connect(layout_, &LayoutRow::complained, this, &ColumnDialog::complain_of_rate);
    connect(table_, &QAbstractItemModel::modelReset, this, &ColumnDialog::follow_table);
    connect(table_, &QAbstractItemModel::dataChanged, this, &ColumnDialog::follow_table);
    connect(table_, &ColumnTable::edited, this, &ColumnDialog::ask_for_preview);
}

QWidget* ColumnDialog::make_head() {
    auto* head = new QWidget(this);
    question_ = theme::plain_label({}, head);
    question_->setWordWrap(true);
    right_ = quiet_button(tr("It is &right"), head);
    next_ = quiet_button(tr("Ne&xt question"), head);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(question_, 1);
    row->addWidget(right_);
    row->addWidget(next_);
    connect(right_, &QPushButton::clicked, this, [this] {
        const int asked = view_->currentIndex().row();
        if (asked < 0) return;
        table_->confirm(asked);
        go_to_question(asked);
    });
    connect(next_, &QPushButton::clicked, this, [this] { go_to_question(view_->currentIndex().row()); });
    return head;
}

QWidget* ColumnDialog::make_foot() {
    auto* foot = new QWidget(this);
    outcome_ = new QPlainTextEdit(foot);
    outcome_->setReadOnly(true);
    outcome_->setTabChangesFocus(true);
    outcome_->setAccessibleName(tr("What comes out"));
    outcome_->setFont(theme::small());
    outcome_->setFixedHeight(4 * outcome_->fontMetrics().lineSpacing() + 12);
    complaint_ = theme::plain_label({}, foot);
    complaint_->setWordWrap(true);
    complaint_->hide();
    title_ = new QLineEdit(foot);
    title_->setMaxLength(200);
    buttons_ = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, foot);
    buttons_->button(QDialogButtonBox::Ok)->setText(tr("Use and keep"));
    auto* row = new QHBoxLayout;
    add_field(*row, tr("Kept as rec&ipe"), title_, foot);
    row->addWidget(buttons_);
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(outcome_);
    column->addWidget(complaint_);
    column->addLayout(row);
    connect(buttons_, &QDialogButtonBox::accepted, this, &ColumnDialog::accept);
    connect(buttons_, &QDialogButtonBox::rejected, this, &QDialog::reject);
    return foot;
}

void ColumnDialog::make_keys() {
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, table_, &ColumnTable::undo);
    connect(new QShortcut(QKeySequence::Redo, this), &QShortcut::activated, table_, &ColumnTable::redo);
}

void ColumnDialog::open_file(const QString& path, const std::optional<import::Recipe>& kept) {
    path_ = path;
    kept_ = kept;
    setWindowTitle(tr("Columns of %1").arg(QFileInfo(path).fileName()));
    title_->setText(kept ? text(kept->title) : QFileInfo(path).completeBaseName());
    ask_for_guesses();
}

void ColumnDialog::open_recipe(const import::Recipe& recipe) {
    setWindowTitle(tr("Import recipe"));
    layout_->hide();
    right_->hide();
    next_->hide();
    outcome_->hide();
    title_->setText(text(recipe.title));
    buttons_->button(QDialogButtonBox::Ok)->setText(tr("Keep this recipe"));
    view_->hideColumn(ColumnTable::sure_column);
    view_->hideColumn(ColumnTable::cells_column);
    view_->hideColumn(ColumnTable::plot_column);
    view_->hideColumn(ColumnTable::range_column);
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
    options.layout = layout_->layout_choice();
    Q_EMIT preview_asked(options);
}

void ColumnDialog::ask_for_preview() {
    if (path_.isEmpty() || guessing_) return;
    import::Options options;
    options.layout = layout_->layout_choice();
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
        layout_->show_layout(preview->layout);
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

void ColumnDialog::follow_table() {
    layout_->follow_table();
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
                          text(base::shown_text(preview.recording->duration_s, 1)));
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

void ColumnDialog::complain_of_rate(const QString& sentence) {
    if (sentence.isEmpty())
        complaint_->hide();
    else
        complain(sentence);
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
    if (!known_ || guessing_ || !layout_->take_rate()) return;
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
