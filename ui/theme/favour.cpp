// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/favour.h"

#include "core/base/wording.h"

namespace lapwright::theme {

QColor colour_of_gain(const Palette& palette, double gain, std::optional<double> sd) {
    if (!(gain > 0.0 || gain < 0.0) || !base::stands_out(gain, sd)) return palette.ink;
    return gain > 0.0 ? palette.a : palette.b;
}

} // namespace lapwright::theme
