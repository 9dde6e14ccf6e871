// SPDX-License-Identifier: GPL-3.0-or-later
// How the column dialog is put together: question, layout, table beside the chosen column, what comes out, buttons.
#include "ui/dialogs/column_dialog.h"
#include "ui/dialogs/column_form.h"
#include "ui/plots/small_plot.h"
#include "ui/theme/fonts.h"
#include "ui/theme/plain_label.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSpinBox>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::dialogs {
namespace {

using models::ColumnTable;

constexpr int form_width_px = 380;
constexpr int plot_width_px = 100;
constexpr int max_header_line = 400;

// The small plot of a column in its row.
class PlotDelegate : public QStyledItemDelegate {
  public:
    PlotDelegate(const ColumnTable* table, const QColor& colour, QObject* parent)
        : QStyledItemDelegate(parent), table_(table), colour_(colour) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        plots::paint_small_plot(*painter, QRectF(option.rect).adjusted(3.0, 4.0, -3.0, -4.0),
                                table_->values(index.row()), colour_);
    }

  private:
    const ColumnTable* table_;
    QColor colour_;
};

void add_field(QHBoxLayout& row, const QString& words, QWidget* field, QWidget* parent) {
    QLabel* label = theme::plain_label(words, parent);
    label->setBuddy(field);
    field->setAccessibleName(QString(words).remove(QLatin1Char('&')));
    row.addWidget(label);
    row.addWidget(field);
    row.addSpacing(10);
}

QPushButton* quiet_button(const QString& words, QWidget* parent) {
    auto* button = new QPushButton(words, parent);
    button->setAutoDefault(false);
    return button;
}

} // namespace

ColumnDialog::ColumnDialog(Keep keep, base::UnitSystem units, const theme::Palette& palette, QWidget* parent)
    : QDialog(parent), keep_(std::move(keep)), table_(new ColumnTable(units, this)), view_(new QTableView(this)),
      form_(new ColumnForm(table_, palette, this)) {
    make_view(palette);
    form_->setFixedWidth(form_width_px);
    auto* middle = new QHBoxLayout;
    middle->addWidget(view_, 1);
    middle->addWidget(form_);
    auto* column = new QVBoxLayout(this);
    column->addWidget(make_head());
    column->addWidget(make_layout_row());
    column->addLayout(middle, 1);
    column->addWidget(make_foot());
    make_keys();
    resize(1240, 680);
    setTabOrder(view_, &form_->use());

    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
        form_->show_column(now.row());
        follow_table();
    });
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

QWidget* ColumnDialog::make_layout_row() {
    layout_row_ = new QWidget(this);
    delimiter_ = new QComboBox(layout_row_);
    for (const auto& [words, mark] :
         {std::pair(tr("comma"), ","), std::pair(tr("semicolon"), ";"), std::pair(tr("tab"), "\t"),
          std::pair(tr("bar |"), "|"), std::pair(tr("blanks"), " ")})
        delimiter_->addItem(words, QString::fromLatin1(mark));
    header_line_ = new QSpinBox(layout_row_);
    header_line_->setRange(0, max_header_line);
    header_line_->setSpecialValueText(tr("no line"));
    header_line_->setKeyboardTracking(false);
    decimal_mark_ = new QComboBox(layout_row_);
    decimal_mark_->addItems({tr("point"), tr("comma")});
    rate_ = new QLineEdit(layout_row_);
    rate_->setFixedWidth(80);
    rate_->setPlaceholderText(tr("as the time"));
    guesses_ = quiet_button(tr("As the pro&gram guesses"), layout_row_);
    auto* row = new QHBoxLayout(layout_row_);
    row->setContentsMargins(0, 0, 0, 0);
    add_field(*row, tr("&Parted by"), delimiter_, layout_row_);
    add_field(*row, tr("&Names in line"), header_line_, layout_row_);
    add_field(*row, tr("&Decimal mark"), decimal_mark_, layout_row_);
    add_field(*row, tr("Rows per &second"), rate_, layout_row_);
    row->addStretch(1);
    row->addWidget(guesses_);
    connect(delimiter_, &QComboBox::activated, this, &ColumnDialog::choose_layout);
    connect(header_line_, &QSpinBox::valueChanged, this, &ColumnDialog::choose_layout);
    connect(decimal_mark_, &QComboBox::activated, this,
            [this](int choice) { table_->set_decimal_mark(choice == 0 ? '.' : ','); });
    connect(rate_, &QLineEdit::editingFinished, this, &ColumnDialog::take_rate);
    connect(guesses_, &QPushButton::clicked, table_, &ColumnTable::take_guesses);
    return layout_row_;
}

void ColumnDialog::make_view(const theme::Palette& palette) {
    view_->setModel(table_);
    view_->setObjectName(QStringLiteral("columns"));
    view_->setAccessibleName(tr("Columns of the file"));
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->setTabKeyNavigation(false);
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setShowGrid(false);
    view_->setWordWrap(false);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setFont(theme::body());
    view_->setItemDelegateForColumn(ColumnTable::plot_column, new PlotDelegate(table_, palette.a, view_));
    view_->verticalHeader()->hide();
    view_->verticalHeader()->setDefaultSectionSize(view_->fontMetrics().height() + 12);
    QHeaderView* header = view_->horizontalHeader();
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setHighlightSections(false);
    header->setStretchLastSection(true);
    const int letter = view_->fontMetrics().averageCharWidth();
    for (const auto& [section, width] :
         {std::pair(ColumnTable::name_column, 18 * letter), std::pair(ColumnTable::use_column, 22 * letter),
          std::pair(ColumnTable::unit_column, 10 * letter), std::pair(ColumnTable::sure_column, 11 * letter),
          std::pair(ColumnTable::cells_column, 16 * letter), std::pair(ColumnTable::plot_column, plot_width_px)})
        header->resizeSection(section, width);
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

} // namespace lapwright::dialogs
