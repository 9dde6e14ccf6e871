// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/key_changer.h"

#include "ui/dialogs/key_field.h"
#include "ui/models/text.h"
#include "ui/theme/plain_label.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <utility>

namespace lapwright::dialogs {
namespace {

constexpr int name_column = 0;
constexpr int keys_column = 1;
constexpr int usual_column = 2;

QString keys_text(const QList<QKeySequence>& keys) {
    QStringList names;
    for (const QKeySequence& key : keys)
        if (!key.isEmpty()) names << key.toString(QKeySequence::NativeText);
    return names.join(KeyChanger::tr(" or "));
}

} // namespace

KeyChanger::KeyChanger(Source source, QWidget* parent)
    : QDialog(parent), source_(std::move(source)), words_(new QLineEdit(this)), list_(new QTreeWidget(this)),
      field_(new KeyField(this)), said_(theme::wrapped_label({}, this)),
      take_(new QPushButton(tr("Give it this key"), this)), none_(new QPushButton(tr("No key"), this)),
      usual_(new QPushButton(tr("Its usual key"), this)), all_usual_(new QPushButton(tr("All usual keys"), this)) {
    setWindowTitle(tr("Change the keys"));
    resize(760, 560);
    words_->setPlaceholderText(tr("A few letters of a command or a key"));
    words_->setAccessibleName(tr("Commands or keys with these letters"));
    list_->setAccessibleName(tr("Commands and their keys"));
    list_->setHeaderLabels({tr("Command"), tr("Key"), tr("Usual key")});
    list_->setRootIsDecorated(false);
    list_->header()->setSectionResizeMode(name_column, QHeaderView::Stretch);
    for (const int column : {keys_column, usual_column})
        list_->header()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    list_->header()->setStretchLastSection(false);
    field_->setAccessibleName(tr("New key of the chosen command"));
    said_->setMinimumHeight(2 * said_->fontMetrics().lineSpacing()); // so that a sentence moves no button
    for (QPushButton* button : {take_, none_, usual_, all_usual_})
        button->setAutoDefault(false);
    auto* row = new QHBoxLayout;
    row->addWidget(field_, 1);
    for (QPushButton* button : {take_, none_, usual_})
        row->addWidget(button);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->addButton(all_usual_, QDialogButtonBox::ResetRole);
    buttons->button(QDialogButtonBox::Close)->setAutoDefault(false);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words_);
    column->addWidget(list_, 1);
    column->addLayout(row);
    column->addWidget(said_);
    column->addWidget(buttons);
    connect(words_, &QLineEdit::textChanged, this, &KeyChanger::filter);
    connect(list_, &QTreeWidget::currentItemChanged, this, &KeyChanger::show_chosen);
    connect(list_, &QTreeWidget::itemActivated, field_, qOverload<>(&QWidget::setFocus));
    connect(field_, &KeyField::key_pressed, this, &KeyChanger::look_at_key);
    connect(take_, &QPushButton::clicked, this, [this] { give({field_->key()}); });
    connect(none_, &QPushButton::clicked, this, [this] { give({}); });
    connect(usual_, &QPushButton::clicked, this, [this] {
        if (chosen() >= 0) give(commands_[static_cast<std::size_t>(chosen())].usual);
    });
    connect(all_usual_, &QPushButton::clicked, this, [this] {
        for (std::size_t i = 0; i < commands_.size(); ++i)
            source_.set(i, commands_[i].usual);
        fill();
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    fill();
    choose(0);
}

void KeyChanger::fill() {
    const int before = chosen();
    commands_ = source_.commands();
    if (list_->topLevelItemCount() != static_cast<int>(commands_.size())) {
        list_->clear();
        for (std::size_t i = 0; i < commands_.size(); ++i)
            new QTreeWidgetItem(list_);
    }
    for (std::size_t i = 0; i < commands_.size(); ++i) {
        const Command& command = commands_[i];
        QTreeWidgetItem& item = *list_->topLevelItem(static_cast<int>(i));
        item.setText(name_column, models::labelled(command.group, command.name));
        item.setToolTip(name_column, item.text(name_column)); // it may be cut
        item.setText(keys_column, keys_text(command.keys));
        item.setText(usual_column, command.keys == command.usual ? QString() : keys_text(command.usual));
    }
    if (before >= 0) choose(static_cast<std::size_t>(before));
    filter();
}

void KeyChanger::filter() {
    const QString wanted = words_->text().trimmed();
    for (int i = 0; i < list_->topLevelItemCount(); ++i) {
        QTreeWidgetItem* item = list_->topLevelItem(i);
        item->setHidden(!item->text(name_column).contains(wanted, Qt::CaseInsensitive) &&
                        !item->text(keys_column).contains(wanted, Qt::CaseInsensitive));
    }
}

int KeyChanger::chosen() const {
    return list_->currentItem() == nullptr ? -1 : list_->indexOfTopLevelItem(list_->currentItem());
}

void KeyChanger::choose(std::size_t row) {
    list_->setCurrentItem(list_->topLevelItem(static_cast<int>(row)));
    show_chosen();
}

void KeyChanger::show_chosen() {
    field_->set_key({});
    said_->clear();
    const bool one = chosen() >= 0;
    const Command* command = one ? &commands_[static_cast<std::size_t>(chosen())] : nullptr;
    field_->setEnabled(one);
    take_->setEnabled(false);
    none_->setEnabled(one && !command->keys.isEmpty());
    usual_->setEnabled(one && command->keys != command->usual);
}

void KeyChanger::look_at_key() {
    if (chosen() < 0) return;
    take_->setEnabled(true);
    QStringList names;
    for (const std::size_t other : source_.others(static_cast<std::size_t>(chosen()), field_->key()))
        names << commands_[other].name;
    said_->setText(names.isEmpty()
                       ? QString()
                       : tr("\"%1\" has this key now, and will lose it.").arg(names.join(QStringLiteral("\", \""))));
}

void KeyChanger::give(const QList<QKeySequence>& keys) {
    if (chosen() < 0) return;
    const auto row = static_cast<std::size_t>(chosen());
    for (const QKeySequence& key : keys)
        for (const std::size_t other : source_.others(row, key)) {
            QList<QKeySequence> rest = commands_[other].keys;
            rest.removeAll(key);
            source_.set(other, rest);
            commands_ = source_.commands();
        }
    source_.set(row, keys);
    fill();
}

QString KeyChanger::said() const {
    return said_->text();
}

} // namespace lapwright::dialogs
