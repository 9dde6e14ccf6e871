// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/session_actions.h"

#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/preferences.h"

namespace lapwright::window {

using pages::SessionsPage;
using workspace::LapOrder;

void connect_session_actions(const SessionParts& parts) {
    const Actions& a = parts.actions;
    SessionsPage* page = &parts.page;
    const auto on = [page](QAction* action, auto work) { QObject::connect(action, &QAction::triggered, page, work); };
    on(a.take_a, [page] { page->pick_focused(workspace::Side::a); });
    on(a.take_b, [page] { page->pick_focused(workspace::Side::b); });
    on(a.take_further, &SessionsPage::turn_further_focused);
    on(a.judge_lap, &SessionsPage::judge_lap);
    on(a.names, &SessionsPage::type_names);
    on(a.note_lap, &SessionsPage::write_lap_note);
    on(a.note_session, &SessionsPage::write_session_note);
    on(a.columns, &SessionsPage::ask_for_columns);
    on(a.report, &SessionsPage::toggle_report);
    on(a.close_session, &SessionsPage::close_focused);
    const auto show_order = [parts, page](LapOrder order) {
        parts.preferences.laps_by_time = order == LapOrder::time;
        parts.actions.laps_by_time->setChecked(parts.preferences.laps_by_time);
        page->set_lap_order(order);
        parts.remember();
    };
    on(a.laps_by_time, [show_order](bool by_time) { show_order(by_time ? LapOrder::time : LapOrder::driven); });
    QObject::connect(page, &SessionsPage::order_asked, page, show_order);
    a.laps_by_time->setChecked(parts.preferences.laps_by_time);
    page->set_lap_order(parts.preferences.laps_by_time ? LapOrder::time : LapOrder::driven);
}

} // namespace lapwright::window
