// SPDX-License-Identifier: GPL-3.0-or-later
// "lapwright book …": parse, call core, print.
#pragma once

#include "app/commands/book_arguments.h"

#include <iosfwd>

namespace lapwright::commands {

// The exit status: 0 done, 1 the input or the book cannot be used (a check that finds damage ends with 1 too).
[[nodiscard]] int run_book(const BookArguments& arguments, std::ostream& out, std::ostream& err);

} // namespace lapwright::commands
