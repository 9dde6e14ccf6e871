// SPDX-License-Identifier: GPL-3.0-or-later
// Where the running program lies, and what it loads when it is first needed.  Paths are UTF-8.
#pragma once

#include <string>

namespace lapwright::platform {

// Empty where the system does not say.
[[nodiscard]] std::string program_path();

// A module's file name here: "lapwright-video" -> "lapwright-video.so" or "lapwright-video.dll".
[[nodiscard]] std::string module_name(const std::string& stem);

// The place of a variable that the module exports; null where there is none.  The module stays loaded for the life of
// the program.
[[nodiscard]] const void* module_variable(const std::string& module_path, const char* name);

// That of a module of the program's own, by its stem.
[[nodiscard]] const void* own_module_variable(const std::string& stem, const char* name);

} // namespace lapwright::platform
