// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/still_making.h"

#include "ui/models/text.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/window/actions.h"
#include "ui/window/debriefing.h"
#include "ui/window/watching.h"

#include <QSignalBlocker>
#include <utility>

namespace lapwright::window {

using models::text;
using workspace::Side;

StillMaking::StillMaking(const Parts& parts, QObject* parent) : QObject(parent), parts_(parts), jobs_(*this, 1) {
    connect(&parts_.page, &pages::DebriefPage::stills_changed, this, &StillMaking::make);
    connect(&parts_.watching, &Watching::videos_changed, this, &StillMaking::make);
    connect(parts_.actions.stills, &QAction::toggled, this, [this](bool wanted) {
        parts_.page.choose_stills(wanted ? workspace::StillsWanted{}.moments : std::vector<workspace::StillMoment>());
    });
}

void StillMaking::set_pairing(const workspace::ComparedPointer& compared) {
    compared_ = compared;
    QStringList corners;
    for (const auto& one : compared->pairing->comparison.segments)
        if (one.segment.kind == track::SegmentKind::corner) corners << text(one.segment.name);
    parts_.page.set_corners(corners);
    make();
}

void StillMaking::set_units(base::UnitSystem units) {
    units_ = units;
    make();
}

void StillMaking::make() {
    group_.cancel();
    const workspace::StillsWanted wanted = parts_.page.stills();
    const QSignalBlocker quiet(parts_.actions.stills);
    parts_.actions.stills->setChecked(!wanted.moments.empty());
    parts_.page.say_of_stills({});
    if (!compared_ || wanted.moments.empty()) {
        parts_.debriefing.set_stills({});
        return;
    }
    const auto video_a = parts_.watching.in_step(Side::a);
    const auto video_b = parts_.watching.in_step(Side::b);
    if (!video_a && !video_b) {
        parts_.debriefing.set_stills({});
        parts_.page.say_of_stills(tr("No video is in step with these laps: choose one on the Compare page (Y)."));
        return;
    }
    jobs_.add(group_,
              [this, wanted, video_a, video_b, pairing = compared_->pairing,
               units = units_](const base::Progress& progress) -> bridge::JobQueue::Answer {
                  const video::GoOn go_on = [&progress] { return base::go_on(progress, "", 0.0); };
                  auto made = workspace::stills(*pairing, wanted, video_a, video_b, units, go_on);
                  if (!made)
                      return [this, why = made.error()] {
                          parts_.debriefing.set_stills({});
                          parts_.page.say_of_stills(text(base::one_line(why)));
                      };
                  return [this, stills = std::move(made).value()] {
                      if (stills.empty()) parts_.page.say_of_stills(tr("The videos do not show these moments."));
                      parts_.debriefing.set_stills(stills);
                  };
              });
}

} // namespace lapwright::window
