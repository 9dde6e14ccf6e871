// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/find_places.h"

#include "ui/models/text.h"
#include "ui/pages/compare/compare_page.h"

#include <QMenu>

namespace lapwright::window {

std::vector<dialogs::Destination> find_places(const std::vector<QMenu*>& menus, pages::ComparePage* page) {
    std::vector<dialogs::Destination> places;
    if (page)
        for (const auto& segment : page->compared()->pairing->track.segments)
            places.push_back({models::text(segment.name), QObject::tr("segment"),
                              [page, place = 0.5 * (segment.start_m + segment.end_m)] { page->go_to(place); }});
    for (const QMenu* menu : menus)
        for (QAction* action : menu->actions()) {
            if (action->isSeparator() || action->menu() != nullptr || !action->isEnabled()) continue;
            places.push_back({QString(action->text()).remove(QLatin1Char('&')),
                              action->shortcut().toString(QKeySequence::NativeText), [action] { action->trigger(); }});
        }
    return places;
}

} // namespace lapwright::window
