// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of a file as a table, a row each, with a small plot of what a column holds.
#pragma once

#include "ui/models/column_table.h"
#include "ui/theme/palette.h"

class QTableView;

namespace lapwright::dialogs {

[[nodiscard]] QTableView* column_view(models::ColumnTable* table, const theme::Palette& palette, QWidget* parent);

} // namespace lapwright::dialogs
