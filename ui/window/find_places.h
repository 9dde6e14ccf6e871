// SPDX-License-Identifier: GPL-3.0-or-later
// Where the finder can go, from every page: the segments of the pairing, the open sessions and their flying laps, and
// every command that can be given now.
#pragma once

#include "core/workspace/present_pairing.h"
#include "ui/dialogs/finder.h"

class QMenu;

namespace lapwright::window {

class PageStack;

// All outlive what is gone to.
[[nodiscard]] std::vector<dialogs::Destination> find_places(const std::vector<QMenu*>& menus, PageStack& pages,
                                                            const workspace::PresentPairing& pairing,
                                                            const workspace::OpenSessions& sessions);

} // namespace lapwright::window
