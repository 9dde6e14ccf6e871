// SPDX-License-Identifier: GPL-3.0-or-later
// Recipes that nobody wrote by hand: each is read, within its bounds, or refused with a sentence.
#include "core/import/columns/recipe.h"

#include "support/hostile_json.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;

namespace {

const std::string good = R"({"recipe": 1, "title": "my dash logger", "delimiter": ",", "decimal_mark": ".",
  "row_rate_hz": 100, "columns": [
    {"header": "Spd", "use": "channel", "meaning": "speed", "unit": "km/h", "form": "number", "scale": 2.5},
    {"header": "T", "use": "time", "unit": "s", "form": "number"}, {"header": "Junk", "use": "skip"}]})";

// Whether it was read.
bool expect_read_or_refused(const std::string& text) {
    const auto recipe = import::read_recipe(text, "dash.json");
    if (!recipe) {
        EXPECT_EQ(recipe.error().code, base::ErrorCode::recipe_not_readable);
        EXPECT_TRUE(base::one_line(recipe.error()).starts_with("dash.json")) << base::one_line(recipe.error());
        EXPECT_EQ(base::one_line(recipe.error()).find('\n'), std::string::npos);
        return false;
    }
    if (recipe->row_rate_hz) {
        EXPECT_TRUE(*recipe->row_rate_hz >= 0.1 && *recipe->row_rate_hz <= 10'000.0) << *recipe->row_rate_hz;
    }
    for (const import::RecipeColumn& column : recipe->columns)
        EXPECT_TRUE(std::isfinite(column.scale)) << text;
    const auto again = import::read_recipe(import::write_recipe(*recipe), "again");
    EXPECT_TRUE(again.ok()) << text;
    if (again.ok()) {
        EXPECT_TRUE(*again == *recipe) << text;
    }
    return true;
}

} // namespace

TEST(HostileRecipe, EveryValueMayBeAnythingAtAll) {
    ASSERT_TRUE(expect_read_or_refused(good));
    for (const std::string& text : test::with_nasty_values(good))
        expect_read_or_refused(text);
    for (const std::string& value : test::nasty_values)
        expect_read_or_refused(value);
}

TEST(HostileRecipe, BytesMayBeAnythingAtAll) {
    for (const std::string& text : test::spoiled_texts(good, 47))
        expect_read_or_refused(text);
    expect_read_or_refused(std::string(200'000, '['));
}
