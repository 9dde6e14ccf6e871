// SPDX-License-Identifier: GPL-3.0-or-later
// Where the finder can go: the segments of the pairing that is shown, and every command that can be given now.
#pragma once

#include "ui/dialogs/finder.h"

class QMenu;

namespace lapwright::pages {
class ComparePage;
}

namespace lapwright::window {

// page: null where no pairing is shown.
[[nodiscard]] std::vector<dialogs::Destination> find_places(const std::vector<QMenu*>& menus, pages::ComparePage* page);

} // namespace lapwright::window
