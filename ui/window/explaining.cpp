// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/explaining.h"

#include "core/base/error.h"
#include "core/car/write_setup_sheet.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/setup_form.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/window/edit.h"
#include "ui/window/kept_notes.h"

#include <QSettings>
#include <QUndoStack>
#include <utility>
#include <vector>

namespace lapwright::window {
namespace {

using models::text;
using workspace::same_setup;
using workspace::SessionKey;

QString settings_key(const SessionKey& key) {
    return QStringLiteral("setups/") + settings_name(key);
}

} // namespace

Explaining::Explaining(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts) {
    bridge::Worker* worker = &parts_.worker;
    connect(worker, &bridge::Worker::explanation_ready, this, [this](const bridge::ExplanationPointer& explanation) {
        if (!parts_.pairing.take(explanation)) return;
        parts_.page.show_explanation(explanation);
        Q_EMIT changed();
        const auto [a, b] = sides();
        Q_EMIT car_known(a, explanation->car_a);
        if (b != a) Q_EMIT car_known(b, explanation->car_b);
    });
    connect(worker, &bridge::Worker::explanation_refused, this, [this](const base::Error& error) {
        if (!parts_.pairing.refuse_explanation()) return;
        parts_.page.show_refusal(text(base::one_line(error)));
        Q_EMIT changed();
    });
    pages::WhatIfCard* what_if = &parts_.page.what_if();
    connect(what_if, &pages::WhatIfCard::predictions_asked, worker, &bridge::Worker::predict);
    connect(worker, &bridge::Worker::predictions_ready, what_if, &pages::WhatIfCard::show_predictions);
}

std::array<SessionKey, 2> Explaining::sides() const {
    return {parts_.pairing.laps().session_a, parts_.pairing.laps().session_b};
}

void Explaining::follow_pairing() {
    look_setups_up();
    begin_anew();
}

void Explaining::want() {
    if (parts_.pairing.want_explanation())
        parts_.worker.explain({parts_.pairing.compared(), known_[0].sheet, known_[1].sheet});
}

void Explaining::called_off() {
    parts_.page.show_refusal(tr("Stopped: the causes were not worked out. Choose the page again to start anew."));
    Q_EMIT changed();
}

void Explaining::begin_anew() {
    parts_.pairing.forget_explanation();
    parts_.page.show_pairing(parts_.pairing.compared());
    Q_EMIT changed();
}

void Explaining::edit_setups(base::UnitSystem units, QWidget* parent) {
    if (!parts_.pairing.compared()) return;
    pages::SetupForm form(setup_a(), setup_b(), units, parent);
    if (form.exec() == QDialog::Accepted) enter_setups(form.setup_a(), form.setup_b());
}

void Explaining::enter_setups(const car::SetupSheet& a, const car::SetupSheet& b) {
    const std::array<const car::SetupSheet*, 2> sheets{&a, &b};
    std::vector<Entered> entered;
    for (std::size_t side = 0; side < 2; ++side)
        if (!same_setup(*sheets[side], known_[side].sheet))
            entered.push_back({sides()[side], setups_.entered(sides()[side]), *sheets[side]});
    if (entered.empty()) return;
    const bool of_a = !same_setup(a, setup_a()) || sides()[0] == sides()[1];
    push(entered.size() > 1 ? tr("setups") : of_a ? tr("setup of A") : tr("setup of B"), entered);
    want();
}

void Explaining::give_setup(const workspace::OpenSessions::Entry& session, const car::SetupSheet& sheet) {
    if (same_setup(known_setup(session.key), sheet)) return;
    push(tr("setup of %1").arg(text(session.file_name())), {{session.key, setups_.entered(session.key), sheet}});
}

void Explaining::push(const QString& name, const std::vector<Entered>& entered) {
    const auto put = [this, entered](std::optional<car::SetupSheet> Entered::* which) {
        for (const Entered& one : entered)
            enter(one.key, one.*which);
        parts_.settings.sync();
        follow_setups();
    };
    parts_.edits.push(new Edit(name, [put] { put(&Entered::after); }, [put] { put(&Entered::before); }));
}

void Explaining::enter(const SessionKey& key, const std::optional<car::SetupSheet>& sheet) {
    setups_.enter(key, sheet);
    if (setups_.in_book(key))
        Q_EMIT setup_entered(key, sheet.value_or(car::SetupSheet{}));
    else if (sheet)
        parts_.settings.setValue(settings_key(key), QByteArray::fromStdString(car::setup_sheet_text(*sheet)));
    else
        parts_.settings.remove(settings_key(key));
    Q_EMIT setup_changed(key);
}

void Explaining::session_opened(const SessionKey& key) {
    const QByteArray kept = parts_.settings.value(settings_key(key)).toByteArray();
    if (kept.isEmpty()) return;
    if (const auto sheet = car::parse_setup_sheet(kept.toStdString(), "settings")) setups_.take_kept(key, *sheet);
}

void Explaining::take_from_book(const SessionKey& key, const car::SetupSheet& sheet) {
    const bool other = !same_setup(known_setup(key), sheet);
    if (const auto newer = setups_.take_from_book(key, sheet)) {
        Q_EMIT setup_entered(key, *newer);
        Q_EMIT setup_changed(key);
    } else if (other && (key == sides()[0] || key == sides()[1])) {
        follow_setups();
    }
}

void Explaining::rename(const SessionKey& key, const workspace::SessionNames& names) {
    setups_.rename(key, names.driver, names.car);
}

void Explaining::follow_setups() {
    if (!parts_.pairing.compared()) return;
    look_setups_up();
    begin_anew();
    if (parts_.page.isVisible()) want();
}

car::SetupSheet Explaining::known_setup(const SessionKey& key) const {
    return setups_.known(key, parts_.sessions.now()).sheet;
}

void Explaining::look_setups_up() {
    for (std::size_t side = 0; side < 2; ++side)
        known_[side] = setups_.known(sides()[side], parts_.sessions.now());
    parts_.page.set_setup_words(
        tr("Setup of A: %1. Setup of B: %2.").arg(text(known_[0].words), text(known_[1].words)));
}

} // namespace lapwright::window
