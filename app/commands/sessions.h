// SPDX-License-Identifier: GPL-3.0-or-later
// The sessions that a command line names, read with what belongs to them: recipe, track file, and the setup sheet that
// was named or lies beside the file, which is told.
#pragma once

#include "app/commands/arguments.h"
#include "core/analysis/further_laps.h"
#include "core/analysis/run.h"
#include "core/car/setup_sheet.h"
#include "core/import/formats/recipe_folder.h"
#include "core/workspace/session_key.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::commands {

using workspace::SessionPointer;

// The track file that was named; nothing where none was.
[[nodiscard]] base::Result<std::optional<track::TrackRecord>> track_of(const Arguments& arguments);

// The sheet `named`, which must be readable, else the one beside the session's file; an empty one where there is none,
// or what lies there cannot be read.  Of the one beside it `notes` gets a line, to be told when the work is done: what
// is refused is told by one line alone.
[[nodiscard]] base::Result<car::SetupSheet> setup_of(const std::string& session_file, const std::string& named,
                                                     std::string& notes);

// A session of one of the files, read with the recipe that was made for its shape, under the names of its setup.
[[nodiscard]] base::Result<SessionPointer> load(const std::string& file, const car::SetupSheet& setup,
                                                const std::vector<import::KeptRecipe>& recipes,
                                                const std::optional<track::TrackRecord>& record);

// Two sessions compared, with their setups; two laps of one session have one setup, A's.
struct PairingWithSetups {
    std::shared_ptr<const analysis::Pairing> pairing;
    car::SetupSheet setup_a;
    car::SetupSheet setup_b;
    std::string notes; // lines on what was read beside the files
};
[[nodiscard]] base::Result<PairingWithSetups> pairing_of(const Arguments& arguments);

// The laps of further sessions beside them; none where none was named.  One that cannot be laid beside them is an
// error.
[[nodiscard]] base::Result<std::vector<analysis::FurtherLap>>
further_of(const Arguments& arguments, const analysis::Pairing& pairing, std::string& notes);

} // namespace lapwright::commands
