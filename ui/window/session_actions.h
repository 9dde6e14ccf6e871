// SPDX-License-Identifier: GPL-3.0-or-later
// What the actions of the Sessions page do: to the session and the lap in hand, and how laps are listed, which is
// remembered.
#pragma once

#include <functional>

namespace lapwright::pages {
class SessionsPage;
}

namespace lapwright::window {

struct Actions;
struct Preferences;

// All outlive the connections; `remember` keeps the preferences.
struct SessionParts {
    const Actions& actions;
    pages::SessionsPage& page;
    Preferences& preferences;
    std::function<void()> remember;
};

void connect_session_actions(const SessionParts& parts);

} // namespace lapwright::window
