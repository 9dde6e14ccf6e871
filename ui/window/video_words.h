// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of the videos beside the traces: how each stands to its recording, and how both are played.
#pragma once

#include <QString>
#include <string>
#include <vector>

namespace lapwright::bridge {
class VideoSource;
}

namespace lapwright::window {

// The files by their names.
[[nodiscard]] QString names_of(const std::vector<std::string>& paths);
[[nodiscard]] QString step_words(const bridge::VideoSource& source);

struct HowPlayed {
    QString sound; // what is said of it
    bool one_clock = false;
    double speed = 1.0;
    double stretch_of_b = 1.0;
};
[[nodiscard]] QString words(const HowPlayed& how);

// Whether a side is heard as it was: not where it plays slower, or stretched to be at the other's place.
[[nodiscard]] bool at_own_pace(const HowPlayed& how, bool side_b);
// What is said of the sound of the one that is to be heard.
[[nodiscard]] QString sound_words(const HowPlayed& how, bool side_b);

} // namespace lapwright::window
