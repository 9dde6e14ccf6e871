// SPDX-License-Identifier: GPL-3.0-or-later
// The offset of a video to a recording by the sound of the engine: its orders are followed in the spectrogram against
// the recorded engine speed, or within the gears against speed.
//
// First every offset is tried on a coarse scale; then the best one is refined on pieces of ten seconds, whose spread
// gives the interval (block bootstrap: Künsch 1989, Ann. Stat. 17(3):1217) and, over five minutes and more, the drift
// of the clocks.  The offset is that of the sound to the channel: what delays either (a logger's bus) is in it.
#pragma once

#include "core/video/followed.h"
#include "core/video/in_step.h"
#include "core/video/media_file.h"

namespace lapwright::video {

// sound: at sound_rate_hz.  Refused with a reason where no offset stands out among the others.
[[nodiscard]] StepAnswer step_by_sound(const Sound& sound, const Followed& followed);

} // namespace lapwright::video
