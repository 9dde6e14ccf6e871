// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/recipe_list.h"

#include "core/base/number_text.h"
#include "core/import/columns/recipe_file.h"
#include "ui/dialogs/column_dialog.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::dialogs {
namespace {

using models::text;

constexpr int names_shown = 6;

QString delimiter_words(import::Delimiter delimiter) {
    if (delimiter.blanks) return RecipeList::tr("blanks");
    switch (delimiter.mark) {
    case ',':
        return RecipeList::tr("comma");
    case ';':
        return RecipeList::tr("semicolon");
    case '\t':
        return RecipeList::tr("tab");
    default:
        return QString(QLatin1Char(delimiter.mark));
    }
}

// "12 columns by semicolon: Clock, Lat, Lon, …"
QString shape_words(const import::Recipe& recipe) {
    QStringList names;
    for (const import::RecipeColumn& column : recipe.columns) {
        if (names.size() < names_shown) names << text(column.header).simplified();
    }
    if (recipe.columns.size() > static_cast<std::size_t>(names_shown)) names << QStringLiteral("…");
    return RecipeList::tr("%1 columns by %2: %3")
        .arg(text(base::integer_text(static_cast<std::int64_t>(recipe.columns.size()))),
             delimiter_words(recipe.delimiter), names.join(QStringLiteral(", ")));
}

QString file_name_for(const import::Recipe& recipe) {
    QString name;
    for (const QChar c : text(recipe.title).simplified().left(60))
        name += c.isLetterOrNumber() ? c : QLatin1Char('-');
    return (name.isEmpty() ? QStringLiteral("import") : name) + QStringLiteral(".recipe.json");
}

} // namespace

RecipeList::RecipeList(import::RecipeFolder folder, base::UnitSystem units, const theme::Palette& palette,
                       QWidget* parent)
    : QDialog(parent), folder_(std::move(folder)), units_(units), palette_(palette), list_(new QTableWidget(this)),
      said_(new QLabel(this)), edit_(new QPushButton(tr("&Edit…"), this)),
      remove_(new QPushButton(tr("&Delete"), this)), bring_back_(new QPushButton(tr("&Bring back"), this)),
      write_(new QPushButton(tr("&Write to a file…"), this)) {
    setWindowTitle(tr("Import recipes"));
    resize(820, 420);
    auto* take = new QPushButton(tr("&Take from a file…"), this);
    list_->setColumnCount(2);
    list_->setHorizontalHeaderLabels({tr("Title"), tr("Used for files with")});
    list_->setAccessibleName(tr("Import recipes"));
    list_->setSelectionBehavior(QAbstractItemView::SelectRows);
    list_->setSelectionMode(QAbstractItemView::SingleSelection);
    list_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed);
    list_->setTabKeyNavigation(false);
    list_->setShowGrid(false);
    list_->setWordWrap(false);
    list_->verticalHeader()->hide();
    list_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    list_->horizontalHeader()->setStretchLastSection(true);
    list_->horizontalHeader()->resizeSection(0, 260);
    said_->setTextFormat(Qt::PlainText);
    said_->setWordWrap(true);
    auto* side = new QVBoxLayout;
    for (QPushButton* button : {edit_, remove_, bring_back_, write_, take}) {
        button->setAutoDefault(false);
        side->addWidget(button);
    }
    side->addStretch(1);
    auto* middle = new QHBoxLayout;
    middle->addWidget(list_, 1);
    middle->addLayout(side);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->button(QDialogButtonBox::Close)->setAutoDefault(false);
    auto* column = new QVBoxLayout(this);
    column->addLayout(middle, 1);
    column->addWidget(said_);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(edit_, &QPushButton::clicked, this, &RecipeList::edit);
    connect(remove_, &QPushButton::clicked, this, &RecipeList::remove);
    connect(bring_back_, &QPushButton::clicked, this, &RecipeList::bring_back);
    connect(write_, &QPushButton::clicked, this, &RecipeList::ask_and_write);
    connect(take, &QPushButton::clicked, this, &RecipeList::ask_and_take);
    connect(list_, &QTableWidget::itemSelectionChanged, this, &RecipeList::follow);
    connect(list_, &QTableWidget::itemChanged, this, [this](const QTableWidgetItem* item) {
        if (!filling_ && item->column() == 0) rename(item->row(), item->text());
    });
    fill();
    list_->setFocus();
}

void RecipeList::fill(const std::optional<import::Recipe>& chosen) {
    filling_ = true;
    auto kept = folder_.list();
    recipes_ = std::move(kept.recipes);
    list_->setRowCount(static_cast<int>(recipes_.size()));
    int row_chosen = 0;
    for (int row = 0; row < list_->rowCount(); ++row) {
        const import::Recipe& recipe = recipes_[static_cast<std::size_t>(row)].recipe;
        auto* shape = new QTableWidgetItem(shape_words(recipe));
        shape->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        list_->setItem(row, 0, new QTableWidgetItem(text(recipe.title)));
        list_->setItem(row, 1, shape);
        if (chosen && import::same_shape(*chosen, recipe)) row_chosen = row;
    }
    filling_ = false;
    list_->selectRow(row_chosen);
    if (!kept.refused.empty())
        say(text(base::one_line(kept.refused.front())));
    else if (recipes_.empty() && said_->text().isEmpty())
        say(tr("There are none yet. One is kept whenever the columns of a file are answered for."));
    follow();
}

void RecipeList::follow() {
    const bool any = chosen() != nullptr;
    for (QPushButton* button : {edit_, remove_, write_})
        button->setEnabled(any);
    bring_back_->setEnabled(gone_.has_value());
}

const import::Recipe* RecipeList::chosen() const {
    const int row = list_->currentRow();
    return row >= 0 && row < static_cast<int>(recipes_.size()) ? &recipes_[static_cast<std::size_t>(row)].recipe
                                                               : nullptr;
}

void RecipeList::say(const QString& sentence) {
    said_->setText(sentence);
}

QString RecipeList::said() const {
    return said_->text();
}

bool RecipeList::said_problem(const base::Result<void>& done) {
    if (!done) say(text(base::one_line(done.error())));
    return !done;
}

void RecipeList::rename(int row, const QString& title) {
    import::Recipe recipe = recipes_[static_cast<std::size_t>(row)].recipe;
    recipe.title = title.trimmed().left(200).toStdString();
    if (!said_problem(folder_.keep(recipe))) say(tr("Renamed."));
    fill(recipe);
}

void RecipeList::edit() {
    if (chosen() == nullptr) return;
    const import::Recipe before = *chosen();
    ColumnDialog dialog([this](const import::Recipe& recipe) { return folder_.keep(recipe); }, units_, palette_, this);
    dialog.open_recipe(before);
    if (dialog.exec() != QDialog::Accepted) return;
    say(tr("Changed. Files that are open keep what they were read as until they are opened again."));
    gone_ = before;
    fill(before);
}

void RecipeList::remove() {
    if (chosen() == nullptr) return;
    const import::Recipe recipe = *chosen();
    if (said_problem(folder_.remove(recipe))) return;
    gone_ = recipe;
    say(tr("Deleted."));
    fill();
}

// What is brought back changes places with the one that stands for its shape now.
void RecipeList::bring_back() {
    if (!gone_) return;
    const import::Recipe recipe = *gone_;
    const auto now = folder_.find(recipe);
    if (said_problem(folder_.keep(recipe))) return;
    gone_ = now ? std::optional(now->recipe) : std::nullopt;
    say(tr("Brought back."));
    fill(recipe);
}

void RecipeList::write_to(const QString& path) {
    if (chosen() == nullptr) return;
    if (!said_problem(import::write_recipe_file(models::file_name(path), *chosen())))
        say(tr("%1 is written.").arg(QDir::toNativeSeparators(path)));
}

void RecipeList::take_from(const QString& path) {
    const auto recipe = import::read_recipe_file(models::file_name(path));
    if (!recipe) {
        say(text(base::one_line(recipe.error())));
        return;
    }
    import::Recipe taken = *recipe;
    if (taken.title.empty()) taken.title = QFileInfo(path).completeBaseName().toStdString();
    const auto before = folder_.find(taken);
    if (said_problem(folder_.keep(taken))) return;
    if (before) gone_ = before->recipe;
    say(before ? tr("Taken, in place of \"%1\", which was made for the same files.").arg(text(before->recipe.title))
               : tr("Taken."));
    fill(taken);
}

void RecipeList::ask_and_write() {
    if (chosen() == nullptr) return;
    const QString path = QFileDialog::getSaveFileName(this, tr("Write the recipe to a file"),
                                                      QDir::home().filePath(file_name_for(*chosen())),
                                                      tr("Import recipes (*.recipe.json *.json)"));
    if (!path.isEmpty()) write_to(path);
}

void RecipeList::ask_and_take() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Take a recipe from a file"), QDir::homePath(),
                                                      tr("Import recipes (*.recipe.json *.json);;All files (*)"));
    if (!path.isEmpty()) take_from(path);
}

} // namespace lapwright::dialogs
