// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/trying.h"

#include "core/base/error.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/dialogs/trial_dialog.h"
#include "ui/models/text.h"
#include "ui/window/explaining.h"

#include <algorithm>

namespace lapwright::window {

using models::text;

Trying::Trying(bridge::Worker& worker, const models::OpenSessions& sessions, const Explaining& explaining,
               QWidget* window)
    : QObject(window), worker_(worker), sessions_(sessions), explaining_(explaining), window_(window) {
    connect(&worker_, &bridge::Worker::trial_ready, this, [this](const bridge::TrialPointer& report) {
        if (dialog_) dialog_->show_report(report);
    });
    connect(&worker_, &bridge::Worker::trial_refused, this, [this](const base::Error& error) {
        if (dialog_) dialog_->show_refusal(text(base::one_line(error)));
    });
    connect(&worker_, &bridge::Worker::trial_progressed, this, [this](const QString& stage, double part_done) {
        if (dialog_) dialog_->show_progress(stage, part_done);
    });
    connect(&sessions_, &models::OpenSessions::sessions_changed, this, [this] {
        if (dialog_) dialog_->close(); // it speaks of sessions that may be gone
    });
}

dialogs::TrialDialog* Trying::dialog() const {
    return dialog_;
}

void Trying::show(const std::optional<track::TrackRecord>& track) {
    track_ = track;
    if (!dialog_) {
        std::vector<dialogs::TrialRow> rows;
        for (const auto& entry : sessions_.now().as_driven()) {
            const auto& laps = entry.session->laps;
            const auto clean = std::ranges::count_if(laps, [](const lap::Lap& l) { return l.clean; });
            const auto& start = entry.session->recording->start_unix_s;
            rows.push_back({entry.key, text(entry.session->title()), text(entry.file_name()),
                            start ? text(base::date_text(*start)) : QString(),
                            text(base::integer_text(static_cast<std::int64_t>(clean)))});
        }
        dialog_ = new dialogs::TrialDialog(rows, window_);
        dialog_->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog_, &dialogs::TrialDialog::run_asked, this, &Trying::run);
        connect(dialog_, &dialogs::TrialDialog::stop_asked, &worker_, &bridge::Worker::cancel_trial);
    }
    dialog_->open(); // the window's plain keys rest meanwhile
}

void Trying::run() {
    bridge::TrialWanted wanted;
    wanted.track = track_;
    for (const auto& [key, part] : dialog_->parts())
        if (const auto session = sessions_.now().session(key); session && part != dialogs::TrialPart::left_out)
            wanted.sessions.push_back({session, part == dialogs::TrialPart::change, explaining_.known_setup(key)});
    // A change that the setup sheets do not show is asked about once.
    const QString doubt = text(analysis::change_not_shown(wanted.sessions));
    if (!doubt.isEmpty() && doubt != asked_about_) {
        asked_about_ = doubt;
        dialog_->show_refusal(
            tr("Is this the trial that you mean? %1. Press the button again to reckon it all the same.")
                .arg(doubt.left(1).toUpper() + doubt.mid(1)));
        return;
    }
    worker_.try_setup(wanted);
}

} // namespace lapwright::window
