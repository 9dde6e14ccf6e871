// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/context_menus.h"

#include "ui/pages/causes/causes_page.h"
#include "ui/pages/compare/compare_page.h"
#include "ui/pages/debrief/debrief_page.h"
#include "ui/pages/sessions/sessions_page.h"
#include "ui/window/actions.h"
#include "ui/window/page_stack.h"

#include <QMenu>

namespace lapwright::window {

ContextMenus::ContextMenus(const Actions& a, PageStack& pages, QObject* parent) : QObject(parent), pages_(pages) {
    const Group copies{a.copy_table, a.copy_picture};
    const Group files{a.save_table, a.save_picture};
    const std::vector<Group> compare{
        {a.rename_segment, a.start_here, a.end_here, a.split_here, a.join_next, a.other_kind},
        {a.gate_here, a.export_track},
        {a.note_a, a.note_b},
        {a.close_up, a.whole_lap, a.lines, a.spread},
        copies,
        files};
    connect(&pages_.compare(), &pages::ComparePage::menu_asked, this,
            [this, compare](const QPoint& at) { show(compare, at); });
    follow(pages_.compare(), {{a.swap}, {a.close_up, a.whole_lap}, copies, files});
    follow(pages_.sessions(), {{a.take_a, a.take_b, a.take_further, a.compare, a.swap},
                               {a.judge_lap, a.laps_by_time, a.learn},
                               {a.note_lap, a.note_session, a.names},
                               {a.report, a.columns, a.close_session},
                               copies});
    follow(pages_.causes(), {{a.setup, a.trial, a.wing, a.keep_prediction, a.swap}, copies, files});
    follow(pages_.debrief(), {{a.print, a.save_sheet, a.save_html}, copies});
}

// Whatever on the page has no menu of its own.
void ContextMenus::follow(QWidget& page, const std::vector<Group>& groups) {
    page.setContextMenuPolicy(Qt::CustomContextMenu);
    connect(&page, &QWidget::customContextMenuRequested, this,
            [this, &page, groups](const QPoint& at) { show(groups, page.mapToGlobal(at)); });
}

void ContextMenus::show(const std::vector<Group>& groups, const QPoint& at) {
    auto* menu = new QMenu(&pages_);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    for (const Group& group : groups) {
        for (QAction* action : group)
            if (action->isEnabled()) menu->addAction(action);
        menu->addSeparator();
    }
    menu->popup(at);
}

} // namespace lapwright::window
