// SPDX-License-Identifier: GPL-3.0-or-later
// A world's two files through the whole program, as a person would: read, compared by default, explained, put on a
// sheet; then once more with A and B swapped.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "core/analysis/analysis.h"
#include "core/base/error.h"
#include "core/causes/explanation.h"
#include "core/findings/findings.h"
#include "tests/worlds/world.h"

namespace worlds {

using SessionPointer = std::shared_ptr<const lapwright::analysis::Session>;
using PairingPointer = std::shared_ptr<const lapwright::analysis::Pairing>;
using ExplanationPointer = std::shared_ptr<const lapwright::causes::Explanation>;

struct Outcome {
    SessionPointer session_a; // null: refused
    SessionPointer session_b;
    PairingPointer pairing;
    PairingPointer swapped;
    ExplanationPointer explanation;
    ExplanationPointer swapped_explanation;
    std::vector<lapwright::findings::Finding> findings;
    std::string sheet_text;                        // HTML
    std::optional<lapwright::base::Error> refusal; // of a file or of the comparison
    std::optional<lapwright::base::Error> no_explanation;
};

// The files are written into `folder`.
[[nodiscard]] Outcome run_world(const World& world, const std::string& folder);

} // namespace worlds
