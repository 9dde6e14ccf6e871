// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/sessions.h"

#include "app/commands/recipes.h"
#include "core/base/error.h"
#include "core/base/parallel.h"
#include "core/book/sessions.h"
#include "core/car/setup_beside.h"
#include "core/import/formats/import.h"
#include "core/workspace/own_files.h"
#include "core/workspace/reading.h"

#include <array>
#include <filesystem>
#include <optional>
#include <system_error>

namespace lapwright::commands {
namespace {

using base::Result;

// Under one name or two, or a copy: a session is the bytes of its file.
bool same_session(const std::string& one, const std::string& other) {
    std::error_code not_there; // reading says so
    if (one == other || std::filesystem::equivalent(one, other, not_there)) return true;
    if (std::filesystem::file_size(one, not_there) != std::filesystem::file_size(other, not_there)) return false;
    const auto source = book::source_of_file(one);
    const auto other_source = book::source_of_file(other);
    return source && other_source && source->checksum == other_source->checksum;
}

car::SetupSheet found_beside(const std::string& session_file, std::string& notes) {
    auto beside = car::setup_beside(session_file);
    if (!beside) {
        notes += base::one_line(beside.error()) + "; " + session_file + " is read without a setup sheet\n";
        return {};
    }
    if (!*beside) return {};
    notes += session_file + ": setup read from " + car::setup_path_beside(session_file) + ", which lies beside it\n";
    return **beside;
}

} // namespace

Result<std::optional<track::TrackRecord>> track_of(const Arguments& arguments) {
    if (arguments.track_file.empty()) return std::optional<track::TrackRecord>();
    auto record = track::read_track_record(arguments.track_file);
    if (!record) return record.error();
    return std::optional(std::move(record).value());
}

Result<car::SetupSheet> setup_of(const std::string& session_file, const std::string& named, std::string& notes) {
    return named.empty() ? Result<car::SetupSheet>(found_beside(session_file, notes)) : car::read_setup_sheet(named);
}

Result<SessionPointer> load(const std::string& file, const car::SetupSheet& setup,
                            const std::vector<import::KeptRecipe>& recipes,
                            const std::optional<track::TrackRecord>& record) {
    return workspace::read_session(file, {{}, record, recipes, setup, workspace::own_recipe_folder()});
}

Result<PairingWithSetups> pairing_of(const Arguments& arguments) {
    std::string notes;
    const bool one_session = same_session(arguments.files[0], arguments.files[1]);
    auto setup_a = setup_of(arguments.files[0], arguments.setup_a, notes);
    if (!setup_a) return setup_a.error();
    auto setup_b =
        one_session && arguments.setup_b.empty() ? setup_a : setup_of(arguments.files[1], arguments.setup_b, notes);
    if (!setup_b) return setup_b.error();
    const auto record = track_of(arguments);
    if (!record) return record.error();
    const auto recipes = recipes_for(arguments.recipe_files, arguments.files, notes);
    if (!recipes) return recipes.error();
    // Both at once: a machine in the trailer has two cores at least.
    std::array<std::optional<Result<SessionPointer>>, 2> loaded;
    base::parallel_for(one_session ? 1 : 2, 0, [&](std::size_t i) {
        loaded[i] = load(arguments.files[i], i == 0 ? *setup_a : *setup_b, *recipes, *record);
    });
    if (one_session) loaded[1] = loaded[0];
    for (const auto& session : loaded)
        if (!*session) return session->error();
    const auto pairing = analysis::compare(loaded[0]->value(), loaded[1]->value(),
                                           {arguments.lap_a, arguments.lap_b, *record, arguments.step_m});
    if (!pairing) return pairing.error();
    PairingWithSetups both{*pairing, std::move(setup_a).value(), std::move(setup_b).value(), notes};
    if (arguments.mass_a_kg) both.setup_a.mass = car::Mass{*arguments.mass_a_kg};
    if (arguments.mass_b_kg) both.setup_b.mass = car::Mass{*arguments.mass_b_kg};
    return both;
}

Result<std::vector<analysis::FurtherLap>> further_of(const Arguments& arguments, const analysis::Pairing& pairing,
                                                     std::string& notes) {
    const auto record = track_of(arguments);
    if (!record) return record.error();
    std::string told; // of the recipes, which were told with the two
    std::vector<analysis::FurtherWanted> wanted;
    const auto recipes = recipes_for(arguments.recipe_files, arguments.also_files, told);
    if (!recipes) return recipes.error();
    for (std::size_t i = 0; i < arguments.also_files.size(); ++i) {
        const auto setup = setup_of(arguments.also_files[i], {}, notes);
        if (!setup) return setup.error();
        auto session = load(arguments.also_files[i], *setup, *recipes, *record);
        if (!session) return session.error();
        const auto lap = arguments.also_laps.empty() ? std::nullopt : std::optional(arguments.also_laps[i]);
        wanted.push_back({std::move(session).value(), lap});
    }
    auto laps = analysis::further_laps(pairing, wanted);
    if (!laps) return base::cancelled();
    for (const analysis::FurtherLap& one : *laps)
        if (one.refused) return *one.refused;
    return std::move(*laps);
}

} // namespace lapwright::commands
