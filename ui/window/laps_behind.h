// SPDX-License-Identifier: GPL-3.0-or-later
// Laps behind A and B: chosen from the lap lists, worked out anew whenever the pairing or the choice is another, and
// shown on the Compare page.
#pragma once

#include "ui/bridge/worker.h"

#include <QObject>
#include <vector>

class QUndoStack;

namespace lapwright::models {
class OpenSessions;
}
namespace lapwright::pages {
class ComparePage;
class SessionsPage;
} // namespace lapwright::pages

namespace lapwright::window {

class Comparing;
class Notices;

class LapsBehind : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        bridge::Worker& worker;
        models::OpenSessions& sessions;
        const workspace::PresentPairing& pairing;
        pages::SessionsPage& sessions_page;
        pages::ComparePage& compare_page;
        QUndoStack& edits;
        Notices& notices;
    };
    LapsBehind(const Parts& parts, const Comparing& comparing, QObject* parent); // all outlive it

  private:
    void turn(const workspace::LapPick& lap); // behind A and B, or no more
    void follow();
    void show(const bridge::FurtherPointer& laps);

    Parts parts_;
};

} // namespace lapwright::window
