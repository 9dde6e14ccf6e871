// SPDX-License-Identifier: GPL-3.0-or-later
// A prediction as the book keeps it: what was asked of the simulated car, and what the setup sheet will say once it is
// driven, as far as the sheet of today tells it.
#pragma once

#include "core/analysis/wing.h"
#include "core/book/predictions.h"
#include "core/car/setup_sheet.h"
#include "core/causes/explanation.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

// before: the sheet of the session whose car it is.  Sessions, time and version are left to the caller.
[[nodiscard]] book::Prediction predicted(const causes::Change& change, const causes::Seconds& lap, bool on_a_tonne,
                                         const car::SetupSheet& before);
// Downforce that is added with the drag it costs; none: the step that is quickest.  Nothing where the balance has no
// such step, or none that differs from now.
[[nodiscard]] std::optional<book::Prediction> predicted(const causes::AeroBalance& balance,
                                                        const causes::DragCost& cost,
                                                        std::optional<double> downforce_m2, bool on_a_tonne,
                                                        const car::SetupSheet& before);

// Items that will be changed, each as "wing angle=7 deg".  Error setup_not_readable without a name or a value, or where
// the sheet of today says so already.
[[nodiscard]] base::Result<void> expect_items(book::Prediction& prediction, const std::vector<std::string>& words,
                                              const car::SetupSheet& before);

} // namespace lapwright::analysis
