// SPDX-License-Identifier: GPL-3.0-or-later
// How a person wants the panels of the stack: how high, folded or not.  A panel is known by an id that stays the same
// from one pairing to the next: a further channel by its own, the others by their names below.
#pragma once

#include <QString>
#include <map>

namespace lapwright::plots {

struct PanelLook {
    double height_px = 0.0; // beside the other panels; 0: as usual
    bool folded = false;    // its title row alone, which still reads out
    bool operator==(const PanelLook&) const = default;
};

using PanelLooks = std::map<QString, PanelLook>;

} // namespace lapwright::plots
