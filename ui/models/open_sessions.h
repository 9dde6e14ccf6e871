// SPDX-License-Identifier: GPL-3.0-or-later
// The open sessions and the picked laps, with signals for those who show them.
#pragma once

#include "core/workspace/open_sessions.h"

#include <QObject>
#include <functional>

namespace lapwright::models {

class OpenSessions : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;

    [[nodiscard]] const workspace::OpenSessions& now() const { return now_; }
    // Tells what it changed.
    void edit(const std::function<void(workspace::OpenSessions&)>& change);

  Q_SIGNALS:
    void sessions_changed();
    void picks_changed();

  private:
    workspace::OpenSessions now_;
};

} // namespace lapwright::models
