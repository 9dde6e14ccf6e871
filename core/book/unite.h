// SPDX-License-Identifier: GPL-3.0-or-later
// What the attached book "other" has and this one has not, within an edit of the caller.  Both have today's schema.
#pragma once

#include "core/book/database.h"
#include "core/book/exchange.h"

#include <optional>
#include <span>

namespace lapwright::book {

// `chosen`: these sessions of the other book and what belongs to them; nothing: all of it.
[[nodiscard]] Merged unite(Database& database, const std::optional<std::span<const SessionId>>& chosen);

} // namespace lapwright::book
