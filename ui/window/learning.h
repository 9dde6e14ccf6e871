// SPDX-License-Identifier: GPL-3.0-or-later
// Learning a track: the session in hand as laps over time, asked for by key or menu, reckoned by the worker, shown in a
// dialog.
#pragma once

#include "ui/theme/palette.h"

#include <QObject>
#include <QPointer>

namespace lapwright::bridge {
class Worker;
}
namespace lapwright::dialogs {
class LearningDialog;
}
namespace lapwright::models {
class OpenSessions;
}
namespace lapwright::pages {
class SessionsPage;
}

namespace lapwright::window {

struct Actions;
class GivenFiles;
class Notices;

class Learning : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        bridge::Worker& worker;
        const models::OpenSessions& sessions;
        const pages::SessionsPage& page;
        const GivenFiles& given; // knows the track file
        Notices& notices;
    };
    Learning(const Parts& parts, QWidget* window); // all outlive it

    [[nodiscard]] dialogs::LearningDialog* dialog() const; // null when it is closed

  private:
    void show();

    Parts parts_;
    QWidget* window_;
    QPointer<dialogs::LearningDialog> dialog_;
};

} // namespace lapwright::window
