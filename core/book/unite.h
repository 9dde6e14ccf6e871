// SPDX-License-Identifier: GPL-3.0-or-later
// Two books as one, as a union of what they hold: the outcome does not depend on which is put into which, in which
// order, nor how often.  What people said unites by said.h; of a session's recording, laps and figures the set that was
// made later stays; of a note or pairing with one key the one changed last, and none that was removed after that.
#pragma once

#include "core/book/database.h"
#include "core/book/exchange.h"

#include <optional>
#include <span>

namespace lapwright::book {

struct Coming {
    std::optional<std::span<const SessionId>> sessions; // of the other book; absent: all
    bool removed_too = false;                           // their samples come as well, and are as removed as there
};

// Within an edit: what the attached book "other" has comes into "main".  Both have today's schema.
[[nodiscard]] Merged unite(Database& database, const Coming& coming);

} // namespace lapwright::book
