// SPDX-License-Identifier: GPL-3.0-or-later
// The way into the program: a file of any delimited text, GPX 1.1 or NMEA 0183 becomes a Recording.
// The kind of file is told from its content, never from its name.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/import/columns/options.h"
#include "core/recording/recording.h"

#include <string>
#include <string_view>

namespace lapwright::import {

// Reads the file once and never writes.  Errors carry the path as given, and the line where there is one.
[[nodiscard]] base::Result<recording::Recording> import_file(const std::string& path, const Options& options = {},
                                                             const base::Progress& progress = {});

// The same from bytes in memory; `name` stands for the path in errors.
[[nodiscard]] base::Result<recording::Recording> import_bytes(std::string_view bytes, const std::string& name,
                                                              const Options& options = {},
                                                              const base::Progress& progress = {});

} // namespace lapwright::import
