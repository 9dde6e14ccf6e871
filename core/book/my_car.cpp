// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/my_car.h"

#include "core/book/database.h"
#include "core/book/names.h"

namespace lapwright::book {

base::Result<std::optional<car::Names>> my_car(Book& book) {
    return look(book.database(), [](Database& database) {
        Rows rows(database, "SELECT driver, car FROM my_car", {});
        return rows.next() ? std::optional(car::Names{rows.text(0), rows.text(1)}) : std::nullopt;
    });
}

base::Result<void> put_my_car(Book& book, const std::optional<car::Names>& mine) {
    const std::string driver = mine ? plain_name(mine->driver) : "";
    const std::string car = mine ? plain_name(mine->car) : "";
    return edit(book.database(), [&](Database& database) {
        database.run("DELETE FROM my_car");
        if (!driver.empty() || !car.empty())
            database.run("INSERT INTO my_car (only, driver, car) VALUES (1, ?, ?)", {driver, car});
    });
}

} // namespace lapwright::book
