// SPDX-License-Identifier: GPL-3.0-or-later
// The videos of the demo: each driver's fastest lap, with a few seconds before and behind it.  They lie beside the
// recordings under the same name.
#pragma once

#include <string>
#include <vector>

#include "tests/truth/film.h"

namespace truth {

struct SampleVideo {
    std::string file;
    std::string recording; // beside which it lies
    Session session;
    FilmRecipe film;
};

// Invented as the sessions are; the truth of each offset is film.camera.from_s.
[[nodiscard]] std::vector<SampleVideo> sample_videos();

} // namespace truth
