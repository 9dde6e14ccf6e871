// SPDX-License-Identifier: GPL-3.0-or-later
// Opens the workstation.
#pragma once

namespace lapwright::window {

// Words of the command line that are no option of Qt's are files.  The exit status: 0 done, 1 there is no display.
[[nodiscard]] int run(int argc, char** argv);

} // namespace lapwright::window
