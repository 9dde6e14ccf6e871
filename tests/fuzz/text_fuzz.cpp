// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a file, by the way that the program takes, with the preview beside it.
#include "core/import/formats/import.h"
#include "core/import/formats/preview.h"
#include "tests/fuzz/recording_invariants.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwright;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    import::Options options;
    options.threads = 1;
    const auto recording = import::import_bytes(bytes, "fuzz", options);
    if (recording)
        fuzz::check_recording(*recording);
    else
        base::check(!base::one_line(recording.error()).empty(), "an error says nothing");
    const auto preview = import::preview_bytes(bytes, "fuzz", options, 50);
    if (!preview) return 0;
    // What the preview guessed, said again as a recipe, is a recipe.
    const auto again = import::read_recipe(import::write_recipe(preview->recipe), "fuzz");
    base::check(again.ok(), "a recipe of the program's own is refused");
    return 0;
}
