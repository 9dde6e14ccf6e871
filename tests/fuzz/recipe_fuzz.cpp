// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a recipe: what is accepted is written and read back equal.
#include "core/base/check.h"
#include "core/import/columns/recipe.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lapwright;
    const auto recipe = import::read_recipe({reinterpret_cast<const char*>(data), size}, "fuzz");
    if (!recipe) return 0;
    const auto again = import::read_recipe(import::write_recipe(*recipe), "fuzz");
    base::check(again.ok() && *again == *recipe, "a recipe is not read back as written");
    return 0;
}
