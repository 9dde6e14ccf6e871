// SPDX-License-Identifier: GPL-3.0-or-later
// What the camera on board takes, as a video file, encoded by Debian's ffmpeg while it is made.
#pragma once

#include <string>

#include "tests/truth/camera.h"

namespace truth {

struct FilmRecipe {
    CameraRecipe camera;
    double length_s = 60.0;
    double firing_order = 2.0;
    double engine_over_noise_db = 8.0;
    bool sound = true;
    std::string words = "-c:v libx264 -preset veryfast -g 50 -bf 2"; // for ffmpeg, of picture and sound
};

// False where ffmpeg is missing or refuses.
[[nodiscard]] bool film(const Session& session, const FilmRecipe& recipe, const std::string& path);

} // namespace truth
