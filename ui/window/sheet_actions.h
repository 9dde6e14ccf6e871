// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves the window: the debrief sheet on paper or as a file, the table and the plots of a page, the track.
#pragma once

class QMainWindow;

namespace lapwright::window {

struct Actions;
class Debriefing;
class Exporting;
class Notices;
class PageStack;
class SettledDebrief;

struct SheetParts {
    const Actions& actions;
    PageStack& pages;
    SettledDebrief& settled;
    Debriefing& debriefing;
    Exporting& exporting;
    Notices& notices;
    QMainWindow& window;
};

// All outlive the connections.
void connect_sheet_actions(const SheetParts& parts);

} // namespace lapwright::window
