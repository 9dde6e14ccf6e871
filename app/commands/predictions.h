// SPDX-License-Identifier: GPL-3.0-or-later
// Predictions that the book keeps: "lapwright wing … --keep" puts one in, "lapwright book predictions" holds them
// against what was driven since.
#pragma once

#include "app/commands/arguments.h"
#include "app/commands/sessions.h"
#include "app/commands/wing_text.h"

#include <iosfwd>
#include <string>

namespace lapwright::commands {

// Keeps the wing's prediction for the side that was asked for; answers what is told of it.
[[nodiscard]] base::Result<std::string> keep_wing(const Arguments& arguments, const PairingWithSetups& compared,
                                                  const SessionPointer& there, const WingReport& report);

// The exit status.
[[nodiscard]] int run_predictions(const BookArguments& arguments, book::Book& book, std::ostream& out,
                                  std::ostream& err);
[[nodiscard]] int run_driven(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err);
[[nodiscard]] int run_take_back(const BookArguments& arguments, book::Book& book, std::ostream& out, std::ostream& err);

} // namespace lapwright::commands
