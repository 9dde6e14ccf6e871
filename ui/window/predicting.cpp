// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/predicting.h"

#include "core/analysis/expected_setup.h"
#include "core/analysis/prediction_words.h"
#include "core/base/wording.h"
#include "core/findings/cause_display.h"
#include "ui/models/text.h"
#include "ui/pages/causes/causes_page.h"
#include "ui/pages/causes/what_if_card.h"
#include "ui/pages/sessions/book_panel.h"
#include "ui/pages/sessions/predictions_view.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/edit.h"
#include "ui/window/explaining.h"
#include "ui/window/notices.h"
#include "ui/window/page_stack.h"
#include "ui/window/wing_asking.h"

#include <QAction>
#include <QInputDialog>
#include <QUndoStack>
#include <QUuid>
#include <algorithm>
#include <chrono>
#include <utility>

namespace lapwright::window {
namespace {

using bridge::BookQueue;
using models::text;
using workspace::SessionKey;
using Book = BookQueue::Book;

double seconds_since_1970() {
    return std::chrono::duration<double>(std::chrono::system_clock::now().time_since_epoch()).count();
}

} // namespace

Predicting::Predicting(const Parts& parts) : QObject(&parts.window), parts_(parts) {
    connect(parts_.actions.keep_prediction, &QAction::triggered, this, &Predicting::keep_what_if);
    connect(&parts_.pages.causes().what_if(), &pages::WhatIfCard::keep_asked, this, &Predicting::keep_what_if);
    connect(&parts_.wing, &WingAsking::keep_asked, this, &Predicting::ask);
    connect(&parts_.wing, &WingAsking::nothing_to_keep, this,
            [this] { parts_.notices.add(tr("The car is quickest as it is now: nothing is predicted to change.")); });
    const pages::PredictionsView& view = parts_.pages.sessions().book_panel().predictions();
    connect(&view, &pages::PredictionsView::removal_wanted, this,
            [this](const analysis::HeldPrediction& held) { take_back(held.kept.prediction); });
    connect(&view, &pages::PredictionsView::driven_asked, this, &Predicting::ask_for_driven);
}

QInputDialog* Predicting::dialog() const {
    return dialog_;
}

void Predicting::keep_what_if() {
    const auto& shown = parts_.pages.causes().what_if().shown();
    const auto& explanation = parts_.explaining.explanation();
    if (!shown || !explanation) {
        parts_.notices.add(tr("Nothing is predicted yet: move a control of What if on the Causes page, then keep it."));
        parts_.actions.show_causes->trigger();
        return;
    }
    const bool of_a = shown->side == causes::Side::a;
    ask(shown->side,
        analysis::predicted(shown->change, shown->lap, explanation->per_kilogram,
                            of_a ? parts_.explaining.setup_a() : parts_.explaining.setup_b()),
        nullptr);
}

void Predicting::open(QInputDialog* dialog) {
    if (dialog_) dialog_->close();
    dialog_ = dialog;
    dialog_->setAttribute(Qt::WA_DeleteOnClose);
    dialog_->open();
}

void Predicting::ask(causes::Side side, book::Prediction prediction, const workspace::SessionPointer& there) {
    if (!parts_.pairing.compared()) return;
    if (!parts_.book.takes_edits()) {
        parts_.notices.add(tr("There is no book that can be written: it is what keeps predictions."));
        return;
    }
    const bool of_a = side == causes::Side::a;
    const analysis::Pairing& pairing = *parts_.pairing.compared()->pairing;
    const lap::Lap& lap = of_a ? pairing.a.lap : pairing.b.lap;
    const auto& laps = parts_.pairing.laps();
    const SessionKey of = of_a ? laps.session_a : laps.session_b;
    const SessionKey at = there ? workspace::key_of(*there) : of;
    const car::SetupSheet before = of_a ? parts_.explaining.setup_a() : parts_.explaining.setup_b();
    if (!there) prediction.lap_s = lap.time_s();
    prediction.program = LAPWRIGHT_VERSION;
    auto* dialog = new QInputDialog(&parts_.window);
    dialog->setWindowTitle(tr("Keep a prediction"));
    dialog->setLabelText(
        tr("Car %1: %2, %3 a lap.\n\nHow will the setup sheet say it once it is driven? Write it as\nwing angle=7 deg; "
           "splitter=46 mm, or leave it empty and name the session then.")
            .arg(of_a ? QStringLiteral("A") : QStringLiteral("B"),
                 text(analysis::asked_text(prediction.asked, parts_.pages.sessions().units())),
                 text(findings::lap_change_text(prediction.change))));
    dialog->setOkButtonText(tr("Keep"));
    connect(dialog, &QInputDialog::textValueSelected, this,
            [this, of, at, before, prediction = std::move(prediction)](const QString& words) {
                std::vector<std::string> items;
                for (const QString& item : words.split(QLatin1Char(';'), Qt::SkipEmptyParts))
                    if (!item.trimmed().isEmpty()) items.push_back(item.toStdString());
                book::Prediction kept = prediction;
                if (const auto may = analysis::expect_items(kept, items, before); !may)
                    parts_.notices.add(text(base::one_line(may.error())));
                else
                    keep(of, at, kept);
            });
    open(dialog);
}

void Predicting::keep(const SessionKey& of, const SessionKey& there, const book::Prediction& prediction) {
    book::Prediction kept = prediction;
    kept.uid = QUuid::createUuid().toString(QUuid::Id128).toStdString();
    kept.kept_unix_s = seconds_since_1970(); // redone after undo it is still of now
    parts_.edits.push(new Edit(
        tr("keeping of a prediction"),
        [this, of, there, kept] {
            parts_.book.edit([of, there, kept](Book& own) { return own.keep_prediction(of, there, kept); });
        },
        [this, uid = kept.uid] {
            parts_.book.edit([uid](Book& own) { return book::take_back_prediction(own.book(), uid); });
        }));
    const QString key = parts_.actions.predictions->shortcut().toString(QKeySequence::NativeText);
    parts_.notices.add(tr("Once it was driven, the book's predictions say what happened (%1).").arg(key));
}

void Predicting::take_back(const book::Prediction& prediction) {
    parts_.edits.push(new Edit(
        tr("taking back of a prediction"),
        [this, uid = prediction.uid] {
            parts_.book.edit([uid](Book& own) { return book::take_back_prediction(own.book(), uid); });
        },
        [this, prediction] {
            parts_.book.edit([prediction](Book& own) {
                const auto kept = book::keep_prediction(own.book(), prediction);
                return kept ? base::Result<void>() : kept.error();
            });
        }));
}

void Predicting::ask_for_driven(const analysis::HeldPrediction& held) {
    QStringList names{tr("by the setup sheets")};
    std::vector<book::Checksum> sources;
    int chosen = 0;
    const auto& now = held.kept.prediction.driven;
    for (const book::SessionSummary& session : held.since) {
        sources.push_back(session.source.checksum);
        names << text(session.source.file_name + ", " + base::date_text(*session.start_unix_s));
        if (std::ranges::find(now, sources.back()) != now.end()) chosen = static_cast<int>(sources.size());
    }
    auto* dialog = new QInputDialog(&parts_.window);
    dialog->setWindowTitle(tr("Which session was driven with it?"));
    dialog->setLabelText(text(analysis::asked_text(held.kept.prediction.asked, parts_.pages.sessions().units())));
    dialog->setComboBoxItems(names);
    dialog->setTextValue(names[chosen]);
    connect(dialog, &QInputDialog::textValueSelected, this,
            [this, names, sources, uid = held.kept.prediction.uid, now](const QString& name) {
                const auto row = names.indexOf(name);
                if (row < 0) return;
                const auto put = [this, uid](const std::vector<book::Checksum>& driven) {
                    return [this, uid, driven] {
                        parts_.book.edit(
                            [uid, driven](Book& own) { return book::say_driven(own.book(), uid, driven); });
                    };
                };
                const auto named =
                    row == 0 ? std::vector<book::Checksum>() : std::vector{sources[static_cast<std::size_t>(row - 1)]};
                parts_.edits.push(new Edit(tr("session of a prediction"), put(named), put(now)));
            });
    open(dialog);
}

} // namespace lapwright::window
