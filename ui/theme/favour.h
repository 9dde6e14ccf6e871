// SPDX-License-Identifier: GPL-3.0-or-later
// The colour of whoever a gain favours.
#pragma once

#include "ui/theme/palette.h"

#include <optional>

namespace lapwright::theme {

// A's where it is above zero, B's below; ink where it lies within its error, or is nothing: a colour never says more
// than the figure does.
[[nodiscard]] QColor colour_of_gain(const Palette& palette, double gain, std::optional<double> sd);

} // namespace lapwright::theme
