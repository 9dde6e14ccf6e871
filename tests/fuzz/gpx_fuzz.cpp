// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a GPX document, whatever they look like.
#include "core/import/formats/gpx.h"
#include "tests/fuzz/recording_invariants.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwright;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    static_cast<void>(import::looks_like_gpx(bytes));
    const auto recording = import::read_gpx(bytes, "fuzz", {});
    if (recording) fuzz::check_recording(*recording);
    return 0;
}
