// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces of sentences that findings share.
#pragma once

#include "core/causes/telling_order.h"
#include "core/findings/findings.h"

#include <span>
#include <string>
#include <vector>

namespace lapwright::findings {

constexpr double min_told_s = 0.005; // less is nothing at two decimals

[[nodiscard]] std::string letter_of(double seconds); // "A" for positive, else "B"
// A figure that may lie below zero, with the minus of print; no sign where it is rounded to nothing.
[[nodiscard]] std::string with_minus(std::string figure);
// "1.28 ±0.05", "10000 ±3000": both rounded to what the half-width allows, before the decimal point as behind it.
[[nodiscard]] std::string with_half_width(double value, double half_width, int max_decimals);
// Of seconds and their half-width, in table and sentence alike: one at least.
[[nodiscard]] int seconds_decimals(double half_width, int max_decimals = 3);
// "0.44 s", rounded to what the half-width allows.
[[nodiscard]] std::string amount(double seconds, double half_width);
// "A 0.44 ±0.03"; "0.00 ±0.02" where the rounded figure favours nobody.
[[nodiscard]] std::string worth_text(double seconds, double low, double high);
// "Sweep", "Sweep and Bowl", "the straights": where a cause with this sign is worth most.
[[nodiscard]] std::string where_most(const causes::Explanation& explanation, std::span<const double> by_segment);
// The segment with the most of this sign.
[[nodiscard]] std::optional<std::size_t> most_of(std::span<const double> by_segment, double sign);
// 0 where a segment does not tell.
[[nodiscard]] std::vector<double> by_segment(const causes::Explanation& explanation, causes::Term term);
[[nodiscard]] std::vector<double> rest_by_segment(const causes::Explanation& explanation);

// Findings from the two laps alone, and from the causes; not yet ranked.
[[nodiscard]] std::vector<Finding> segment_findings(const comparison::Comparison& comparison,
                                                    const std::vector<comparison::Repeatability>& repeatability,
                                                    const causes::Explanation* explanation, base::UnitSystem units,
                                                    const Advice& advice);
[[nodiscard]] std::vector<Finding> cause_findings(const causes::Explanation& explanation, base::UnitSystem units,
                                                  std::optional<causes::Side> my_car);
// Whether "try next" may speak to the driver of that side.
[[nodiscard]] bool speaks_to(std::optional<causes::Side> my_car, bool side_is_a);

} // namespace lapwright::findings
