// SPDX-License-Identifier: GPL-3.0-or-later
// A colour never says more than the error: over drawn gains it is somebody's exactly where the gain stands out of its
// error.
#include "ui/theme/favour.h"

#include "core/base/wording.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace lapwright;

TEST(Favour, IsSomebodysColourWhereTheGainIsToldAlone) {
    std::mt19937 engine(16);
    std::normal_distribution<double> drawn(0.0, 1.0);
    for (int i = 0; i < 2000; ++i) {
        const double gain = 0.1 * drawn(engine);
        const std::optional<double> sd = i % 7 == 0 ? std::nullopt : std::optional(0.1 * std::abs(drawn(engine)));
        for (const theme::Palette* palette : {&theme::paper(), &theme::evening()}) {
            const QColor colour = theme::colour_of_gain(*palette, gain, sd);
            const QColor told = gain > 0.0 ? palette->a : palette->b;
            EXPECT_EQ(colour, base::stands_out(gain, sd) ? told : palette->ink) << gain;
        }
    }
    EXPECT_EQ(theme::colour_of_gain(theme::paper(), 0.0, std::nullopt), theme::paper().ink);
    EXPECT_EQ(theme::colour_of_gain(theme::paper(), std::nan(""), 0.1), theme::paper().ink);
}
