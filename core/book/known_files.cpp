// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/known_files.h"

#include "core/book/database.h"

namespace lapwright::book {

base::Result<std::set<std::pair<std::string, std::uint64_t>>> known_files(Book& book) {
    return look(book.database(), [](Database& database) {
        std::set<std::pair<std::string, std::uint64_t>> files;
        Rows rows(database, "SELECT file_name, size_bytes FROM session", {});
        while (rows.next())
            files.emplace(rows.text(0), static_cast<std::uint64_t>(rows.whole(1)));
        return files;
    });
}

} // namespace lapwright::book
