// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/find_column.h"

namespace lapwright::import {

TableColumn* find_column(Table& table, const std::vector<ColumnGuess>& guesses, Role role, recording::Meaning meaning) {
    for (std::size_t i = 0; i < guesses.size(); ++i)
        if (guesses[i].role == role && guesses[i].meaning == meaning && !table.columns[i].values.empty())
            return &table.columns[i];
    return nullptr;
}

} // namespace lapwright::import
