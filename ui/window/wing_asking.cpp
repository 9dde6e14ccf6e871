// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/wing_asking.h"

#include "core/causes/aero_balance.h"
#include "ui/dialogs/wing_dialog.h"
#include "ui/window/actions.h"
#include "ui/window/explaining.h"

#include <QAction>
#include <utility>

namespace lapwright::window {

WingAsking::WingAsking(const Actions& actions, const Explaining& explaining, std::function<theme::Palette()> palette,
                       QWidget* window)
    : QObject(window), explaining_(explaining), palette_(std::move(palette)), window_(window), jobs_(*this, 1) {
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
    connect(dialog_, &dialogs::WingDialog::cost_changed, this, &WingAsking::ask);
    ask();
    dialog_->open(); // the window's plain keys rest meanwhile
}

void WingAsking::ask() {
    asked_.cancel();
    dialog_->show_working();
    jobs_.add(asked_,
              [this, e = explanation_, cost = dialog_->cost()](const base::Progress&) -> bridge::JobQueue::Answer {
                  return [this, e, a = causes::aero_balance(*e->model_a, e->car_a, cost),
                          b = causes::aero_balance(*e->model_b, e->car_b, cost)] {
                      if (dialog_) dialog_->show_balances(a, b, e->per_kilogram);
                  };
              });
}

} // namespace lapwright::window
