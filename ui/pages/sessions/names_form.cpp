// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/names_form.h"

#include "core/base/wording.h"
#include "core/import/text/day.h"
#include "ui/models/text.h"
#include "ui/theme/fonts.h"

#include <QCompleter>
#include <QCoreApplication>
#include <QDateTime>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QTimeZone>
#include <algorithm>

namespace lapwright::pages {
namespace {

using models::text;
using workspace::SessionNames;

constexpr int max_characters = 120; // of a name, as the book keeps it

struct FieldWords {
    const char* title;
    const char* asks;
};

constexpr std::array<FieldWords, 5> field_words{{
    {QT_TR_NOOP("Driver"), QT_TR_NOOP("driver?")},
    {QT_TR_NOOP("Car"), QT_TR_NOOP("car?")},
    {QT_TR_NOOP("Track"), QT_TR_NOOP("track?")},
    {QT_TR_NOOP("Date in UTC, as 2026-05-16 10:20"), QT_TR_NOOP("date?")},
    {QT_TR_NOOP("Conditions"), QT_TR_NOOP("conditions?")},
}};

QString tr_names(const char* words) {
    return QCoreApplication::translate("Lapwright", words);
}

// As it is typed, unlike as it is read.
QString typed_date(const std::optional<double>& start_unix_s) {
    if (!start_unix_s) return {};
    const auto moment = QDateTime::fromSecsSinceEpoch(static_cast<qint64>(*start_unix_s), QTimeZone::utc());
    return moment.toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

int room_in(const QLineEdit& line) {
    constexpr int sides_px = 10; // of the style sheet and of the line itself
    return line.width() - sides_px;
}

std::string* name_of(SessionNames& names, NamesForm::Field field) {
    switch (field) {
    case NamesForm::driver:
        return &names.driver;
    case NamesForm::car:
        return &names.car;
    case NamesForm::track:
        return &names.track;
    case NamesForm::conditions:
        return &names.conditions;
    case NamesForm::date:
        break;
    }
    return nullptr;
}

} // namespace

NamesForm::NamesForm(QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(1);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        auto* line = new QLineEdit(this);
        line->setObjectName(QStringLiteral("inplace"));
        line->setFont(theme::small());
        line->setMaxLength(max_characters);
        line->setPlaceholderText(tr_names(field_words[i].asks));
        line->setAccessibleName(tr_names(field_words[i].title));
        line->installEventFilter(this);
        lines_[i] = line;
        const auto field = static_cast<Field>(i);
        connect(line, &QLineEdit::editingFinished, this, [this, field] { keep_field(field); });
    }
    constexpr int whole = 6;
    for (const Field field : {driver, car, track})
        grid->addWidget(lines_[field], 0, 2 * field, 1, 2);
    grid->addWidget(lines_[date], 1, 0, 1, 2);
    grid->addWidget(lines_[conditions], 1, 2, 1, 4);
    for (int column = 0; column < whole; ++column)
        grid->setColumnStretch(column, column == 2 || column == 3 ? 3 : 2); // cars have long names
}

void NamesForm::show_names(const SessionNames& names) {
    names_ = names;
    for (std::size_t i = 0; i < lines_.size(); ++i)
        if (!lines_[i]->hasFocus() || !lines_[i]->isModified()) show_field(static_cast<Field>(i));
}

void NamesForm::offer(const book::Names& known) {
    const auto offer_in = [this](Field field, const std::vector<std::string>& all) {
        QStringList words;
        for (const std::string& one : all)
            words << text(one);
        auto* completer = new QCompleter(words, lines_[field]);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        delete lines_[field]->completer();
        lines_[field]->setCompleter(completer);
    };
    offer_in(driver, known.drivers);
    offer_in(car, known.cars);
    offer_in(track, known.tracks);
}

void NamesForm::begin() {
    const auto unknown = std::ranges::find_if(lines_, [](const QLineEdit* line) { return line->text().isEmpty(); });
    QLineEdit* line = unknown == lines_.end() ? lines_.front() : *unknown;
    line->setFocus(Qt::ShortcutFocusReason);
    line->selectAll();
}

void NamesForm::keep() {
    for (std::size_t i = 0; i < lines_.size(); ++i)
        if (lines_[i]->hasFocus() && lines_[i]->isModified()) keep_field(static_cast<Field>(i));
}

void NamesForm::keep_field(Field field) {
    if (!lines_[field]->isModified()) return;
    SessionNames names = names_;
    const QString typed = lines_[field]->text().trimmed();
    if (std::string* name = name_of(names, field)) {
        *name = typed.toStdString();
    } else if (typed.isEmpty()) {
        names.start_unix_s.reset();
    } else {
        const auto moment = import::moment_of(typed.toStdString());
        Q_EMIT said(moment.ok() ? QString() : text(base::one_line(moment.error())));
        if (!moment.ok()) return;
        if (typed != typed_date(names_.start_unix_s)) names.start_unix_s = moment.value();
    }
    lines_[field]->setModified(false);
    names = workspace::plain(names);
    const bool others = names != names_;
    names_ = names;
    show_field(field);
    if (others) Q_EMIT given(names_);
}

QString NamesForm::words_of(Field field) const {
    SessionNames names = names_;
    if (const std::string* name = name_of(names, field)) return text(*name);
    if (lines_[field]->hasFocus()) return typed_date(names_.start_unix_s);
    return names_.start_unix_s ? text(base::date_text(*names_.start_unix_s)) : QString();
}

void NamesForm::show_field(Field field) {
    QLineEdit& line = *lines_[field];
    const QString words = words_of(field);
    const QString shown = line.hasFocus() ? words : line.fontMetrics().elidedText(words, Qt::ElideRight, room_in(line));
    if (line.text() != shown) line.setText(shown);
    line.setModified(false);
    const QString title = tr_names(field_words[field].title);
    line.setToolTip(words.isEmpty() ? title : models::labelled(title, words));
}

// Escape would else dismiss the window's notices.
bool NamesForm::eventFilter(QObject* watched, QEvent* event) {
    const auto found = std::ranges::find(lines_, watched);
    if (found == lines_.end()) return QWidget::eventFilter(watched, event);
    const auto field = static_cast<Field>(found - lines_.begin());
    // Typed in full, read as far as there is room.
    const bool other_form =
        event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut || event->type() == QEvent::Resize;
    if (other_form && !(*found)->isModified()) show_field(field);
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride) return false;
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool keeps = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (!keeps && key != Qt::Key_Escape) return false;
    event->accept();
    if (event->type() == QEvent::ShortcutOverride) return true;
    if (keeps) {
        keep_field(field);
        if ((*found)->isModified()) return true; // it cannot be read: it stays to be mended
    } else {
        (*found)->setModified(false);
        Q_EMIT said({});
        show_field(field);
    }
    Q_EMIT ended();
    return true;
}

} // namespace lapwright::pages
