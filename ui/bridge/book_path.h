// SPDX-License-Identifier: GPL-3.0-or-later
// The name by which the window knows a session that came from the book and from no file: "book:12/run.csv".
#pragma once

#include "core/book/entries.h"

#include <QString>
#include <optional>

namespace lapwright::bridge {

[[nodiscard]] QString book_path(book::SessionId id, const std::string& file_name);
// Nothing for the path of a file.
[[nodiscard]] std::optional<book::SessionId> session_of_book_path(const QString& path);

} // namespace lapwright::bridge
