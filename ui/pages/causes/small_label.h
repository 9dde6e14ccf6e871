// SPDX-License-Identifier: GPL-3.0-or-later
// The labels of the Causes page's small print: plain text, whatever a file brought.
#pragma once

#include <QLabel>

namespace lapwright::pages {

// Owned by its parent.
[[nodiscard]] QLabel* small_label(const QString& words, QWidget* parent);

void set_ink(QLabel& label, const QColor& ink);

} // namespace lapwright::pages
