// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions that were taken out of the book's lists and can be brought back (see sessions.h).
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

struct RemovedSession {
    SessionId id{};
    std::string file_name;
    std::string driver;
    std::string car;
    std::string track;
    std::optional<double> start_unix_s;
    double removed_unix_s = 0.0;
};

[[nodiscard]] base::Result<std::vector<RemovedSession>> removed_sessions(Book& book); // the last removed first

// Within a look or an edit of the caller; `among` is a condition on the table session, in SQL.
[[nodiscard]] std::vector<RemovedSession> removed_rows(Database& database, const std::string& among = "true");

} // namespace lapwright::book
