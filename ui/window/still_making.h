// SPDX-License-Identifier: GPL-3.0-or-later
// The page of stills: made anew, off the UI thread, when another moment or corner is wanted, the pairing or the units
// change, or a video is opened, moved or closed.
#pragma once

#include "core/workspace/compared.h"
#include "core/workspace/stills.h"
#include "ui/bridge/job_queue.h"

#include <QObject>

namespace lapwright::pages {
class DebriefPage;
}

namespace lapwright::window {

struct Actions;
class Debriefing;
class Watching;

class StillMaking : public QObject {
    Q_OBJECT

  public:
    struct Parts {
        const Actions& actions;
        pages::DebriefPage& page;
        Debriefing& debriefing;
        Watching& watching;
    };
    StillMaking(const Parts& parts, QObject* parent); // all outlive it

    void set_pairing(const workspace::ComparedPointer& compared);
    void set_units(base::UnitSystem units);

  private:
    void make();

    Parts parts_;
    workspace::ComparedPointer compared_;
    base::UnitSystem units_ = base::UnitSystem::metric;
    bridge::JobGroup group_;
    bridge::JobQueue jobs_;
};

} // namespace lapwright::window
