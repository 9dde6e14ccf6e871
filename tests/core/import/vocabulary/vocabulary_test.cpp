// SPDX-License-Identifier: GPL-3.0-or-later
// Words that a person adds are known like those that are built in.
#include "core/import/vocabulary/vocabulary.h"

#include "core/import/formats/import.h"
#include "core/import/formats/recipe_folder.h"
#include "core/import/vocabulary/column_names.h"
#include "core/import/vocabulary/units_in_text.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>

namespace lapwright::import {
namespace {

using recording::Meaning;

constexpr std::string_view own = "# words of an invented tongue\n"
                                 "speed 0.9: snarrheid,\n"
                                 "    snarr van de wagen # goes on\n"
                                 "unit km/h: kmstond\n"
                                 "lateral_acceleration 0.95 with acceleration: dwaars\n"
                                 "from satellites: hemelrad\r\n"
                                 "fact driver: hoofdvoerder\n";

std::shared_ptr<const Vocabulary> own_words() {
    auto known = with_words(built_in_vocabulary(), own, "own.txt");
    EXPECT_TRUE(known.ok()) << base::one_line(known.error());
    return std::make_shared<const Vocabulary>(std::move(known).value());
}

TEST(Vocabulary, AnAddedLineIsKnown) {
    const std::string text = "Hoofdvoerder: Mara Quill\n\ntime (s),Hemelrad Snarrheid (kmstond),Dwaars (g)\n"
                             "0.0,36,0.5\n0.1,72,0.6\n0.2,108,0.7\n";
    const auto without = import_bytes(text, "x.csv");
    ASSERT_TRUE(without.ok());
    EXPECT_EQ(without->driver, "");
    EXPECT_EQ(without->find(Meaning::speed), nullptr);
    Options options;
    options.vocabulary = own_words();
    const auto with = import_bytes(text, "x.csv", options);
    ASSERT_TRUE(with.ok());
    EXPECT_EQ(with->driver, "Mara Quill");
    ASSERT_NE(with->find(Meaning::speed), nullptr);
    EXPECT_THAT(with->find(Meaning::speed)->values, testing::Pointwise(testing::DoubleEq(), {10.0, 20.0, 30.0}));
    EXPECT_NE(with->find(Meaning::lateral_acceleration), nullptr);
    EXPECT_TRUE(with->warnings.empty());
}

TEST(Vocabulary, ALineThatGoesOnBelongsToTheOneAbove) {
    EXPECT_EQ(meaning_of_name("Snarr van de Wagen", base::Quantity::none, *own_words())->meaning, Meaning::speed);
    EXPECT_FALSE(meaning_of_name("Snarr van de Wagen"));
}

TEST(Vocabulary, OnesOwnMeaningGoesBeforeTheBuiltInOne) {
    const auto known = with_words(built_in_vocabulary(), "gear 0.9: SPEED\nunit mph: km/h\n", "own.txt");
    ASSERT_TRUE(known.ok());
    EXPECT_EQ(meaning_of_name("speed", base::Quantity::none, *known)->meaning, Meaning::gear);
    EXPECT_EQ(parse_unit("km/h", *known), base::Unit::mile_per_hour);
    EXPECT_EQ(parse_unit("km/h"), base::Unit::kilometre_per_hour);
}

TEST(Vocabulary, ALineThatIsNotUnderstoodIsToldWithItsPlace) {
    for (const std::string_view bad :
         {"speed: velocity", "speed 1.5: velocity", "speed 0.9 velocity", "hurry 0.9: velocity", "unit furlong: fur",
          "fact weather: rain", "skip 0.9: x", "other 0.9: x", "speed 0.9 with mass: x", "unit : x", ": x"}) {
        const auto known = with_words(built_in_vocabulary(), "# one\n\n" + std::string(bad) + "\n", "own.txt");
        ASSERT_FALSE(known.ok()) << bad;
        EXPECT_THAT(base::one_line(known.error()), testing::StartsWith("own.txt:3: ")) << bad;
    }
}

TEST(Vocabulary, StandsBesideTheRecipes) {
    const auto folder = std::filesystem::path(testing::TempDir()) / "lapwright-own-words";
    std::filesystem::create_directories(folder);
    const RecipeFolder recipes(folder.string());
    std::filesystem::remove(folder / "vocabulary.txt");
    ASSERT_TRUE(recipes.vocabulary().ok());
    EXPECT_EQ(*recipes.vocabulary(), nullptr);
    std::ofstream(folder / "vocabulary.txt") << own;
    ASSERT_TRUE(recipes.vocabulary().ok());
    EXPECT_TRUE(meaning_of_name("snarrheid", base::Quantity::none, **recipes.vocabulary()));
    std::ofstream(folder / "vocabulary.txt") << "what is this?\n";
    ASSERT_FALSE(recipes.vocabulary().ok());
    EXPECT_THAT(base::one_line(recipes.vocabulary().error()), testing::HasSubstr("vocabulary.txt:1: "));
    std::filesystem::remove_all(folder);
}

} // namespace
} // namespace lapwright::import
