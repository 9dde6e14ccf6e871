// SPDX-License-Identifier: GPL-3.0-or-later
// One to three samples in a row that stand off from a smooth run of their neighbours: single faults of a sensor, found
// before anything is fitted, because a fit that may follow the driver's quickest moves follows these too.
#pragma once

#include "core/motion/measurements.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lapwright::motion {

// For each sample 1 if it belongs to a spike, else 0.  A spike is further than `harmless` (in the series' unit), and
// than eight standard deviations of the series' own roughness, from the cubic through the three samples on either side,
// which themselves lie on it.  Series slower than 4 Hz have none: there a car can do anything between two samples.
[[nodiscard]] std::vector<std::uint8_t> spikes(const std::vector<double>& time_s, const std::vector<double>& values,
                                               double harmless);

// Median distance of a value from the cubic through two neighbours on either side, as a standard deviation: what is
// left of a smooth course is noise.
[[nodiscard]] double roughness(std::span<const double> values);

// The samples whose mark is 0; the others count as left out.
[[nodiscard]] Series without(const Series& series, const std::vector<std::uint8_t>& marks);

[[nodiscard]] Series without_spikes(const Series& series, double harmless);

} // namespace lapwright::motion
