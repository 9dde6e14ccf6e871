// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/sheet_material.h"

#include "core/sheet/compose_sheet.h"

#include <filesystem>

namespace lapwright::analysis {
namespace {

sheet::SideFacts facts(const Side& side) {
    return {side.session->title(),
            std::filesystem::path(side.session->recording->source_file).filename().string(),
            &side.lap,
            &side.trace.best,
            side.clean_laps.size(),
            ""};
}

std::string date_of(const Pairing& pairing) {
    for (const Side* side : {&pairing.a, &pairing.b})
        if (side->session->recording->start_unix_s)
            return recording::utc_text(*side->session->recording->start_unix_s).substr(0, 10);
    return {};
}

} // namespace

sheet::Sheet debrief_sheet(const Pairing& pairing, base::UnitSystem units, const std::string& version) {
    sheet::Material material;
    material.track = &pairing.track;
    material.comparison = &pairing.comparison;
    material.repeatability = &pairing.repeatability;
    material.headline = &pairing.headline;
    material.a = facts(pairing.a);
    material.b = facts(pairing.b);
    material.date = date_of(pairing);
    for (const recording::Warning& warning : pairing.warnings)
        material.remarks.push_back(warning.message);
    material.version = version;
    return sheet::compose_sheet(material, units);
}

} // namespace lapwright::analysis
