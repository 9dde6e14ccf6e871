// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/sessions/rename_form.h"

#include "core/base/wording.h"
#include "core/import/text/day.h"
#include "ui/models/text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace lapwright::pages {
namespace {

constexpr int the_date = 3; // beside the three tables of names

using book::NameTable;
using models::text;

QString word_for(NameTable table) {
    switch (table) {
    case NameTable::driver:
        return RenameForm::tr("driver");
    case NameTable::car:
        return RenameForm::tr("car");
    case NameTable::track:
        return RenameForm::tr("track");
    }
    return {};
}

} // namespace

RenameForm::RenameForm(const book::SessionSummary& session, book::Names names, QWidget* parent)
    : QDialog(parent), old_names_{session.driver, session.car, session.track}, old_start_unix_s_(session.start_unix_s),
      names_(std::move(names)), what_(new QComboBox(this)), line_(new QLineEdit(this)), said_(new QLabel(this)),
      done_(new QPushButton(this)) {
    setWindowTitle(tr("Names and date"));
    setMinimumWidth(480);
    for (const NameTable table : {NameTable::track, NameTable::car, NameTable::driver}) {
        const std::string& name = old_names_[static_cast<std::size_t>(table)];
        if (!name.empty()) what_->addItem(tr("%1: %2").arg(word_for(table), text(name)), static_cast<int>(table));
    }
    what_->addItem(tr("date: %1").arg(old_start_unix_s_ ? text(base::date_text(*old_start_unix_s_)) : tr("not known")),
                   the_date);
    what_->setAccessibleName(tr("What is changed"));
    line_->setAccessibleName(tr("New name or date"));
    line_->setMaxLength(200);
    said_->setTextFormat(Qt::PlainText);
    said_->setWordWrap(true);
    said_->setMinimumHeight(3 * fontMetrics().lineSpacing());
    said_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* form = new QFormLayout;
    form->addRow(tr("&Of this session"), what_);
    form->addRow(tr("&New"), line_);
    auto* buttons = new QDialogButtonBox(this);
    buttons->addButton(done_, QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    done_->setDefault(true);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(said_);
    column->addWidget(buttons);
    connect(what_, &QComboBox::currentIndexChanged, this, &RenameForm::begin);
    connect(line_, &QLineEdit::textChanged, this, &RenameForm::follow);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    begin();
    line_->setFocus();
}

bool RenameForm::dates() const {
    return what_->currentData().toInt() == the_date;
}

std::optional<double> RenameForm::start_unix_s() const {
    const auto moment = import::moment_of(new_name());
    return moment.ok() ? std::optional(moment.value()) : std::nullopt;
}

NameTable RenameForm::table() const {
    return static_cast<NameTable>(what_->currentData().toInt());
}

std::string RenameForm::old_name() const {
    return dates() ? std::string() : old_names_[static_cast<std::size_t>(table())];
}

std::string RenameForm::new_name() const {
    return line_->text().trimmed().toStdString();
}

const std::vector<std::string>& RenameForm::known() const {
    return table() == NameTable::driver ? names_.drivers : table() == NameTable::car ? names_.cars : names_.tracks;
}

const std::string* RenameForm::other() const {
    if (book::same_name(new_name(), old_name())) return nullptr;
    const auto found =
        std::ranges::find_if(known(), [this](const std::string& one) { return book::same_name(one, new_name()); });
    return found == known().end() ? nullptr : &*found;
}

bool RenameForm::unites() const {
    return !dates() && other() != nullptr;
}

void RenameForm::begin() {
    line_->setText(text(old_name()));
    line_->setPlaceholderText(dates() ? QStringLiteral("2026-05-16 10:20") : QString());
    line_->selectAll();
    follow();
}

void RenameForm::follow() {
    if (dates())
        follow_date();
    else
        follow_name();
}

void RenameForm::follow_date() {
    const auto moment = import::moment_of(new_name());
    said_->setText(new_name().empty() ? tr("When the session was driven, in UTC; the day alone will do.")
                   : moment.ok()      ? tr("The session was driven on %1.").arg(text(base::date_text(moment.value())))
                                      : text(base::one_line(moment.error())));
    done_->setText(tr("&Set the date"));
    done_->setEnabled(moment.ok() && moment.value() != old_start_unix_s_);
}

void RenameForm::follow_name() {
    const QString word = word_for(table());
    const std::string* there = other();
    said_->setText(there != nullptr ? tr("There is a %1 \"%2\" already: the two become one, and all sessions of \"%3\" "
                                         "are then of \"%2\".")
                                          .arg(word, text(*there), text(old_name()))
                                    : tr("All sessions of this %1 get the new name.").arg(word));
    done_->setText(there != nullptr ? tr("&Unite the two") : tr("&Rename"));
    done_->setEnabled(!new_name().empty() && new_name() != old_name());
}

QString RenameForm::said() const {
    return said_->text();
}

} // namespace lapwright::pages
