// SPDX-License-Identifier: GPL-3.0-or-later
// What is open outlives a crash: it is written down while it changes, and after a run that ended without closing its
// window it is offered at the next start.  Nothing of it is opened unasked.
#pragma once

#include "core/workspace/present_pairing.h"
#include "ui/models/notes.h"
#include "ui/models/open_sessions.h"
#include "ui/window/run_state.h"

#include <QObject>
#include <QTimer>
#include <vector>

namespace lapwright::window {

struct Actions;
class Comparing;
class Notices;
class Noting;
class PageStack;

class Restoring : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        const models::OpenSessions& sessions;
        const workspace::PresentPairing& pairing;
        PageStack& pages;
        Comparing& comparing;
        Noting& noting;
        Notices& notices;
        QString state_folder; // empty: nothing is written down
        QString book;
    };

    // All outlive it.
    explicit Restoring(Parts parts, QObject* parent = nullptr);

    [[nodiscard]] bool offers() const { return offer_.has_value(); }
    void restore();
    void decline();
    [[nodiscard]] RunState now() const;
    [[nodiscard]] RunFile& file() { return file_; }

  private:
    void write();
    void follow_offer();
    void give_drafts(); // whose sessions have come

    Parts parts_;
    RunFile file_;
    std::optional<RunState> offer_;
    std::vector<RunState::Draft> drafts_; // that wait for their sessions
    std::optional<int> page_;             // to be shown when the pairing is there
    QTimer pause_;
    QTimer typing_ticks_;
};

} // namespace lapwright::window
