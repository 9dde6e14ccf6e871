// SPDX-License-Identifier: GPL-3.0-or-later
// Recipes that are kept in a folder: one a shape, found again by the shape, whole or not at all.
#include "core/import/columns/recipe_file.h"
#include "core/import/formats/import.h"
#include "core/import/formats/preview.h"
#include "core/import/formats/recipe_folder.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

namespace fs = std::filesystem;
using recording::Meaning;

class RecipeFolderTest : public testing::Test {
  protected:
    RecipeFolderTest()
        : root(fs::temp_directory_path() /
               ("lapwright-recipes-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()))) {
        fs::remove_all(root);
        fs::create_directories(root);
    }
    ~RecipeFolderTest() override { fs::remove_all(root); }

    std::string write(const std::string& name, const std::string& text) const {
        std::ofstream(root / name, std::ios::binary) << text;
        return (root / name).string();
    }
    static Recipe made_of(const std::string& file, const LayoutChoice& layout = {}) {
        Options options;
        options.layout = layout;
        const auto preview = preview_file(file, options);
        EXPECT_TRUE(preview.ok());
        return preview.ok() ? preview->recipe : Recipe{};
    }

    fs::path root;
    RecipeFolder folder{(root / "deep" / "recipes").string()};
};

TEST_F(RecipeFolderTest, KeepsOneRecipeAShape) {
    const auto file = write("a.csv", "t,v\n0,1\n1,2\n2,3\n");
    const auto other = write("b.csv", "t,v,w\n0,1,1\n1,2,1\n2,3,1\n");
    EXPECT_TRUE(folder.list().recipes.empty());
    Recipe recipe = made_of(file);
    recipe.title = "first";
    ASSERT_TRUE(folder.keep(recipe));
    recipe.title = "second";
    ASSERT_TRUE(folder.keep(recipe));
    ASSERT_TRUE(folder.keep(made_of(other)));
    const auto kept = folder.list();
    ASSERT_EQ(kept.recipes.size(), 2U);
    EXPECT_TRUE(kept.refused.empty());
    EXPECT_EQ(kept.recipes[1].recipe, recipe);
    const auto found = recipe_for(file, kept.recipes);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->title, "second");
    ASSERT_TRUE(folder.remove(recipe));
    ASSERT_TRUE(folder.remove(recipe));
    EXPECT_FALSE(recipe_for(file, folder.list().recipes));
    EXPECT_EQ(folder.list().recipes.size(), 1U);
}

TEST_F(RecipeFolderTest, WhatIsNoRecipeIsToldAndHarmsNothing) {
    ASSERT_TRUE(folder.keep(made_of(write("a.csv", "t,v\n0,1\n1,2\n2,3\n"))));
    write("deep/recipes/zz.json", "{");
    write("deep/recipes/readme.txt", "hello");
    const auto kept = folder.list();
    EXPECT_EQ(kept.recipes.size(), 1U);
    ASSERT_EQ(kept.refused.size(), 1U);
    EXPECT_EQ(kept.refused[0].code, base::ErrorCode::recipe_not_readable);
}

TEST_F(RecipeFolderTest, AFolderThatCannotBeMadeIsASentence) {
    write("plain", "a file, no folder");
    const RecipeFolder blocked((root / "plain" / "recipes").string());
    const auto kept = blocked.keep(made_of(write("a.csv", "t,v\n0,1\n1,2\n2,3\n")));
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().code, base::ErrorCode::file_not_writable);
    EXPECT_TRUE(blocked.list().recipes.empty());
}

TEST_F(RecipeFolderTest, LeavesNoHalfWrittenFile) {
    fs::create_directories(root / "r.json" / "in the way");
    ASSERT_FALSE(write_recipe_file((root / "r.json").string(), {}));
    EXPECT_FALSE(fs::exists(root / "r.json.part"));
}

// The header that a person chose stands in line 3 of the one file and in line 1 of the next.
TEST_F(RecipeFolderTest, AHeaderThatWasChosenIsFoundAgainByItsNames) {
    const std::string rows = "0;1;36;7\n1;2;72;7\n2;3;108;7\n3;4;72;7\n";
    const auto first = write("a.txt", "some;words;of;a logger\nAlpha;1;2;3\nq1;q2;q3;q4\n" + rows);
    const Recipe guessed = made_of(first);
    Recipe recipe = made_of(first, {Delimiter{';'}, 3});
    ASSERT_EQ(recipe.columns.size(), 4U);
    EXPECT_EQ(recipe.columns[0].header, "q1");
    recipe.title = "chosen";
    recipe.columns[0].role = Role::time;
    recipe.columns[0].unit = base::Unit::second;
    recipe.columns[2].meaning = Meaning::speed;
    recipe.columns[2].unit = base::Unit::kilometre_per_hour;
    ASSERT_TRUE(folder.keep(recipe));
    for (const auto& file : {first, write("b.txt", "q1;q2;q3;q4\n" + rows)}) {
        Options options;
        options.recipe = recipe_for(file, folder.list().recipes);
        ASSERT_TRUE(options.recipe) << file;
        const auto recording = import_file(file, options);
        ASSERT_TRUE(recording.ok());
        ASSERT_NE(recording->find(Meaning::speed), nullptr);
        EXPECT_DOUBLE_EQ(recording->find(Meaning::speed)->values[1], 20.0);
        EXPECT_EQ(recording->find(Meaning::speed)->size(), 4U);
    }
}

TEST_F(RecipeFolderTest, ADelimiterThatWasChosenIsUsedAgain) {
    // By itself the program parts these rows at the comma, into a moment and a number.
    const auto file = write("a.txt", "when v\n2026-05-16 10:20:01,1\n2026-05-16 10:20:02,2\n2026-05-16 10:20:03,3\n");
    const Recipe recipe = made_of(file, {Delimiter{' ', true}, 1});
    EXPECT_FALSE(made_of(file).delimiter == recipe.delimiter);
    ASSERT_EQ(recipe.columns.size(), 2U);
    EXPECT_EQ(recipe.columns[1].header, "v");
    EXPECT_TRUE(recipe_for(file, std::vector<KeptRecipe>{{"", recipe}}));
}

TEST_F(RecipeFolderTest, ThatNoLineNamesTheColumnsIsKnownAgain) {
    const auto file = write("a.txt", "t|v\n0|1\n1|2\n2|3\n");
    const Recipe recipe = made_of(file, {Delimiter{'|'}, 0});
    ASSERT_EQ(recipe.columns.size(), 2U);
    EXPECT_EQ(recipe.columns[0].header, "column 1");
    EXPECT_TRUE(recipe_for(file, std::vector<KeptRecipe>{{"", recipe}}));
}

TEST_F(RecipeFolderTest, NoChoiceOfALayoutCanHarm) {
    const std::string text = "x\ny: z\na,b\n1,2\n3,4\n\n5,6";
    for (const char mark : {',', ';', '\t', '|', ' ', 'x', '\0'})
        for (std::size_t line = 0; line < 12; ++line)
            for (const bool blanks : {false, true}) {
                Options options;
                options.layout = {Delimiter{mark, blanks}, line};
                const auto preview = preview_bytes(text, "x.csv", options);
                if (preview.ok()) {
                    EXPECT_EQ(preview->layout.names.size(), preview->layout.columns);
                }
            }
}

// Whatever layout a person chooses for whatever file: the recipe that comes out is found again for that file, and reads
// the same columns.
TEST_F(RecipeFolderTest, EveryChoiceForEveryFileOfTheCorpusIsFoundAgain) {
    int found = 0;
    for (const auto& entry : fs::directory_iterator(fs::path(TEST_SOURCE_DIR) / "core" / "import" / "corpus")) {
        if (entry.path().extension() != ".txt") continue;
        const std::string file = entry.path().string();
        for (const Delimiter delimiter : {Delimiter{','}, Delimiter{';'}, Delimiter{'\t'}, Delimiter{' ', true}}) {
            for (std::size_t line = 0; line < 5; ++line) {
                Options options;
                options.layout = {delimiter, line};
                const auto preview = preview_file(file, options);
                if (!preview.ok()) continue;
                const auto again = recipe_for(file, std::vector<KeptRecipe>{{"", preview->recipe}});
                EXPECT_TRUE(again) << entry.path().filename() << " by '" << delimiter.mark << "', line " << line;
                ++found;
            }
        }
    }
    EXPECT_GT(found, 200);
}

TEST_F(RecipeFolderTest, TheTrustReportSaysThatARecipeWasUsed) {
    const auto file = write("a.csv", "t,v\n0,1\n1,2\n2,3\n");
    Options options;
    options.recipe = made_of(file);
    options.recipe->title = "my dash";
    const auto recording = import_file(file, options);
    ASSERT_TRUE(recording.ok());
    ASSERT_FALSE(recording->warnings.empty());
    EXPECT_EQ(recording->warnings[0].kind, recording::WarningKind::recipe_used);
    EXPECT_EQ(recording->warnings[0].of, "the recipe \"my dash\"");
}

} // namespace
} // namespace lapwright::import
