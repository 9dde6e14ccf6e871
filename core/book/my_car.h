// SPDX-License-Identifier: GPL-3.0-or-later
// Which car is the person's own: asked once, kept for every session of that car.  A renaming of its driver or car
// renames it too; books that are merged, exported or salvaged do not carry it: it is asked again.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/car/names.h"

#include <optional>

namespace lapwright::book {

// Nothing: nobody has said.
[[nodiscard]] base::Result<std::optional<car::Names>> my_car(Book& book);
// Nothing, or two empty names: none.
[[nodiscard]] base::Result<void> put_my_car(Book& book, const std::optional<car::Names>& mine);

} // namespace lapwright::book
