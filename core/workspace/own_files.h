// SPDX-License-Identifier: GPL-3.0-or-later
// Where the person's own book and recipes lie, for both front ends (XDG Base Directory Specification 0.8:
// $XDG_DATA_HOME, else ~/.local/share; on Windows %LOCALAPPDATA%), and where a run leaves what is of no worth
// elsewhere: its log, what is open ($XDG_STATE_HOME, else ~/.local/state).  Nothing of it need exist.
#pragma once

#include "core/base/result.h"

#include <string>

namespace lapwright::workspace {

[[nodiscard]] base::Result<std::string> own_book();
// The book that is named; without a name the person's own.
[[nodiscard]] base::Result<std::string> book_file(const std::string& named);
// Both empty where there is no home folder.
[[nodiscard]] std::string own_recipe_folder();
[[nodiscard]] std::string own_state_folder();

} // namespace lapwright::workspace
