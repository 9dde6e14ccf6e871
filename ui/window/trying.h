// SPDX-License-Identifier: GPL-3.0-or-later
// The setup trial: which of the open sessions were driven with the change, asked in a dialog, reckoned by the worker.
// Sessions stand in the order in which they were driven, by the clock of their files where all have one.
#pragma once

#include "core/track/track_record.h"
#include "ui/bridge/worker.h"
#include "ui/models/open_sessions.h"

#include <QObject>
#include <QPointer>
#include <optional>

class QWidget;

namespace lapwright::dialogs {
class TrialDialog;
}

namespace lapwright::window {

class Explaining;

class Trying : public QObject {
    Q_OBJECT

  public:
    // All outlive it.
    Trying(bridge::Worker& worker, const models::OpenSessions& sessions, const Explaining& explaining, QWidget* window);

    // Opens the dialog; the track's gate and segments are used where it is given.
    void show(const std::optional<track::TrackRecord>& track);
    [[nodiscard]] dialogs::TrialDialog* dialog() const; // null when it is closed

  private:
    void run();

    bridge::Worker& worker_;
    const models::OpenSessions& sessions_;
    const Explaining& explaining_; // knows the setups
    QWidget* window_;
    std::optional<track::TrackRecord> track_;
    QString asked_about_; // the doubt that was told last
    QPointer<dialogs::TrialDialog> dialog_;
};

} // namespace lapwright::window
