// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers that loggers write where there is no value: -1 for a speed, a course or an accuracy, -999, 9999, 65535.
// One is only believed where the measured values are far from it.  Common practice, no source.
#pragma once

#include "core/recording/meaning.h"

#include <cstddef>
#include <optional>
#include <span>

namespace lapwright::import {

// The code that stands among these values as the file writes them (NaN: absent already); nothing where there is none.
[[nodiscard]] std::optional<double> sentinel_among(std::span<const double> written, recording::Meaning meaning);

// Whether the least or the greatest of some values of that meaning can be such a code: where not, none is among them.
[[nodiscard]] bool may_be_code(double least, double most, recording::Meaning meaning);

// Makes every such code NaN; how many there were.
std::size_t blank_sentinels(std::span<double> written, recording::Meaning meaning);

} // namespace lapwright::import
