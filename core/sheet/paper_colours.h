// SPDX-License-Identifier: GPL-3.0-or-later
// Colours of the sheet on paper, 0xRRGGBB.  A and B differ in hue, dash and letter, so that a grey printer keeps them
// apart; blue and vermilion of Okabe and Ito (2002), darkened to 4.5:1 on white (WCAG 2.1, 1.4.3).
#pragma once

#include <cstdint>

namespace lapwright::sheet::colours {

inline constexpr std::uint32_t ink = 0x22262b;
inline constexpr std::uint32_t faint_ink = 0x5e6266;
inline constexpr std::uint32_t rule = 0xd8d2c2;
inline constexpr std::uint32_t shade = 0xf3eee0;
inline constexpr std::uint32_t band = 0xcfd6da;         // uncertainty of the gap
inline constexpr std::uint32_t within_error = 0x8a8478; // a gain that may be none
inline constexpr std::uint32_t blue_a = 0x005a9e;
inline constexpr std::uint32_t vermilion_b = 0xb84700;

} // namespace lapwright::sheet::colours
