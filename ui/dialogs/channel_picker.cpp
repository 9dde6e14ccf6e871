// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/channel_picker.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace lapwright::dialogs {
namespace {

constexpr int id_role = Qt::UserRole;

QString only_one_has(const models::ChannelChoice& choice) {
    if (!choice.b) return ChannelPicker::tr("%1 (A alone)").arg(choice.title);
    return choice.a ? choice.title : ChannelPicker::tr("%1 (B alone)").arg(choice.title);
}

} // namespace

ChannelPicker::ChannelPicker(const std::vector<models::ChannelChoice>& choices, const QStringList& shown,
                             const ChannelSets& sets, QWidget* parent)
    : QDialog(parent), shown_(shown), known_(sets), words_(new QLineEdit(this)), list_(new QListWidget(this)),
      sets_(new QComboBox(this)), remember_(new QPushButton(tr("Remember this set"), this)),
      forget_(new QPushButton(tr("Forget it"), this)) {
    setWindowTitle(tr("Further channels"));
    resize(420, 460);
    words_->setPlaceholderText(tr("A few letters of a channel's name"));
    words_->setAccessibleName(tr("Name of a channel"));
    words_->setClearButtonEnabled(true);
    list_->setAccessibleName(tr("Channels; Space shows or hides one"));
    for (const models::ChannelChoice& choice : choices) {
        auto* item = new QListWidgetItem(only_one_has(choice), list_);
        item->setData(id_role, choice.id);
        item->setFlags(Qt::ItemIsUserCheckable | Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        item->setCheckState(shown_.contains(choice.id) ? Qt::Checked : Qt::Unchecked);
    }
    if (list_->count() > 0) list_->setCurrentRow(0);
    sets_->setEditable(true);
    sets_->setInsertPolicy(QComboBox::NoInsert);
    sets_->setAccessibleName(tr("Set of channels"));
    sets_->lineEdit()->setPlaceholderText(tr("name of a set"));
    auto* row = new QHBoxLayout;
    row->addWidget(sets_, 1);
    row->addWidget(remember_);
    row->addWidget(forget_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words_);
    column->addWidget(list_, 1);
    column->addLayout(row);
    column->addWidget(buttons);
    fill_sets({});
    connect(words_, &QLineEdit::textChanged, this, &ChannelPicker::filter);
    connect(list_, &QListWidget::itemChanged, this, &ChannelPicker::tell);
    connect(sets_, &QComboBox::activated, this, [this] { show_set(sets_->currentText()); });
    connect(sets_, &QComboBox::editTextChanged, this, [this](const QString& name) {
        remember_->setEnabled(!name.trimmed().isEmpty());
        forget_->setEnabled(known_.contains(name.trimmed()));
    });
    connect(remember_, &QPushButton::clicked, this, &ChannelPicker::remember);
    connect(forget_, &QPushButton::clicked, this, &ChannelPicker::forget);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QPushButton* button : {remember_, forget_})
        button->setAutoDefault(false);
    remember_->setEnabled(false);
    forget_->setEnabled(false);
    list_->setFocus();
}

void ChannelPicker::filter(const QString& words) {
    for (int row = 0; row < list_->count(); ++row)
        list_->item(row)->setHidden(!list_->item(row)->text().contains(words.trimmed(), Qt::CaseInsensitive));
}

void ChannelPicker::tell() {
    for (int row = 0; row < list_->count(); ++row) {
        const QString id = list_->item(row)->data(id_role).toString();
        shown_.removeAll(id);
        if (list_->item(row)->checkState() == Qt::Checked) shown_ << id;
    }
    Q_EMIT shown_changed(shown_);
}

void ChannelPicker::show_set(const QString& name) {
    const auto found = known_.constFind(name);
    if (found == known_.constEnd()) return;
    {
        const QSignalBlocker quiet(list_); // told once
        for (int row = 0; row < list_->count(); ++row) {
            QListWidgetItem* item = list_->item(row);
            item->setCheckState(found->contains(item->data(id_role).toString()) ? Qt::Checked : Qt::Unchecked);
        }
    }
    shown_ = *found;
    tell();
}

void ChannelPicker::remember() {
    const QString name = sets_->currentText().trimmed();
    if (name.isEmpty()) return;
    known_[name] = shown_;
    fill_sets(name);
    Q_EMIT sets_changed(known_);
}

void ChannelPicker::forget() {
    known_.remove(sets_->currentText().trimmed());
    fill_sets({});
    Q_EMIT sets_changed(known_);
}

void ChannelPicker::fill_sets(const QString& chosen) {
    sets_->clear();
    sets_->addItems(known_.keys());
    sets_->setCurrentIndex(sets_->findText(chosen));
    sets_->setEditText(chosen);
}

} // namespace lapwright::dialogs
