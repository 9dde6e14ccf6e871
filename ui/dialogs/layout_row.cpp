// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/layout_row.h"

#include "core/base/number_text.h"
#include "ui/models/text.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <algorithm>

namespace lapwright::dialogs {
namespace {

constexpr int max_header_line = 400;

} // namespace

void add_field(QHBoxLayout& row, const QString& words, QWidget* field, QWidget* parent) {
    QLabel* label = theme::plain_label(words, parent);
    label->setBuddy(field);
    field->setAccessibleName(models::without_mnemonic(words));
    row.addWidget(label);
    row.addWidget(field);
    row.addSpacing(10);
}

QPushButton* quiet_button(const QString& words, QWidget* parent) {
    auto* button = new QPushButton(words, parent);
    button->setAutoDefault(false);
    return button;
}

LayoutRow::LayoutRow(models::ColumnTable* table, QWidget* parent)
    : QWidget(parent), table_(table), delimiter_(new QComboBox(this)), header_line_(new QSpinBox(this)),
      decimal_mark_(new QComboBox(this)), rate_(new QLineEdit(this)) {
    for (const auto& [words, mark] :
         {std::pair(tr("comma"), ","), std::pair(tr("semicolon"), ";"), std::pair(tr("tab"), "\t"),
          std::pair(tr("bar |"), "|"), std::pair(tr("blanks"), " ")})
        delimiter_->addItem(words, QString::fromLatin1(mark));
    header_line_->setRange(0, max_header_line);
    header_line_->setSpecialValueText(tr("no line"));
    header_line_->setKeyboardTracking(false);
    decimal_mark_->addItems({tr("point"), tr("comma")});
    rate_->setPlaceholderText(tr("as the time"));
    constexpr int least_rate_px = 80;
    constexpr int around_px = 14; // frame and margins
    rate_->setFixedWidth(
        std::max(least_rate_px, rate_->fontMetrics().horizontalAdvance(rate_->placeholderText()) + around_px));
    auto* guesses = quiet_button(tr("As the pro&gram guesses"), this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    add_field(*row, tr("&Parted by"), delimiter_, this);
    add_field(*row, tr("&Names in line"), header_line_, this);
    add_field(*row, tr("&Decimal mark"), decimal_mark_, this);
    add_field(*row, tr("Rows per &second"), rate_, this);
    row->addStretch(1);
    row->addWidget(guesses);
    connect(delimiter_, &QComboBox::activated, this, &LayoutRow::choose);
    connect(header_line_, &QSpinBox::valueChanged, this, &LayoutRow::choose);
    connect(decimal_mark_, &QComboBox::activated, this,
            [this](int choice) { table_->set_decimal_mark(choice == 0 ? '.' : ','); });
    connect(rate_, &QLineEdit::editingFinished, this, &LayoutRow::take_rate);
    connect(guesses, &QPushButton::clicked, table_, &models::ColumnTable::take_guesses);
}

// The person's own layout fits again only by its names, so the recipe keeps the names that stand there.
void LayoutRow::choose() {
    static constexpr import::Delimiter marks[]{{','}, {';'}, {'\t'}, {'|'}, {' ', true}};
    choice_.delimiter = marks[delimiter_->currentIndex()];
    choice_.header_line = static_cast<std::size_t>(header_line_->value());
    Q_EMIT chosen();
}

void LayoutRow::show_layout(const import::Layout& layout) {
    const QSignalBlocker quiet_delimiter(delimiter_);
    const QSignalBlocker quiet_header(header_line_);
    const QString wanted = layout.delimiter.blanks ? QStringLiteral(" ") : QString(QLatin1Char(layout.delimiter.mark));
    delimiter_->setCurrentIndex(delimiter_->findData(wanted));
    header_line_->setValue(static_cast<int>(layout.header_line));
}

bool LayoutRow::take_rate() {
    if (!rate_->isEnabled()) return true;
    QString words = rate_->text().trimmed();
    const auto value = base::parse_number(words.replace(QLatin1Char(','), QLatin1Char('.')).toStdString());
    const bool usable = value && *value >= 0.1 && *value <= 10'000.0;
    if (!usable && !words.isEmpty()) {
        Q_EMIT complained(tr("Rows per second: a number from 0.1 to 10,000, or nothing."));
        return false;
    }
    Q_EMIT complained({});
    table_->set_row_rate(usable ? std::optional(*value) : std::nullopt);
    return true;
}

void LayoutRow::follow_table() {
    const import::Recipe& recipe = table_->recipe();
    const QSignalBlocker quiet(decimal_mark_);
    decimal_mark_->setCurrentIndex(recipe.decimal_mark == ',' ? 1 : 0);
    rate_->setEnabled(!table_->has_time());
    if (!rate_->hasFocus())
        rate_->setText(recipe.row_rate_hz ? models::text(base::exact_text(*recipe.row_rate_hz)) : QString());
}

} // namespace lapwright::dialogs
