// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/wing_asking.h"

#include "core/analysis/expected_setup.h"
#include "core/base/error.h"
#include "ui/dialogs/wing_dialog.h"
#include "ui/models/text.h"
#include "ui/window/actions.h"
#include "ui/window/explaining.h"

#include <QAction>
#include <utility>

namespace lapwright::window {

WingAsking::WingAsking(const Actions& actions, const Explaining& explaining, const models::OpenSessions& sessions,
                       std::function<theme::Palette()> palette, QWidget* window)
    : QObject(window), explaining_(explaining), sessions_(sessions), palette_(std::move(palette)), window_(window),
      jobs_(*this, 1) {
    connect(actions.wing, &QAction::triggered, this, [this, &actions] {
        wanted_ = true;
        if (explaining_.explanation())
            show();
        else
            actions.show_causes->trigger();
    });
    connect(&explaining_, &Explaining::changed, this, [this] {
        if (wanted_ && explaining_.explanation()) show();
    });
}

dialogs::WingDialog* WingAsking::dialog() const {
    return dialog_;
}

void WingAsking::show() {
    wanted_ = false;
    explanation_ = explaining_.explanation();
    if (dialog_) dialog_->close();
    dialog_ = new dialogs::WingDialog(palette_(), window_);
    dialog_->setAttribute(Qt::WA_DeleteOnClose);
    offer_tracks();
    connect(dialog_, &dialogs::WingDialog::cost_changed, this, &WingAsking::ask);
    connect(dialog_, &dialogs::WingDialog::track_changed, this, &WingAsking::ask);
    connect(dialog_, &dialogs::WingDialog::keep_asked, this, &WingAsking::keep);
    ask();
    dialog_->open(); // the window's plain keys rest meanwhile
}

// Of the open sessions those that are neither A nor B.
void WingAsking::offer_tracks() {
    elsewhere_.clear();
    QStringList names;
    const workspace::OpenSessions& open = sessions_.now();
    for (const workspace::OpenSessions::Entry& entry : open.entries()) {
        if (open.picks().have(entry.key) || entry.session->laps.empty()) continue;
        elsewhere_.push_back(entry.session);
        names << models::text(entry.session->title());
    }
    dialog_->offer_tracks(names);
}

void WingAsking::ask() {
    asked_.cancel();
    answered_.reset();
    dialog_->show_working();
    const workspace::SessionPointer there =
        dialog_->track() < 0 ? nullptr : elsewhere_[static_cast<std::size_t>(dialog_->track())];
    jobs_.add(
        asked_,
        [this, e = explanation_, there, cost = dialog_->cost()](const base::Progress&) -> bridge::JobQueue::Answer {
            const auto wing = analysis::wing_of(*e, there, cost);
            if (!wing)
                return [this, said = models::text(base::one_line(wing.error()))] {
                    if (dialog_) dialog_->show_refusal(said);
                };
            return [this, e, both = *wing, cost, there] {
                answered_ = Answered{both, cost, there};
                if (dialog_) dialog_->show_balances(both.a, both.b, e->per_kilogram);
            };
        });
}

void WingAsking::keep(causes::Side side) {
    if (!answered_) return;
    const bool of_a = side == causes::Side::a;
    const auto prediction =
        analysis::predicted(of_a ? answered_->wing.a : answered_->wing.b, answered_->cost, {},
                            explanation_->per_kilogram, of_a ? explaining_.setup_a() : explaining_.setup_b());
    if (prediction)
        Q_EMIT keep_asked(side, *prediction, answered_->there);
    else
        Q_EMIT nothing_to_keep();
}

} // namespace lapwright::window
