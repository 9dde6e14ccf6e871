// SPDX-License-Identifier: GPL-3.0-or-later
// Faces with tabular figures, so that columns of numbers stand under one another.
#pragma once

#include <QFont>
#include <QString>

namespace lapwright::theme {

// Takes the faces of this folder besides those of the system: on Windows they are installed with the program.
void add_faces(const QString& folder);

[[nodiscard]] QFont body();
[[nodiscard]] QFont small();
[[nodiscard]] QFont strong(QFont font);
[[nodiscard]] QFont verdict();

} // namespace lapwright::theme
