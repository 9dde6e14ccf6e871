// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bridge/sound_sink.h"

#include "core/platform/modules.h"

namespace lapwright::bridge {

std::unique_ptr<SoundSink> open_sound_device(int rate_hz) {
    static const void* const entry = platform::own_module_variable(sound_module_stem, sound_module_entry);
    return entry == nullptr ? nullptr : (*static_cast<const OpenSoundSink*>(entry))(rate_hz);
}

} // namespace lapwright::bridge
