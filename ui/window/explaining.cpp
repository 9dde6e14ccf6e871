// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/explaining.h"

#include "core/base/error.h"
#include "core/car/setup_beside.h"
#include "core/car/write_setup_sheet.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/setup_form.h"
#include "ui/pages/causes/what_if_card.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QUndoCommand>
#include <QUndoStack>
#include <utility>
#include <vector>

namespace lapwright::window {
namespace {

using models::text;

QString settings_key(const QString& file) {
    const QByteArray digest = QCryptographicHash::hash(file.toUtf8(), QCryptographicHash::Sha256).toHex();
    return QStringLiteral("setups/") + QString::fromLatin1(digest.left(24));
}

QString beside(const QString& file) {
    return QFile::decodeName(car::setup_path_beside(QFile::encodeName(file).toStdString()).c_str());
}

bool same(const car::SetupSheet& one, const car::SetupSheet& other) {
    return car::setup_sheet_text(one) == car::setup_sheet_text(other);
}

class SetupEdit : public QUndoCommand {
  public:
    struct Change {
        QString file;
        std::optional<car::SetupSheet> before;
        car::SetupSheet after;
    };

    SetupEdit(Explaining& explaining, std::vector<Change> changes, const QString& name)
        : QUndoCommand(name), explaining_(explaining), changes_(std::move(changes)) {}
    void redo() override {
        std::vector<Explaining::Entered> entered;
        for (const Change& change : changes_)
            entered.push_back({change.file, change.after});
        explaining_.put_setups(entered);
    }
    void undo() override {
        std::vector<Explaining::Entered> entered;
        for (const Change& change : changes_)
            entered.push_back({change.file, change.before});
        explaining_.put_setups(entered);
    }

  private:
    Explaining& explaining_;
    std::vector<Change> changes_;
};

} // namespace

Explaining::Explaining(bridge::Worker& worker, pages::CausesPage& page, QUndoStack& edits, QSettings& settings,
                       QObject* parent)
    : QObject(parent), worker_(worker), page_(page), edits_(edits), settings_(settings) {
    connect(&worker, &bridge::Worker::explanation_ready, this, [this](const bridge::ExplanationPointer& explanation) {
        if (!std::exchange(on_its_way_, false)) return; // of a pairing that is no longer shown
        explanation_ = explanation;
        page_.show_explanation(explanation);
        Q_EMIT changed();
        Q_EMIT car_known(files_[0], explanation->car_a);
        if (files_[1] != files_[0]) Q_EMIT car_known(files_[1], explanation->car_b);
    });
    connect(&worker, &bridge::Worker::explanation_refused, this, [this](const base::Error& error) {
        if (!std::exchange(on_its_way_, false)) return;
        page_.show_refusal(text(base::one_line(error)));
    });
    connect(&page.what_if(), &pages::WhatIfCard::predictions_asked, &worker, &bridge::Worker::predict);
    connect(&worker, &bridge::Worker::predictions_ready, &page.what_if(), &pages::WhatIfCard::show_predictions);
}

void Explaining::set_pairing(const models::ComparedPointer& compared, const QString& file_a, const QString& file_b) {
    compared_ = compared;
    files_ = {file_a, file_b};
    for (std::size_t side = 0; side < 2; ++side)
        known_[side] = known_of(files_[side]);
    tell_setups();
    forget_explanation();
}

void Explaining::want() {
    if (!compared_ || explanation_ || on_its_way_) return;
    on_its_way_ = true;
    worker_.explain({compared_, known_[0].sheet, known_[1].sheet});
}

void Explaining::called_off() {
    if (!std::exchange(on_its_way_, false)) return;
    page_.show_refusal(tr("Stopped: the causes were not worked out. Choose the page again to start anew."));
}

void Explaining::forget_explanation() {
    explanation_.reset();
    on_its_way_ = false;
    page_.show_pairing(compared_);
    Q_EMIT changed();
}

void Explaining::edit_setups(base::UnitSystem units, QWidget* parent) {
    if (!compared_) return;
    pages::SetupForm form(setup_a(), setup_b(), units, parent);
    if (form.exec() == QDialog::Accepted) enter_setups(form.setup_a(), form.setup_b());
}

void Explaining::enter_setups(const car::SetupSheet& a, const car::SetupSheet& b) {
    const std::array<const car::SetupSheet*, 2> entered{&a, &b};
    std::vector<SetupEdit::Change> changes;
    for (std::size_t side = 0; side < 2; ++side) {
        if (!same(*entered[side], known_[side].sheet))
            changes.push_back({files_[side], entered_for(files_[side]), *entered[side]});
    }
    if (changes.empty()) return;
    const QString name = changes.size() > 1                                    ? tr("setups")
                         : !same(a, known_[0].sheet) || files_[0] == files_[1] ? tr("setup of A")
                                                                               : tr("setup of B");
    edits_.push(new SetupEdit(*this, std::move(changes), name));
    want();
}

void Explaining::give_setup(const QString& file, const car::SetupSheet& sheet) {
    if (same(known_of(file).sheet, sheet)) return;
    edits_.push(
        new SetupEdit(*this, {{file, entered_for(file), sheet}}, tr("setup of %1").arg(QFileInfo(file).fileName())));
}

void Explaining::put_setups(const std::vector<Entered>& entered) {
    for (const Entered& one : entered)
        keep(one);
    settings_.sync();
    follow_setups();
}

void Explaining::keep(const Entered& entered) {
    const auto& [file, sheet] = entered;
    if (const auto kept = in_book_.find(file); kept != in_book_.end()) {
        kept->second = sheet.value_or(car::SetupSheet{});
        Q_EMIT setup_entered(file, kept->second);
    } else if (sheet) {
        given_[file] = *sheet;
        settings_.setValue(settings_key(file), QByteArray::fromStdString(car::setup_sheet_text(*sheet)));
    } else {
        given_.erase(file);
        settings_.remove(settings_key(file));
    }
    Q_EMIT setup_changed(file);
}

void Explaining::take_from_book(const QString& file, const car::SetupSheet& sheet) {
    const bool other = !same(known_of(file).sheet, sheet);
    in_book_[file] = sheet;
    // It was given while the session was on its way into the book.
    if (const auto given = given_.extract(file)) {
        keep({file, given.mapped()});
        return;
    }
    if (other && (file == files_[0] || file == files_[1])) follow_setups();
}

void Explaining::follow_setups() {
    for (std::size_t side = 0; side < 2; ++side)
        known_[side] = known_of(files_[side]);
    tell_setups();
    forget_explanation();
    if (page_.isVisible()) want();
}

std::optional<car::SetupSheet> Explaining::entered_for(const QString& file) const {
    if (const auto kept = in_book_.find(file); kept != in_book_.end())
        return same(kept->second, {}) ? std::nullopt : std::optional(kept->second);
    const QByteArray entered = settings_.value(settings_key(file)).toByteArray();
    if (entered.isEmpty()) return std::nullopt;
    const auto sheet = car::parse_setup_sheet(entered.toStdString(), file.toStdString());
    return sheet.ok() ? std::optional(sheet.value()) : std::nullopt;
}

Explaining::Known Explaining::known_of(const QString& file) const {
    const QString path = beside(file);
    const auto there = car::setup_beside(QFile::encodeName(file).toStdString());
    const bool lies_there = !there.ok() || there->has_value();
    const auto entered = entered_for(file);
    if (entered && !in_book_.contains(file)) return {*entered, tr("as entered here")};
    if (!lies_there) return entered ? Known{*entered, tr("from the book")} : Known{{}, tr("none")};
    if (entered) {
        if (!there.ok()) return {*entered, tr("from the book")};
        const QString words = same(**there, *entered) ? tr("from the book, as %1 beside the file has it")
                                                      : tr("from the book; %1 beside the file says otherwise");
        return {*entered, words.arg(QFileInfo(path).fileName())};
    }
    if (!there.ok()) return {{}, text(base::one_line(there.error()))};
    return {**there, tr("from %1, which lies beside it").arg(QFileInfo(path).fileName())};
}

void Explaining::tell_setups() {
    page_.set_setup_words(tr("Setup of A: %1. Setup of B: %2.").arg(known_[0].words, known_[1].words));
}

} // namespace lapwright::window
