// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/book_filter.h"

#include "core/import/text/day.h"
#include "ui/models/text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace lapwright::pages {
namespace {

// The first entry asks for nothing.
QComboBox* box(const QString& any, QWidget* parent) {
    auto* one = new QComboBox(parent);
    one->addItem(any);
    one->setAccessibleName(any);
    one->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    one->setMinimumContentsLength(10);
    return one;
}

QLineEdit* day(const QString& what, const QString& placeholder, QWidget* parent) {
    auto* one = new QLineEdit(parent);
    one->setPlaceholderText(placeholder);
    one->setAccessibleName(what);
    one->setToolTip(what);
    one->setClearButtonEnabled(true);
    return one;
}

void refill(QComboBox& box, const std::vector<std::string>& names) {
    const QSignalBlocker quiet(&box);
    const QString before = box.currentIndex() > 0 ? box.currentText() : QString();
    while (box.count() > 1)
        box.removeItem(1);
    for (const std::string& name : names)
        box.addItem(models::text(name));
    if (!before.isEmpty()) box.setCurrentIndex(std::max(0, box.findText(before, Qt::MatchFixedString)));
}

std::string chosen(const QComboBox& box) {
    return box.currentIndex() > 0 ? box.currentText().toStdString() : std::string();
}

} // namespace

BookFilter::BookFilter(QWidget* parent)
    : QWidget(parent), words_(new QLineEdit(this)), track_(box(tr("Any track"), this)), car_(box(tr("Any car"), this)),
      driver_(box(tr("Any driver"), this)), tyre_(box(tr("Any tyre"), this)),
      from_(day(tr("First day, as 2026-05-16"), tr("from 2026-05-16"), this)),
      until_(day(tr("Last day, as 2026-05-16"), tr("until 2026-05-16"), this)) {
    words_->setPlaceholderText(tr("Words: track, car, driver, tyre, or what stands in a note"));
    words_->setAccessibleName(tr("Words that the sessions of the book are searched for"));
    words_->setClearButtonEnabled(true);
    const std::array<QComboBox*, 4> boxes{track_, car_, driver_, tyre_};
    const std::array<QLineEdit*, 3> lines{words_, from_, until_};
    auto* row = new QHBoxLayout;
    for (QComboBox* one : boxes) {
        row->addWidget(one, 3);
        one->installEventFilter(this);
        connect(one, &QComboBox::currentIndexChanged, this, &BookFilter::changed);
    }
    row->addWidget(from_, 2);
    row->addWidget(until_, 2);
    for (QLineEdit* one : lines) {
        one->installEventFilter(this);
        connect(one, &QLineEdit::textChanged, this, &BookFilter::changed);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(words_);
    column->addLayout(row);
}

void BookFilter::set_names(const book::Names& names) {
    const bool asked = !asks_for_nothing();
    refill(*track_, names.tracks);
    refill(*car_, names.cars);
    refill(*driver_, names.drivers);
    refill(*tyre_, names.tyres);
    if (asked && asks_for_nothing()) Q_EMIT changed(); // what was asked for is gone
}

base::Result<book::Filter> BookFilter::filter() const {
    const auto from = import::first_moment_of(from_->text().trimmed().toStdString());
    if (!from) return from.error();
    const auto until = import::last_moment_of(until_->text().trimmed().toStdString());
    if (!until) return until.error();
    return book::Filter{
        chosen(*driver_), chosen(*car_), chosen(*track_), chosen(*tyre_), *from, *until, words_->text().toStdString()};
}

bool BookFilter::asks_for_nothing() const {
    const auto any = [](const QComboBox* box) { return box->currentIndex() <= 0; };
    return any(track_) && any(car_) && any(driver_) && any(tyre_) && from_->text().isEmpty() &&
           until_->text().isEmpty() && words_->text().isEmpty();
}

void BookFilter::begin() {
    words_->setFocus();
    words_->selectAll();
}

// Keys that mean something else in the rest of the window.
bool BookFilter::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (event->type() == QEvent::ShortcutOverride) {
        if (!enter && key != Qt::Key_Escape) return QWidget::eventFilter(watched, event);
        event->accept();
        return true;
    }
    const bool in_line = qobject_cast<QLineEdit*>(watched) != nullptr;
    if (enter || (in_line && key == Qt::Key_Down)) {
        Q_EMIT left_downwards();
        return true;
    }
    if (key != Qt::Key_Escape) return QWidget::eventFilter(watched, event);
    Q_EMIT left();
    return true;
}

} // namespace lapwright::pages
