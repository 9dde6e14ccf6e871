// SPDX-License-Identifier: GPL-3.0-or-later
// The sample sessions that come with the program: two invented drivers on one invented track.
#pragma once

#include <QStringList>

namespace lapwright::window {

// Beside the installed program, or in the tree in which it was built; empty: there are none.
[[nodiscard]] QStringList sample_sessions();

} // namespace lapwright::window
