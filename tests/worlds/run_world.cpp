// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/worlds/run_world.h"

#include <filesystem>
#include <fstream>

#include "core/analysis/explain.h"
#include "core/analysis/run.h"
#include "core/analysis/sheet_material.h"
#include "core/sheet/html_sheet.h"

namespace worlds {
namespace {

using namespace lapwright;

SessionPointer read(const Entry& entry, const std::string& folder, Outcome& outcome) {
    const std::string path = folder + "/" + entry.file_name;
    std::ofstream(path, std::ios::binary) << entry.text;
    auto session = analysis::load_session(path);
    std::filesystem::remove(path);
    if (session) return *session;
    outcome.refusal = session.error();
    return nullptr;
}

PairingPointer compared(const SessionPointer& a, const SessionPointer& b, Outcome& outcome) {
    const auto pairing = analysis::compare(a, b);
    if (pairing) return *pairing;
    outcome.refusal = pairing.error();
    return nullptr;
}

car::SetupSheet setup_of(const Entry& entry) {
    car::SetupSheet sheet;
    sheet.mass = car::Mass{entry.stated.mass_kg, 10.0};
    sheet.conditions.temperature_k = entry.stated.temperature_k;
    sheet.conditions.pressure_pa = entry.stated.pressure_pa;
    sheet.conditions.humidity = entry.stated.humidity;
    if (const auto& springs = entry.stated.springs)
        sheet.springs = car::Springs{springs->front_n_per_m, springs->rear_n_per_m, 0.05};
    return sheet;
}

ExplanationPointer explained(const analysis::Pairing& pairing, const Entry& a, const Entry& b, Outcome& outcome) {
    analysis::CausesOptions options;
    options.setup_a = setup_of(a);
    options.setup_b = setup_of(b);
    const auto explanation = analysis::explain(pairing, options);
    if (explanation) return *explanation;
    outcome.no_explanation = explanation.error();
    return nullptr;
}

} // namespace

Outcome run_world(const World& world, const std::string& folder) {
    Outcome outcome;
    outcome.session_a = read(world.a, folder, outcome);
    outcome.session_b = read(world.b, folder, outcome);
    if (!outcome.session_a || !outcome.session_b) return outcome;
    outcome.pairing = compared(outcome.session_a, outcome.session_b, outcome);
    outcome.swapped = compared(outcome.session_b, outcome.session_a, outcome);
    if (!outcome.pairing || !outcome.swapped) return outcome;
    outcome.explanation = explained(*outcome.pairing, world.a, world.b, outcome);
    outcome.swapped_explanation = explained(*outcome.swapped, world.b, world.a, outcome);
    const analysis::Pairing& pairing = *outcome.pairing;
    outcome.findings = findings::findings(pairing.comparison, pairing.repeatability, outcome.explanation.get(),
                                          base::UnitSystem::metric);
    analysis::SheetExtras extras;
    extras.explanation = outcome.explanation.get();
    outcome.sheet_text =
        sheet::html_sheet(analysis::debrief_sheet(pairing, base::UnitSystem::metric, "test", extras), {false, true});
    return outcome;
}

} // namespace worlds
