// SPDX-License-Identifier: GPL-3.0-or-later
// Where sound goes: the system's device, or what a test puts in its place.  One channel; a sink is used by the thread
// that opened it.  The device's side is a module, loaded when sound is first wanted: the program runs without it.
#pragma once

#include <cstddef>
#include <memory>
#include <span>

namespace lapwright::bridge {

class SoundSink {
  public:
    SoundSink() = default;
    SoundSink(const SoundSink&) = delete;
    SoundSink& operator=(const SoundSink&) = delete;
    virtual ~SoundSink() = default;

    // Takes as many of the first samples as there is room for, and says how many.
    [[nodiscard]] virtual std::size_t write(std::span<const float> samples) = 0;
    // How much of what it took has not been heard yet.
    [[nodiscard]] virtual double waiting_s() = 0;
};

// Null where there is no device that can play it.
using OpenSoundSink = std::unique_ptr<SoundSink> (*)(int rate_hz);
inline constexpr const char* sound_module_entry = "lapwright_open_sound_sink";
inline constexpr const char* sound_module_stem = "lapwright-sound";

// That of the module; null without it too.
[[nodiscard]] std::unique_ptr<SoundSink> open_sound_device(int rate_hz);

} // namespace lapwright::bridge
