// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/column_form.h"

#include "core/base/number_text.h"
#include "ui/models/text.h"
#include "ui/plots/small_plot.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>
#include <vector>

namespace lapwright::dialogs {
namespace {

using models::text;

constexpr int plot_height_px = 130;

QLabel* wrapped(const QFont& font, QWidget* parent) {
    QLabel* label = theme::plain_label(parent, font);
    label->setWordWrap(true);
    return label;
}

QComboBox* choice(const QString& name, QWidget* parent) {
    auto* box = new QComboBox(parent);
    box->setObjectName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(18);
    return box;
}

using Choices = std::vector<std::pair<QString, int>>;

// A list that is open stays as it is while nothing in it changes.
void offer(QComboBox& box, const Choices& choices, int chosen) {
    bool same = static_cast<std::size_t>(box.count()) == choices.size();
    for (int i = 0; same && i < box.count(); ++i)
        same = box.itemData(i).toInt() == choices[static_cast<std::size_t>(i)].second;
    if (!same) {
        box.clear();
        for (const auto& [words, value] : choices)
            box.addItem(words, value);
    }
    box.setCurrentIndex(box.findData(chosen));
}

} // namespace

ColumnForm::ColumnForm(models::ColumnTable* table, const theme::Palette& palette, QWidget* parent)
    : QFrame(parent), table_(table), name_(wrapped(theme::strong(theme::body()), this)),
      cells_(wrapped(theme::small(), this)), plot_(new plots::SmallPlot(this)), range_(wrapped(theme::small(), this)),
      use_(choice(QStringLiteral("use"), this)), unit_(choice(QStringLiteral("unit"), this)),
      form_(choice(QStringLiteral("form"), this)), scale_(new QLineEdit(this)), reason_(wrapped(theme::small(), this)) {
    setObjectName(QStringLiteral("card"));
    plot_->setAccessibleName(tr("Values of the first rows"));
    plot_->set_colour(palette.a);
    plot_->setFixedHeight(plot_height_px);
    scale_->setObjectName(QStringLiteral("scale"));
    auto* grid = new QGridLayout;
    grid->setColumnStretch(1, 1);
    int row = 0;
    const auto field = [&](const QString& words, QWidget* widget) {
        auto* label = new QLabel(words, this);
        label->setTextFormat(Qt::PlainText);
        label->setBuddy(widget);
        widget->setAccessibleName(models::without_mnemonic(words));
        grid->addWidget(label, row, 0);
        grid->addWidget(widget, row++, 1);
    };
    field(tr("&Taken for"), use_);
    field(tr("&Unit"), unit_);
    field(tr("&Written as"), form_);
    field(tr("&Multiplied by"), scale_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 10, 14, 12);
    column->addWidget(name_);
    column->addWidget(cells_);
    column->addWidget(plot_);
    column->addWidget(range_);
    column->addLayout(grid);
    column->addWidget(reason_);
    column->addStretch(1);
    for (const import::ColumnUse& use : import::all_uses())
        use_->addItem(text(import::words(use)));
    connect(use_, &QComboBox::activated, this,
            [this](int index) { table_->set_use(row_, import::all_uses()[static_cast<std::size_t>(index)]); });
    connect(unit_, &QComboBox::activated, this, &ColumnForm::take_unit);
    connect(form_, &QComboBox::activated, this, &ColumnForm::take_form);
    connect(scale_, &QLineEdit::editingFinished, this, &ColumnForm::take_scale);
    connect(table_, &QAbstractItemModel::dataChanged, this, &ColumnForm::follow);
    connect(table_, &QAbstractItemModel::modelReset, this, [this] { show_column(table_->rowCount() > 0 ? 0 : -1); });
    show_column(-1);
}

void ColumnForm::show_column(int row) {
    row_ = row;
    setEnabled(row >= 0);
    follow();
}

void ColumnForm::follow() {
    if (row_ < 0 || row_ >= table_->rowCount()) {
        for (QLabel* label : {name_, cells_, range_, reason_})
            label->clear();
        plot_->set_values({});
        return;
    }
    const import::RecipeColumn& column = table_->recipe().columns[static_cast<std::size_t>(row_)];
    name_->setText(table_->index(row_, models::ColumnTable::name_column).data().toString());
    cells_->setText(table_->cells(row_));
    plot_->set_values(table_->values(row_));
    const QString range = table_->range(row_);
    range_->setText(range.isEmpty() ? tr("not read") : tr("read as %1").arg(range));
    reason_->setText(table_->reason(row_));
    reason_->setVisible(!reason_->text().isEmpty());
    fill_choices(column);
}

void ColumnForm::fill_choices(const import::RecipeColumn& column) {
    const auto& uses = import::all_uses();
    const auto use = import::use_of(column);
    use_->setCurrentIndex(static_cast<int>(std::ranges::find(uses, use) - uses.begin()));
    const bool read = column.role != import::Role::skip;
    Choices units;
    Choices forms;
    if (read) {
        for (const base::Unit unit : import::units_for(column))
            units.emplace_back(text(import::unit_words(unit)), static_cast<int>(unit));
        for (const import::CellForm form : import::forms_for(use))
            forms.emplace_back(text(import::words(form)), static_cast<int>(form));
    }
    offer(*unit_, units, static_cast<int>(column.unit));
    offer(*form_, forms, static_cast<int>(column.form));
    unit_->setEnabled(unit_->count() > 1);
    form_->setEnabled(form_->count() > 1);
    const bool scalable = read && column.form == import::CellForm::number;
    scale_->setEnabled(scalable);
    if (!scale_->hasFocus() || !scale_->isModified())
        scale_->setText(scalable ? text(base::exact_text(column.scale)) : QString());
}

void ColumnForm::take_unit(int choice) {
    import::RecipeColumn column = table_->recipe().columns[static_cast<std::size_t>(row_)];
    column.unit = static_cast<base::Unit>(unit_->itemData(choice).toInt());
    table_->set_column(row_, column);
}

void ColumnForm::take_form(int choice) {
    const import::RecipeColumn& column = table_->recipe().columns[static_cast<std::size_t>(row_)];
    table_->set_column(row_, import::with_form(column, static_cast<import::CellForm>(form_->itemData(choice).toInt())));
}

bool ColumnForm::take_scale() {
    if (row_ < 0 || !scale_->isEnabled()) return true;
    QString words = scale_->text().trimmed();
    const auto value = base::parse_number(words.replace(QLatin1Char(','), QLatin1Char('.')).toStdString());
    if (!value || *value == 0.0) return false;
    scale_->setModified(false);
    import::RecipeColumn column = table_->recipe().columns[static_cast<std::size_t>(row_)];
    column.scale = *value;
    table_->set_column(row_, column);
    return true;
}

bool ColumnForm::commit() {
    return take_scale();
}

} // namespace lapwright::dialogs
