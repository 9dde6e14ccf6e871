// SPDX-License-Identifier: GPL-3.0-or-later
// Labels for text that may come from a file: never taken for markup.  Owned by their parents.
#pragma once

#include "ui/theme/fonts.h"

#include <QLabel>

namespace lapwright::theme {

[[nodiscard]] QLabel* plain_label(QWidget* parent, const QFont& font = body());
[[nodiscard]] QLabel* plain_label(const QString& words, QWidget* parent, const QFont& font = body());
// In as many lines as it takes.
[[nodiscard]] QLabel* wrapped_label(const QString& words, QWidget* parent, const QFont& font = body());

void set_ink(QWidget* label, const QColor& ink);

} // namespace lapwright::theme
