// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/finder.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::dialogs {

Finder::Finder(std::vector<Destination> destinations, QWidget* parent)
    : QDialog(parent), destinations_(std::move(destinations)), line_(new QLineEdit(this)),
      list_(new QListWidget(this)) {
    setWindowTitle(tr("Go to a corner, session, lap or command"));
    resize(700, 440);
    line_->setPlaceholderText(tr("A few letters of its name"));
    line_->setAccessibleName(tr("Name of a corner, session, lap or command"));
    list_->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->addWidget(line_);
    column->addWidget(list_);
    line_->installEventFilter(this);
    connect(line_, &QLineEdit::textChanged, this, &Finder::filter);
    connect(line_, &QLineEdit::returnPressed, this, &Finder::go);
    connect(list_, &QListWidget::itemActivated, this, &Finder::go);
    connect(list_, &QListWidget::itemClicked, this, &Finder::go);
    filter(QString());
}

// Every word must stand somewhere in the name.
void Finder::filter(const QString& words) {
    list_->clear();
    const QStringList wanted = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (std::size_t i = 0; i < destinations_.size(); ++i) {
        const Destination& place = destinations_[i];
        const bool fits = std::ranges::all_of(
            wanted, [&](const QString& word) { return place.name.contains(word, Qt::CaseInsensitive); });
        if (!fits) continue;
        auto* item = new QListWidgetItem(
            place.hint.isEmpty() ? place.name : place.name + QStringLiteral("   (") + place.hint + QLatin1Char(')'),
            list_);
        item->setData(Qt::UserRole, static_cast<int>(i));
    }
    list_->setCurrentRow(0);
}

void Finder::go() {
    const QListWidgetItem* item = list_->currentItem();
    if (item == nullptr) return;
    const auto go_there = destinations_[static_cast<std::size_t>(item->data(Qt::UserRole).toInt())].go;
    accept();
    go_there();
}

// The arrow keys move in the list while the line keeps the focus.
bool Finder::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const int step = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
        if (step != 0 && list_->count() > 0) {
            list_->setCurrentRow(std::clamp(list_->currentRow() + step, 0, list_->count() - 1));
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace lapwright::dialogs
