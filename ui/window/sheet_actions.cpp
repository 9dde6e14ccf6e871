// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/sheet_actions.h"

#include "ui/pages/debrief/debrief_page.h"
#include "ui/window/actions.h"
#include "ui/window/debriefing.h"
#include "ui/window/exporting.h"
#include "ui/window/notices.h"
#include "ui/window/page_stack.h"
#include "ui/window/settled_debrief.h"

#include <QMainWindow>

namespace lapwright::window {

void connect_sheet_actions(const SheetParts& parts) {
    const Actions& a = parts.actions;
    const auto on = [&parts](QAction* action, auto work) {
        QObject::connect(action, &QAction::triggered, &parts.window, work);
    };
    on(a.print, [parts] { parts.settled.then([parts] { parts.debriefing.print(&parts.window); }); });
    const auto saves = [&](QAction* action, Debriefing::Form form) {
        on(action, [parts, form] {
            parts.settled.then([parts, form] { parts.debriefing.ask_and_save(&parts.window, form); });
        });
    };
    saves(a.save_sheet, Debriefing::Form::pdf);
    saves(a.save_html, Debriefing::Form::html);
    pages::DebriefPage* page = &parts.pages.debrief();
    QObject::connect(page, &pages::DebriefPage::print_asked, a.print, &QAction::trigger);
    QObject::connect(page, &pages::DebriefPage::save_asked, a.save_sheet, &QAction::trigger);
    QObject::connect(page, &pages::DebriefPage::html_asked, a.save_html, &QAction::trigger);
    const auto tell_keys = [page, print = a.print, save = a.save_sheet, save_html = a.save_html] {
        page->show_keys(key_of(*print), key_of(*save), key_of(*save_html));
    };
    for (const QAction* action : {a.print, a.save_sheet, a.save_html})
        QObject::connect(action, &QAction::changed, page, tell_keys);
    tell_keys();
    const auto view = [parts] { return parts.pages.on_compare() ? Exporting::View::compare : Exporting::View::causes; };
    on(a.save_table,
       [parts, view] { parts.exporting.ask_and_save_table(view(), parts.window.windowTitle(), &parts.window); });
    on(a.save_picture,
       [parts, view] { parts.exporting.ask_and_save_picture(view(), parts.window.windowTitle(), &parts.window); });
    on(a.export_track, [parts] { parts.exporting.ask_and_save_track(&parts.window); });
    QObject::connect(&parts.exporting, &Exporting::said, &parts.notices, &Notices::add);
}

} // namespace lapwright::window
