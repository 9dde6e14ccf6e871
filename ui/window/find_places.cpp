// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/find_places.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/page_stack.h"

#include <QMenu>

namespace lapwright::window {
namespace {

using dialogs::Destination;
using models::text;

void add_commands(std::vector<Destination>& places, const std::vector<QMenu*>& menus) {
    for (const QMenu* menu : menus)
        for (QAction* action : menu->actions()) {
            if (action->isSeparator() || action->menu() != nullptr || !action->isEnabled()) continue;
            places.push_back({models::without_mnemonic(action->text()),
                              action->shortcut().toString(QKeySequence::NativeText), [action] { action->trigger(); }});
        }
}

// A lap is found twice: to be A and to be B.
void add_laps(std::vector<Destination>& places, const workspace::OpenSessions::Entry& entry, PageStack& pages) {
    for (const lap::Lap& lap : entry.session->laps) {
        if (lap.kind != lap::LapKind::flying) continue;
        const QString name =
            QObject::tr("lap %1, %2, %3")
                .arg(text(base::integer_text(lap.number)),
                     text(base::lap_time_with_margin(lap.time_s(), lap.time_sd_s)), text(entry.session->title()));
        const auto take = [&pages, key = entry.key, number = lap.number](workspace::Side side) {
            Q_EMIT pages.sessions().pick_asked(side, {key, number});
            pages.follow_edit();
        };
        places.push_back({name, QObject::tr("lap, to be A"), [take] { take(workspace::Side::a); }});
        places.push_back({name, QObject::tr("lap, to be B"), [take] { take(workspace::Side::b); }});
    }
}

void add_segments(std::vector<Destination>& places, const workspace::PresentPairing& pairing, PageStack& pages) {
    if (!pairing.compared()) return;
    for (const track::Segment& segment : pairing.compared()->pairing->track.segments)
        places.push_back(
            {text(segment.name), QObject::tr("segment"), [&pages, place_m = 0.5 * (segment.start_m + segment.end_m)] {
                 pages.show_compare();
                 pages.compare().go_to(place_m);
             }});
}

} // namespace

std::vector<Destination> find_places(const std::vector<QMenu*>& menus, PageStack& pages,
                                     const workspace::PresentPairing& pairing,
                                     const workspace::OpenSessions& sessions) {
    std::vector<Destination> places;
    add_segments(places, pairing, pages);
    for (const auto& entry : sessions.entries())
        places.push_back({text(entry.session->title()) + QStringLiteral(" · ") + text(entry.file_name()),
                          QObject::tr("session"), [&pages, key = entry.key] {
                              pages.show_sessions();
                              pages.sessions().focus_session(key);
                          }});
    add_commands(places, menus);
    for (const auto& entry : sessions.entries())
        add_laps(places, entry, pages);
    return places;
}

} // namespace lapwright::window
