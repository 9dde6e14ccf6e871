// SPDX-License-Identifier: GPL-3.0-or-later
// What the actions of the Compare page do: its view, cursor and chosen segment, and how its plots are shown, which is
// remembered.
#pragma once

#include <QObject>
#include <functional>

namespace lapwright::pages {
class ComparePage;
}

namespace lapwright::window {

struct Actions;
struct Preferences;

// All outlive the connections; `remember` keeps the preferences.
struct ViewParts {
    const Actions& actions;
    pages::ComparePage& page;
    Preferences& preferences;
    std::function<void()> remember;
};

void connect_view_actions(const ViewParts& parts);
// The channels that the present pairing can show; others keep their place in the preferences.
void fill_channels_menu(const ViewParts& parts);

} // namespace lapwright::window
