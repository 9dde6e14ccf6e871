// SPDX-License-Identifier: GPL-3.0-or-later
// Recipes: kept as JSON, fitted by the file's shape, stronger than any guess.
#include "core/import/columns/recipe.h"
#include "core/import/formats/import.h"
#include "core/import/formats/preview.h"

#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using recording::Meaning;

constexpr std::string_view file = "tick,Spd,Junk,T1\n0,36,1,20\n10,72,2,21\n20,108,3,22\n30,72,4,23\n";

TEST(Recipe, PreviewShowsGuessesWithReasonsAndFirstValues) {
    const auto preview = preview_bytes(file, "x.csv");
    ASSERT_TRUE(preview.ok()) << base::one_line(preview.error());
    ASSERT_EQ(preview->columns.size(), 4U);
    EXPECT_EQ(preview->columns[0].guess.role, Role::time);
    EXPECT_LT(preview->columns[0].guess.confidence, doubtful_below);
    EXPECT_FALSE(preview->columns[0].guess.reason.empty());
    EXPECT_EQ(preview->columns[1].guess.first_values.front(), "36");
    EXPECT_EQ(preview->columns[1].values.size(), 4U);
    ASSERT_TRUE(preview->recording);
    EXPECT_EQ(preview->recording->channels.size(), 3U);
}

TEST(Recipe, OverridesTheGuesses) {
    auto preview = preview_bytes(file, "x.csv");
    ASSERT_TRUE(preview.ok());
    Recipe recipe = preview->recipe;
    recipe.title = "my dash";
    recipe.columns[1].meaning = Meaning::speed;
    recipe.columns[1].unit = base::Unit::kilometre_per_hour;
    recipe.columns[2].role = Role::skip;
    recipe.columns[3].meaning = Meaning::air_temperature;
    recipe.columns[3].unit = base::Unit::celsius;
    Options options;
    options.recipe = recipe;
    const auto recording = import_bytes(file, "x.csv", options);
    ASSERT_TRUE(recording.ok());
    EXPECT_DOUBLE_EQ(recording->find(Meaning::speed)->values[0], 10.0);
    EXPECT_DOUBLE_EQ(recording->find(Meaning::air_temperature)->values[0], 293.15);
    EXPECT_EQ(recording->channels.size(), 2U);
    ASSERT_EQ(recording->warnings.size(), 1U) << "no doubt is told of what a person said";
    EXPECT_EQ(recording->warnings[0].kind, recording::WarningKind::recipe_used);
    const auto again = preview_bytes(file, "x.csv", options);
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->recipe_fits);
    EXPECT_EQ(again->columns[1].guess.confidence, 1.0);
}

TEST(Recipe, IsReadBackAsWritten) {
    auto preview = preview_bytes(file, "x.csv");
    ASSERT_TRUE(preview.ok());
    Recipe recipe = preview->recipe;
    recipe.title = "title with \"quotes\" and umlauts: ä";
    recipe.row_rate_hz = 100.0;
    for (int unit = 0; unit <= static_cast<int>(base::Unit::ampere); ++unit) {
        recipe.columns.push_back(
            {"u", Role::channel, Meaning::other, static_cast<base::Unit>(unit), CellForm::number, 0.5});
    }
    const auto read = read_recipe(write_recipe(recipe), "r.json");
    ASSERT_TRUE(read.ok()) << base::one_line(read.error());
    EXPECT_EQ(*read, recipe);
}

TEST(Recipe, FitsByShapeAlone) {
    const auto preview = preview_bytes(file, "x.csv");
    const auto other = preview_bytes("tick,Spd,Other,T1\n0,36,1,20\n10,72,2,21\n20,108,3,22\n", "y.csv");
    ASSERT_TRUE(preview.ok() && other.ok());
    EXPECT_TRUE(fits(preview->recipe, preview->layout));
    EXPECT_FALSE(fits(preview->recipe, other->layout));
}

TEST(Recipe, RefusesNonsenseInOneSentence) {
    for (const char* text :
         {"", "[]", "{}", "{\"recipe\":2,\"columns\":[]}", "{\"recipe\":1}", "{\"recipe\":1,\"columns\":[1]}",
          "{\"recipe\":1,\"columns\":[{\"header\":\"a\",\"meaning\":\"speed\",\"unit\":\"kg\"}]}",
          "{\"recipe\":1,\"columns\":[{\"header\":\"a\",\"use\":\"fun\"}]}",
          "{\"recipe\":1,\"row_rate_hz\":1e9,\"columns\":[]}"}) {
        const auto recipe = read_recipe(text, "r.json");
        ASSERT_FALSE(recipe.ok()) << text;
        EXPECT_EQ(recipe.error().code, base::ErrorCode::recipe_not_readable);
    }
}

TEST(Import, CanBeCancelled) {
    std::string text = "time (s),speed (m/s)\n";
    for (int i = 0; i < 300'000; ++i)
        text += std::to_string(i) + ",1\n";
    int calls = 0;
    const auto result = import_bytes(text, "x.csv", {}, [&](std::string_view, double) { return ++calls < 3; });
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().code, base::ErrorCode::cancelled);
}

} // namespace
} // namespace lapwright::import
