// SPDX-License-Identifier: GPL-3.0-or-later
// What one session's clean laps say of its car, in the form in which sessions are put together: places at the tyres'
// limit, push and drag with the errors that other sessions share, springs, and who drove what where.
#pragma once

#include "core/base/constants.h"
#include "core/base/result.h"
#include "core/car/driving_force.h"
#include "core/car/limit_evidence.h"
#include "core/car/setup_sheet.h"
#include "core/car/suspension.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::season {

// Power and drag per kilogram, in that order, as the laps alone have them.
struct Push {
    double power_per_kg = 0.0;
    double drag_per_kg = 0.0;
    car::PushErrors own{};          // of these laps alone
    car::PushErrors of_straights{}; // shared with whoever drives that track
    car::PushErrors of_car{};       // shared by all outings of the car
};

struct Outing {
    std::string driver; // empty: unknown
    std::string track;  // empty: unknown, its corners are nobody else's
    car::SetupSheet setup;
    double density_kg_m3 = 1.2;
    double mass_kg = base::tonne_kg; // where none is known
    double mass_sd_kg = 0.0;
    bool mass_known = false;
    double length_sd = 0.0; // relative, of all lengths and speeds: where only wheels tell them
    car::LimitEvidence limit;
    std::vector<double> chance_at_limit; // one a corner of it
    std::size_t straights = 0;           // at full throttle
    std::optional<Push> push;            // absent where the straights do not tell it
    std::optional<car::SuspensionDownforce> suspension;

    [[nodiscard]] double half_density_per_kg() const { return 0.5 * density_kg_m3 / mass_kg; }
};

// Error cannot_be_computed when no stretch at full throttle or no corner can be found.
[[nodiscard]] base::Result<Outing> outing(const car::CarData& data, const car::SetupSheet& setup,
                                          const std::string& driver, const std::string& track);

} // namespace lapwright::season
