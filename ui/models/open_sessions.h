// SPDX-License-Identifier: GPL-3.0-or-later
// The open sessions and the picked laps, with signals for those who show them.
#pragma once

#include "core/workspace/open_sessions.h"

#include <QObject>
#include <QString>
#include <cstddef>
#include <functional>

namespace lapwright::models {

// By which a lap behind A and B goes, counted from 0: C, D, …
[[nodiscard]] inline QString further_letter(std::size_t place) {
    return QChar(static_cast<char16_t>(u'C' + place));
}

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
    void further_changed(); // the laps behind A and B

  private:
    workspace::OpenSessions now_;
};

} // namespace lapwright::models
