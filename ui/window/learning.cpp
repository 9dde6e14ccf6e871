// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/learning.h"

#include "core/base/error.h"
#include "ui/bridge/worker.h"
#include "ui/dialogs/learning_dialog.h"
#include "ui/models/open_sessions.h"
#include "ui/models/text.h"
#include "ui/pages/sessions/session_card.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/given_files.h"
#include "ui/window/notices.h"

namespace lapwright::window {

using bridge::Worker;
using models::text;

Learning::Learning(const Parts& parts, QWidget* window) : QObject(window), parts_(parts), window_(window) {
    connect(parts_.actions.learn, &QAction::triggered, this, &Learning::show);
    connect(&parts_.worker, &Worker::learning_ready, this, [this](const bridge::LearningPointer& report) {
        if (dialog_) dialog_->show_report(report);
    });
    connect(&parts_.worker, &Worker::learning_refused, this, [this](const base::Error& error) {
        if (dialog_) dialog_->show_refusal(text(base::one_line(error)));
    });
    connect(&parts_.worker, &Worker::learning_progressed, this, [this](const QString& stage, double part_done) {
        if (dialog_) dialog_->show_progress(stage, part_done);
    });
    connect(&parts_.sessions, &models::OpenSessions::sessions_changed, this, [this] {
        if (dialog_) dialog_->close(); // it speaks of sessions that may be gone
    });
}

dialogs::LearningDialog* Learning::dialog() const {
    return dialog_;
}

void Learning::show() {
    const pages::SessionCard* card = parts_.page.card_in_hand();
    const auto session = card ? parts_.sessions.now().session(card->key()) : nullptr;
    if (!session) {
        parts_.notices.add(tr("Choose a lap of the session first: click it, or go there by Left and Right."));
        return;
    }
    if (dialog_) dialog_->close();
    dialog_ = new dialogs::LearningDialog(text(session->title()), parts_.page.palette(), window_);
    dialog_->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog_, &QDialog::finished, &parts_.worker, &Worker::cancel_learning);
    dialog_->open(); // the window's plain keys rest meanwhile
    parts_.worker.learn({{session}, parts_.given.track()});
}

} // namespace lapwright::window
