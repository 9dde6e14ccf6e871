// SPDX-License-Identifier: GPL-3.0-or-later
// A day that a person names, as the first and the last moment of it, or a moment: UTC seconds since 1970.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>

namespace lapwright::import {

// Nothing for an empty text.  Error value_not_readable for what is no date (see moment.h).
[[nodiscard]] base::Result<std::optional<double>> first_moment_of(const std::string& day);
[[nodiscard]] base::Result<std::optional<double>> last_moment_of(const std::string& day); // to the millisecond

// "2026-05-16 10:20", or the beginning of a day alone; error for 24 hours or more too.
[[nodiscard]] base::Result<double> moment_of(const std::string& words);

} // namespace lapwright::import
