// SPDX-License-Identifier: GPL-3.0-or-later
// What a plot shows, in words, for people who hear it: the figures that the drawing has, as text and sheet write them,
// with their errors, and nothing that the drawing does not say.  Empty where there is nothing to see.
#pragma once

#include "core/car/joint_region.h"
#include "core/causes/aero_balance.h"
#include "ui/plots/dot_strip.h"
#include "ui/plots/evidence_plot.h"
#include "ui/plots/season_plot.h"
#include "ui/plots/stack_panels.h"

#include <QString>

namespace lapwright::plots {

// Traces over distance: the answer, and who wins how much in each segment.
[[nodiscard]] QString in_words(const StackContent& content);
[[nodiscard]] QString in_words(const track::Track& track); // as a map
[[nodiscard]] QString in_words(const Dots& dots);
[[nodiscard]] QString in_words(const Evidence& evidence, base::UnitSystem units);
[[nodiscard]] QString in_words(const SeasonCourse& course);
// Of A and B.
[[nodiscard]] QString in_words(const car::JointRegion& a, const car::JointRegion& b);
[[nodiscard]] QString in_words(const causes::AeroBalance& a, const causes::AeroBalance& b);

} // namespace lapwright::plots
