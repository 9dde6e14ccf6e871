// SPDX-License-Identifier: GPL-3.0-or-later
// Whose car "try next" speaks to: said with --my-car, else what the book remembers; and "lapwright book my-car", which
// tells it and changes it.
#pragma once

#include "app/commands/arguments.h"
#include "core/analysis/analysis.h"
#include "core/book/book.h"

#include <iosfwd>
#include <optional>
#include <string>

namespace lapwright::commands {

// Nothing: both are spoken to.  A book that was named must be readable; of the person's own, that it cannot be read is
// told, and that there is none is not.  `notes` gets a line on that, or where the book decides.
[[nodiscard]] base::Result<std::optional<causes::Side>> my_car_of(const Arguments& arguments,
                                                                  const analysis::Pairing& pairing, std::string& notes);

// The exit status.
[[nodiscard]] int run_my_car(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err);

} // namespace lapwright::commands
