// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever a person says of a column, the recipe that comes out can be written, read back and used.
#include "core/import/columns/recipe_edit.h"
#include "core/import/formats/preview.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::Meaning;

constexpr std::string_view file = "tick,Spd,Clock,Lat\n0,36,10:20:01,52.1\n10,72,10:20:02,52.2\n20,108,10:20:03,52.3\n";

TEST(RecipeEdit, EveryUseUnitAndFormIsReadBackAsWritten) {
    const auto preview = preview_bytes(file, "x.csv");
    ASSERT_TRUE(preview.ok());
    int tried = 0;
    for (std::size_t i = 0; i < preview->columns.size(); ++i) {
        for (const ColumnUse& before : all_uses()) {
            for (const ColumnUse& use : all_uses()) {
                const ColumnGuess& guess = preview->columns[i].guess;
                const auto changed = with_use(with_use(preview->recipe.columns[i], before, guess), use, guess);
                EXPECT_EQ(use_of(changed), use);
                for (const CellForm form : forms_for(use)) {
                    auto column = with_form(changed, form);
                    for (const Unit unit : units_for(column)) {
                        column.unit = unit;
                        Recipe recipe = preview->recipe;
                        recipe.columns[i] = column;
                        const auto read = read_recipe(write_recipe(recipe), "r.json");
                        ASSERT_TRUE(read.ok()) << words(use) << ": " << base::one_line(read.error());
                        EXPECT_EQ(*read, recipe) << words(use);
                        ++tried;
                    }
                }
            }
        }
    }
    EXPECT_GT(tried, 1000);
}

TEST(RecipeEdit, KeepsTheUnitWhereItStillMeasures) {
    const auto preview = preview_bytes("time (s),v (mph)\n0,1\n1,2\n2,3\n", "x.csv");
    ASSERT_TRUE(preview.ok());
    const ColumnGuess& guess = preview->columns[1].guess;
    auto column = preview->recipe.columns[1];
    column = with_use(column, {Role::channel, Meaning::wheel_speed}, guess);
    EXPECT_EQ(column.unit, Unit::mile_per_hour);
    column = with_use(column, {Role::channel, Meaning::throttle}, guess);
    EXPECT_EQ(column.unit, Unit::percent);
    column = with_use(column, {Role::channel, Meaning::speed}, guess);
    EXPECT_EQ(column.unit, Unit::mile_per_hour) << "the file writes mph";
}

TEST(RecipeEdit, AColumnThatIsTakenUpAgainIsReadAsItsCellsAreWritten) {
    const auto preview = preview_bytes(file, "x.csv");
    ASSERT_TRUE(preview.ok());
    const ColumnGuess& guess = preview->columns[2].guess;
    const auto column = with_use({"Clock", Role::skip}, {Role::time}, guess);
    EXPECT_EQ(column.form, CellForm::clock);
    EXPECT_EQ(column.unit, Unit::second);
}

TEST(RecipeEdit, RangesAreShownInTheUnitsOfTheWindow) {
    const RecipeColumn speed{"v", Role::channel, Meaning::speed, Unit::knot, CellForm::number, 1.0};
    const std::vector<double> values{10.0, std::numeric_limits<double>::quiet_NaN(), 0.0, 50.0};
    EXPECT_EQ(range_words(values, speed, base::UnitSystem::metric), "0 … 180\u00a0km/h");
    const RecipeColumn plain{"n", Role::channel, Meaning::gear, Unit::none, CellForm::number, 1.0};
    EXPECT_EQ(range_words(std::vector{1.0, 4.0}, plain, base::UnitSystem::us), "1 … 4");
    EXPECT_EQ(range_words(std::vector{2.0, 2.0}, plain, base::UnitSystem::us), "2");
    EXPECT_EQ(range_words(std::vector{0.5, 4.0}, plain, base::UnitSystem::us), "0.50 … 4.00");
    EXPECT_EQ(range_words({}, speed, base::UnitSystem::metric), "");
}

} // namespace
} // namespace lapwright::import
