// SPDX-License-Identifier: GPL-3.0-or-later
// Conflicts of the book's fields, as JSON (values as the book keeps them) and as lines for people.
#pragma once

#include "core/book/conflicts.h"

#include <string>
#include <vector>

namespace lapwright::commands {

[[nodiscard]] std::string conflicts_json(const std::vector<book::Conflict>& conflicts);
[[nodiscard]] std::string conflicts_table(const std::vector<book::Conflict>& conflicts);

} // namespace lapwright::commands
