// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/laps_behind.h"

#include "core/base/error.h"
#include "core/base/number_text.h"
#include "ui/models/open_sessions.h"
#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/comparing.h"
#include "ui/window/edit.h"
#include "ui/window/notices.h"

#include <QUndoStack>

namespace lapwright::window {

using bridge::Worker;
using models::text;
using workspace::LapPick;

LapsBehind::LapsBehind(const Parts& parts, const Comparing& comparing, QObject* parent)
    : QObject(parent), parts_(parts) {
    connect(&parts_.sessions_page, &pages::SessionsPage::further_asked, this, &LapsBehind::turn);
    connect(&parts_.sessions, &models::OpenSessions::further_changed, this, &LapsBehind::follow);
    connect(&comparing, &Comparing::compared, this, &LapsBehind::follow);
    connect(&parts_.worker, &Worker::further_ready, this, &LapsBehind::show);
    connect(&parts_.worker, &Worker::further_refused, this,
            [this](const base::Error& error) { parts_.notices.add(text(base::one_line(error))); });
}

void LapsBehind::turn(const LapPick& lap) {
    const std::vector<LapPick> before = parts_.sessions.now().further();
    const auto after = parts_.sessions.now().further_turned(lap);
    if (!after) {
        parts_.notices.add(tr("At most %1 laps can be seen behind A and B: take one of them away first.")
                               .arg(text(base::integer_text(workspace::OpenSessions::most_further))));
        return;
    }
    const auto put = [sessions = &parts_.sessions](const std::vector<LapPick>& laps) {
        sessions->edit([&](workspace::OpenSessions& open) { open.put_further(laps); });
    };
    const QString name = tr("laps behind A and B");
    parts_.edits.push(new Edit(name, [put, laps = *after] { put(laps); }, [put, before] { put(before); }));
}

void LapsBehind::follow() {
    const auto& compared = parts_.pairing.compared();
    if (!compared) return;
    bridge::FurtherWanted wanted{compared, {}};
    for (const LapPick& lap : parts_.sessions.now().further())
        wanted.laps.push_back({parts_.sessions.now().session(lap.session), lap.lap});
    parts_.worker.cancel_further();
    if (wanted.laps.empty())
        parts_.compare_page.set_further({});
    else
        parts_.worker.lay_beside(wanted);
}

void LapsBehind::show(const bridge::FurtherPointer& laps) {
    for (const analysis::FurtherLap& lap : *laps)
        if (lap.refused) parts_.notices.add(text(base::one_line(*lap.refused)));
    parts_.compare_page.set_further(laps);
}

} // namespace lapwright::window
