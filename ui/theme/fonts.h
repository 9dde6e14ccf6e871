// SPDX-License-Identifier: GPL-3.0-or-later
// Faces with tabular figures, so that columns of numbers stand under one another.
#pragma once

#include <QFont>

namespace lapwright::theme {

[[nodiscard]] QFont body();
[[nodiscard]] QFont small();
[[nodiscard]] QFont strong(QFont font);
[[nodiscard]] QFont verdict();

} // namespace lapwright::theme
