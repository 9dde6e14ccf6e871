// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/findings_of.h"

namespace lapwright::analysis {

std::vector<findings::Finding> findings_of(const Pairing& pairing, const causes::Explanation* explanation,
                                           base::UnitSystem units, std::optional<causes::Side> my_car) {
    const auto reserve = [&](const Side& side) {
        return comparison::own_reserve(side.trace.best, side.clean_traces, pairing.track.segments);
    };
    return findings::findings(pairing.comparison, pairing.repeatability, explanation, units,
                              {my_car, reserve(pairing.a), reserve(pairing.b)});
}

} // namespace lapwright::analysis
