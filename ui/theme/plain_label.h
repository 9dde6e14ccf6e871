// SPDX-License-Identifier: GPL-3.0-or-later
// A label for text that may come from a file: never taken for markup.
#pragma once

#include "ui/theme/fonts.h"

class QLabel;
class QString;
class QWidget;

namespace lapwright::theme {

[[nodiscard]] QLabel* plain_label(QWidget* parent, const QFont& font = body());
[[nodiscard]] QLabel* plain_label(const QString& words, QWidget* parent, const QFont& font = body());

} // namespace lapwright::theme
