// SPDX-License-Identifier: GPL-3.0-or-later
// A file that appears whole or not at all: written beside its place under another name, flushed to the disk, then
// renamed, which POSIX makes one step (IEEE Std 1003.1-2017, rename()).
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace lapwright::base {

// `what` names the thing in the sentence: "the table".  On failure an older file stays as
// it was and nothing is left beside it.  A folder, a pipe or a device under that name is refused; a link is followed.
[[nodiscard]] Result<void> write_whole_file(const std::string& path, std::string_view content, const std::string& what);

} // namespace lapwright::base
