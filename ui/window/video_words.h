// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of the videos beside the traces: how each stands to its recording, and how both are played.
#pragma once

#include <QString>

namespace lapwright::bridge {
class VideoSource;
}

namespace lapwright::window {

[[nodiscard]] QString step_words(const bridge::VideoSource& source);

struct HowPlayed {
    bool one_clock = false;
    double speed = 1.0;
    double stretch_of_b = 1.0;
};
[[nodiscard]] QString words(const HowPlayed& how);

} // namespace lapwright::window
